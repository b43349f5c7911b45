namespace Wainwright.Methods.Reach;

/// <summary>Measures of the body: mean, spread and percentiles of a large public survey.</summary>
/// <remarks>1 986 women and 4 082 men of the US Army, 2012, lightly dressed. Share not above a limit: Φ((limit − mean)/sd).</remarks>
public static class BodyMeasures
{
    /// <summary>ANSUR II.</summary>
    public static readonly Basis Basis = new(
        Source: "ANSUR II, anthropometric survey of US Army personnel, Natick 2012, public data; mean, sd and percentiles worked out from the data",
        Assumes: ["bare skin", "each measure follows the normal law"],
        Caution: "Soldiers are fitter and younger than most people: enter your own measures where it is close. Clothing comes on top.",
        How: Provenance.Read);

    /// <summary>Whose measures.</summary>
    public enum People
    {
        /// <summary>The women of the survey.</summary>
        Women,

        /// <summary>The men of the survey.</summary>
        Men,
    }

    /// <summary>What is measured; all in mm.</summary>
    public enum Measure
    {
        /// <summary>Stature.</summary>
        Stature,

        /// <summary>Height of the shoulder (acromion), standing.</summary>
        ShoulderHeight,

        /// <summary>Breadth of the hand at the knuckles, without the thumb.</summary>
        HandBreadth,

        /// <summary>Length of the hand.</summary>
        HandLength,

        /// <summary>Length of the palm.</summary>
        PalmLength,

        /// <summary>Circumference of the hand without the thumb.</summary>
        HandCircumference,

        /// <summary>Circumference of the forearm, flexed.</summary>
        ForearmCircumference,

        /// <summary>Circumference of the upper arm, flexed.</summary>
        UpperArmCircumference,

        /// <summary>From the elbow to the finger tip.</summary>
        ElbowToFingertip,

        /// <summary>From the elbow to the centre of the grip.</summary>
        ElbowToGrip,

        /// <summary>From the wall behind the back to the tip of the thumb.</summary>
        ThumbTipReach,

        /// <summary>From the seat to the finger tip overhead.</summary>
        OverheadReachSitting,

        /// <summary>Shoulders at their widest.</summary>
        ShoulderBreadth,

        /// <summary>Elbows at their widest.</summary>
        ElbowBreadth,

        /// <summary>Depth of the chest.</summary>
        ChestDepth,

        /// <summary>Depth of the waist.</summary>
        WaistDepth,

        /// <summary>Breadth of the hips.</summary>
        HipBreadth,

        /// <summary>From the buttock to the knee, sitting.</summary>
        ButtockToKnee,

        /// <summary>Height of the knee, sitting.</summary>
        KneeHeight,

        /// <summary>Height sitting.</summary>
        SittingHeight,

        /// <summary>Breadth of the head.</summary>
        HeadBreadth,

        /// <summary>Length of the head.</summary>
        HeadLength,
    }

    /// <param name="P5">5th percentile [mm].</param>
    /// <param name="P50">Median [mm].</param>
    /// <param name="P95">95th percentile [mm].</param>
    /// <param name="Mean">Mean [mm].</param>
    /// <param name="Deviation">Standard deviation [mm].</param>
    /// <param name="P99">99th percentile [mm], for men; absent where it was not worked out. Circumferences lean to the right: the normal law falls short there.</param>
    public readonly record struct Row(double P5, double P50, double P95, double Mean, double Deviation, double? P99 = null)
    {
        /// <summary>Share whose measure is not above a limit [0–1], by the normal law.</summary>
        /// <param name="limitMm">Limit [mm].</param>
        public double ShareUpTo(double limitMm) => Normal.Share((Must.BeFinite(limitMm) - Mean) / Deviation);

        /// <summary>The measure at a percentile [mm], by the normal law.</summary>
        /// <param name="share">Share not above it, more than 0 and less than 1.</param>
        public double At(double share) => Mean + (Normal.Quantile(share) * Deviation);
    }

    static readonly Dictionary<Measure, (Row Women, Row Men)> Table = new()
    {
        [Measure.Stature] = (new(1525, 1626, 1740, 1628.5, 64.2), new(1648, 1755, 1870, 1756.2, 68.6, 1927)),
        [Measure.ShoulderHeight] = (new(1242, 1332, 1434, 1335.1, 58.1), new(1339, 1439, 1546, 1440.7, 63.3, 1596)),
        [Measure.HandBreadth] = (new(72, 78, 85, 78.2, 3.8), new(81, 88, 96, 88.3, 4.4, 99)),
        [Measure.HandLength] = (new(165, 180, 199, 181.1, 10.1), new(177, 193, 210, 193.3, 9.9, 218)),
        [Measure.PalmLength] = (new(100, 108, 119, 108.7, 5.9), new(107, 116, 127, 116.5, 6.2, 133)),
        [Measure.HandCircumference] = (new(173, 187, 202, 186.6, 8.8), new(195, 212, 230, 212.3, 10.2, 237)),
        [Measure.ForearmCircumference] = (new(235, 263, 296, 264.1, 18.5), new(275, 310, 348, 310.1, 22.0, 365)),
        [Measure.UpperArmCircumference] = (new(259, 304, 360, 305.6, 30.8), new(303, 357, 418, 358.1, 34.6, 448)),
        [Measure.ElbowToFingertip] = (new(404, 438, 480, 439.9, 23.4), new(444, 480, 520, 480.2, 23.3, 540)),
        [Measure.ElbowToGrip] = (new(290, 316, 350, 317.7, 18.0), new(320, 348, 379, 349.0, 18.0, 395)),
        [Measure.ThumbTipReach] = (new(674, 742, 816, 744.0, 42.8), new(742, 811, 886, 811.9, 43.7, 922)),
        [Measure.OverheadReachSitting] = (new(1207, 1309, 1413, 1309.7, 62.4), new(1316, 1426, 1540, 1426.7, 67.7, 1587)),
        [Measure.ShoulderBreadth] = (new(406, 450, 499, 450.3, 28.7), new(459, 509, 567, 510.4, 32.5, 593)),
        [Measure.ElbowBreadth] = (new(432, 492, 564, 494.8, 41.0), new(497, 579, 667, 579.9, 50.9, 700)),
        [Measure.ChestDepth] = (new(205, 245, 296, 247.4, 27.3), new(211, 253, 298, 253.8, 26.2, 316)),
        [Measure.WaistDepth] = (new(169, 209, 271, 213.0, 31.4), new(188, 234, 300, 237.8, 34.7, 329)),
        [Measure.HipBreadth] = (new(311, 353, 400, 353.8, 26.7), new(308, 344, 387, 345.7, 24.2, 408)),
        [Measure.ButtockToKnee] = (new(541, 589, 646, 590.6, 32.6), new(569, 617, 669, 618.0, 30.6, 692)),
        [Measure.KneeHeight] = (new(469, 510, 557, 511.3, 27.1), new(509, 553, 602, 554.2, 27.9, 624)),
        [Measure.SittingHeight] = (new(803, 857, 912, 856.6, 33.1), new(860, 918, 977, 918.3, 35.7, 1001)),
        [Measure.HeadBreadth] = (new(140, 147, 156, 147.8, 5.2), new(146, 154, 163, 154.3, 5.5, 168)),
        [Measure.HeadLength] = (new(178, 190, 202, 189.8, 7.4), new(188, 200, 211, 199.5, 7.0, 215)),
    };

    /// <summary>One row of the table.</summary>
    /// <param name="whose">Whose.</param>
    /// <param name="measure">What.</param>
    public static Row Find(People whose, Measure measure) => whose == People.Women ? Table[measure].Women : Table[measure].Men;

    /// <summary>Diameter of a round limb [mm].</summary>
    /// <param name="circumferenceMm">Circumference [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The circumference is not above 0.</exception>
    public static double DiameterMm(double circumferenceMm) => Must.BePositive(circumferenceMm) / Math.PI;

    static readonly Dictionary<(Measure, Measure), (double Women, double Men)> Correlations = new()
    {
        [(Measure.ForearmCircumference, Measure.ElbowToFingertip)] = (0.407, 0.366),
        [(Measure.UpperArmCircumference, Measure.ThumbTipReach)] = (0.314, 0.291),
        [(Measure.HandBreadth, Measure.HandLength)] = (0.570, 0.582),
        [(Measure.ShoulderBreadth, Measure.ChestDepth)] = (0.749, 0.768),
    };

    /// <summary>Correlation of two measures [-]; null for a pair that was not worked out.</summary>
    /// <param name="whose">Whose.</param>
    /// <param name="one">One measure.</param>
    /// <param name="other">The other.</param>
    public static double? Correlation(People whose, Measure one, Measure other) =>
        Correlations.TryGetValue((one, other), out var pair) || Correlations.TryGetValue((other, one), out pair)
            ? whose == People.Women ? pair.Women : pair.Men
            : null;
}
