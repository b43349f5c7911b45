namespace Wainwright.Methods.Weight;

/// <summary>How loads across the vehicle share themselves between its left and its right wheels.</summary>
/// <remarks>For a load m at y right of the middle, track T:  right = m·(1/2 + y/T),  left = m·(1/2 − y/T).</remarks>
public static class SideMoments
{
    /// <summary>Moments about the line of the left wheels.</summary>
    public static readonly Basis Basis = new(
        Source: "Moment balance across one axle, as set out in truck makers' body-builder manuals",
        Assumes: ["the vehicle stands level", "one track width serves both axles"],
        Caution: "Springs and tyres of unequal stiffness shift it: a wheel-by-wheel weighing decides.",
        How: Provenance.Quoted);

    /// <summary>One truck maker's rule: left and right may differ by this part of the axle load [-].</summary>
    public const double OneMakersLimitFraction = 0.03;

    /// <summary>A load at a place across the vehicle.</summary>
    /// <param name="MassKg">Mass [kg]; negative for something taken out.</param>
    /// <param name="RightOfMiddleMm">Distance of its centre right of the middle line [mm]; negative to the left.</param>
    public readonly record struct Load(double MassKg, double RightOfMiddleMm);

    /// <param name="TrackMm">Distance between the wheel middles of an axle [mm], above 0.</param>
    /// <param name="Loads">What the wheels carry.</param>
    public sealed record Input(double TrackMm, IReadOnlyList<Load> Loads);

    /// <param name="LeftKg">Load on the left wheels [kg].</param>
    /// <param name="RightKg">Load on the right wheels [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double LeftKg, double RightKg, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Right less left over both [-]: positive leans right. NaN when nothing weighs anything.</summary>
        public double LeanFraction => (RightKg - LeftKg) / (RightKg + LeftKg);
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or the track is not above 0.</exception>
    public static Result Of(Input across)
    {
        double left = 0, right = 0;
        var track = Must.BePositive(across.TrackMm);
        foreach (var load in across.Loads)
        {
            var share = 0.5 + (Must.BeFinite(load.RightOfMiddleMm) / track);
            right += Must.BeFinite(load.MassKg) * share;
            left += load.MassKg * (1 - share);
        }
        return new(left, right, left < 0 || right < 0 ? ["one side would lift: the balance no longer holds"] : []);
    }
}
