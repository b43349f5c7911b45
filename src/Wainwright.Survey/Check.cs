using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey;

/// <summary>What a check says. Unknown is never a pass.</summary>
public enum Verdict
{
    /// <summary>The claim holds, whatever the doubt.</summary>
    Holds,

    /// <summary>The claim is false, whatever the doubt.</summary>
    FallsShort,

    /// <summary>A measurement is missing or too coarse; <see cref="Check.Missing"/> names it.</summary>
    CannotTell,
}

/// <summary>What a check is about.</summary>
public enum SubjectKind
{
    /// <summary>The van as a whole.</summary>
    Van,

    /// <summary>A part.</summary>
    Part,

    /// <summary>A line.</summary>
    Line,

    /// <summary>An axle.</summary>
    Axle,
}

/// <summary>What a check is about.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Id">Its id in the job file; for an axle its name; for the van the job's id.</param>
/// <param name="Name">Its name in the workshop.</param>
public sealed record Subject(SubjectKind Kind, string Id, string Name);

/// <summary>A fact that went into a check.</summary>
/// <param name="What">What it is, in words.</param>
/// <param name="Value">Its value as written; <c>not known</c> when there is none.</param>
/// <param name="Field">Where it stands in the job file: <c>parts[A52].airHeater.startVolts</c>.</param>
/// <param name="Known">How it is known.</param>
public sealed record Given(string What, string Value, string Field, Known Known);

/// <summary>A computed judgement: a claim about the van, whether it holds, and everything needed to doubt it.</summary>
public sealed record Check
{
    /// <summary>Which check it is, the same for every van: <c>mains-outlet-near-water</c>.</summary>
    public required string Id { get; init; }

    /// <summary>A sentence that is true or false.</summary>
    public required string Claim { get; init; }

    /// <summary>What it is about.</summary>
    public required Subject Subject { get; init; }

    /// <summary>What it says.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Why, in one sentence.</summary>
    public required string Because { get; init; }

    /// <summary>What is asked for; absent where there is nothing to measure.</summary>
    public Span? Demand { get; init; }

    /// <summary>What is there to meet it; absent where there is nothing to measure.</summary>
    public Span? Capacity { get; init; }

    /// <summary>Unit of demand and capacity.</summary>
    public string? Unit { get; init; }

    /// <summary>
    /// (capacity − demand)/|demand| [-], negative when short; absent for a check of presence. A margin that spans zero
    /// is <see cref="Verdict.CannotTell"/>.
    /// </summary>
    public Span? Margin { get; init; }

    /// <summary>The rule that decided, by name and clause.</summary>
    public required string Governing { get; init; }

    /// <summary>What stands behind that rule.</summary>
    public required Basis Basis { get; init; }

    /// <summary>The facts used.</summary>
    public IReadOnlyList<Given> Inputs { get; init; } = [];

    /// <summary>What was taken for granted, the method's own assumptions first.</summary>
    public IReadOnlyList<string> Assumptions { get; init; } = [];

    /// <summary>What it does not prove.</summary>
    public string Caution => Basis.Caution;

    /// <summary>Where the rule is published.</summary>
    public string Source => Basis.Source;

    /// <summary>What mends it; absent when it holds.</summary>
    public string? Remedy { get; init; }

    /// <summary>What to look at or measure so that it can be told; empty unless it cannot be told.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The uses of the van it speaks of.</summary>
    public IReadOnlyList<Use> AppliesTo { get; init; } = [];

    /// <summary>When something has to be done if it falls short.</summary>
    public required Urgency IfShort { get; init; }

    /// <summary>Ids of the fault catalogue that it looks for.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];

    /// <summary>Whether a demand is met whatever the doubt, missed whatever the doubt, or neither.</summary>
    /// <param name="demand">What is asked for.</param>
    /// <param name="capacity">What is there.</param>
    public static Verdict Judge(Span demand, Span capacity) =>
        capacity.Low >= demand.High ? Verdict.Holds : capacity.High < demand.Low ? Verdict.FallsShort : Verdict.CannotTell;

    /// <summary>(capacity − demand)/|demand|, each end at its worst; absent when the demand is nought or unbounded.</summary>
    /// <param name="demand">What is asked for.</param>
    /// <param name="capacity">What is there.</param>
    public static Span? MarginOf(Span demand, Span capacity)
    {
        static double Of(double d, double c) => (c - d) / Math.Abs(d);
        var margin = new Span(Of(demand.High, capacity.Low), Of(demand.Likely, capacity.Likely), Of(demand.Low, capacity.High));
        return double.IsFinite(margin.Low) && double.IsFinite(margin.Likely) && double.IsFinite(margin.High) ? margin : null;
    }
}
