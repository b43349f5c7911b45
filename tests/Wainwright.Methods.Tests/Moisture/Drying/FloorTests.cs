using CsCheck;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Drying;
using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Tests.Moisture.Drying;

/// <summary>Laws of a floor as built: nothing lost, nothing out of order, covered stays wet.</summary>
public sealed class FloorTests
{
    const double Vinyl = 100e9;

    static readonly SheetMaterial Ply = SheetMaterial.Panel("plywood", 500, 20, 0.9, 200, 20, 1e-10, 2e-9);
    static readonly SheetMaterial Foam = SheetMaterial.Inert("foam", 30, 1, 100);

    static BuildUp Floor(int slices = 4) => new("floor", [new(Ply, 12, 20, slices), new(Foam, 25, 20, 2)]);

    static SheetNet Net(int columns, int rows, Func<int, int, bool> covered) =>
        SheetNet.Flat(columns, rows, 50, Floor(), (c, r) => SheetFace.ToAir(20, 0.5, covered(c, r) ? Vinyl : 0), SheetFace.Sealed);

    [Fact]
    public void Covered_it_is_still_wet_after_ninety_days_where_the_open_part_is_dry()
    {
        // common practice, no source
        var run = new DryingRun(Net(12, 4, (c, _) => c < 6), 0.5);
        for (var cell = 0; cell < 48; cell++) run.Wet(cell, 0, 26);
        run.Pass(90);
        Assert.InRange(run.MoisturePercent(1, 0), 20, 26);
        Assert.InRange(run.MoisturePercent(10, 0), 5, 12);
    }

    [Fact]
    public void Lifting_the_finish_dries_it()
    {
        var covered = new DryingRun(Net(4, 2, (_, _) => true), 0.5);
        for (var cell = 0; cell < 8; cell++) covered.Wet(cell, 0, 26);
        covered.Pass(30);
        var before = covered.MoisturePercent(3, 0);
        var lifted = covered.Under(Net(4, 2, (_, _) => false));
        Assert.Equal(before, lifted.MoisturePercent(3, 0), tolerance: 1e-12);
        lifted.Pass(45);
        Assert.InRange(before, 23, 26);
        Assert.InRange(lifted.MoisturePercent(3, 0), 5, 14);
        Assert.Equal(75, lifted.Days, tolerance: 1e-9);
    }

    [Fact]
    public void No_gram_is_lost_whatever_happens() =>
        Gen.Select(Gen.Int[1, 1_000_000], Gen.Int[2, 7], Gen.Int[1, 5]).Sample((seed, columns, rows) =>
        {
            var random = new Random(seed);
            var run = new DryingRun(Net(columns, rows, (c, r) => (c + r) % 2 == 0), random.NextDouble());
            var leak = new LeakSource(random.Next(columns * rows), 0, 0.02 * random.NextDouble(), 1 + random.NextDouble(), 3 + (5 * random.NextDouble()));
            run.Pass(20, [leak]);
            Assert.InRange(run.Balance.RelativeError, 0, 1e-12);
            Assert.Equal(leak.KgPerH * 24 * (leak.ToDay - leak.FromDay), run.Balance.LeakedKg, tolerance: 1e-12);
        }, iter: 30);

    [Fact]
    public void A_leak_spreads_evenly_to_both_sides()
    {
        var run = new DryingRun(Net(9, 9, (_, _) => true), 0.5);
        run.Pass(20, [new(40, 0, 0.004, 0, 20)]);
        for (var away = 1; away <= 4; away++)
        {
            var left = run.MoisturePercent(40 - away, 0);
            Assert.Equal(left, run.MoisturePercent(40 + away, 0), tolerance: 1e-6 * left);
            Assert.Equal(left, run.MoisturePercent(40 - (9 * away), 0), tolerance: 1e-6 * left);
            Assert.Equal(left, run.MoisturePercent(40 + (9 * away), 0), tolerance: 1e-6 * left);
            Assert.True(left < run.MoisturePercent(40 - away + 1, 0));
        }
    }

    [Fact]
    public void In_dry_air_no_place_grows_wetter_and_none_dries_past_the_air()
    {
        var run = new DryingRun(Net(3, 3, (_, _) => false), 0.95);
        var before = Enumerable.Range(0, 9).Select(c => run.MoisturePercent(c, 0)).ToArray();
        for (var day = 0; day < 40; day++)
        {
            run.Pass(1);
            for (var cell = 0; cell < 9; cell++)
            {
                var now = run.MoisturePercent(cell, 0);
                Assert.True(now <= before[cell] + 1e-9);
                before[cell] = now;
                Assert.All(Enumerable.Range(0, 6), slice => Assert.True(run.HumidityFraction(cell, slice) >= 0.5 - 1e-6));
            }
        }
    }

    [Fact]
    public void Wet_beyond_saturation_it_gives_off_water_at_a_steady_rate_first()
    {
        var run = new DryingRun(Net(1, 1, (_, _) => true), 0.5);
        run.Wet(0, 0, 60);
        var start = run.WaterKg;
        run.Pass(10);
        // through vinyl at saturation to 50 %: 1.01 g/m² a day, a little less for the half slice in series
        Assert.Equal(0.0025 * VapourResistance.GramPerM2Day(0.5 * SaturationPressure.Of(new(20)).PressurePa, Vinyl) * 10, 1000 * (start - run.WaterKg), tolerance: 0.001);
    }

    [Fact]
    public void The_same_run_gives_the_same_water_to_the_last_bit()
    {
        double Once()
        {
            var run = new DryingRun(Net(6, 3, (c, _) => c > 2), 0.6);
            run.Pass(15, [new(7, 0, 0.01, 0, 6)]);
            return run.WaterKg;
        }

        Assert.Equal(Once(), Once());
    }

    [Fact]
    public void In_the_long_run_the_layers_settle_as_in_a_layered_wall()
    {
        // lining, insulation, board between 20 °C 50 % and 5 °C 80 %: dry all through, straight in s_d
        SheetMaterial Made(string name, double mu) => SheetMaterial.Inert(name, 100, 2, mu);
        (string Name, double Mm, double Mu, double Thermal)[] layers = [("lining", 10, 50, 0.1), ("insulation", 40, 20, 0.8), ("board", 12, 30, 0.1)];
        double inside = 0.5 * SaturationPressure.Of(new(20)).PressurePa, outside = 0.8 * SaturationPressure.Of(new(5)).PressurePa;
        var total = 0.17 + layers.Sum(l => l.Thermal);
        double thermal = 0.13;
        List<SheetLayer> sheet = [];
        foreach (var (name, mm, mu, own) in layers)
        {
            sheet.Add(new(Made(name, mu), mm, 20 - (15 * (thermal + (own / 2)) / total)));
            thermal += own;
        }
        var run = new DryingRun(SheetNet.Flat(1, 1, 1000, new("wall", sheet), (_, _) => new(1e3, inside), new(1e3, outside)), 0.5);
        run.Pass(400);

        var wall = LayeredWall.Of(new([.. layers.Select(l => new LayeredWall.Layer(l.Name, l.Thermal, VapourResistance.AirLayerM(l.Mu, l.Mm)))], 20, 0.5, 5, 0.8));
        Assert.All(wall.Planes, p => Assert.Equal(0, p.CondensesGramPerM2Day));
        for (var layer = 0; layer < 3; layer++)
        {
            // the middle of a layer, between the planes of its faces; δ rises 7 % from 5 to 20 °C, which Glaser leaves out
            var middle = (wall.Planes.Last(p => p.After == (layer == 0 ? "" : layers[layer - 1].Name)).VapourPa, wall.Planes.Last(p => p.After == layers[layer].Name).VapourPa);
            Assert.InRange(run.VapourPa(0, layer), (middle.Item1 + middle.Item2) / 2 * 0.985, (middle.Item1 + middle.Item2) / 2 * 1.015);
        }
    }

    [Fact]
    public void Behind_a_lining_water_falls_out_on_the_metal_as_in_a_layered_wall()
    {
        // insulation at 10 °C, a thin cold layer at 0 °C on sealed metal
        var run = new DryingRun(SheetNet.Flat(1, 1, 1000, new("wall", [new(SheetMaterial.Inert("wool", 30, 0.05, 2), 40, 10, 4), new(SheetMaterial.Inert("skin", 30, 0.01, 1), 0.1, 0)]),
            (_, _) => new(1e8, 0.6 * SaturationPressure.Of(new(18)).PressurePa), SheetFace.Sealed), 0.3);
        run.Pass(10);
        var before = run.WaterKg;
        run.Pass(10);
        var permeability = VapourResistance.AirPermeability(10);
        var flow = (0.6 * SaturationPressure.Of(new(18)).PressurePa - SaturationPressure.Of(new(0)).PressurePa) / (1e8 + (0.04 * 2 / permeability));
        Assert.Equal(flow * 10 * 86_400, run.WaterKg - before, tolerance: 0.01 * flow * 10 * 86_400);
        Assert.Equal(1, run.HumidityFraction(0, 4));
    }

    [Fact]
    public void Cells_with_fewer_slices_may_stand_beside_cells_with_more()
    {
        var net = new SheetNet([Floor(), new("bare", [new(Ply, 9, 20, 2)])], [SheetFace.ToAir(20, 0.5), SheetFace.Sealed],
            [new(2500, 0, 0, 1), new(2500, 1, 0, 1)], [new(0, 1, 0.5)]);
        var run = new DryingRun(net, 0.9);
        run.Pass(60, [new(1, 0, 0.001, 0, 1)]);
        Assert.InRange(run.Balance.RelativeError, 0, 1e-12);
        Assert.InRange(run.MoisturePercent(1, 0), 5, 14);
        Assert.Throws<ArgumentException>(() => run.MoisturePercent(1, 1));
    }

    [Fact]
    public void A_sealed_hollow_is_a_sealed_face_and_an_aired_one_is_not()
    {
        Assert.Equal(SheetFace.Sealed, SheetFace.ToCavity(20, 0.5, 0));
        // one cubic metre an hour carries off p/(461.5 T)
        Assert.Equal(461.5 * 293.15 * 3600 + SheetFace.StillAir, SheetFace.ToCavity(20, 0.5, 1).Resistance, tolerance: 1);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new DryingRun(new([Floor()], [SheetFace.Sealed], [new(100, 0, 0, 1)], []), 0.5));
        Assert.Throws<ArgumentException>(() => new DryingRun(new([new("x", [new(SheetMaterial.Inert("x", 30, -1, 5), 10, 20)])], [SheetFace.Sealed], [new(100, 0, 0, 0)], []), 0.5));
        var run = new DryingRun(Net(1, 1, (_, _) => true), 0.5);
        Assert.Throws<ArgumentException>(() => run.Pass(1, [new(3, 0, 1, 0, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => run.Pass(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => run.Wet(0, 0, 900));
    }
}
