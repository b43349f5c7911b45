using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Everything by keyboard: no mouse, no touch.</summary>
public sealed class KeyboardTests(Yard yard)
{
    [Fact]
    public async Task A_way_out_is_asked_for_and_stepped_through_by_keyboard_alone()
    {
        await using var visit = await yard.Visit(yard.Shop);
        var keys = visit.Page.Keyboard;
        await visit.Go("job/DEMO-02", "Parts in the van");
        await TabTo(visit, "a[href$='/way']");
        await keys.PressAsync("Enter");
        await Expect(visit.Title).ToContainTextAsync("Take out a part");
        await TabTo(visit, "#way-parts");
        await keys.TypeAsync("B30");
        await keys.PressAsync("Enter");
        await visit.PlanIs("ProvedCheapest");

        await TabTo(visit, ".reel .chief");
        var steps = await visit.Page.Locator(".steps li").CountAsync();
        for (var i = 1; i <= steps; i++)
        {
            await keys.PressAsync("Enter");
            await Expect(visit.Page.Locator(".so-far")).ToHaveAttributeAsync("data-step", $"{i}");
        }
        await Expect(visit.Page.Locator(".step h2")).ToContainTextAsync("B30");
    }

    [Fact]
    public async Task The_drawing_turns_by_keys_and_the_list_is_searched_from_anywhere()
    {
        await using var visit = await yard.Visit(yard.Shop);
        var keys = visit.Page.Keyboard;
        await visit.Go("job/DEMO-02", "Parts in the van");
        await Expect(visit.Page.Locator("html[data-keys=yes]")).ToBeAttachedAsync();
        await keys.PressAsync("/");
        await keys.TypeAsync("inverter");
        await Expect(visit.Page.Locator(".counts")).ToContainTextAsync("of 4");

        await visit.Board.FocusAsync();
        var before = await visit.Board.ScreenshotAsync();
        await keys.PressAsync("ArrowLeft");
        await keys.PressAsync("+");
        await visit.Page.EvaluateAsync("() => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(drawn)))");
        Assert.NotEqual(before, await visit.Board.ScreenshotAsync());
    }

    private static async Task TabTo(Visit visit, string selector)
    {
        for (var i = 0; i < 120; i++)
        {
            if (await visit.Page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) ?? false", selector)) return;
            await visit.Page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"the tab key never reaches {selector}");
    }
}
