using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Following a plan: what is done is ticked and kept, bags are numbered, parts are chosen by touch, and the record gets it as one change.</summary>
public sealed class FollowTests(Yard yard)
{
    [Fact]
    public async Task What_is_done_is_ticked_kept_and_written_down_with_its_bags()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/way/B17", "Take out B17");
        await visit.PlanIs("ProvedCheapest");
        await Expect(page.Locator(".verdict")).ToHaveAttributeAsync("data-audit", "holds", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".verdict")).ToContainTextAsync(new Regex("Checked step by step: holds\\. [1-9][0-9]* loads? walked along the way, [1-9][0-9]* ways? of hand and tool"));
        await Expect(page.Locator(".from")).ToContainTextAsync("Planned from the van at stage “as found” of 2026-05-11: everything in.");

        var steps = await page.Locator(".steps li").CountAsync();
        await visit.Button("Next step").ClickAsync();
        await Expect(page.Locator(".so-far")).ToContainTextAsync(new Regex($"^Step 1 of {steps}\\. .+ min of .+ min, .+ min left\\.$"));
        string? bag = null;
        for (var i = 1; i <= steps; i++)
        {
            await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-step", $"{i}");
            if (bag is null && await page.Locator(".step dt:text-is('Bag') + dd b").CountAsync() > 0) bag = await page.Locator(".step dt:text-is('Bag') + dd b").InnerTextAsync();
            await visit.Button("Done").ClickAsync();
            await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{i}");
        }
        Assert.Matches("^BAG-[0-9]{2}$", bag);
        await Expect(page.Locator(".so-far")).ToContainTextAsync(", 0 min left.");
        Assert.Empty(await visit.Faults());

        await page.ReloadAsync();
        await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{steps}", new() { Timeout = Visit.PlanMs });
        await page.Locator(".steps li").First.GetByRole(AriaRole.Checkbox).UncheckAsync();
        await Expect(page.Locator(".so-far")).ToHaveAttributeAsync("data-done", $"{steps - 1}");
        await page.Locator(".steps li").First.GetByRole(AriaRole.Checkbox).CheckAsync();

        await visit.Button("Write down what is out").ClickAsync();
        var undo = page.GetByTitle("Ctrl+Z");
        await Expect(undo).ToContainTextAsync("following the plan:");
        await Expect(undo).ToContainTextAsync("B17");
        await Expect(visit.Button("Write down what is out")).ToHaveCountAsync(0);
        await visit.Go("job/DEMO-02/about", "Taking in");
        var stripDown = page.Locator("ol.rows li").Filter(new() { HasText = "strip down" });
        await Expect(stripDown).ToHaveCountAsync(1);
        await Expect(stripDown).ToContainTextAsync(new Regex(@"out: (B\d+, )*B17(,|$)"));
        await page.GetByTitle("Ctrl+Z").ClickAsync();
        await Expect(stripDown).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_part_touched_in_the_drawing_is_left_alone_or_out_already()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 820);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/way/B17", "Take out B17");
        await visit.PlanIs("ProvedCheapest");
        var box = (await visit.Board.BoundingBoxAsync())!;
        // somewhere in the middle there is always a part; the one wanted can neither be left alone nor be out already
        for (var share = 0.3f; await page.Locator(".picked .tag").Filter(new() { HasNotText = "B17" }).CountAsync() == 0 && share < 0.8f; share += 0.04f)
        {
            await visit.Board.ClickAsync(new() { Position = new() { X = box.Width * share, Y = box.Height * 0.55f } });
            await page.EvaluateAsync("() => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn)))");
        }
        await Expect(page.Locator(".picked")).ToBeVisibleAsync();
        var part = await page.Locator(".picked .tag").InnerTextAsync();
        Assert.Empty(await visit.Faults());
        Assert.NotEqual("B17", part);
        await page.Locator(".picked").GetByRole(AriaRole.Button, new() { Name = "Leave it alone" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex($"stay={part}"));
        await Expect(visit.Label("Leave alone")).ToHaveValueAsync(part);
        await Expect(page.Locator(".proof")).ToHaveAttributeAsync("data-proof", new Regex("^Proved(Cheapest|Unreachable)$"), new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".steps li").Filter(new() { HasTextRegex = new($"Take out {part}\\b") })).ToHaveCountAsync(0);

        await visit.Go($"job/DEMO-02/way/B17?out={part}", "Take out B17");
        await visit.PlanIs("ProvedCheapest");
        await Expect(visit.Label("Out already")).ToHaveValueAsync(part);
        await Expect(page.Locator(".from")).ToContainTextAsync($"taken as out as well: {part}.");
        await Expect(page.Locator(".steps li").Filter(new() { HasTextRegex = new($"Take out {part}\\b") })).ToHaveCountAsync(0);
        await Expect(page.Locator(".steps li").Filter(new() { HasTextRegex = new("Take out B17\\b") })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_part_can_be_asked_to_be_seen()
    {
        await using var visit = await yard.Visit(yard.Shop);
        await visit.Go("job/DEMO-02/see/B17", "See B17");
        await visit.PlanIs("ProvedCheapest");
        // to be seen it stays where it is
        await Expect(visit.Page.Locator(".steps li").Filter(new() { HasTextRegex = new("Take out B17\\b") })).ToHaveCountAsync(0);
        Assert.Empty(await visit.Faults());
    }
}
