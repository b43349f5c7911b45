using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>What stands beside a plan: measures that decide, what stops a part in each direction, what would free one that has no way, and the sheet of servicing.</summary>
public sealed class AskMoreTests(Yard yard)
{
    [Fact]
    public async Task The_measures_that_decide_a_plan_are_named()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/leaves-exactly-through-the-door.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        await visit.Go(await OnlyWay(visit), "Take out");
        await Expect(page.Locator(".proof")).ToHaveAttributeAsync("data-proof", "ProvedCheapest", new() { Timeout = Visit.PlanMs });
        await visit.Label("Off by at most, mm").FillAsync("much");
        await visit.Button("Which measures decide?").ClickAsync();
        await Expect(page.Locator("#tape .fault")).ToContainTextAsync("at most 100 mm");
        await visit.Label("Off by at most, mm").FillAsync("5");
        await visit.Button("Which measures decide?").ClickAsync();
        await Expect(page.Locator("[data-tape]")).ToHaveAttributeAsync("data-tape", "open", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("#tape li").First).ToContainTextAsync(new Regex("^A.* again, to the mm .*0 mm to spare"));
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task What_would_free_a_part_that_has_no_way_is_tried_and_said()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/door-too-small-by-32-mm.wain.json"));
        await using var visit = await yard.Visit(shop, width: 820, dark: true);
        var page = visit.Page;
        await visit.Go(await OnlyWay(visit), "Take out");
        await visit.PlanIs("ProvedUnreachable");
        await visit.Button("What would free it?").ClickAsync();
        await Expect(page.Locator("[data-freeing]")).ToHaveAttributeAsync("data-freeing", new Regex("^[1-9]"), new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("#freeing li").First).ToContainTextAsync("32 mm");
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task What_stops_a_part_in_each_direction_stands_on_its_sheet()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390);
        await visit.Go("job/DEMO-02/part/B17", "B17");
        await visit.Button("What is missing to see, reach and take it out?").ClickAsync();
        var rows = visit.Page.Locator("#reach tbody tr");
        await Expect(rows.First).ToContainTextAsync("mm", new() { Timeout = Visit.PlanMs });
        foreach (var way in new[] { "forward", "rearward", "left", "right", "up", "down" }) Assert.InRange(await rows.Filter(new() { HasText = way }).CountAsync(), 1, 6);
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task The_sheet_of_servicing_prints_what_the_round_found()
    {
        await using var visit = await yard.Visit(yard.Shop);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/service", "Service access");
        await Expect(page.Locator(".figures")).ToHaveAttributeAsync("data-whole", "yes", new() { Timeout = Visit.RoundMs });
        var paper = await page.Context.RunAndWaitForPageAsync(() => visit.Link("On paper").Last.ClickAsync());
        await paper.WaitForLoadStateAsync();
        await Expect(paper.Locator("h1")).ToContainTextAsync("servic", new() { IgnoreCase = true });
        await Expect(paper.Locator("body")).ToContainTextAsync("B14");
    }

    [Fact]
    public async Task On_a_phone_the_sheet_one_is_on_stands_in_sight_in_the_strip_of_sheets()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390);
        foreach (var (path, title) in new[] { ("job/DEMO-02/journal", "Journal"), ("job/DEMO-02/findings", "Findings by risk"), ("job/DEMO-02", "Parts in the van") })
        {
            await visit.Go(path, title);
            await Expect(visit.Page.Locator(".block [aria-current]")).ToBeInViewportAsync(new() { Ratio = 0.95f });
            Assert.Equal(0, await visit.Page.EvaluateAsync<double>("scrollY"));
        }
    }

    /// <summary>The screen of the one job's only question: its case names the part A.</summary>
    private static async Task<string> OnlyWay(Visit visit)
    {
        await visit.Go("", "The yard");
        var job = await visit.Page.Locator(".jobs a").First.GetAttributeAsync("href");
        return $"{job}/way/A";
    }
}
