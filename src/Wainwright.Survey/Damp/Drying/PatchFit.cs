using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>How well courses fit the readings of a patch, when nobody knows beforehand how well a course can fit at all.</summary>
internal sealed class PatchFit(DampPatch patch, double dryPercent)
{
    // a course may tell so much better or worse than taken, one figure for all readings of a patch; each with its chance. Own rules
    private static readonly (double Scale, double Before)[] Scales = [(0.7, 0.3), (1, 0.4), (1.4, 0.2), (2, 0.1)];

    private readonly MeterReading.Bound[] bounds = [.. patch.Readings.Select(r => r.Made.Bound)];

    /// <summary>How far a course is off at each reading, in standard deviations: positive when it is wetter, bounds not looked at.</summary>
    /// <param name="course">The course.</param>
    public double[] Offs(WaterCourse course) => [.. patch.Readings.Select((r, i) => PatchWeighing.Off(r, course.AtReadings[i], dryPercent))];

    /// <summary>How far off in the mean of its readings, in standard deviations: the root of the mean square, 0 where a bound is met.</summary>
    /// <param name="course">The course.</param>
    public double MeanOff(WaterCourse course) => Math.Sqrt(Offs(course).Select((z, r) => Met(r, z) ? 0 : z * z).Average());

    /// <summary>Logarithm of how likely the readings are, over all scales; a bound counts as a bound.</summary>
    /// <param name="offs">How far off at each reading [standard deviations].</param>
    /// <param name="variance">Variance of what is not known of that; null when it is computed.</param>
    public double LogLikelihood(double[] offs, double[]? variance = null)
    {
        Span<double> logs = stackalloc double[Scales.Length];
        var most = double.NegativeInfinity;
        for (var s = 0; s < Scales.Length; s++)
        {
            var (scale, before) = Scales[s];
            double squares = 0, heights = 1, sum = Math.Log(before);
            for (var r = 0; r < offs.Length; r++)
            {
                var wide = (scale * scale) + (variance is null ? 0 : variance[r]);
                if (bounds[r] == MeterReading.Bound.About)
                {
                    squares += offs[r] * offs[r] / wide;
                    heights *= wide;
                }
                else sum += LogBelow((bounds[r] == MeterReading.Bound.AtLeast ? offs[r] : -offs[r]) / Math.Sqrt(wide));
                if (heights is > 1e100 or < 1e-100) (sum, heights) = (sum - (0.5 * Math.Log(heights)), 1);
            }
            logs[s] = sum - (0.5 * (squares + Math.Log(heights)));
            most = Math.Max(most, logs[s]);
        }
        double all = 0;
        foreach (var log in logs) all += Math.Exp(log - most);
        return most + Math.Log(all);
    }

    /// <summary>How far the mean of the wet readings may be off, on the logarithm: one standard deviation, each reading off by itself.</summary>
    /// <param name="meanOff">How far off in the mean of all readings [standard deviations]; better than taken is not believed.</param>
    public double LogSpreadOfWetMean(double meanOff) =>
        PatchWeighing.CourseFactor * Math.Max(1, meanOff) / Math.Sqrt(Math.Max(1, patch.Readings.Count(r => r.Made.Percent > dryPercent + DampPatch.WetPoints)));

    private bool Met(int reading, double off) => bounds[reading] switch
    {
        MeterReading.Bound.AtLeast => off > 0,
        MeterReading.Bound.AtMost => off < 0,
        _ => false,
    };

    // the bell curve's share below, near enough by the logistic curve
    private static double LogBelow(double z) => z < -20 ? 1.702 * z : -Math.Log(1 + Math.Exp(-1.702 * z));
}
