namespace Wainwright.Methods.Weight;

/// <summary>How loads along the vehicle share themselves between a front and a rear axle.</summary>
/// <remarks>
/// For a load m at x behind the front axle, wheelbase b:  rear = m·x/b,  front = m·(1 − x/b).
/// Behind the rear axle (x &gt; b) the front share is negative: the load lifts the front axle.
/// </remarks>
public static class AxleMoments
{
    /// <summary>Moments about the front axle.</summary>
    public static readonly Basis Basis = new(
        Source: "Moment balance of a beam on two supports, as set out in truck makers' body-builder manuals",
        Assumes: ["the vehicle stands level", "two axles, or axle groups taken at their middle"],
        Caution: "A computed axle load is no weigh ticket: weigh each axle as loaded before relying on a small margin.",
        How: Provenance.Quoted);

    /// <summary>A load at a place along the vehicle.</summary>
    /// <param name="MassKg">Mass [kg]; negative for something taken out.</param>
    /// <param name="BehindFrontAxleMm">Distance of its centre behind the front axle [mm]; negative in front of it.</param>
    public readonly record struct Load(double MassKg, double BehindFrontAxleMm);

    /// <param name="WheelbaseMm">Distance between the axles [mm], above 0.</param>
    /// <param name="FrontAxleKg">Front axle load before the added loads [kg].</param>
    /// <param name="RearAxleKg">Rear axle load before the added loads [kg].</param>
    /// <param name="Added">What is put in or taken out.</param>
    public sealed record Input(double WheelbaseMm, double FrontAxleKg, double RearAxleKg, IReadOnlyList<Load> Added);

    /// <param name="FrontAxleKg">Front axle load [kg].</param>
    /// <param name="RearAxleKg">Rear axle load [kg].</param>
    /// <param name="CentreBehindFrontAxleMm">Centre of mass behind the front axle [mm]; NaN when nothing weighs anything.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double FrontAxleKg, double RearAxleKg, double CentreBehindFrontAxleMm, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Both axles together [kg].</summary>
        public double TotalKg => FrontAxleKg + RearAxleKg;
    }

    /// <summary>Part of a load that the front axle carries [-]; below 0 behind the rear axle, above 1 in front of the front axle.</summary>
    public static double FrontShare(double wheelbaseMm, double behindFrontAxleMm) =>
        1 - (Must.BeFinite(behindFrontAxleMm) / Must.BePositive(wheelbaseMm));

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, the wheelbase is not above 0, or an axle load is negative.</exception>
    public static Result Of(Input van)
    {
        double front = Must.NotBeNegative(van.FrontAxleKg), rear = Must.NotBeNegative(van.RearAxleKg);
        foreach (var load in van.Added)
        {
            var share = FrontShare(van.WheelbaseMm, load.BehindFrontAxleMm);
            front += Must.BeFinite(load.MassKg) * share;
            rear += load.MassKg * (1 - share);
        }
        List<string> outside = [];
        if (front < 0) outside.Add("the front axle would lift: the balance no longer holds");
        if (rear < 0) outside.Add("the rear axle would lift: the balance no longer holds");
        return new(front, rear, rear * Must.BePositive(van.WheelbaseMm) / (front + rear), outside);
    }
}
