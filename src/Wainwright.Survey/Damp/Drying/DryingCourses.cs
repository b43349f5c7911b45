using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Nine courses of drying: from a low, middle and high start, with materials fast, likely and slow; any other start and material is read off between them.</summary>
/// <remarks>
/// A piece dries through its own faces far more than along the board, so that its course hangs on its own start: what lies between two computed starts is
/// read off straight between them, piece by piece. Starts beyond the ends count as the ends.
/// </remarks>
internal sealed class DryingCourses
{
    private const int Starts = 3;

    private static readonly MaterialDoubt[] Paces = [MaterialDoubt.Fast, MaterialDoubt.Likely, MaterialDoubt.Slow];

    // by pace and start, then frame, then piece
    private readonly double[][][] percent = new double[Starts * Paces.Length][][], humidity = new double[Starts * Paces.Length][][];

    private DryingCourses(IReadOnlyList<double> days) => Days = days;

    /// <summary>Days of the frames.</summary>
    public IReadOnlyList<double> Days { get; }

    /// <param name="sheets">The boards with materials of so much doubt.</param>
    /// <param name="starts">Low, middle and high moisture of every piece [%].</param>
    /// <param name="air">The air.</param>
    /// <param name="days">Days of the frames, the first 0.</param>
    /// <param name="told">Told the share that is done.</param>
    /// <param name="stop">Calls it off.</param>
    public static DryingCourses Of(Func<MaterialDoubt, BuiltSheets> sheets, IReadOnlyList<double[]> starts, DryingAir air, IReadOnlyList<double> days, Action<double> told, CancellationToken stop)
    {
        var courses = new DryingCourses(days);
        var built = Paces.Select(sheets).ToArray();
        Parallel.For(0, courses.percent.Length, new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, (k, _) =>
        {
            var own = built[k / Starts];
            var run = own.From(starts[k % Starts], air.HumidityFraction);
            var (moist, humid) = (new double[days.Count][], new double[days.Count][]);
            for (var f = 0; f < days.Count; f++)
            {
                if (f > 0) run.Advance(days[f] - days[f - 1], cancellation: stop);
                (moist[f], humid[f]) = (own.Percent(run), own.FaceHumidity(run));
            }
            (courses.percent[k], courses.humidity[k]) = (moist, humid);
            told(1.0 / courses.percent.Length);
        });
        return courses;
    }

    /// <summary>Humidity at the wetter face of every piece, frame by frame [0–1]: fast from the low start, likely from the middle, slow from the high one.</summary>
    public double[][] Humidity(int end) => humidity[(end * Starts) + end];

    /// <summary>Moisture of a piece on a frame [%].</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="cell">The piece.</param>
    /// <param name="startPercent">What it starts with [%].</param>
    /// <param name="slow">How slow, in standard deviations.</param>
    public double Percent(int frame, int cell, double startPercent, double slow)
    {
        double Start(int pace, int start) => percent[(pace * Starts) + start][0][cell];
        var (side, share) = Between(startPercent, Start(1, 0), Start(1, 1), Start(1, 2));
        var (pace, along) = Between(slow, -MaterialDoubt.End, 0, MaterialDoubt.End);
        double At(int p) => percent[(p * Starts) + side][frame][cell] + (share * (percent[(p * Starts) + side + 1][frame][cell] - percent[(p * Starts) + side][frame][cell]));
        var from = At(pace);
        return from + (along * (At(pace + 1) - from));
    }

    private static (int Side, double Share) Between(double value, double low, double middle, double high)
    {
        var side = value <= middle ? 0 : 1;
        var (from, to) = side == 0 ? (low, middle) : (middle, high);
        return (side, to - from < 1e-9 ? 0 : Math.Clamp((value - from) / (to - from), 0, 1));
    }
}
