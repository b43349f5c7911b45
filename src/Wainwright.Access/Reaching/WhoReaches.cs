using System.Globalization;
using Wainwright.Methods.Reach;

namespace Wainwright.Access;

/// <summary>Which share of men and of women get to a thing: big people are stopped by the opening, small people by the depth.</summary>
/// <param name="OfMen">Share of the men of a large survey [0–1].</param>
/// <param name="OfWomen">Share of the women of a large survey [0–1].</param>
public sealed record WhoReaches(double OfMen, double OfWomen)
{
    private const double Widest = 3; // standard deviations: one in a thousand
    private const int Halvings = 9;

    /// <summary>In words: <c>93 of 100 men, 66 of 100 women reach it</c>.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{100 * OfMen:0} of 100 men, {100 * OfWomen:0} of 100 women reach it");

    /// <summary>
    /// The thickest and the shortest arm that will do, each with the other as favourable as can be, and the share of those who are
    /// neither thicker nor shorter, by the survey's bivariate normal law.
    /// </summary>
    internal static WhoReaches Of(Func<Person, bool> can) => new(Share(BodyMeasures.People.Men, can), Share(BodyMeasures.People.Women, can));

    private static double Share(BodyMeasures.People whose, Func<Person, bool> can)
    {
        if (!can(Person.Of(whose, -Widest, Widest))) return 0;
        var size = Last(z => can(Person.Of(whose, z, Widest)));
        var reach = -Last(z => can(Person.Of(whose, -Widest, -z)));
        return ShareWhoCan.Between(whose, ShareWhoCan.Limb.ToTheElbow, -3 * Widest, size >= Widest ? 3 * Widest : size, reach <= -Widest ? -3 * Widest : reach);
    }

    /// <summary>The greatest z that will do, the least being known to.</summary>
    private static double Last(Func<double, bool> will)
    {
        if (will(Widest)) return Widest;
        var (low, high) = (-Widest, Widest);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (will(middle)) low = middle;
            else high = middle;
        }
        return low;
    }
}
