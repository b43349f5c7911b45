using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>A van comes in: begun by the tape, ten parts typed, a photo, a finding, its report.</summary>
public sealed class NewVanTests(Yard yard)
{
    private static readonly string[][] Parts =
    [
        // name, system, size, along, across, up, mass
        ["floor sheet", "Floor", "3000 x 1700 x 12", "0", "middle", "0", "32"],
        ["kitchen base", "Furniture", "900 x 500 x 860", "rear 900", "right 20", "on P01", "24"],
        ["worktop", "Furniture", "900 x 520 x 30", "rear 900", "right 10", "on P02", "9"],
        ["fridge", "Appliance", "475 x 500 x 500", "400", "right 20", "on P01", "22"],
        ["seat box", "Furniture", "800 x 560 x 430", "300", "40", "on P01", "13"],
        ["seat cushion", "Furniture", "800 x 560 x 110", "300", "40", "on P05", "4.5"],
        ["water tank", "Water", "600 x 400 x 280", "rear 200", "left 60", "on P01", "7.5"],
        ["pump", "Water", "200 x 120 x 120", "ahead P07 80", "60", "on P01", "1.2"],
        ["upper locker", "Furniture", "900 x 300 x 320", "300", "40", "roof 60", "11"],
        ["alarm", "Safety", "100 x 40 x 70", "behind P05 200", "0", "1300", "0.15"],
    ];

    [Fact]
    public async Task A_van_is_taken_in_with_ten_parts_a_photo_a_finding_and_its_report()
    {
        await using var shop = new Shop(yard.NewFolder());
        await using var visit = await yard.Visit(shop, who: null);
        var page = visit.Page;

        await visit.Go("", "The yard");
        await Expect(page.GetByText("No van stands here yet.")).ToBeVisibleAsync();
        await visit.Link("Take in a van").ClickAsync();
        await Expect(visit.Title).ToHaveTextAsync("Take in a van");
        await visit.Label("What people call it").FillAsync("weekend van, pump does not start");
        await visit.Label("Load length on the floor, mm").FillAsync("3.2 m");
        await visit.Label("Greatest width, mm").FillAsync("5' 11 1/2\"");
        await visit.Label("Greatest width, mm").PressAsync("Tab");
        await Expect(visit.Label("Greatest width, mm")).ToHaveValueAsync("1816");
        await visit.Button("Take it in and put in parts").ClickAsync();

        await visit.Label("Initials or role").FillAsync("KL");
        await visit.Button("Sign").ClickAsync();
        await Expect(visit.Title).ToHaveTextAsync("Put in parts");

        for (var i = 0; i < Parts.Length; i++) await TypeIn(visit, Parts[i], i + 1);
        await Expect(visit.Board).ToHaveAttributeAsync("data-shown", "10");

        await visit.Go("job/VAN-01/part/P08", "pump");
        await visit.Label("What it shows").FillAsync("pump, dry tank behind it");
        await visit.Page.Locator("#photo-file").SetInputFilesAsync(Shop.Demo("photos/workshop-01-as-found.png"));
        await Expect(page.Locator(".part-photos img")).ToBeVisibleAsync();
        Assert.True(await page.Locator(".part-photos img").EvaluateAsync<bool>("async i => { await i.decode(); return i.naturalWidth > 0; }"));

        await page.GetByText("Add a finding", new() { Exact = true }).ClickAsync();
        await visit.Label("What is wrong: where, what, how much").FillAsync("Pump under the tank draws 0 A with its switch on.");
        await visit.Label("When to act").SelectOptionAsync("U1");
        await visit.Button("Add the finding").ClickAsync();
        await Expect(page.GetByText("Finding F1 stored.")).ToBeVisibleAsync();

        await visit.Go("job/VAN-01/paper", "On paper");
        var report = await page.APIRequest.GetAsync(shop.Address + "job/VAN-01/report.html");
        Assert.True(report.Ok);
        var html = await report.TextAsync();
        Assert.Contains("weekend van, pump does not start", html, StringComparison.Ordinal);
        Assert.Contains("Pump under the tank draws 0 A", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_is_said_at_the_field_before_anything_is_stored()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop);
        await visit.Go("job/DEMO-02/enter", "Put in parts");
        await visit.Label("Name").FillAsync("shelf");
        await visit.Label("Length x width x height").FillAsync("900 x 300");
        await Expect(visit.Page.Locator("#enter-size-fault")).ToContainTextAsync("three measures");
        await visit.Label("Length x width x height").FillAsync("900 x 300 x 20");
        await visit.Label("Along").FillAsync("2500");
        await visit.Label("Across").FillAsync("10");
        await visit.Label("Up").FillAsync("on B99");
        await Expect(visit.Page.Locator("#enter-up-fault")).ToContainTextAsync("no part B99");
        await visit.Label("Up").FillAsync("700");
        await Expect(visit.Page.Locator("#enter-along-fault")).ToContainTextAsync("beyond the rear doors");
        await visit.Button("Store").ClickAsync();
        await Expect(visit.Page.Locator(".counts, .entry .kept").First).Not.ToContainTextAsync("stored");
        await visit.Label("Along").FillAsync("rear 120");
        await visit.Label("Up").PressAsync("Enter");
        await Expect(visit.Page.Locator(".entry .kept")).ToContainTextAsync("stored");
    }

    private static async Task TypeIn(Visit visit, string[] part, int count)
    {
        await Expect(visit.Page.Locator("#enter-id")).ToHaveValueAsync($"P{count:00}");
        await visit.Label("Name").FillAsync(part[0]);
        await visit.Label("System").SelectOptionAsync(part[1]);
        await visit.Label("Length x width x height").FillAsync(part[2]);
        await visit.Label("Along").FillAsync(part[3]);
        await visit.Label("Across").FillAsync(part[4]);
        await visit.Label("Up").FillAsync(part[5]);
        await visit.Label("Mass, kg").FillAsync(part[6]);
        await visit.Label("Mass, kg").PressAsync("Enter");
        await Expect(visit.Page.Locator(".entry .kept")).ToContainTextAsync($"{part[0]} stored. {count} part");
    }
}
