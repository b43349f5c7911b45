using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Service access of a whole van, and who does what for a plan.</summary>
public sealed class ServiceAccessTests(Yard yard)
{
    [Fact]
    public async Task Everything_that_asks_for_service_has_its_minutes_and_the_year_its_sum()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/service", "Service access");
        await Expect(page.Locator(".figures")).ToHaveAttributeAsync("data-whole", "yes", new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator(".figures .sum dd")).ToContainTextAsync(new Regex("^[1-9][0-9]* (h [0-9]{2} )?min$"));
        await Expect(page.Locator(".figures")).ToContainTextAsync(new Regex("([1-9][0-9]*) of \\1"));
        var battery = page.Locator(".upkeep tbody tr").Filter(new() { HasText = "B14" });
        await Expect(battery).ToHaveCountAsync(1);
        foreach (var way in new[] { "See", "Reach", "Take out" }) await Expect(battery.Locator($"[data-label='{way}']")).ToContainTextAsync(new Regex("min|at once"));
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());

        // the minutes lead to the plan behind them
        await battery.Locator("[data-label='Take out'] a").ClickAsync();
        await Expect(visit.Title).ToContainTextAsync("Take out B14");
        await visit.PlanIs("ProvedCheapest");
    }

    [Fact]
    public async Task A_change_that_saves_most_is_tried_compared_and_taken_back()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/service", "Service access");
        await visit.Button("Rank the changes").ClickAsync(new() { Timeout = Visit.RoundMs });
        await Expect(page.Locator("[data-changes]")).ToBeVisibleAsync(new() { Timeout = Visit.RoundMs });
        var changes = page.Locator("#changes ol > li");
        await Expect(page.Locator("[data-changes]")).ToHaveAttributeAsync("data-changes", $"{await changes.CountAsync()}");
        var first = changes.First;
        await Expect(first).ToContainTextAsync(new Regex("(Saves|Opens a way).* a year|Opens a way"));
        Assert.Empty(await visit.Faults());
        await first.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.GetByTitle("Ctrl+Z")).ToContainTextAsync("tried:");
        await visit.Button("Go round again").ClickAsync();
        var saved = new Regex("Now (.+ min) less\\.$");
        await Expect(page.Locator(".compare")).ToContainTextAsync(saved, new() { Timeout = Visit.RoundMs });
        var less = saved.Match(await page.Locator(".compare").InnerTextAsync()).Groups[1].Value;
        await page.GetByTitle("Ctrl+Z").ClickAsync();
        await visit.Button("Go round again").ClickAsync();
        // taken back, the year costs as much more as it cost less
        await Expect(page.Locator(".compare")).ToContainTextAsync($"Now {less} more.", new() { Timeout = Visit.RoundMs });
    }

    [Fact]
    public async Task A_plan_is_laid_out_for_two_and_for_one()
    {
        await using var visit = await yard.Visit(yard.Shop, width: 390, dark: true);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/way/B14", "Take out B14");
        await visit.PlanIs("ProvedCheapest");
        await visit.Link("Who does what, for two").ClickAsync();
        await Expect(page.Locator(".figures")).ToHaveAttributeAsync("data-crew", "2", new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".crew tbody tr").First).ToBeVisibleAsync();
        // every step that takes time stands in the strip once for each who does it
        var drawn = await page.Locator(".strip rect").CountAsync();
        Assert.Equal(await page.Locator(".crew tbody tr").EvaluateAllAsync<int>("rows => rows.filter(r => r.cells[0].textContent !== r.cells[1].textContent).reduce((n, r) => n + r.querySelectorAll('.who').length, 0)"), drawn);
        Assert.True(drawn > 3, $"{drawn} blocks");
        Assert.Equal(0, await page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)"));
        Assert.Empty(await visit.Faults());
        await visit.Button("alone").ClickAsync();
        await Expect(page.Locator(".figures[data-crew='1']")).ToBeVisibleAsync(new() { Timeout = Visit.PlanMs });
        await Expect(page.Locator(".crew .w2")).ToHaveCountAsync(0);
    }
}
