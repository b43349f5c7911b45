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
    public async Task How_it_dries_what_to_cut_and_how_it_came_are_worked_out_in_the_background_and_can_be_stopped()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 820, dark: true);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/damp?on=2026-03-02", "Where the water went");
        await Expect(page.Locator("p[data-damp]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });

        // cut out what pays, with the piece drawn; unknown stays unknown
        await Expect(page.Locator("[data-fate=Replace]").First).ToContainTextAsync("to cut", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("[data-fate=Replace] polygon.piece").First).ToBeAttachedAsync();
        await Expect(page.Locator("[data-fate=CannotTell]").First).ToContainTextAsync("measure at");

        // stopped, then worked out
        await page.GetByLabel("Looking ahead, days").SelectOptionAsync("365");
        await visit.Button("Work out when it is dry").ClickAsync();
        await page.Locator("#drying").GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Expect(page.Locator("#drying .doubt")).ToContainTextAsync("Stopped");
        await page.GetByLabel("Looking ahead, days").SelectOptionAsync("90");
        await Expect(page.Locator("[data-dries]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        var floor = page.Locator(".dries tbody tr").Filter(new() { HasText = "A02" });
        // under vinyl it stays wet; opened it dries in days that are a range
        await Expect(floor.Locator("td").First).ToContainTextAsync("90 days");
        await Expect(floor.Locator(".opens")).ToContainTextAsync(new Regex(@"vinyl .* as it stands; .*: \d+ to (more than )?\d+ days"));
        await Expect(floor.Locator("td").Last).ToContainTextAsync(new Regex(@"\d+ to (more than )?\d+ days"));

        // days of one's own; nonsense is answered and changes nothing
        await page.GetByLabel("or so many").FillAsync("4000");
        await page.GetByLabel("or so many").PressAsync("Tab");
        await Expect(page.Locator("#drying .fault")).ToContainTextAsync("from 1 to 3650: 90 days");
        await page.GetByLabel("or so many").FillAsync("45");
        await page.GetByLabel("or so many").PressAsync("Tab");
        await Expect(floor.Locator("td").First).ToContainTextAsync("45 days", new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator("#drying .fault")).ToHaveCountAsync(0);

        // day by day: the drawing follows the slider, by key too
        await visit.Button("Show how it dries").ClickAsync();
        await Expect(page.Locator("[data-frames]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        await Expect(visit.Board).ToHaveAttributeAsync("data-day", new Regex("^day 0"));
        await page.Locator("#course input[type=range]").PressAsync("End");
        await Expect(visit.Board).ToHaveAttributeAsync("data-day", new Regex("^day 90"));
        await Expect(page.Locator("#plan h2")).ToContainTextAsync("day 90");
        await page.Locator("#course input[type=range]").PressAsync("Home");
        await Expect(visit.Board).ToHaveAttributeAsync("data-day", new Regex("^day 0"));
        await page.Locator("#course").GetByRole(AriaRole.Button, new() { Name = "Play" }).ClickAsync();
        await Expect(visit.Board).ToHaveAttributeAsync("data-day", new Regex("^day [1-9]"));
        await page.Locator("#course").GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();

        // both stories stand side by side with since when and how much
        await page.GetByLabel("Courses for each wet patch").SelectOptionAsync("100");
        await visit.Button("Work out how it came").ClickAsync();
        await Expect(page.Locator("[data-story=Leak]").First).ToContainTextAsync("Since", new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator("[data-story=Condensation]").First).ToContainTextAsync("Let in");
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task The_drying_log_draws_each_point_against_what_was_foretold_and_says_what_is_missing_before_it_is_covered()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/damp?on=2026-03-16", "Where the water went");
        await Expect(page.Locator("p[data-log]")).ToHaveAttributeAsync("data-log", "24", new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator("p[data-log]")).ToContainTextAsync("not to be covered");
        await Expect(page.Locator("#log svg[role=img]")).ToHaveCountAsync(24);
        await Expect(page.Locator("#log [data-gate=CannotTell]").First).ToContainTextAsync("missing:");
        await page.Locator("#log input[type=date]").FillAsync("2026-03-17");
        await page.Locator("#log input[type=date]").PressAsync("Tab");
        await Expect(page.Locator("#log [data-pace=Late]").First).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        var sheet = await page.APIRequest.GetAsync((await page.Locator("#log").GetByRole(AriaRole.Link, new() { Name = "On paper" }).GetAttributeAsync("href"))!);
        Assert.True(sheet.Ok);
        Assert.Contains("P19", await sheet.TextAsync(), StringComparison.Ordinal);
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task Boards_lie_flat_with_their_readings_and_are_chosen_by_key_and_drawn_nearer()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 1440, dark: true);
        var page = visit.Page;
        await visit.Go("job/DEMO-01/damp?on=2026-03-02", "Where the water went");
        await Expect(page.Locator("[data-flats]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        // every reading lies on exactly one board
        await Expect(page.Locator("#plan text.pin")).ToHaveCountAsync(24);
        await Expect(page.Locator("#plan text.pin").Filter(new() { HasText = "P06 ≥ 28" })).ToHaveCountAsync(1);
        await Expect(page.Locator("[data-flat=Ceiling] .contour").First).ToBeAttachedAsync();
        // what may be wet or dry is marked, and the key says how
        await Expect(page.Locator("[data-flat=Ceiling] .doubted").First).ToBeAttachedAsync();
        await Expect(page.Locator(".damp-key")).ToContainTextAsync("may be wet or dry");
        await visit.Button("Nearer").Last.ClickAsync();
        await Expect(page.Locator("[data-flats]")).ToHaveAttributeAsync("data-zoom", "150");
        await page.Locator("[data-flat=Floor] a").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".damp-board")).ToHaveAttributeAsync("data-board", new Regex("A0[23]"));
        Assert.Empty(await visit.Faults());
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

    [Fact]
    public async Task A_first_reading_is_taken_at_a_new_point_and_is_told_to_be_a_place_not_a_map()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/tank-with-no-restraint.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390, dark: true);
        var page = visit.Page;
        await visit.Go("job/CASE-66/damp", "Where the water went");
        await Expect(page.Locator("[data-lacks=Readings]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        await page.Locator("#damp-board").SelectOptionAsync("F");
        await page.Locator("#damp-at").FillAsync("1200, 700, 12");
        await page.Locator("#damp-value").FillAsync("24");
        await visit.Button("Add the reading").ClickAsync();
        await Expect(page.Locator(".empty .fault")).ToContainTextAsync("Say in words where the point is");
        await page.Locator("#damp-where").FillAsync("floor before the tank");
        await page.Locator("#damp-where").PressAsync("Tab");
        await visit.Button("Add the reading").ClickAsync();
        await Expect(page.GetByTitle("Ctrl+Z")).ToContainTextAsync("floor before the tank read: 24 % moisture");
        await visit.Button("Work it out again").ClickAsync();
        await Expect(page.Locator("[data-lacks=More]")).ToContainTextAsync("not a map", new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator("[data-lacks=Air]")).ToContainTextAsync("Nobody has read the air");
        await Expect(page.Locator("[data-next]")).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        Assert.Empty(await visit.Faults());
    }
}
