using Wainwright.Access;
using Wainwright.Records;

namespace Wainwright.Web.Tests;

public sealed class RoundsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("wain-rounds-").FullName;

    [Fact]
    public async Task A_round_that_broke_is_gone_round_again_and_a_whole_one_is_kept()
    {
        using var store = Store.Open(folder, TimeProvider.System);
        store.Import(SmallVan.Job, "fitter");
        var stored = store.Find(SmallVan.Job.Id)!;
        var times = 0;
        var rounds = new Rounds((_, _, _) => ++times == 1 ? throw new InvalidOperationException("broke") : Nothing);
        var broken = rounds.Of(stored);
        await Assert.ThrowsAsync<InvalidOperationException>(() => broken.Upkeep);
        var next = rounds.Of(stored);
        Assert.NotSame(broken, next);
        Assert.Same(Nothing, await next.Upkeep);
        Assert.Same(next, rounds.Of(stored));
        Assert.Equal(2, times);
    }

    [Fact]
    public async Task A_round_that_was_stopped_is_gone_round_again()
    {
        using var store = Store.Open(folder, TimeProvider.System);
        store.Import(SmallVan.Job, "fitter");
        var stored = store.Find(SmallVan.Job.Id)!;
        var rounds = new Rounds((_, _, _) => Nothing);
        var first = rounds.Of(stored);
        await first.Upkeep;
        first.Stop();
        Assert.NotSame(first, rounds.Of(stored));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static readonly Upkeep Nothing = new() { Parts = [], Done = 0, Total = 0, Assumes = [], ToMeasure = [], Cautions = [] };
}
