using System.Diagnostics;
using System.Globalization;

namespace Wainwright.Records.Tests;

/// <summary>
/// A program is killed (SIGKILL) while it writes, again and again. Proves that what was acknowledged survives the death of the program; the
/// death of the machine is the business of SQLite's synchronous=FULL and of the flushes beside it, which no test here can show.
/// </summary>
public class KillTests
{
    const int Stores = 5, KillsPerStore = 10, Edits = 200;

    [Fact]
    public void No_acknowledged_edit_is_lost_when_the_program_is_killed()
    {
        var random = new Random(20260314);
        var midway = 0;
        for (var i = 0; i < Stores; i++)
        {
            using var shop = new Workshop(inMemory: true);
            var known = 1;
            for (var kill = 0; kill < KillsPerStore; kill++)
            {
                var acknowledged = WrittenAndKilled(shop.Folder, random.Next(1, Edits + 1));
                Assert.Equal(Enumerable.Range(known + 1, acknowledged.Count), acknowledged);
                shop.Reopen();
                var found = shop.Store.Verify("TEST-1");
                Assert.True(found.Sound, string.Join("; ", found.Issues));
                // one more may have been written than the program lived to say
                Assert.InRange(found.Entries, acknowledged[^1], acknowledged[^1] + 1);
                Assert.Equal($"edit {found.Entries - 1}", shop.Job.Parts[0].Note);
                if (acknowledged.Count < Edits) midway++;
                known = found.Entries;
            }
            Assert.NotNull(shop.Store.Undo("TEST-1", "AB").Entry);
        }
        Assert.InRange(midway, Stores * KillsPerStore / 2, Stores * KillsPerStore);
    }

    /// <summary>Lets the program write until so many edits are acknowledged, kills it, and gives all it acknowledged.</summary>
    private static List<int> WrittenAndKilled(string folder, int after)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "Wainwright.Records.Killed" + (OperatingSystem.IsWindows() ? ".exe" : ""));
        using var running = Process.Start(new ProcessStartInfo(program, [folder, "TEST-1", Edits.ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true })!;
        var acknowledged = new List<int>();
        while (running.StandardOutput.ReadLine() is { } line)
        {
            acknowledged.Add(int.Parse(line, CultureInfo.InvariantCulture));
            if (acknowledged.Count == after) running.Kill();
        }
        running.WaitForExit();
        return acknowledged;
    }
}
