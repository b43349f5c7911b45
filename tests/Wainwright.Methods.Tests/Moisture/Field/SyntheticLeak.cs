using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>An invented leak whose truth the map does not share: cells a quarter as wide, wet board drinking faster than dry, uneven board, seams that let through more or less, one or two drips with a preferred way.</summary>
sealed class SyntheticLeak
{
    public const int Across = 20, Along = 16, Finer = 4;

    const int Fx = Across * Finer, Fy = Along * Finer;

    readonly Random chance;

    int found;

    public SyntheticLeak(int start)
    {
        chance = new(start);
        Dry = 10.5 + (3 * chance.NextDouble());
        var fine = Wick();
        Truth = new double[Across * Along];
        for (var y = 0; y < Fy; y++)
            for (var x = 0; x < Fx; x++) Truth[(y / Finer * Across) + (x / Finer)] += (Dry + fine[x, y]) / (Finer * Finer);
    }

    /// <summary>The dry board [%].</summary>
    public double Dry { get; }

    /// <summary>Mean moisture of each cell of the map [%].</summary>
    public double[] Truth { get; }

    /// <summary>A reading there with a meter that stops at 28 %.</summary>
    public FieldObservation Read(int cell)
    {
        var shown = Math.Max(7, Truth[cell] + Normal());
        return shown > MeterReading.HighestPercent ? new(cell, MeterReading.HighestPercent, 1, MeterReading.Bound.AtLeast) : new(cell, shown, 1);
    }

    /// <summary>Cells as a builder would prick them: some anywhere, some round the wettest place he has seen.</summary>
    public IReadOnlyList<FieldObservation> Pricked(int anywhere, int round)
    {
        // one drip was found: the first reading is near it
        List<FieldObservation> seen = [Read(Near(found, 2))];
        for (var i = 1; i < anywhere; i++) seen.Add(Read(chance.Next(Truth.Length)));
        for (var i = 0; i < round; i++) seen.Add(Read(Near(seen.MaxBy(s => s.Percent).Cell, 4)));
        return seen;
    }

    int Near(int cell, int by)
    {
        var x = Math.Clamp((cell % Across) + chance.Next(-by, by + 1), 0, Across - 1);
        var y = Math.Clamp((cell / Across) + chance.Next(-by, by + 1), 0, Along - 1);
        return (y * Across) + x;
    }

    public int AnyCell() => chance.Next(Truth.Length);

    double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    /// <summary>Water over dry board after a while: explicit steps of a diffusion that speeds up with wetness, a hundredfold at saturation.</summary>
    double[,] Wick()
    {
        var wet = new double[Fx, Fy];
        var board = new double[Fx, Fy];
        for (var y = 0; y < Fy; y++)
            for (var x = 0; x < Fx; x++) board[x, y] = Math.Exp(0.3 * Normal());
        var (seamX, seamY) = (chance.Next(8, Fx - 8), chance.Next(8, Fy - 8));
        double throughX = 0.6 * chance.NextDouble(), throughY = 0.6 * chance.NextDouble(), lengthwise = 0.4 + (0.6 * chance.NextDouble());
        var drips = Enumerable.Range(0, chance.Next(1, 3)).Select(_ => (X: chance.Next(Fx), Y: chance.Next(Fy), Reach: chance.Next(1, 6))).ToArray();
        found = (drips[0].Y / Finer * Across) + (drips[0].X / Finer);
        var steps = chance.Next(300, 1500);
        for (var s = 0; s < steps; s++)
        {
            foreach (var d in drips)
                for (var y = Math.Max(0, d.Y - d.Reach); y <= Math.Min(Fy - 1, d.Y + d.Reach); y++)
                    for (var x = Math.Max(0, d.X - d.Reach); x <= Math.Min(Fx - 1, d.X + d.Reach); x++) wet[x, y] = 28;
            var next = (double[,])wet.Clone();
            for (var y = 0; y < Fy; y++)
                for (var x = 0; x < Fx; x++)
                {
                    if (x + 1 < Fx) Flow(wet, next, board, x, y, x + 1, y, lengthwise * (x == seamX ? throughX : 1));
                    if (y + 1 < Fy) Flow(wet, next, board, x, y, x, y + 1, y == seamY ? throughY : 1);
                }
            wet = next;
        }
        return wet;
    }

    static void Flow(double[,] wet, double[,] next, double[,] board, int x, int y, int u, int v, double through)
    {
        var mean = (wet[x, y] + wet[u, v]) / 2;
        // what is less than a thousandth of a point does not walk
        if (mean < 1e-3) return;
        var flow = 0.2 * Math.Min(1, Math.Exp(4.6 * ((mean / 28) - 1)) + 0.01) * through * Math.Sqrt(board[x, y] * board[u, v]) * (wet[x, y] - wet[u, v]);
        // no cell hands on more than a fifth of what it has
        flow = Math.Clamp(flow, -0.2 * wet[u, v], 0.2 * wet[x, y]);
        next[x, y] -= flow;
        next[u, v] += flow;
    }
}
