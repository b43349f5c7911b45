using System.Diagnostics;
using System.Globalization;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Bench;

/// <summary>The damp field beside simple kriging by gstat on the same flat sheet: far over the dry board both are the same mathematics, but for the rim and, where cells are fine, the patches.</summary>
static class FieldRival
{
    // a sheet that is wet all over, where the ramp is a straight line
    const double Course = 40, Size = 4, RangeMm = 1000, Sigma = 1;

    // what the field adds to each reading for how uneven a dry board may be, nothing telling it [points²]
    const double Uneven = 1.27 / 4.5;

    /// <param name="net">The sheet.</param>
    /// <param name="readings">Number of readings, each on a cell of its own.</param>
    /// <param name="mostOfSize">What the means may part by away from the rim, as a share of the field's size.</param>
    /// <returns>1 when gstat was there and they part by more.</returns>
    public static int Run(SurfaceNet net, int readings, double mostOfSize)
    {
        var chance = new Random(2);
        FieldObservation[] seen = [.. Enumerable.Range(0, net.Cells.Count).OrderBy(_ => chance.Next()).Take(readings).Select(c => new FieldObservation(c, Course + (5 * Math.Sin(net.Cells[c].XMm / 700) * Math.Cos(net.Cells[c].YMm / 900)) + chance.NextDouble() - 0.5, Sigma))];
        FieldPriors priors = new()
        {
            RangesMm = [RangeMm], RangeWeights = [1], Spreads = [Size], SpreadWeights = [1], Levels = [2], LevelWeights = [1],
            DrySigmaPoints = 1e-4, TrendPercent = [.. net.Cells.Select(_ => Course)],
        };
        (double Mean, double Spread)[] Map()
        {
            var map = DampField.Fit(net, seen, priors);
            return [.. Enumerable.Range(0, net.Cells.Count).Select(c => (map.MeanPercent(c), Math.Sqrt((map.SpreadOfPoints(c) * map.SpreadOfPoints(c)) - Uneven)))];
        }
        List<((double Mean, double Spread)[] Map, Spent Spent)> laps = [.. Enumerable.Range(0, 4).Select(_ => Spent.On(Map))];
        var (ours, spent) = laps.Skip(1).OrderBy(l => l.Spent.CpuS).ElementAt(1);
        using var other = Started();
        if (other is null) return 0;
        var write = other.StandardInput;
        write.WriteLine(FormattableString.Invariant($"{Course} {Size * Size} {RangeMm / 4} {(Sigma * Sigma) + Uneven:R} {readings} {net.Cells.Count}"));
        foreach (var s in seen) write.WriteLine(FormattableString.Invariant($"{net.Cells[s.Cell].XMm} {net.Cells[s.Cell].YMm} {s.Percent:R}"));
        foreach (var c in net.Cells) write.WriteLine(FormattableString.Invariant($"{c.XMm} {c.YMm} 0"));
        write.Close();
        var otherS = double.Parse(other.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
        (double Mean, double Spread)[] theirs = [.. net.Cells.Select(_ => other.StandardOutput.ReadLine()!.Split(' ')).Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), Math.Sqrt(double.Parse(p[1], CultureInfo.InvariantCulture))))];
        other.WaitForExit();
        var (width, height) = (net.Cells.Max(c => c.XMm), net.Cells.Max(c => c.YMm));
        bool Inside(int c) => Math.Min(Math.Min(net.Cells[c].XMm, width - net.Cells[c].XMm), Math.Min(net.Cells[c].YMm, height - net.Cells[c].YMm)) > RangeMm;
        double Apart(Func<int, bool> where, Func<int, double> of) => Enumerable.Range(0, net.Cells.Count).Where(where).Select(of).DefaultIfEmpty().Max();
        double Mean(int c) => Math.Abs(ours[c].Mean - theirs[c].Mean);
        double Spread(int c) => Math.Abs(ours[c].Spread - theirs[c].Spread);
        var inside = Apart(Inside, Mean);
        Console.WriteLine(FormattableString.Invariant(
            $"one combination, {readings} plain readings on {net.Cells.Count} cells of {Math.Sqrt(net.Cells[0].AreaMm2):0} mm: {spent.CpuS:0.00} s cpu, gstat {otherS:0.00} s: {otherS / spent.CpuS:0.0} times"));
        Console.WriteLine(FormattableString.Invariant(
            $"of a field of {Size} points, more than a range from the rim means part by {inside:0.000} at most and spreads by {Apart(Inside, Spread):0.000}; rim and corners too {Apart(_ => true, Mean):0.000} and {Apart(_ => true, Spread):0.000}; root mean square of all {Math.Sqrt(Enumerable.Range(0, net.Cells.Count).Average(c => Mean(c) * Mean(c))):0.000}"));
        return inside < mostOfSize * Size ? 0 : 1;
    }

    static Process? Started()
    {
        try
        {
            using var asked = Process.Start(new ProcessStartInfo("Rscript", ["-e", "quit(status = if (requireNamespace('gstat', quietly = TRUE)) 0 else 1)"]));
            asked!.WaitForExit();
            if (asked.ExitCode == 0) return Process.Start(new ProcessStartInfo("Rscript", [Path.Combine("bench", "field-gstat.R")]) { RedirectStandardInput = true, RedirectStandardOutput = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Console.WriteLine("no Rscript here");
        }
        Console.WriteLine("no R with gstat here (r-cran-gstat): nothing to compare with");
        return null;
    }
}
