namespace Wainwright.Methods.Retention;

/// <summary>What a group of like bolts carries at its ultimate under a load that misses its centre: the instantaneous centre of rotation.</summary>
/// <remarks>R = Rult (1 − e^(−10 Δ))^0.55 with Δ = 0.34 in × d/dmax; the centre is sought where forces and moments balance, after Brandt.</remarks>
public static class InstantaneousCentre
{
    /// <summary>Crawford and Kulak's curve, Brandt's search.</summary>
    public static readonly Basis Basis = new(
        Source: "Crawford, Kulak (1971), load and deformation of bolts; AISC Steel Construction Manual part 7; Brandt (1982), centre by iteration",
        Assumes: ["bolts in bearing, all alike", "the plate is rigid", "the farthest bolt is at its ultimate"],
        Caution: "The curve is that of high-strength bolts in steel plates; wood screws and thin sheet do not follow it. Ultimate, no margin.",
        How: Provenance.Quoted);

    private const double UltimateSlipIn = 0.34;
    private const int MostSteps = 20_000;

    /// <param name="Places">Places of the bolts [mm], two or more that differ.</param>
    /// <param name="LoadX">Direction of the load, with <paramref name="LoadY"/>; any length above 0.</param>
    /// <param name="LoadY">Direction of the load.</param>
    /// <param name="AtXMm">A point on the line of the load [mm].</param>
    /// <param name="AtYMm">A point on the line of the load [mm].</param>
    public sealed record Input(IReadOnlyList<(double XMm, double YMm)> Places, double LoadX, double LoadY, double AtXMm, double AtYMm);

    /// <param name="Coefficient">Load over the ultimate of one bolt [-].</param>
    /// <param name="CentreXMm">Instantaneous centre [mm]; not a number when the load goes through the middle.</param>
    /// <param name="CentreYMm">Instantaneous centre [mm].</param>
    public sealed record Result(double Coefficient, double CentreXMm, double CentreYMm);

    /// <exception cref="ArgumentException">Fewer than two places.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the load has no direction.</exception>
    /// <exception cref="InvalidOperationException">The search did not settle.</exception>
    public static Result Of(Input group)
    {
        if (group.Places.Distinct().Count() < 2) throw new ArgumentException("a group that turns has two places at least", nameof(group));
        var size = Must.BePositive(Math.Sqrt(group.LoadX * group.LoadX + group.LoadY * group.LoadY));
        var (px, py, n) = (group.LoadX / size, group.LoadY / size, group.Places.Count);
        var (gx, gy) = (group.Places.Average(p => Must.BeFinite(p.XMm)), group.Places.Average(p => Must.BeFinite(p.YMm)));
        var squares = group.Places.Sum(p => (p.XMm - gx) * (p.XMm - gx) + (p.YMm - gy) * (p.YMm - gy));
        var moment = (Must.BeFinite(group.AtXMm) - gx) * py - (Must.BeFinite(group.AtYMm) - gy) * px;
        if (Math.Abs(moment) < 1e-9 * Math.Sqrt(squares)) return new(n * Share(1), double.NaN, double.NaN);
        var (x, y) = (gx - py * squares / (n * moment), gy + px * squares / (n * moment));
        for (var step = 0; step < MostSteps; step++)
        {
            var farthest = group.Places.Max(p => Math.Sqrt((p.XMm - x) * (p.XMm - x) + (p.YMm - y) * (p.YMm - y)));
            var (fx, fy, resisted) = (0.0, 0.0, 0.0);
            foreach (var (atX, atY) in group.Places)
            {
                var (dx, dy) = (atX - x, atY - y);
                var far = Math.Sqrt(dx * dx + dy * dy);
                if (far == 0) continue;
                var force = Share(far / farthest);
                (fx, fy, resisted) = (fx - force * dy / far, fy + force * dx / far, resisted + force * far);
            }
            var arm = (group.AtXMm - x) * py - (group.AtYMm - y) * px;
            var load = resisted / Math.Abs(arm);
            var turn = Math.Sign(arm);
            // what the plate does to the bolts must be the load
            var (offX, offY) = (turn * fx - load * px, turn * fy - load * py);
            if (Math.Sqrt(offX * offX + offY * offY) < 1e-10 * load) return new(load, x, y);
            var by = 0.5 * turn * squares / (n * resisted);
            (x, y) = (x + offY * by, y - offX * by);
        }
        throw new InvalidOperationException($"no instantaneous centre found in {MostSteps} steps");
    }

    private static double Share(double far) => Math.Pow(1 - Math.Exp(-10 * UltimateSlipIn * far), 0.55);
}
