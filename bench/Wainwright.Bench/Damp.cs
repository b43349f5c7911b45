using System.Diagnostics;
using System.Globalization;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Drying;
using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Bench;

/// <summary>Wetting and drying of a floor of 4 × 2 m with walls of 400 mm round it, eight slices; and the straight part of it beside a general sparse solver.</summary>
static class Damp
{
    const double LengthMm = 4000, WidthMm = 2000, WallMm = 400, LeakKgPerH = 0.004, LeakDays = 30, Days = 180;

    /// <param name="edgeMm">Edge of a cell [mm].</param>
    /// <returns>1 when the other solver was there and its answer differs.</returns>
    public static int Run(double edgeMm)
    {
        var net = Floor(edgeMm);
        var at = ((int)(WidthMm / edgeMm) / 4 * (int)(LengthMm / edgeMm)) + ((int)(LengthMm / edgeMm) / 4);
        DryingRun Season(double tolerance)
        {
            var run = new DryingRun(net, 0.5, new(tolerance));
            run.Advance(LeakDays, [new(at, 2, LeakKgPerH, 0, LeakDays)]);
            run.Advance(Days - LeakDays);
            return run;
        }

        List<(DryingRun Run, Spent Spent)> laps = [.. Enumerable.Range(0, 4).Select(_ => Spent.On(() => Season(new StepControl().Tolerance)))];
        var (season, spent) = laps.Skip(1).OrderBy(l => l.Spent.CpuS).ElementAt(1);
        var fine = Season(new StepControl().Tolerance / 10);
        Console.WriteLine(FormattableString.Invariant(
            $"{net.Cells.Count} cells of {edgeMm} mm, 8 slices, 180 days: {spent.CpuS:0.00} s cpu, {spent.WallS:0.00} s by the clock; {season.Steps} steps, {season.Rounds} rounds; promised 2 s: {(spent.CpuS <= 2 ? "kept" : "NOT KEPT")}"));
        Console.WriteLine(FormattableString.Invariant(
            $"water unaccounted for {season.Balance.RelativeError:0e0} of all; at the leak {season.MoisturePercent(at, 2):0.0} %, with steps of a tenth of the error {fine.MoisturePercent(at, 2):0.0} %; most that a cell's plywood differs {Enumerable.Range(0, net.Cells.Count).Where(c => net.Cells[c].BuildUp == 0).Max(c => Math.Abs(season.MoisturePercent(c, 2) - fine.MoisturePercent(c, 2))):0.0} points; water in all {season.WaterKg:0.000} and {fine.WaterKg:0.000} kg"));
        double movedGB = season.MovedBytes / 1e9, memory = Bandwidth.GBPerS();
        Console.WriteLine(FormattableString.Invariant(
            $"{movedGB:0} GB moved, {movedGB / spent.CpuS:0} GB/s of cpu; memory by a plain triad on one processor in the same run {memory:0} GB/s of cpu: {movedGB / spent.CpuS / memory:0.0} times"));
        return Beside(edgeMm);
    }

    static SheetNet Floor(double edgeMm)
    {
        var ply = SheetMaterial.Panel("plywood", 500, 20, 0.9, 200, 20, 1e-10, 2e-8);
        var lining = SheetMaterial.Panel("lining", 500, 20, 0.9, 200, 20, 1e-10, 2e-8);
        var foam = SheetMaterial.Inert("foam", 30, 1, 100);
        return With(edgeMm,
            new("floor", [new(SheetMaterial.Inert("vinyl", 1300, 2, 9000), 2, 20), new(SheetMaterial.Inert("adhesive", 1000, 10, 100), 0.5, 20), new(ply, 12, 20, 4), new(foam, 25, 18, 2)]),
            new("wall", [new(lining, 4, 20, 4), new(foam, 30, 16, 4)]));
    }

    static SheetNet With(double edgeMm, BuildUp floor, BuildUp wall)
    {
        int columns = (int)(LengthMm / edgeMm), rows = (int)(WidthMm / edgeMm), high = (int)(WallMm / edgeMm);
        List<SheetCell> cells = [];
        List<SheetLink> links = [];
        for (var row = 0; row < rows; row++)
            for (var column = 0; column < columns; column++)
            {
                if (column > 0) links.Add(new(cells.Count - 1, cells.Count, 1));
                if (row > 0) links.Add(new(cells.Count - columns, cells.Count, 1));
                cells.Add(new(edgeMm * edgeMm, 0, column < columns / 2 && row < rows / 3 ? 2 : 0, 1));
            }
        List<int> rim =
        [
            .. Enumerable.Range(0, columns), .. Enumerable.Range(0, rows).Select(r => (r * columns) + columns - 1),
            .. Enumerable.Range(0, columns).Select(c => (rows * columns) - 1 - c), .. Enumerable.Range(0, rows).Select(r => (rows - 1 - r) * columns),
        ];
        for (var up = 0; up < high; up++)
            for (var k = 0; k < rim.Count; k++)
            {
                if (k > 0) links.Add(new(cells.Count - 1, cells.Count, 1));
                links.Add(up > 0 ? new(cells.Count - rim.Count, cells.Count, 1) : new(rim[k], cells.Count, 0.2));
                cells.Add(new(edgeMm * edgeMm, 1, 0, 1));
            }
        return new([floor, wall], [SheetFace.ToAir(20, 0.55), SheetFace.Sealed, SheetFace.ToCavity(20, 0.55, 1)], cells, links);
    }

    /// <summary>The same floor with straight curves and steady resistances, where a general solver needs one matrix; the numbers are made here anew, not taken from the run.</summary>
    static int Beside(double edgeMm)
    {
        const int Steps = 90;
        const double StepDays = 1;
        // layer by layer: thickness [mm], water at saturation [kg/m³], μ
        (double Mm, double Full, double Mu)[] layers = [(2, 2, 9000), (0.5, 10, 100), (3, 125, 60), (3, 125, 60), (3, 125, 60), (3, 125, 60), (12.5, 1, 100), (12.5, 1, 100)];
        BuildUp same = new("sheet", [.. layers.Select((l, i) => new SheetLayer(SheetMaterial.Inert(FormattableString.Invariant($"layer {i}"), 500, l.Full, l.Mu), l.Mm, 20))]);
        var net = With(edgeMm, same, same);
        double saturation = SaturationPressure.Of(new(20)).PressurePa, delta = VapourResistance.AirPermeability(20);

        var (run, spent) = Spent.On(() =>
        {
            var drying = new DryingRun(net, 0.5, new(FixedDays: StepDays));
            drying.Wet(
                from cell in Enumerable.Range(0, net.Cells.Count)
                where cell % 7 == 0
                from layer in Enumerable.Range(2, 4)
                select (cell, layer, 100 * 0.95 * layers[layer].Full / 500));
            drying.Advance(Steps * StepDays);
            return drying;
        });

        using var other = Started();
        if (other is null) return 0;
        var n = layers.Length;
        double[] half = [.. layers.Select(l => l.Mm / 2000 * l.Mu / delta)];
        var write = other.StandardInput;
        write.WriteLine(FormattableString.Invariant($"{Steps} {StepDays * 86_400} {net.Cells.Count * n}"));
        for (var cell = 0; cell < net.Cells.Count; cell++)
            for (var k = 0; k < n; k++)
            {
                var face = net.Faces[net.Cells[cell].Top];
                var area = net.Cells[cell].AreaMm2 / 1e6;
                var outward = k == 0 ? area / (half[0] + face.Resistance) : 0;
                var start = (cell % 7 == 0 && k is >= 2 and < 6 ? 0.95 : 0.5) * saturation;
                write.WriteLine(FormattableString.Invariant($"{area * layers[k].Mm / 1000 * layers[k].Full / saturation:R} {outward:R} {face.VapourPa:R} {start:R}"));
            }
        for (var cell = 0; cell < net.Cells.Count; cell++)
            for (var k = 0; k < n - 1; k++)
                write.WriteLine(FormattableString.Invariant($"{(cell * n) + k} {(cell * n) + k + 1} {net.Cells[cell].AreaMm2 / 1e6 / (half[k] + half[k + 1]):R}"));
        foreach (var link in net.Links)
            for (var k = 0; k < n; k++)
                write.WriteLine(FormattableString.Invariant($"{(link.A * n) + k} {(link.B * n) + k} {link.Conductance * delta / layers[k].Mu * layers[k].Mm / 1000:R}"));
        write.Close();
        var otherS = double.Parse(other.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture);
        double most = 0;
        for (var cell = 0; cell < net.Cells.Count; cell++)
            for (var k = 0; k < n; k++)
                most = Math.Max(most, Math.Abs(run.HumidityFraction(cell, k) - (double.Parse(other.StandardOutput.ReadLine()!, CultureInfo.InvariantCulture) / saturation)));
        other.WaitForExit();
        Console.WriteLine(FormattableString.Invariant(
            $"straight curves, {Steps} equal steps: {spent.CpuS:0.00} s cpu, sparse LU of scipy {otherS:0.00} s: {otherS / spent.CpuS:0.0} times; humidities differ by {100 * most:0.000} points at most"));
        return most < 0.002 ? 0 : 1;
    }

    static Process? Started()
    {
        // the system's own python has the system's packages, whatever comes first on the path
        foreach (var python in new[] { "python3", "/usr/bin/python3" })
            try
            {
                using var asked = Process.Start(python, ["-c", "import importlib.util, sys; sys.exit(importlib.util.find_spec('scipy') is None)"]);
                asked.WaitForExit();
                if (asked.ExitCode == 0) return Process.Start(new ProcessStartInfo(python, [Path.Combine("bench", "damp-scipy.py")]) { RedirectStandardInput = true, RedirectStandardOutput = true });
            }
            catch (System.ComponentModel.Win32Exception)
            {
                Console.WriteLine($"no {python} here");
            }
        Console.WriteLine("no python3 with scipy here: nothing to compare with");
        return null;
    }
}
