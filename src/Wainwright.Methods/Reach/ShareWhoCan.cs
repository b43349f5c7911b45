namespace Wainwright.Methods.Reach;

/// <summary>Which share of people gets through an opening and, with what is left of the arm, to a depth behind it.</summary>
/// <remarks>
/// P(size ≤ opening − allowance and reach ≥ depth), bivariate normal with the survey's means, spreads and correlation. The size
/// of a limb is its circumference over π; to a whole-millimetre breadth half a millimetre is added. Big people are stopped by
/// the opening, small people by the depth.
/// </remarks>
public static class ShareWhoCan
{
    /// <summary>Bivariate normal over ANSUR II.</summary>
    public static readonly Basis Basis = new(
        Source: "bivariate normal law over the measures of ANSUR II (US Army 2012, public data)",
        Assumes: ["bare skin: put clothing into the allowance", "a round opening for a limb", "elbow or shoulder at the opening"],
        Caution: "Counted in the survey itself the shares lie within 2.5 points of these. Whether strength and sight suffice there is another question.",
        How: Provenance.OwnRule);

    /// <summary>How far a person goes in.</summary>
    public enum Limb
    {
        /// <summary>Hand and forearm, the elbow at the opening; depth to the finger tip.</summary>
        ToTheElbow,

        /// <summary>The whole arm, tensed, the shoulder at the opening; depth to the tip of the thumb, measured from the wall behind the back.</summary>
        ToTheShoulder,
    }

    /// <param name="Whose">Women or men.</param>
    /// <param name="In">How far in.</param>
    /// <param name="OpeningMm">Diameter of the opening [mm], above 0.</param>
    /// <param name="DepthMm">From the opening to what is to be reached [mm], 0 or more.</param>
    /// <param name="AllowanceMm">For clothing and movement [mm], 0 or more; 20 for an arm in work clothes (from memory).</param>
    public sealed record Input(BodyMeasures.People Whose, Limb In, double OpeningMm, double DepthMm, double AllowanceMm = 0);

    /// <param name="Share">Share who can [0–1].</param>
    /// <param name="ShareThrough">Share who get through the opening, whatever the depth [0–1].</param>
    /// <param name="ShareLongEnough">Share whose arm is long enough, whatever the opening [0–1].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Share, double ShareThrough, double ShareLongEnough, IReadOnlyList<string> OutsideRange);

    /// <summary>Through a round opening and to a depth.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input way)
    {
        var (around, reach) = way.In == Limb.ToTheElbow
            ? (BodyMeasures.Measure.ForearmCircumference, BodyMeasures.Measure.ElbowToFingertip)
            : (BodyMeasures.Measure.UpperArmCircumference, BodyMeasures.Measure.ThumbTipReach);
        var (size, length) = (BodyMeasures.Find(way.Whose, around), BodyMeasures.Find(way.Whose, reach));
        var z = ((Math.PI * (Must.BePositive(way.OpeningMm) - Must.NotBeNegative(way.AllowanceMm))) - size.Mean) / size.Deviation;
        var from = (Must.NotBeNegative(way.DepthMm) - length.Mean) / length.Deviation;
        var correlation = BodyMeasures.Correlation(way.Whose, around, reach)!.Value;
        return new(Normal.UpToAndFrom(z, from, correlation), Normal.Share(z), 1 - Normal.Share(from), []);
    }

    /// <summary>Share of those whose size lies between two percentiles and whose reach is at least a percentile [0–1].</summary>
    /// <param name="whose">Women or men.</param>
    /// <param name="limb">How far in; decides which correlation counts.</param>
    /// <param name="sizeFrom">Least size, in standard deviations from the mean.</param>
    /// <param name="sizeTo">Largest size, in standard deviations from the mean, not below the least.</param>
    /// <param name="reachFrom">Least reach, in standard deviations from the mean.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Between(BodyMeasures.People whose, Limb limb, double sizeFrom, double sizeTo, double reachFrom)
    {
        Must.BeWithin(sizeTo, sizeFrom, double.MaxValue);
        var correlation = limb == Limb.ToTheElbow
            ? BodyMeasures.Correlation(whose, BodyMeasures.Measure.ForearmCircumference, BodyMeasures.Measure.ElbowToFingertip)!.Value
            : BodyMeasures.Correlation(whose, BodyMeasures.Measure.UpperArmCircumference, BodyMeasures.Measure.ThumbTipReach)!.Value;
        return Normal.UpToAndFrom(sizeTo, reachFrom, correlation) - Normal.UpToAndFrom(sizeFrom, reachFrom, correlation);
    }

    /// <summary>Share whose whole body passes a slot: shoulders along it, chest across it [0–1].</summary>
    /// <param name="whose">Women or men.</param>
    /// <param name="widthMm">Long side of the slot [mm], above 0.</param>
    /// <param name="heightMm">Short side of the slot [mm], above 0.</param>
    /// <param name="allowanceMm">For clothing and movement, on each [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfBodies(BodyMeasures.People whose, double widthMm, double heightMm, double allowanceMm = 0)
    {
        const double HalfStep = 0.5; // the survey is in whole millimetres
        var (across, deep) = (BodyMeasures.Find(whose, BodyMeasures.Measure.ShoulderBreadth), BodyMeasures.Find(whose, BodyMeasures.Measure.ChestDepth));
        var z = (Must.BePositive(widthMm) - Must.NotBeNegative(allowanceMm) + HalfStep - across.Mean) / across.Deviation;
        var chest = (Must.BePositive(heightMm) - allowanceMm + HalfStep - deep.Mean) / deep.Deviation;
        var correlation = BodyMeasures.Correlation(whose, BodyMeasures.Measure.ShoulderBreadth, BodyMeasures.Measure.ChestDepth)!.Value;
        // not above both: the second turned round
        return Normal.UpToAndFrom(z, -chest, -correlation);
    }
}
