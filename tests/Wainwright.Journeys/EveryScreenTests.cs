using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Every screen on every size, in light and in dark: no fault that axe knows, nothing wider than the screen.</summary>
public sealed class EveryScreenTests(Yard yard)
{
    private static readonly (string Path, string Title)[] Screens =
    [
        ("", "The yard"), ("begin", "Take in a van"), ("nowhere", "nothing at this address"), ("trouble", "Something broke"), ("job/NONE", "nothing at this address"), ("job/DEMO-01/part/A99", "no part A99"), ("job/DEMO-01/odd", "no such sheet"),
        ("job/DEMO-01", "Parts in the van"), ("job/DEMO-01/part/A52", "A52"), ("job/DEMO-01/enter", "Put in parts"), ("job/DEMO-01/about", "Taking in"),
        ("job/DEMO-01/stop", "Must not be used now"), ("job/DEMO-01/safe", "Made safe"), ("job/DEMO-01/findings", "Findings by risk"),
        ("job/DEMO-01/checks", "Checks"), ("job/DEMO-01/way", "Take out"), ("job/DEMO-01/service", "Service access"), ("job/DEMO-01/hold", "Will it hold"), ("job/DEMO-01/damp", "Where the water went"), ("job/DEMO-01/paper", "On paper"), ("job/DEMO-01/journal", "Journal"),
        ("job/DEMO-02", "Parts in the van"), ("job/DEMO-02/part/B17", "B17"),
    ];

    private const string TooSmall = """
        [...document.querySelectorAll("button, select, summary, .button, input:not([type=checkbox], [type=radio], [type=file]), .block a")]
            .filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 43.5)
            .map(e => `${e.tagName} ${e.textContent.trim().slice(0, 40)} ${e.getBoundingClientRect().height}`)
        """;

    [Theory]
    [InlineData(390, false)]
    [InlineData(820, true)]
    [InlineData(1440, false)]
    [InlineData(1440, true)]
    public async Task No_screen_has_a_fault_is_wider_than_it_is_or_too_small_for_a_glove(int width, bool dark)
    {
        await using var visit = await yard.Visit(yard.Shop, width, dark);
        List<string> faults = [];
        foreach (var (path, title) in Screens)
        {
            await visit.Go(path, title);
            faults.AddRange((await visit.Faults()).Select(f => $"{path}: {f}"));
            faults.AddRange((await visit.Page.EvaluateAsync<string[]>(TooSmall)).Select(f => $"{path}: {f}"));
            if (await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth") is > 0 and var over) faults.Add($"{path}: {over} px wider than the screen");
        }
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Units_and_light_are_kept_in_the_browser()
    {
        await using var visit = await yard.Visit(yard.Shop);
        await visit.Go("job/DEMO-01/part/A52", "A52");
        await Expect(visit.Label("Mass empty, kg")).ToHaveValueAsync("2.9");
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Measures" }).ClickAsync();
        await Expect(visit.Label("Mass empty, lb")).ToHaveValueAsync("6.4");
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Light" }).ClickAsync();
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");

        await visit.Page.ReloadAsync();
        await Expect(visit.Label("Mass empty, lb")).ToHaveValueAsync("6.4");
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
    }
}
