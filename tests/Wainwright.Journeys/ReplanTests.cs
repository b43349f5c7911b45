using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>The van is not as recorded, or another way is wanted: planned anew with what is done kept, and what it costs said.</summary>
public sealed class ReplanTests(Yard yard)
{
    [Fact]
    public async Task What_is_found_otherwise_is_planned_anew_with_what_is_done_kept()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/way/B14", "Take out B14");
        await visit.PlanIs("ProvedCheapest");
        await visit.Button("Next step").ClickAsync();
        var done = 0;
        // to the first thing that is screwed
        while (await page.Locator(".reality").GetByText("Sheared or spinning").CountAsync() == 0)
        {
            await visit.Button("Done").ClickAsync();
            await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{++done}");
            await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-step", $"{done + 1}");
        }
        await page.Locator(".reality summary").ClickAsync();
        await visit.Button("Sheared or spinning: drill it").ClickAsync();
        await Expect(page.Locator(".replanned")).ToContainTextAsync("is sheared: drill it.");
        await Expect(page.Locator(".replanned")).ToContainTextAsync("more than was left");
        await Expect(page.Locator(".replanned .verdict")).ToHaveAttributeAsync("data-audit", "holds", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{done}");
        await Expect(page.Locator(".step h2")).ToContainTextAsync("Drill");
        Assert.Empty(await visit.Faults());

        await page.ReloadAsync();
        await Expect(page.Locator(".replanned")).ToContainTextAsync("is sheared: drill it.", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{done}");
        await visit.Button("Take the last one back").ClickAsync();
        await Expect(page.Locator(".replanned")).ToHaveCountAsync(0);
        await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{done}");
    }

    [Fact]
    public async Task Other_ways_the_price_of_keeping_and_other_aims_are_asked_for()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 820);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/way/A52", "Take out A52");
        await visit.PlanIs("ProvedCheapest");
        await visit.Button("What other ways are there?").ClickAsync();
        await Expect(page.Locator("[data-others]")).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        await visit.Button("What does it cost to leave a part in?").ClickAsync();
        await Expect(page.Locator("[data-prices] li").First).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("[data-prices]")).ToContainTextAsync("A30");
        Assert.Empty(await visit.Faults());

        await visit.Label("Least of").SelectOptionAsync("FewestPartsOut");
        await visit.Button("Find the way").ClickAsync();
        await Expect(page.Locator(".way-facts")).ToContainTextAsync("no plan made of these moves takes out fewer than");
        Assert.Contains("least=parts", page.Url, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tank_taller_than_the_door_is_drawn_tilted_on_its_way_out()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/tank-tilts-out-of-the-side-door.wain.json"));
        await using var visit = await yard.Visit(shop);
        await visit.Go("job/CASE-16/way/A", "Take out A");
        await Expect(visit.Page.Locator(".steps li").Last).ToContainTextAsync("Take out", new() { Timeout = Visit.PlanMs });
        await visit.Page.Locator(".steps li").Last.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(visit.Page.Locator(".step")).ToContainTextAsync("tilted on the way");
        await Expect(visit.Board).ToHaveAttributeAsync("data-played", new System.Text.RegularExpressions.Regex("."));
    }
}
