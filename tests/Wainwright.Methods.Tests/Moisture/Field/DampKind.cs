using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>How a board came to be damp, or not.</summary>
enum DampCause
{
    /// <summary>No water came.</summary>
    None,

    /// <summary>Even dampness, all over or from one edge on.</summary>
    Condensation,

    /// <summary>One or two stains of a smooth shape that follows no law.</summary>
    Stain,

    /// <summary>Drips into board that drinks alike wet or dry.</summary>
    Linear,

    /// <summary>Drips into board that drinks some ten times faster wet.</summary>
    Mild,

    /// <summary>Drips into board that drinks some two hundred times faster wet.</summary>
    Steep,

    /// <summary>The same for a short while only.</summary>
    Small,
}

/// <summary>An invented board of 2 × 1.6 m in cells of 100 mm, dampened on cells of 25 mm.</summary>
sealed class DampKind
{
    public const int Across = 20, Along = 16;

    const int Finer = 4, Fx = Across * Finer, Fy = Along * Finer;

    readonly Random chance;
    int found;

    public DampKind(int start, DampCause cause)
    {
        chance = new(start);
        var dry = 9.5 + (5 * chance.NextDouble());
        found = chance.Next(Across * Along);
        var fine = cause switch
        {
            DampCause.None => new double[Fx, Fy],
            DampCause.Condensation => Condensed(),
            DampCause.Stain => Stained(),
            DampCause.Linear => Dripped(0, 0.35),
            DampCause.Mild => Dripped(2 + (2 * chance.NextDouble()), 0.6),
            DampCause.Steep => Dripped(4 + (2.5 * chance.NextDouble()), 1),
            _ => Dripped(4.6, 0.12),
        };
        // the dry board is not quite even
        double uneven = 0.35 * chance.NextDouble(), slope = 0.5 * (chance.NextDouble() - 0.5);
        Truth = new double[Across * Along];
        for (var y = 0; y < Fy; y++)
            for (var x = 0; x < Fx; x++) Truth[(y / Finer * Across) + (x / Finer)] += (dry + fine[x, y]) / (Finer * Finer);
        for (var i = 0; i < Truth.Length; i++) Truth[i] += (uneven * Normal()) + (slope * (((double)(i % Across) / Across) - 0.5));
    }

    /// <summary>Mean moisture of each cell [%].</summary>
    public double[] Truth { get; }

    /// <summary>Readings as a builder takes them: the first near what was found, some anywhere, some round the wettest place so far.</summary>
    public IReadOnlyList<FieldObservation> Pricked(int anywhere, int round)
    {
        List<FieldObservation> seen = [Read(Near(found, 2))];
        for (var i = 1; i < anywhere; i++) seen.Add(Read(chance.Next(Truth.Length)));
        for (var i = 0; i < round; i++) seen.Add(Read(Near(seen.MaxBy(s => s.Percent).Cell, 4)));
        return seen;
    }

    FieldObservation Read(int cell)
    {
        var shown = Math.Max(7, Truth[cell] + Normal());
        return shown > MeterReading.HighestPercent ? new(cell, MeterReading.HighestPercent, 1, MeterReading.Bound.AtLeast) : new(cell, shown, 1);
    }

    int Near(int cell, int by) => (Math.Clamp((cell / Across) + chance.Next(-by, by + 1), 0, Along - 1) * Across) + Math.Clamp((cell % Across) + chance.Next(-by, by + 1), 0, Across - 1);

    double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    double[,] Condensed()
    {
        double most = 2 + (7 * chance.NextDouble()), reach = 0.3 + (3 * chance.NextDouble()), turn = 2 * Math.PI * chance.NextDouble();
        var side = chance.Next(3);
        return Each((x, y) => most * Math.Exp(-(side == 0 ? (double)x / Fx : side == 1 ? (double)y / Fy : 0.2) / reach) * (1 + (0.2 * Math.Sin(turn + (x / 17.0)) * Math.Cos(turn + (y / 13.0)))));
    }

    double[,] Stained()
    {
        var wet = new double[Fx, Fy];
        for (var stains = chance.Next(1, 3); stains > 0; stains--)
        {
            var (cx, cy) = (chance.Next(Fx), chance.Next(Fy));
            found = (cy / Finer * Across) + (cx / Finer);
            double most = 6 + (24 * chance.NextDouble()), wide = 4 + (16 * chance.NextDouble()), longer = 0.6 + (0.8 * chance.NextDouble()), edge = 1 + (3 * chance.NextDouble());
            var before = wet;
            wet = Each((x, y) => Math.Max(before[x, y], most * Math.Exp(-Math.Pow(Math.Sqrt(((x - cx) * (x - cx) * longer) + ((y - cy) * (y - cy) / longer)) / wide, edge))));
        }
        return wet;
    }

    static double[,] Each(Func<int, int, double> of)
    {
        var all = new double[Fx, Fy];
        for (var y = 0; y < Fy; y++)
            for (var x = 0; x < Fx; x++) all[x, y] = of(x, y);
        return all;
    }

    /// <summary>Explicit steps of a diffusion that speeds up with wetness; in some the drip stops half way.</summary>
    double[,] Dripped(double faster, double longer)
    {
        var wet = new double[Fx, Fy];
        var board = Each((_, _) => Math.Exp(0.3 * Normal()));
        var (seamX, seamY) = (chance.Next(8, Fx - 8), chance.Next(8, Fy - 8));
        double throughX = chance.NextDouble(), throughY = chance.NextDouble(), lengthwise = Math.Min(1, 0.4 + (1.1 * chance.NextDouble())), full = 16 + (20 * chance.NextDouble());
        var drips = Enumerable.Range(0, chance.Next(1, 3)).Select(_ => (X: chance.Next(Fx), Y: chance.Next(Fy), Reach: chance.Next(0, 6))).ToArray();
        found = (drips[0].Y / Finer * Across) + (drips[0].X / Finer);
        var steps = (int)(longer * chance.Next(200, 1800));
        var stops = chance.NextDouble() < 0.3 ? steps / 2 : steps;
        for (var s = 0; s < steps; s++)
        {
            if (s < stops)
                foreach (var d in drips)
                    for (var y = Math.Max(0, d.Y - d.Reach); y <= Math.Min(Fy - 1, d.Y + d.Reach); y++)
                        for (var x = Math.Max(0, d.X - d.Reach); x <= Math.Min(Fx - 1, d.X + d.Reach); x++) wet[x, y] = full;
            var next = (double[,])wet.Clone();
            for (var y = 0; y < Fy; y++)
                for (var x = 0; x < Fx; x++)
                {
                    if (x + 1 < Fx) Flow(x, y, x + 1, y, lengthwise * (x == seamX ? throughX : 1));
                    if (y + 1 < Fy) Flow(x, y, x, y + 1, y == seamY ? throughY : 1);
                }
            wet = next;

            void Flow(int x, int y, int u, int v, double through)
            {
                var mean = (wet[x, y] + wet[u, v]) / 2;
                if (mean < 1e-3) return;
                var flow = 0.2 * Math.Min(1, Math.Exp(faster * ((mean / full) - 1)) + 0.01) * through * Math.Sqrt(board[x, y] * board[u, v]) * (wet[x, y] - wet[u, v]);
                flow = Math.Clamp(flow, -0.2 * wet[u, v], 0.2 * wet[x, y]);
                next[x, y] -= flow;
                next[u, v] += flow;
            }
        }
        return wet;
    }
}
