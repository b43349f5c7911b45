using System.Net;
using System.Net.Sockets;

namespace Wainwright.Cli.Tests;

/// <summary>Serving, as far as the command line answers for it; what is served has tests of its own.</summary>
public sealed class ServeTests : IDisposable
{
    readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Serving_twice_with_the_same_job_takes_it_in_once()
    {
        var job = folder.Write("job.json", SmallVan.Text());
        var first = await ServedUntilSaid("--with", job);
        var second = await ServedUntilSaid("--with", job);
        Assert.Contains("J-1: taken in", first, StringComparison.Ordinal);
        Assert.DoesNotContain("taken in", second, StringComparison.Ordinal);
        Assert.Matches("Open http://127\\.0\\.0\\.1:[0-9]+ in a browser", second);
        Assert.Equal(1, Ran.Wain("verify", "J-1", "--store", folder.At("store"), "--json").Json.GetProperty("entries").GetInt32());
    }

    [Fact]
    public void A_port_that_is_taken_is_said_plainly()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var ran = Ran.Wain("serve", "--store", folder.At("store"), "--port", $"{((IPEndPoint)taken.LocalEndpoint).Port}");
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("is taken by another program", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bad_file_to_begin_with_stops_it_before_it_serves()
    {
        var ran = Ran.Wain("serve", "--store", folder.At("store"), "--with", folder.Write("bad.json", "{"));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.DoesNotContain("Open http", ran.Out, StringComparison.Ordinal);
    }

    /// <summary>Runs it until it has said where to look, then asks it to stop.</summary>
    async Task<string> ServedUntilSaid(params string[] more)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        using var said = new StoppingWriter(stop);
        using var errors = new StringWriter();
        var exit = await Wain.Run(["serve", "--store", folder.At("store"), .. more], new(said, errors, _ => null, false, TimeProvider.System), stop.Token);
        Assert.Equal(Exit.Done, exit);
        return said.ToString();
    }

    sealed class StoppingWriter(CancellationTokenSource stop) : StringWriter
    {
        public override void WriteLine(string? value)
        {
            base.WriteLine(value);
            if (value!.Contains("Open http", StringComparison.Ordinal)) stop.Cancel();
        }
    }
}
