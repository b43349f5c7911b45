using Wainwright.Fitout;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>A way of fixing that the fixer may choose, with its time and material; both common practice, no source.</summary>
/// <param name="Words">What it is, in words.</param>
/// <param name="Minutes">Time for one [min].</param>
/// <param name="Material">Material for one [money of the job].</param>
/// <param name="Like">The joint that one of it makes, without id, place and part.</param>
internal sealed record FixingKind(string Words, double Minutes, double Material, Joint Like)
{
    private const double UsualRatePerHour = 60;

    /// <summary>Machine screw M6 with a washer of 24 mm into a rivet nut in a rib, pillar, rail or bow.</summary>
    public static FixingKind InFrame(Frame frame, Direction axis) => new($"M6 bolt with a 24 mm washer into a rivet nut in {frame.Name}", 12, 2.5, Made(FixingType.RivetNut, "M6", axis) with
    {
        Into = frame.Name,
        Base = $"{frame.Name}, steel",
        BaseMm = frame.MetalMm,
        HeadMm = new Measured(24, 1),
    });

    /// <summary>Bolt M8 through the floor with a spread plate under it, by a steel angle.</summary>
    public static FixingKind ThroughFloor { get; } = new("M8 bolt 8.8 through the floor with a plate 75 × 50 × 3 mm under it, by a steel angle", 25, 7, Made(FixingType.Bolt, "M8", Direction.Down) with
    {
        Base = "steel plate under the floor",
        BaseMm = new Measured(3, 0.2),
        UnderHead = "steel angle",
        UnderHeadMm = new Measured(3, 0.2),
        HeadMm = new Measured(24, 1),
        Grade = "8.8",
    });

    /// <summary>Bolt M8 into a factory tie-down, by a steel angle: what the point itself is tested with counts.</summary>
    /// <param name="strengthN">Load that the tie-down is tested with [N].</param>
    public static FixingKind AtTieDown(double strengthN) => new("M8 bolt 8.8 into a factory tie-down, by a steel angle", 10, 5, Made(FixingType.Bolt, "M8", Direction.Down) with
    {
        Base = "factory tie-down, steel",
        RatedN = new Measured(strengthN, 0),
        Grade = "8.8",
    });

    /// <summary>Webbing over the top, ratchet or bolted, both ends in plates under the floor.</summary>
    public static FixingKind StrapOver { get; } = new("lashing strap 35 mm, marked 10 kN, over it to plates under the floor", 30, 28, Made(FixingType.Strap, "35 mm", Direction.Down) with
    {
        Base = "steel plates under the floor",
        RatedN = new Measured(20_000, 10_000),
    });

    /// <summary>One of four steel corners round a foot: it keeps from sliding, not from lifting. Those on one side carry; so each counts half of its bolt.</summary>
    public static FixingKind FootCorner { get; } = new("steel corner round its foot, M8 bolt 8.8 through the floor with a plate under it", 15, 6, Made(FixingType.Pin, "M8", Direction.Down) with
    {
        Base = "steel plate under the floor",
        RatedN = new Measured(4_000, 1_000),
    });

    /// <summary>Price of one in hundredths of the job's money.</summary>
    public long Cents(Job job) => (long)Math.Round(100 * ((double)(job.RatePerHour ?? (decimal)UsualRatePerHour) * Minutes / 60 + Material));

    private static Joint Made(FixingType type, string size, Direction axis) => new()
    {
        Id = new("planned"),
        Part = new("planned"),
        Type = type,
        Size = size,
        Drive = Drive.HexHead,
        Count = 1,
        Axis = axis,
        State = FixingState.Sound,
        Release = new() { Way = ReleaseWay.Unscrew, From = axis.Opposite() },
        Known = Known.Measured,
        Note = "planned; to be put in and looked at",
    };
}
