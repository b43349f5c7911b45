using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Drying;
using Wainwright.Survey.Damp;

namespace Wainwright.Survey.Tests.Damp.Drying;

/// <summary>A floor that got wet in a known way: cells of 50 mm, its own figures, read at fourteen points with a meter's error. Nothing of it is taken from the code that explains it.</summary>
sealed class TwinFloor
{
    const double EdgeMm = 50, Dry = 0.5;

    const int Columns = 32, Rows = 24;

    static readonly (double X, double Y)[] Places = [(100, 100), (400, 150), (700, 100), (1100, 150), (1500, 100), (250, 450), (600, 500), (900, 450), (1300, 500), (100, 800), (500, 850), (800, 800), (1200, 900), (1500, 1100)];

    readonly double[] percent;

    public TwinFloor(int seed)
    {
        var chance = new Random(seed);
        double Log(double low, double high) => low * Math.Pow(high / low, chance.NextDouble());
        (SinceDays, Litres) = (Log(10, 200), Log(0.3, 4));
        (LeakX, LeakY) = (500 + (600 * chance.NextDouble()), 400 + (400 * chance.NextDouble()));
        IsVinyl = chance.NextDouble() < 0.5;
        var ply = SheetMaterial.Panel("ply", 680, 19, 0.85 + (0.1 * chance.NextDouble()), Log(200, 600), Log(25, 80), Log(3e-11, 2e-10), Log(4e-9, 8e-8));
        var air = SheetFace.ToAir(19, Dry, IsVinyl ? Log(50e9, 300e9) : 0);
        var run = new DryingRun(SheetNet.Flat(Columns, Rows, EdgeMm, new("floor", [new(ply, 12, 19, 4)]), (_, _) => air, SheetFace.Sealed), Dry);
        var wide = Log(60, 300);
        List<(int Cell, double Share)> shares = [];
        for (var c = 0; c < Columns * Rows; c++)
        {
            var d = Math.Sqrt(Math.Pow(X(c) - LeakX, 2) + Math.Pow(Y(c) - LeakY, 2)) / wide;
            if (d < 2) shares.Add((c, Math.Exp(-0.5 * d * d)));
        }
        var sum = shares.Sum(s => s.Share);
        var start = run.WaterKg;
        run.Advance(SinceDays, [.. shares.Select(s => new LeakSource(s.Cell, 0, Litres / SinceDays / 24 * s.Share / sum, 0, SinceDays))]);
        LitresHeld = run.WaterKg - start;
        percent = [.. Enumerable.Range(0, Columns * Rows).Select(c => run.MoisturePercent(c, 0))];
        Noise = [.. Places.Select(_ => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble()))];
    }

    public double SinceDays { get; }

    public double Litres { get; }

    public double LitresHeld { get; }

    public double LeakX { get; }

    public double LeakY { get; }

    public bool IsVinyl { get; }

    double[] Noise { get; }

    static double X(int cell) => ((cell % Columns) + 0.5) * EdgeMm;

    static double Y(int cell) => ((cell / Columns) + 0.5) * EdgeMm;

    /// <summary>The floor as a job with a tray over the leak that a finding calls cracked.</summary>
    /// <param name="hidden">Points that nobody read.</param>
    public Job Job(params IReadOnlyList<int> hidden)
    {
        Part floor = new Part { Id = new("S1"), Name = "subfloor", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "birch ply", ThicknessMm = 12 }] }
            .At(0, 0, 0, Columns * EdgeMm, Rows * EdgeMm, 12);
        Part vinyl = new Part { Id = new("V1"), Name = "vinyl", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "vinyl", ThicknessMm = 2 }] }
            .At(0, 0, 12, Columns * EdgeMm, Rows * EdgeMm, 2);
        // outside the room: it casts no shadow on the floor and only says where
        Part trap = new Part { Id = new("T1"), Name = "shower trap", System = PartSystem.Waste, Known = Known.Seen, Outside = true }.At(400, 300, 20, 800, 600, 40);
        var points = Places.Select((p, i) => new ReadingPoint { Id = new($"P{i + 1:00}"), At = new(p.X, p.Y, 12), Where = "floor", Part = floor.Id, Material = "birch ply" }).ToList();
        return A.Van(IsVinyl ? [floor, vinyl, trap] : [floor, trap]) with
        {
            Points = points,
            Findings = [new() { Id = new("F1"), What = "The trap leaks.", Faults = ["waste-03"], Parts = [trap.Id], Known = Known.Measured }],
            Readings = [.. points.Select((p, i) => (p, i)).Where(p => !hidden.Contains(p.i)).Select(p => new Reading
            {
                Id = new($"{p.p.Id}-d0"), Quantity = Quantity.Moisture, Value = Math.Round(Math.Max(5, Read(p.i)), 1), Unit = "%", Point = p.p.Id, TakenAt = WetFloor.Day,
                TakenBy = "fitter 1", Instrument = "pin meter, corrected", AirC = 19, AirRhPercent = 100 * Dry,
            })],
        };
    }

    public DampMap Map(params IReadOnlyList<int> hidden) => DampMapping.Of(Job(hidden), cellMm: 100)!;

    /// <summary>What the meter shows at a point [%].</summary>
    public double Read(int point) => Truth(point) + Noise[point];

    /// <summary>What the board holds at a point [%].</summary>
    public double Truth(int point)
    {
        var (x, y) = Places[point];
        return percent[((int)(y / EdgeMm) * Columns) + (int)(x / EdgeMm)];
    }
}
