using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>Works out where the water went: for each job the last map asked for with all that was asked of it; whoever looks meanwhile sees the same one.</summary>
public sealed class Damps
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, DampDesk> desks = [];

    /// <summary>The map of a job as stored and what hangs on it: at hand, or begun now.</summary>
    /// <param name="stored">The job as stored.</param>
    /// <param name="on">Readings up to this day; null for the latest of each point.</param>
    /// <param name="thresholdsPercent">Thresholds [%], each 5 to 60; none for the usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">A threshold leaves its range; told when the map is awaited.</exception>
    public DampDesk Of(StoredJob stored, DateOnly? on, IReadOnlyList<double> thresholdsPercent)
    {
        ArgumentNullException.ThrowIfNull(stored);
        ArgumentNullException.ThrowIfNull(thresholdsPercent);
        lock (turn)
        {
            if (desks.TryGetValue(stored.Job.Id, out var desk) && desk.Sequence == stored.Sequence && desk.On == on && desk.ThresholdsPercent.SequenceEqual(thresholdsPercent)) return desk;
            desk?.Stop();
            return desks[stored.Job.Id] = new(stored, on, thresholdsPercent);
        }
    }
}
