using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Where the water went: boards judged from a handful of readings, the boards drawn by how wet they are, the next places for the meter, and a reading typed there.</summary>
public sealed class DampTests(Yard yard)
{
    [Theory]
    [InlineData(390, true)]
    [InlineData(1440, false)]
    public async Task Every_board_is_told_with_its_areas_or_with_the_place_to_read(int width, bool dark)
    {
        await using var visit = await yard.Visit(yard.Shop, width, dark);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/damp?on=2026-03-02", "Where the water went");
        await Expect(page.Locator("p[data-damp]")).ToHaveAttributeAsync("data-damp", "14", new() { Timeout = Visit.RoundMs });
        await Expect(page.GetByText("not a measurement").First).ToBeVisibleAsync();
        var rows = page.Locator(".damp-boards tbody tr");
        await Expect(rows).ToHaveCountAsync(14);
        // the leak at the roof vent and the one at the shower tray are seen
        await Expect(page.Locator("[data-advice=CutOrProbe]").Filter(new() { HasText = "A10" })).ToContainTextAsync(new Regex(@"m² over 28 %"));
        await Expect(page.Locator("[data-advice=CutOrProbe]").Filter(new() { HasText = "A36" })).ToHaveCountAsync(1);
        // unknown is no pass: whoever cannot be told names the place to read
        var unknown = await page.Locator("[data-advice=CannotTell]").AllInnerTextsAsync();
        Assert.NotEmpty(unknown);
        Assert.All(unknown, r => Assert.Matches(@"[Mm]easure at x -?\d+, y -?\d+, z -?\d+", r));
        // the drawing shows every piece
        await Expect(visit.Board).ToHaveAttributeAsync("data-soaked", new Regex("^[1-9][0-9]{3}$"));
        await Expect(page.Locator(".lettering .pin").Filter(new() { HasText = "P04 ≥ 28" })).ToHaveCountAsync(1);
        await Expect(page.Locator("[data-next]")).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());

        // only what is to be probed; then one board
        foreach (var word in new[] { "dry it", "cannot tell", "keep" }) await page.Locator("#boards .verdicts button").Filter(new() { HasText = word }).ClickAsync();
        await Expect(rows).ToHaveCountAsync(await page.Locator("[data-advice=CutOrProbe]").CountAsync());
        await rows.Filter(new() { HasText = "A36" }).Locator("th a").ClickAsync();
        await Expect(page.Locator("[data-board=A36]")).ToContainTextAsync("P19");
        await Expect(visit.Board).ToHaveAttributeAsync("data-marked", "A36");
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task A_reading_typed_at_the_next_place_changes_the_map_and_is_taken_back()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("touring-camper.wain.json"));
        await using var visit = await yard.Visit(shop, width: 820);
        var page = visit.Page;
        var undo = page.GetByTitle("Ctrl+Z");
        await visit.Go("job/DEMO-01/damp?on=2026-03-02", "Where the water went");
        await Expect(page.Locator("[data-next]")).ToHaveAttributeAsync("data-next", "3", new() { Timeout = Visit.RoundMs });
        await page.Locator("[data-next] > li").First.GetByRole(AriaRole.Link, new() { Name = "Type the reading there" }).ClickAsync();
        await Expect(page.Locator("#damp-at")).ToHaveValueAsync(new Regex(@"^\d+, \d+, \d+$"));
        await visit.Button("Add the reading").ClickAsync();
        await Expect(page.Locator("#take .fault")).ToContainTextAsync("a number from 0 to 100");
        await page.Locator("#damp-value").FillAsync("31");
        await page.Locator("#damp-value").PressAsync("Tab");
        await visit.Button("Add the reading").ClickAsync();
        await Expect(undo).ToContainTextAsync("P25");
        await Expect(undo).ToContainTextAsync("31 % moisture");
        await visit.Button("Work it out again").ClickAsync();
        // the reading is of today, the map of the second of March: the latest of each point has it
        await page.GetByLabel("Readings up to").SelectOptionAsync("");
        await Expect(page.Locator(".lettering .pin").Filter(new() { HasText = "P25 ≥ 28" })).ToHaveCountAsync(1, new() { Timeout = Visit.RoundMs });
        await undo.ClickAsync();
        await visit.Button("Work it out again").ClickAsync();
        await Expect(page.Locator(".lettering .pin").Filter(new() { HasText = "P24" })).ToHaveCountAsync(1, new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator(".lettering .pin").Filter(new() { HasText = "P25" })).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Thresholds_of_ones_own_are_judged_by_and_nonsense_is_answered_with_how_to_write_them()
    {
        await using var visit = await yard.Visit(yard.Shop);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/damp?on=2026-03-02", "Where the water went");
        await Expect(page.Locator("p[data-damp]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        await page.GetByLabel("Wet is over, %").FillAsync("15");
        await page.GetByLabel("Wet is over, %").PressAsync("Tab");
        await Expect(page.Locator(".damp-boards thead")).ToContainTextAsync("Over 15 %", new() { Timeout = Visit.RoundMs });
        await Expect(page).ToHaveURLAsync(new Regex("over=15"));
        await page.GetByLabel("Wet is over, %").FillAsync("150");
        await page.GetByLabel("Wet is over, %").PressAsync("Tab");
        await Expect(page.Locator(".fault").First).ToContainTextAsync("A threshold is 5 to 60 %");
        await Expect(page.Locator(".damp-boards thead")).ToContainTextAsync("Over 28 %", new() { Timeout = Visit.RoundMs });
    }

    [Fact]
    public async Task A_van_that_nobody_has_read_is_taught_not_passed()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/door-too-small-by-32-mm.wain.json"), Shop.Demo("touring-camper.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        await visit.Go("job/CASE-14/damp", "Where the water went");
        await Expect(visit.Page.Locator("[data-lacks=Wood]")).ToContainTextAsync("Unknown is not dry", new() { Timeout = Visit.RoundMs });
        Assert.Empty(await visit.Faults());
        await visit.Go("job/DEMO-01/damp?on=2026-01-01", "Where the water went");
        await Expect(visit.Page.Locator("[data-lacks=Readings]")).ToContainTextAsync("dry reference", new() { Timeout = Visit.RoundMs });
        Assert.Empty(await visit.Faults());
    }
}
