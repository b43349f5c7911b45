using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Somebody at a browser. At the end nothing may have been asked of any other machine, and the browser must not have complained.</summary>
public sealed class Visit : IAsyncDisposable
{
    /// <summary>A plan takes seconds, on a busy machine less than a minute [ms].</summary>
    public const float PlanMs = 60_000;

    /// <summary>Going round a whole van asks some hundred plans [ms].</summary>
    public const float RoundMs = 150_000;

    private readonly IBrowserContext context;
    private readonly List<string> outside = [], complaints = [];

    public Visit(Shop shop, IBrowserContext context, IPage page)
    {
        (this.context, Page) = (context, page);
        var home = new Uri(shop.Address).Authority;
        context.SetDefaultTimeout(60_000);
        SetDefaultExpectTimeout(60_000);
        page.Request += (_, ask) =>
        {
            if (ask.Url.StartsWith("http", StringComparison.Ordinal) && new Uri(ask.Url).Authority != home) outside.Add(ask.Url);
        };
        page.WebSocket += (_, socket) =>
        {
            if (new Uri(socket.Url).Authority != home) outside.Add(socket.Url);
        };
        page.Console += (_, said) =>
        {
            if (said.Type == "error") complaints.Add(said.Text);
        };
        page.PageError += (_, error) => complaints.Add(error);
    }

    public IPage Page { get; }

    public ILocator Title => Page.Locator("h1");

    public ILocator Board => Page.Locator("canvas");

    /// <summary>Goes to an address and waits until the page lives and the van is drawn.</summary>
    public async Task Go(string path, string title)
    {
        await Page.GotoAsync(path);
        await Expect(Page.Locator("html[data-live=yes]")).ToBeAttachedAsync();
        await Expect(Title).ToContainTextAsync(title);
        if (await Board.CountAsync() > 0) await Expect(Board).ToHaveAttributeAsync("data-shown", new System.Text.RegularExpressions.Regex("[0-9]+"));
    }

    public ILocator Button(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    public ILocator Link(string name) => Page.GetByRole(AriaRole.Link, new() { Name = name });

    public ILocator Label(string name) => Page.GetByLabel(name, new() { Exact = true });

    /// <summary>Says that a plan has come.</summary>
    public async Task PlanIs(string proof) => await Expect(Page.Locator(".proof")).ToHaveAttributeAsync("data-proof", proof, new() { Timeout = PlanMs });

    /// <summary>Every fault that axe finds on the page as it stands.</summary>
    public async Task<IReadOnlyList<string>> Faults() =>
        [.. (await Page.RunAxe()).Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}"))];

    public async ValueTask DisposeAsync()
    {
        await context.CloseAsync();
        Assert.Empty(outside);
        Assert.Empty(complaints);
    }
}
