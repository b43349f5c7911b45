using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace Wainwright.Web.Tests.Protect;

public sealed class DoorsTests : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wain-doors-");
    private readonly WebApplicationFactory<Program> shop;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public DoorsTests() => shop = new WebApplicationFactory<Program>().WithWebHostBuilder(b => b
        .UseSetting("Wain:Store", folder.FullName)
        .UseSetting("Wain:Demo", Path.Combine(AppContext.BaseDirectory, "demo", "bicycle-workshop.wain.json")));

    [Theory]
    [InlineData("http://elsewhere.example", HttpStatusCode.Forbidden)]
    [InlineData("http://localhost:9999", HttpStatusCode.Forbidden)]
    [InlineData("null", HttpStatusCode.Forbidden)]
    public async Task A_socket_asked_for_by_a_page_from_elsewhere_is_refused(string origin, HttpStatusCode answer)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/_blazor?id=1");
        ask.Headers.Add("Origin", origin);
        Assert.Equal(answer, (await shop.CreateClient().SendAsync(ask, Stop)).StatusCode);
    }

    [Theory]
    [InlineData("http://localhost", false)]
    [InlineData("http://elsewhere.example", true)]
    public async Task Only_own_pages_may_open_a_circuit(string origin, bool refused)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Post, "/_blazor/negotiate?negotiateVersion=1");
        ask.Headers.Add("Origin", origin);
        Assert.Equal(refused, (await shop.CreateClient().SendAsync(ask, Stop)).StatusCode == HttpStatusCode.Forbidden);
    }

    [Fact]
    public async Task Another_name_for_this_machine_is_refused()
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/");
        ask.Headers.Host = "wain.elsewhere.example";
        Assert.Equal(HttpStatusCode.BadRequest, (await shop.CreateClient().SendAsync(ask, Stop)).StatusCode);
    }

    [Fact]
    public async Task A_page_may_load_nothing_from_outside_and_run_nothing_inline()
    {
        var answer = await shop.CreateClient().GetAsync("/", Stop);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        var html = await answer.Content.ReadAsStringAsync(Stop);
        Assert.DoesNotContain("https://", html, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sheet_of_paper_runs_nothing()
    {
        var answer = await shop.CreateClient().GetAsync("/job/DEMO-02/stop.html", Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Contains("sandbox", policy, StringComparison.Ordinal);
        Assert.Contains("Stop-use", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/photo/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/photo/..%2f..%2fetc%2fpasswd")]
    [InlineData("/job/NONE/report.html")]
    [InlineData("/job/NONE/file")]
    [InlineData("/no-such-place")]
    public async Task What_is_not_there_is_said_not_to_be_there(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await shop.CreateClient().GetAsync(path, Stop)).StatusCode);

    [Fact]
    public async Task The_record_goes_out_as_the_job_file_it_came_in_as()
    {
        var answer = await shop.CreateClient().GetAsync("/job/DEMO-02/file", Stop);
        var read = Fitout.JobFile.Read(await answer.Content.ReadAsByteArrayAsync(Stop));
        Assert.Equal("DEMO-02", read.Job?.Id);
        Assert.Equal("demo-02.json", answer.Content.Headers.ContentDisposition?.FileName);
    }

    public async ValueTask DisposeAsync()
    {
        await shop.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
