using Microsoft.Playwright;
using Wainwright.Journeys;

[assembly: AssemblyFixture(typeof(Yard))]
// each journey draws in software and plans on every core; side by side they only wait for one another
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace Wainwright.Journeys;

/// <summary>One browser for all journeys, and a shop with both demonstration vans for those that change nothing.</summary>
public sealed class Yard : IAsyncLifetime
{
    private readonly List<string> folders = [];
    private IPlaywright? playwright;
    private IBrowser? browser;

    public Shop Shop { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Shop = new(NewFolder(), Shop.Demo("touring-camper.wain.json"), Shop.Demo("bicycle-workshop.wain.json"));
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("WAIN_CHROMIUM") is { Length: > 0 } named ? named : "/usr/bin/chromium",
            Args =
            [
                "--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
            ],
        });
    }

    /// <summary>A folder that is gone after the last test.</summary>
    public string NewFolder()
    {
        var folder = Directory.CreateTempSubdirectory("wain-journey-").FullName;
        folders.Add(folder);
        return folder;
    }

    /// <summary>A browser of somebody's own at a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="width">Width of the screen; phone 390, tablet 820, desk 1440.</param>
    /// <param name="dark">Whether the screen is dark.</param>
    /// <param name="who">Who is at the bench; absent when nobody has said yet.</param>
    public async Task<Visit> Visit(Shop shop, int width = 1440, bool dark = false, string? who = "fitter 1")
    {
        var context = await browser!.NewContextAsync(new()
        {
            BaseURL = shop.Address,
            ViewportSize = new() { Width = width, Height = width < 500 ? 844 : width < 1000 ? 1180 : 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
            HasTouch = width < 1000,
        });
        if (who is not null) await context.AddInitScriptAsync($"if (!localStorage.getItem('wain.who')) localStorage.setItem('wain.who', '{who}');");
        return new(shop, context, await context.NewPageAsync());
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.CloseAsync();
        playwright?.Dispose();
        await Shop.DisposeAsync();
        foreach (var folder in folders) Directory.Delete(folder, recursive: true);
    }
}
