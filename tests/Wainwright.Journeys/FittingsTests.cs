using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>Lines, devices, service needs, doors and wheel arches put in, changed and taken back on the screen.</summary>
public sealed class FittingsTests(Yard yard)
{
    [Fact]
    public async Task A_line_and_a_device_are_added_changed_and_taken_back()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 820);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/part/B17", "B17");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo" });

        var lines = page.Locator("#lines");
        await lines.GetByText("Add a line").ClickAsync();
        await lines.GetByRole(AriaRole.Button, new() { Name = "Add the line" }).ClickAsync();
        await Expect(lines.Locator(".add + .fault, .add .fault")).ToContainTextAsync("A line needs a name.");
        await visit.Label("Name").Last.FillAsync("feed to the lamp");
        await lines.GetByLabel("What flows in it").Last.SelectOptionAsync("Dc");
        await lines.GetByLabel("Build").Last.SelectOptionAsync("Cable");
        await lines.GetByLabel("Its other end").FillAsync("reading lamp");
        await lines.GetByRole(AriaRole.Button, new() { Name = "Add the line" }).ClickAsync();
        await Expect(undo).ToContainTextAsync("feed to the lamp at B17");
        var line = lines.Locator(".fitting").Filter(new() { HasText = "feed to the lamp" });
        await Expect(line).ToContainTextAsync("to reading lamp");

        await line.GetByText("Change").ClickAsync();
        await line.GetByLabel("Route, mm").FillAsync("100, 200");
        await Expect(line.Locator(".fault")).ToContainTextAsync("not three measures");
        await line.GetByLabel("Route, mm").FillAsync("100, 200, 300\n900, 200, 300");
        await line.GetByLabel("Route, mm").PressAsync("Tab");
        await Expect(undo).ToContainTextAsync("route, mm unknown → 100, 200, 300; 900, 200, 300");
        await line.GetByLabel("Goes to").FillAsync("B99");
        await line.GetByLabel("Goes to").PressAsync("Tab");
        await Expect(undo).ToContainTextAsync("goes to reading lamp → B99");
        await line.GetByLabel("Protected by").FillAsync("B99");
        await Expect(line.Locator(".fault")).ToContainTextAsync("not in the job");
        await line.GetByLabel("Protected by").FillAsync("");

        var devices = page.Locator("#devices");
        await devices.GetByText("Add what it does").ClickAsync();
        await devices.GetByLabel("It is a").SelectOptionAsync(new SelectOptionValue { Label = "Battery" });
        await devices.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(devices.Locator(".add .fault")).ToContainTextAsync("Volts: It needs a number.");
        await devices.Locator(".add").GetByLabel("Volts").FillAsync("12.8");
        await devices.GetByRole(AriaRole.Button, new() { Name = "Add it" }).ClickAsync();
        await Expect(undo).ToContainTextAsync("is a battery");
        var battery = devices.Locator(".fitting").Filter(new() { HasText = "Battery" });
        await Expect(battery.Locator(".what")).ToContainTextAsync("12.8 V");
        await battery.GetByText("Change").ClickAsync();
        await battery.GetByLabel("Capacity, Ah").FillAsync("90 +- 5");
        await battery.GetByLabel("Capacity, Ah").PressAsync("Tab");
        await Expect(battery.Locator(".what")).ToContainTextAsync("90 Ah");
        Assert.Empty(await visit.Faults());

        await undo.ClickAsync();
        await Expect(battery.Locator(".what")).ToContainTextAsync("capacity not known");
        await line.GetByRole(AriaRole.Button, new() { Name = "Strike out" }).ClickAsync();
        await Expect(line).ToHaveCountAsync(0);
        await undo.ClickAsync();
        await Expect(line).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Doors_and_wheel_arches_are_added_and_mended_after_the_van_was_begun()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop, width: 390);
        var page = visit.Page;
        await visit.Go("job/DEMO-02/about", "Taking in");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo" });
        var openings = page.Locator("#openings");
        await openings.GetByText("Add an opening").ClickAsync();
        await page.Locator("#opening-name").FillAsync("roof hatch");
        await page.Locator("#opening-face").SelectOptionAsync("Roof");
        await page.Locator("#opening-0").FillAsync("900");
        await page.Locator("#opening-1").FillAsync("wide");
        await openings.GetByRole(AriaRole.Button, new() { Name = "Add the opening" }).ClickAsync();
        await Expect(openings.Locator("> .fault")).ToContainTextAsync("“wide” is not a measure");
        await page.Locator("#opening-1").FillAsync("400");
        await page.Locator("#opening-2").FillAsync("600");
        await page.Locator("#opening-3").FillAsync("500");
        await openings.GetByRole(AriaRole.Button, new() { Name = "Add the opening" }).ClickAsync();
        await Expect(undo).ToContainTextAsync("roof hatch added");

        var hatch = openings.Locator(".opening").Filter(new() { HasText = "Roof hatch" });
        await hatch.GetByLabel("Clear length, mm").FillAsync("9000");
        await Expect(hatch.Locator(".fault")).ToBeVisibleAsync();
        await hatch.GetByLabel("Clear length, mm").FillAsync("420");
        await hatch.GetByLabel("Clear length, mm").PressAsync("Tab");
        await Expect(undo).ToContainTextAsync("roof hatch, clear length, mm 400 → 420");

        var arches = page.Locator("#arches");
        var before = await arches.Locator(".arch").CountAsync();
        await arches.GetByText("Add wheel arches").ClickAsync();
        foreach (var (i, mm) in new[] { (0, "300"), (1, "700"), (2, "150"), (3, "220") }) await page.Locator($"#arch-{i}").FillAsync(mm);
        await arches.GetByRole(AriaRole.Button, new() { Name = "Add them" }).ClickAsync();
        await Expect(arches.Locator(".arch")).ToHaveCountAsync(before + 2);
        await arches.Locator(".arch").Last.GetByLabel("Rear end, from the front, mm").FillAsync("200");
        await Expect(arches.Locator(".arch").Last.Locator(".fault")).ToContainTextAsync("before it begins");
        await arches.Locator(".arch").Last.GetByLabel("Rear end, from the front, mm").FillAsync("710");
        await arches.Locator(".arch").Last.GetByLabel("Rear end, from the front, mm").PressAsync("Tab");
        await Expect(undo).ToContainTextAsync("700 → 710");
        Assert.Empty(await visit.Faults());
        await undo.ClickAsync();
        await undo.ClickAsync();
        await Expect(arches.Locator(".arch")).ToHaveCountAsync(before);
    }
}
