namespace Wainwright.Methods.Labour;

/// <summary>What several people may lift together.</summary>
/// <remarks>Two people: two thirds of the sum of what each may lift; three: half of the sum. More are not covered.</remarks>
public static class TeamLift
{
    /// <summary>The two-thirds rule of British practice.</summary>
    public static readonly Basis Basis = new(
        Source: "UK manual-handling guidance on team lifting, as a safety consultancy answers it: two thirds for two people, half for three",
        Assumes: ["everyone can get a good grip and see", "one gives the word"],
        Caution: "In a van a third person rarely finds a place to stand. Another rule (US, from memory) simply doubles: this is the careful one.",
        How: Provenance.Quoted);

    /// <param name="EachKg">What each person may lift alone [kg], above 0; two or three of them.</param>
    public sealed record Input(IReadOnlyList<double> EachKg);

    /// <param name="TogetherKg">What they may lift together [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double TogetherKg, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">Fewer than two or more than three people, or a figure that is not above 0.</exception>
    public static Result Of(Input team)
    {
        if (team.EachKg.Count is < 2 or > 3) throw new ArgumentOutOfRangeException(nameof(team), team.EachKg.Count, "EachKg: the rule covers two or three people");
        var sum = 0.0;
        foreach (var each in team.EachKg) sum += Must.BePositive(each);
        return new(sum * (team.EachKg.Count == 2 ? 2.0 / 3 : 0.5), []);
    }

    /// <summary>Fewest people for a load when each may lift the same [1–3]; null when three are not enough.</summary>
    /// <param name="loadKg">Load [kg], 0 or more.</param>
    /// <param name="eachKg">What one person may lift [kg], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static int? PeopleFor(double loadKg, double eachKg)
    {
        Must.NotBeNegative(loadKg);
        if (loadKg <= Must.BePositive(eachKg)) return 1;
        if (loadKg <= Of(new([eachKg, eachKg])).TogetherKg) return 2;
        return loadKg <= Of(new([eachKg, eachKg, eachKg])).TogetherKg ? 3 : null;
    }
}
