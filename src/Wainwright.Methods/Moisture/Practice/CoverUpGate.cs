namespace Wainwright.Methods.Moisture.Practice;

/// <summary>Whether a place may be covered again: target met, close to its dry reference, and flat over two days with the heat off.</summary>
/// <remarks>
/// Rule: within the last <see cref="Rule.WindowHours"/> there is a reading at both ends or more of them, every one of them is at or below the target and within the reference's
/// points, none is "at least", and highest less lowest is no more than <see cref="Rule.FlatPoints"/>. Heat off, wood temperature noted, long pins to the core.
/// </remarks>
public static class CoverUpGate
{
    /// <summary>Restoration practice, with numbers of our own where it gives none.</summary>
    public static readonly Basis Basis = new(
        Source: "Dry standard and goal: IICRC S500 as quoted by an adjuster's article; two visits a day apart with heat off: from memory; 48 h, 1 point flat and 3 points from the reference: common practice, no source",
        Assumes: ["the reference is the same material where no water came", "the same points read again, corrected for temperature"],
        Caution: "The face dries first: a pin that only scratches it says dry too soon. Dry is not clean: growth and smell are judged apart.",
        How: Provenance.CommonPractice);

    /// <summary>What must hold.</summary>
    /// <param name="TargetPercent">Target [% of dry mass].</param>
    /// <param name="ReferencePoints">Most above the dry reference [points].</param>
    /// <param name="WindowHours">How long it must have stayed there [h].</param>
    /// <param name="FlatPoints">Most between highest and lowest in that time [points].</param>
    public sealed record Rule(double TargetPercent = 15, double ReferencePoints = 3, double WindowHours = 48, double FlatPoints = 1);

    /// <param name="AtHours">When [h], any start.</param>
    /// <param name="Percent">Moisture, corrected [% of dry mass].</param>
    /// <param name="Bound">Value or limit.</param>
    /// <param name="HeatOff">No heater or blower has warmed the place for the last hours; null when not noted.</param>
    /// <param name="TemperatureTaken">The wood's temperature is noted.</param>
    /// <param name="CoreReached">Long pins reached the middle; null when not noted.</param>
    public sealed record Visit(double AtHours, double Percent, MeterReading.Bound Bound, bool? HeatOff, bool TemperatureTaken, bool? CoreReached);

    /// <summary>Verdict on one place.</summary>
    public enum Verdict
    {
        /// <summary>May be covered.</summary>
        Open,

        /// <summary>Too wet, or still moving.</summary>
        Shut,

        /// <summary>Something was not measured.</summary>
        CannotTell,
    }

    /// <param name="Verdict">What it comes to.</param>
    /// <param name="TargetMet">Last reading at or below target and close to its reference; null when there is none.</param>
    /// <param name="ChangePoints">Highest less lowest in the window [points]; null with fewer than two readings.</param>
    /// <param name="SpanHours">Time between first and last reading of the window [h].</param>
    /// <param name="Missing">What to measure or note.</param>
    public sealed record Result(Verdict Verdict, bool? TargetMet, double? ChangePoints, double SpanHours, IReadOnlyList<string> Missing);

    /// <summary>Judges one place.</summary>
    /// <param name="visits">Readings of one point, in any order.</param>
    /// <param name="referencePercent">Reading of the same material where no water came [%]; null when nobody took it.</param>
    /// <param name="rule">What must hold.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or a limit of the rule is negative.</exception>
    public static Result Of(IReadOnlyList<Visit> visits, double? referencePercent, Rule rule)
    {
        Must.NotBeNegative(rule.TargetPercent);
        Must.NotBeNegative(rule.ReferencePoints);
        Must.BePositive(rule.WindowHours);
        Must.NotBeNegative(rule.FlatPoints);
        foreach (var v in visits)
        {
            Must.BeFinite(v.AtHours);
            Must.NotBeNegative(v.Percent);
        }
        if (visits.Count == 0) return new(Verdict.CannotTell, null, null, 0, ["a reading"]);

        var byTime = visits.OrderBy(v => v.AtHours).ToList();
        var last = byTime[^1];
        // the window opens with the latest visit that lies at least its length before the last one
        var opens = byTime.FindLastIndex(v => v.AtHours <= last.AtHours - rule.WindowHours);
        var window = byTime[Math.Max(opens, 0)..];
        var limit = referencePercent is { } dry ? Math.Min(rule.TargetPercent, Must.NotBeNegative(dry) + rule.ReferencePoints) : rule.TargetPercent;
        bool Met(Visit v) => v.Bound != MeterReading.Bound.AtLeast && v.Percent <= limit;
        double? change = window.Count > 1 ? window.Max(v => v.Percent) - window.Min(v => v.Percent) : null;
        var span = last.AtHours - window[0].AtHours;

        if (!window.TrueForAll(Met) || change > rule.FlatPoints) return new(Verdict.Shut, Met(last), change, span, []);
        List<string> missing = [];
        if (opens < 0) missing.Add(FormattableString.Invariant($"a reading {rule.WindowHours:0} h or more before the last, or one later"));
        if (referencePercent is null) missing.Add("a dry reference of the same material where no water came");
        if (window.Exists(v => v.HeatOff is null)) missing.Add("whether heat was off before each reading");
        if (window.Exists(v => v.HeatOff is false)) missing.Add("readings with the heat off");
        if (window.Exists(v => !v.TemperatureTaken)) missing.Add("temperature of the wood at each reading");
        if (last.CoreReached is not true) missing.Add("a reading with long pins in the core");
        return new(missing.Count > 0 ? Verdict.CannotTell : Verdict.Open, Met(last), change, span, missing);
    }
}
