using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Will it hold: the van drawn by how it holds, every part in g, one part in every direction, and the load case chosen.</summary>
public sealed class HoldTests(Yard yard)
{
    [Theory]
    [InlineData(390, true)]
    [InlineData(1440, false)]
    public async Task Every_part_has_a_verdict_with_its_figures_or_the_look_that_would_tell(int width, bool dark)
    {
        await using var visit = await yard.Visit(yard.Shop, width, dark);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/hold", "Will it hold");
        await Expect(page.Locator("[data-held]")).ToHaveAttributeAsync("data-held", "46", new() { Timeout = Visit.RoundMs });
        await Expect(page.GetByText("It certifies nothing.").First).ToBeVisibleAsync();
        var rows = page.Locator(".held tbody tr");
        await Expect(rows).ToHaveCountAsync(46);
        // unknown is no pass: whoever cannot be told names what to look at
        var unknown = await rows.Filter(new() { HasText = "cannot tell" }).AllInnerTextsAsync();
        Assert.NotEmpty(unknown);
        Assert.All(unknown, r => Assert.Contains("Look:", r, StringComparison.Ordinal));
        // the drawing says the same as the table
        await Expect(visit.Board).ToHaveAttributeAsync("data-judged", new Regex("B[0-9]+:short"));
        var drawn = Regex.Matches((await visit.Board.GetAttributeAsync("data-judged"))!, ":(short|unknown|holds)").GroupBy(m => m.Groups[1].Value).ToDictionary(g => g.Key, g => g.Count());
        Assert.Equal(await rows.Filter(new() { HasText = "falls short" }).CountAsync(), drawn.GetValueOrDefault("short"));
        Assert.Equal(unknown.Count, drawn.GetValueOrDefault("unknown"));
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());

        // only what falls short; then the worst in every direction
        await page.Locator(".verdicts button").Filter(new() { HasText = "cannot tell" }).ClickAsync();
        await page.Locator(".verdicts button").Filter(new() { HasText = "holds" }).ClickAsync();
        await Expect(rows).ToHaveCountAsync(drawn["short"]);
        var worst = await rows.First.Locator("th .tag").InnerTextAsync();
        await rows.First.Locator("th a").ClickAsync();
        await Expect(page).ToHaveURLAsync(new Regex($"/hold/{worst}$"));
        await Expect(page.Locator(".verdict-line")).ToHaveAttributeAsync("data-verdict", "FallsShort");
        await Expect(page.Locator(".ways tbody tr")).ToHaveCountAsync(26);
        await Expect(page.Locator(".ways .worst")).ToHaveCountAsync(1);
        await Expect(page.Locator(".lettering .push")).ToContainTextAsync(new Regex("forward|rearward|left|right|up|down"));
        await Expect(page.GetByText("It certifies nothing.").First).ToBeVisibleAsync();
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task Another_load_case_is_looked_at_adopted_and_taken_back()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 820);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/hold", "Will it hold");
        await Expect(page.Locator("[data-held]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        await page.GetByLabel("Judged against").SelectOptionAsync("TenAllRound");
        await Expect(page.Locator(".load-cases summary").First).ToContainTextAsync("ten all round", new() { Timeout = Visit.RoundMs });
        await page.Locator(".load-cases summary").First.ClickAsync();
        await Expect(page.Locator(".load-cases")).ToContainTextAsync("Does not prove");
        await visit.Button("Judge this job against ten all round from now on").ClickAsync();
        var undo = page.GetByTitle("Ctrl+Z");
        await Expect(undo).ToContainTextAsync("judged against ten all round");
        await Expect(page.GetByLabel("Judged against").Locator("option").First).ToContainTextAsync("as this job says: ten all round");
        await undo.ClickAsync();
        await Expect(page.GetByLabel("Judged against").Locator("option").First).ToContainTextAsync("as this job says: driving, 9-3 cab rule");
    }

    [Fact]
    public async Task The_cheapest_mend_is_found_taken_into_the_job_judged_anew_and_taken_back()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        var undo = page.GetByTitle("Ctrl+Z");
        await visit.Go("job/DEMO-02/hold/B38", "B38");
        await Expect(page.Locator(".verdict-line").First).Not.ToHaveAttributeAsync("data-verdict", "Holds", new() { Timeout = Visit.RoundMs });
        await visit.Button("Work out the chance").ClickAsync();
        await Expect(page.Locator("#chance li")).ToHaveCountAsync(2, new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("#chance li").First).ToContainTextAsync(new Regex(@"driving\s+[\d.]+ % that it does not hold"));
        await Expect(page.Locator("#chance")).ToContainTextAsync("It certifies nothing.");
        await visit.Button("Find the cheapest mend").ClickAsync();
        await Expect(page.Locator("[data-mend]")).ToHaveAttributeAsync("data-mend", new Regex("^[1-9]"), new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("#fix .heed")).ToContainTextAsync("before a hole is drilled");
        await Expect(page.Locator("#fix .heed li").First).ToBeVisibleAsync();
        await Expect(page.Locator("[data-after]")).ToHaveAttributeAsync("data-after", "Holds");
        Assert.Empty(await visit.Faults());

        await visit.Button("Take it into the job").ClickAsync();
        await Expect(undo).ToContainTextAsync("planned for B38");
        // planned is not done: it holds once somebody has seen it
        await visit.Go("job/DEMO-02/hold/B38", "B38");
        await Expect(page.Locator(".verdict-line").First).ToHaveAttributeAsync("data-verdict", "CannotTell", new() { Timeout = Visit.RoundMs });
        await Expect(page.GetByText("B38-mend-1").First).ToBeAttachedAsync();
        await undo.ClickAsync();
        await visit.Go("job/DEMO-02/hold/B38", "B38");
        await Expect(page.Locator(".verdict-line").First).Not.ToHaveAttributeAsync("data-verdict", "Holds", new() { Timeout = Visit.RoundMs });
    }

    [Fact]
    public async Task A_pull_by_hand_gauge_is_typed_step_by_step_and_told_with_what_it_does_not_prove()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 820, dark: true);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/part/B38", "B38");
        await page.GetByText("Add a pull test").ClickAsync();
        await page.Locator("#pull-steps").FillAsync("50, 1\n100, soft");
        await visit.Button("Add the pull test").ClickAsync();
        await Expect(page.Locator("#readings .fault").Last).ToContainTextAsync("Line 2");
        await page.Locator("#pull-toward").SelectOptionAsync("Forward");
        await page.Locator("#pull-steps").FillAsync("50, 1\n100, 4\n0, 2");
        await visit.Button("Add the pull test").ClickAsync();
        await Expect(page.GetByTitle("Ctrl+Z")).ToContainTextAsync("pulled by hand gauge: 3 steps, to 100 N");
        await visit.Go("job/DEMO-02/hold/B38", "B38");
        await Expect(page.GetByText("Pulled forward with 100 N it moved 4 mm, 2 mm of it stayed").Last).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator(".caution-line").First).ToContainTextAsync("A hand pull is far below a crash");
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task A_cabinet_that_holds_says_that_its_drawer_does_not_stay_shut_and_offers_a_latch()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/drawer-without-a-latch.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/CASE-67/hold", "Will it hold");
        await Expect(page.Locator(".held .moves").First).ToContainTextAsync("stays shut in driving", new() { Timeout = Visit.PlanMs });
        await visit.Go("job/CASE-67/hold/A", "drawer cabinet");
        await Expect(page.Locator(".verdict-line").First).ToHaveAttributeAsync("data-verdict", "Holds", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator("#moves [data-check=FallsShort]").First).ToContainTextAsync("stays shut in driving");
        await visit.Button("Find the cheapest mend").ClickAsync();
        await Expect(page.Locator("#fix ol")).ToContainTextAsync("on the", new() { Timeout = Visit.PlanMs });
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task A_van_whose_fixings_nobody_recorded_is_taught_not_passed()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("cases/door-too-small-by-32-mm.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        await visit.Go("job/CASE-14/hold", "Will it hold");
        await Expect(visit.Page.Locator(".empty")).ToContainTextAsync("nobody has recorded how anything is held");
        await Expect(visit.Page.Locator(".empty")).ToContainTextAsync("Pull one screw and measure it");
        Assert.Empty(await visit.Faults());
    }

    [Fact]
    public async Task What_decides_how_much_a_joint_holds_is_typed_on_the_sheet_of_its_part()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/part/B17", "B17");
        var undo = page.GetByTitle("Ctrl+Z");
        var joint = page.Locator(".joint").First;
        await joint.GetByText("What decides how much it holds").ClickAsync();
        await joint.GetByLabel("Length that bites in it, mm").FillAsync("18 ± 2");
        await joint.GetByLabel("Length that bites in it, mm").PressAsync("Tab");
        await Expect(undo).ToContainTextAsync("length that bites in it, mm");
        await joint.GetByLabel("Over-driven: its thread gave way").CheckAsync();
        await Expect(joint).ToContainTextAsync("over driven");

        var moving = page.Locator("#moving");
        await moving.GetByText("Add a drawer, door or shelf").ClickAsync();
        await moving.GetByLabel("Name").FillAsync("lid");
        await moving.GetByLabel("It is a").SelectOptionAsync("Lid");
        await moving.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(moving.Locator("> .fault")).ToContainTextAsync("which way its front goes");
        await moving.GetByLabel("Its front goes, when it opens").SelectOptionAsync("Up");
        await moving.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(undo).ToContainTextAsync("has a lid");
        var lid = moving.Locator(".fitting").Filter(new() { HasText = "Lid" });
        await Expect(lid).ToContainTextAsync("opening force not measured");
        await lid.GetByText("Change").ClickAsync();
        await lid.GetByLabel("Force at the catch that opens it, N").FillAsync("40");
        await lid.GetByLabel("Force at the catch that opens it, N").PressAsync("Tab");
        await Expect(lid).ToContainTextAsync("opens at 40 N");
        Assert.Empty(await visit.Faults());
    }
}
