using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>The touring camper: the way to its heater and to its shower trap, what a joint does to it, and what a restart keeps.</summary>
public sealed class CamperTests(Yard yard)
{
    [Fact]
    public async Task The_way_to_the_heater_is_stepped_through_in_the_drawing()
    {
        await using var visit = await yard.Visit(yard.Shop);
        await visit.Go("", "The yard");
        await visit.Link("Touring camper").ClickAsync();
        await Expect(visit.Title).ToHaveTextAsync("Parts in the van");
        await visit.Page.GetByRole(AriaRole.Searchbox).FillAsync("fuel air heater");
        await visit.Link("fuel air heater").First.ClickAsync();
        await Expect(visit.Board).ToHaveAttributeAsync("data-marked", "A52");
        await visit.Link("Take it out").ClickAsync();
        await visit.PlanIs("ProvedCheapest");

        var steps = await visit.Page.Locator(".steps li").AllInnerTextsAsync();
        var order = steps.Select((text, i) => (text, i)).Where(s => s.text.Contains("Take out A", StringComparison.Ordinal)).Select(s => s.text.Split("Take out ")[1].Split(' ')[0]).ToList();
        // the seat box comes off its heater, the cushion off the seat box, and nothing else has to
        Assert.Equal("A52", order[^1]);
        Assert.Contains("A29", order);
        Assert.Contains("A30", order);
        Assert.True(order.IndexOf("A30") < order.IndexOf("A29"));

        for (var i = 1; i <= steps.Count; i++)
        {
            await visit.Button("Next step").ClickAsync();
            await Expect(visit.Page.Locator(".so-far")).ToHaveAttributeAsync("data-step", $"{i}");
        }
        await Expect(visit.Board).ToHaveAttributeAsync("data-played", string.Join(' ', order));
        await Expect(visit.Button("Next step")).ToBeDisabledAsync();
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task The_way_to_the_shower_trap_goes_through_the_tray()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390, dark: true);
        await visit.Go("job/DEMO-01/way/A40", "Take out A40");
        await visit.PlanIs("ProvedCheapest");
        await Expect(visit.Page.Locator(".figures")).ToContainTextAsync("A35");
        await Expect(visit.Page.Locator(".steps li").Last).ToContainTextAsync("A40");
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task A_joint_struck_out_or_sheared_changes_the_answers_and_a_restart_keeps_all_of_it()
    {
        var store = yard.NewFolder();
        await using (var shop = new Shop(store, Shop.Demo("touring-camper.wain.json")))
        await using (var visit = await yard.Visit(shop))
        {
            await visit.Go("job/DEMO-01/way/A29", "Take out A29");
            await visit.PlanIs("ProvedCheapest");
            var before = await visit.Page.Locator(".figures .sum dd").InnerTextAsync();

            // strike out one of the seat box's joints: less to undo
            await visit.Link("Sheet of A29").ClickAsync();
            var joint = visit.Page.Locator(".joint").First;
            var id = await joint.Locator(".tag").First.InnerTextAsync();
            await joint.GetByRole(AriaRole.Button, new() { Name = $"Strike out joint {id}" }).ClickAsync();
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync($"took joint {id} of A29 out of the record");
            await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Take it out", Exact = true }).ClickAsync();
            await visit.PlanIs("ProvedCheapest");
            await Expect(visit.Page.Locator(".compare")).ToContainTextAsync("less");
            Assert.NotEqual(before, await visit.Page.Locator(".figures .sum dd").InnerTextAsync());

            // by key, from any sheet of the job
            await visit.Page.Locator("h1").ClickAsync();
            await visit.Page.Keyboard.PressAsync("Control+z");
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Redo" })).ToContainTextAsync($"took joint {id}");

            // one more sheared fixing overhead
            await visit.Go("job/DEMO-01/part/A26", "A26");
            await visit.Page.Locator(".joint").First.GetByLabel("State", new() { Exact = true }).SelectOptionAsync("Sheared");
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync("sheared");
            await visit.Go("job/DEMO-01/checks", "Checks");
            await Expect(visit.Page.Locator("#overhead-part-held, .check").Filter(new() { HasText = "Every fixing of the overhead part" }).GetByLabel("upper locker dinette")).ToContainTextAsync("falls short");

            await visit.Go("job/DEMO-01/part/A52", "A52");
            await visit.Label("Mass empty, kg").FillAsync("3.1");
            await visit.Label("Mass empty, kg").PressAsync("Tab");
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync("A52 mass 2.9 kg → 3.1 kg");
        }

        await using (var shop = new Shop(store, Shop.Demo("touring-camper.wain.json")))
        await using (var visit = await yard.Visit(shop))
        {
            await visit.Go("job/DEMO-01/part/A52", "A52");
            await Expect(visit.Label("Mass empty, kg")).ToHaveValueAsync("3.1");
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
            await Expect(visit.Label("Mass empty, kg")).ToHaveValueAsync("2.9");
            await visit.Go("job/DEMO-01/part/A26", "A26");
            await Expect(visit.Page.Locator(".joint").First.GetByLabel("State", new() { Exact = true })).ToHaveValueAsync("Sheared");
            await visit.Go("job/DEMO-01/journal", "Journal");
            await Expect(visit.Page.Locator(".journal")).ToContainTextAsync("A52 mass 2.9 kg → 3.1 kg");
            await visit.Button("Check the records").ClickAsync();
            await Expect(visit.Page.GetByText("The records are sound.")).ToBeVisibleAsync();
        }
    }
}
