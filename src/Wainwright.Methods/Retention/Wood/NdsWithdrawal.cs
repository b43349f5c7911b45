namespace Wainwright.Methods.Retention;

/// <summary>Working value of a screw or nail pulled straight out of wood.</summary>
/// <remarks>
/// Per inch of penetration, pounds: lag screw 1800·G^1.5·D^0.75, wood screw 2850·G²·D, smooth nail 1380·G^2.5·D.
/// End grain: lag screw three quarters; wood screw and nail none. Toe-nailed: 0.67.
/// An allowable value for ten years of load: the mean breaking load is about five times it (see <see cref="WoodHandbookWithdrawal"/>).
/// </remarks>
public static class NdsWithdrawal
{
    /// <summary>Withdrawal of the American wood design specification.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, equations 12.2-1 to 12.2-3 and table 12.2A (NDS 2005: table 11.2A); nails and screws as quoted by reference pages",
        Assumes: ["sound dry wood, hole bored as the document says", "thread or shank length without the tapered tip", "side grain unless said", "the head does not pull through and the steel does not part: checked apart"],
        Caution: "A working value for buildings, not a breaking load. From plywood the equation was measured to promise too much. Aged, damp, split or hand-driven screws in a van have no published value.",
        How: Provenance.Quoted);

    const double EndGrainLag = 0.75, ToeNail = 0.67;

    /// <param name="Fixing">What it is.</param>
    /// <param name="SpecificGravity">Oven-dry specific gravity of the wood [-], above 0; tabled from 0.31 to 0.73.</param>
    /// <param name="DiameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="PenetrationMm">Thread (nail: shank) in the holding wood without the tip [mm], 0 or more.</param>
    public sealed record Input(WoodFixing Fixing, double SpecificGravity, double DiameterMm, double PenetrationMm)
    {
        /// <summary>Driven along the grain, into the end of a board.</summary>
        public bool IsInEndGrain { get; init; }

        /// <summary>Driven slantwise through the edge of the held piece.</summary>
        public bool IsToeNailed { get; init; }

        /// <summary>Factor for the length of the load [-]: <see cref="LoadDuration"/>; 1 for ten years.</summary>
        public double DurationFactor { get; init; } = 1;

        /// <summary>Factor for wood wetted or dried since [-]: <see cref="WetWood"/>; 1 for dry throughout.</summary>
        public double WetFactor { get; init; } = 1;
    }

    /// <param name="AllowableNPerMm">Reference value for each millimetre of penetration, without factors [N/mm].</param>
    /// <param name="AllowableN">Working value with all factors [N].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double AllowableNPerMm, double AllowableN, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or not above 0 where it must be.</exception>
    public static Result Of(Input pulled)
    {
        double g = Must.BePositive(pulled.SpecificGravity), d = Must.BePositive(pulled.DiameterMm) / UsUnits.MmPerIn;
        var lbPerIn = pulled.Fixing switch
        {
            WoodFixing.LagScrew => 1800 * Math.Pow(g, 1.5) * Math.Pow(d, 0.75),
            WoodFixing.SmoothNail => 1380 * Math.Pow(g, 2.5) * d,
            _ => 2850 * g * g * d,
        };
        List<string> outside = [];
        if (g is < 0.31 or > 0.73) outside.Add("specific gravity outside 0.31 to 0.73, the table's ends");
        var grain = 1.0;
        if (pulled.IsInEndGrain)
        {
            grain = pulled.Fixing == WoodFixing.LagScrew ? EndGrainLag : 0;
            if (grain == 0) outside.Add("screws and nails have no withdrawal value in end grain");
        }
        var perMm = lbPerIn * UsUnits.NPerMmPerLbPerIn;
        var factors = grain * (pulled.IsToeNailed ? ToeNail : 1) * Must.BePositive(pulled.DurationFactor) * Must.NotBeNegative(pulled.WetFactor);
        return new(perMm, perMm * Must.NotBeNegative(pulled.PenetrationMm) * factors, outside);
    }
}
