using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey;

/// <summary>A check being worked out: gathers facts, assumptions and gaps, then says what they amount to.</summary>
internal sealed class Draft(string id, string claim, Subject subject, Basis basis, string governing, Urgency ifShort, params IReadOnlyList<Use> appliesTo)
{
    private readonly List<Given> inputs = [];
    private readonly List<string> assumptions = [.. basis.Assumes];
    private readonly List<string> missing = [];

    public string? Remedy { get; init; }

    public IReadOnlyList<string> Faults { get; init; } = [];

    public bool IsComplete => missing.Count == 0;

    public void Use(string what, string? value, string field, Known known) => inputs.Add(new(what, value ?? "not known", field, known));

    public void Use(string what, Measured? value, string unit, string field, Known known) =>
        Use(what, value is { } v ? string.Create(CultureInfo.InvariantCulture, $"{v} {unit}") : null, field, value?.Known ?? known);

    public void Assume(string what)
    {
        if (!assumptions.Contains(what)) assumptions.Add(what);
    }

    public void Miss(string what)
    {
        if (!missing.Contains(what)) missing.Add(what);
    }

    public Check Holds(string because) => IsComplete ? Made(Verdict.Holds, because) : CannotTell(because);

    public Check FallsShort(string because) => Made(Verdict.FallsShort, because);

    public Check CannotTell(string because, params IReadOnlyList<string> alsoMissing)
    {
        foreach (var gap in alsoMissing) Miss(gap);
        return Made(Verdict.CannotTell, because) with { Missing = [.. missing] };
    }

    /// <summary>Compares what is asked for with what is there; with something missing it cannot tell.</summary>
    public Check Compare(Span demand, Span capacity, string unit, string because, string measureCloser)
    {
        var judged = Check.Judge(demand, capacity);
        var check = judged switch
        {
            _ when !IsComplete => CannotTell(because),
            Verdict.Holds => Holds(because),
            Verdict.FallsShort => FallsShort(because),
            _ => CannotTell($"{because}: within the doubt of the measurement", $"measure closer: {measureCloser}"),
        };
        return check with { Demand = demand, Capacity = capacity, Unit = unit, Margin = Check.MarginOf(demand, capacity) };
    }

    private Check Made(Verdict verdict, string because) => new()
    {
        Id = id,
        Claim = claim,
        Subject = subject,
        Verdict = verdict,
        Because = because,
        Governing = governing,
        Basis = basis,
        Inputs = [.. inputs],
        Assumptions = [.. assumptions],
        Remedy = verdict == Verdict.Holds ? null : Remedy,
        AppliesTo = appliesTo,
        IfShort = ifShort,
        Faults = Faults,
    };
}
