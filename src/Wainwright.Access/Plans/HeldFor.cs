using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>A thing that cannot be done, and what holds it.</summary>
/// <param name="What">The thing, in words.</param>
/// <param name="Part">The part it is about; absent for what belongs to none.</param>
/// <param name="By">What holds it, in words; empty when the van itself does, or it was to stay.</param>
/// <param name="ByParts">Parts that hold it.</param>
/// <param name="NearestOpening">Where the van itself holds it: the opening it comes nearest to passing.</param>
/// <param name="ShortMm">How much it is too large for that opening in its best attitude; 0 when it would pass the opening and only cannot get there.</param>
public sealed record HeldFor(string What, PartId? Part, IReadOnlyList<string> By, IReadOnlyList<PartId> ByParts, string? NearestOpening, int? ShortMm)
{
    /// <summary>What is known of tilting it out with everything else gone; absent where that was no question.</summary>
    public TiltTried? Tilt { get; init; }

    /// <summary>Where only the clear ground outside is too little: how much more it wants; else absent.</summary>
    public LandingShort? Landing { get; init; }

    /// <summary>All of it in one sentence, without its stop.</summary>
    public string Words => Told(int.MaxValue, mm => string.Create(CultureInfo.InvariantCulture, $"{mm} mm"));

    /// <summary>The same with no more than so many of what holds it named, and the shortfall at the opening in the reader's own unit.</summary>
    /// <param name="most">How many of what holds it are named.</param>
    /// <param name="length">How a length [mm] is written.</param>
    public string Told(int most, Func<int, string> length)
    {
        ArgumentNullException.ThrowIfNull(length);
        var more = By.Count > most ? $" and {By.Count - most} more" : "";
        return $"{What}: {(By.Count > 0 ? $"held by {string.Join(", ", By.Take(most))}{more}" : ByTheVan)}{Short(length)}{(Tilt is { } tilt ? $". {tilt.Words}" : "")}";
    }

    // without a shortfall known, nobody can tell the van from an order that it is to stay
    private string ByTheVan => Landing is not null || ShortMm > 0 ? "held by the van itself" : "held by the van itself, or it was to stay";

    private string Short(Func<int, string> length) => this switch
    {
        { Landing: { } landing } => $"; {landing.Words}",
        { NearestOpening: { } opening, ShortMm: > 0 and var mm } => $"; {length(mm)} too large for {opening} in its best attitude",
        { NearestOpening: { } opening } => $"; it would pass {opening} but cannot get there",
        _ => "",
    };
}
