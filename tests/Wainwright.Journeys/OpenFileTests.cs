using System.Text;
using static Microsoft.Playwright.Assertions;

namespace Wainwright.Journeys;

/// <summary>What somebody sent is opened: whole, or not at all and with the reasons.</summary>
public sealed class OpenFileTests(Yard yard)
{
    [Fact]
    public async Task A_file_with_faults_is_refused_with_place_rule_and_mend_and_nothing_is_stored()
    {
        await using var shop = new Shop(yard.NewFolder());
        await using var visit = await yard.Visit(shop);
        await visit.Go("", "The yard");
        var text = (await File.ReadAllTextAsync(Shop.Demo("bicycle-workshop.wain.json"), TestContext.Current.CancellationToken)).Replace("\"massKg\": 26", "\"massKg\": -26", StringComparison.Ordinal);
        await visit.Page.Locator("#job-file").SetInputFilesAsync(new Microsoft.Playwright.FilePayload { Name = "bad.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(text) });
        var refusal = visit.Page.Locator(".trouble");
        await Expect(refusal).ToContainTextAsync("bad.json was not taken in. Nothing of it is stored.");
        await Expect(refusal).ToContainTextAsync("massKg");
        await Expect(refusal).ToContainTextAsync("must be 0 to 3000");
        Assert.Empty(await visit.Faults());
        await visit.Page.ReloadAsync();
        await Expect(visit.Page.GetByText("No van stands here yet.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_container_from_one_shop_opens_in_another_with_its_journal()
    {
        byte[] container;
        await using (var visit = await yard.Visit(yard.Shop))
        {
            var answer = await visit.Page.APIRequest.GetAsync(yard.Shop.Address + "job/DEMO-02/container");
            Assert.True(answer.Ok);
            container = await answer.BodyAsync();
        }

        await using var shop = new Shop(yard.NewFolder());
        await using (var visit = await yard.Visit(shop))
        {
            await visit.Go("", "The yard");
            await visit.Page.Locator("#job-file").SetInputFilesAsync(new Microsoft.Playwright.FilePayload { Name = "demo-02.zip", MimeType = "application/zip", Buffer = container });
            await Expect(visit.Title).ToHaveTextAsync("Parts in the van");
            await visit.Go("job/DEMO-02/journal", "Journal");
            await Expect(visit.Page.Locator(".journal")).ToContainTextAsync("demonstration");
            await visit.Button("Check the records").ClickAsync();
            await Expect(visit.Page.GetByText("The records are sound.")).ToBeVisibleAsync();
        }
    }

    [Fact]
    public async Task A_file_that_is_no_photo_is_refused_at_the_field()
    {
        await using var shop = new Shop(yard.NewFolder(), Shop.Demo("bicycle-workshop.wain.json"));
        await using var visit = await yard.Visit(shop);
        await visit.Go("job/DEMO-02/part/B17", "B17");
        await visit.Page.Locator("#photo-file").SetInputFilesAsync(new Microsoft.Playwright.FilePayload { Name = "leak.jpg", MimeType = "image/jpeg", Buffer = Encoding.UTF8.GetBytes("<svg onload=alert(1)>") });
        await Expect(visit.Page.Locator(".part-photos .fault")).ToBeVisibleAsync();
        await Expect(visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Undo" })).ToContainTextAsync("nothing to undo");
    }
}
