using Wainwright.Methods;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>How the van is left to dry.</summary>
public enum DryingCare
{
    /// <summary>As it stands: what covers a board stays on it.</summary>
    AsBuilt,

    /// <summary>Vinyl, carpet and other finish lifted, furniture left.</summary>
    FinishLifted,

    /// <summary>The side towards the room open all over: finish and furniture away.</summary>
    OneSideOpened,

    /// <summary>One side open, heated and aired.</summary>
    HeatedAndAired,
}

/// <summary>When a board is dry under one kind of care.</summary>
/// <param name="Sheet">The board.</param>
/// <param name="Days">Days until less than a hand of it (0.01 m²) is over the target; an end that is not reached within the days looked at is infinite.</param>
/// <param name="WetAreaM2">Area still over the target at the end of the days looked at [m²].</param>
/// <param name="MouldIndex">Highest mould index until then, wetting included where its course is known [0–6].</param>
/// <param name="Closed">What keeps its water in under this care, in words: coverings by area, hollows, what lies behind; empty when it is open.</param>
public sealed record SheetDrying(DampSheet Sheet, Span Days, Span WetAreaM2, Span MouldIndex, string Closed = "");

/// <summary>How the boards dry from the day of the map on, under one kind of care.</summary>
/// <param name="Care">What is done.</param>
/// <param name="TargetPercent">Dry is under this [%].</param>
/// <param name="Days">How far it looks [d].</param>
/// <param name="Frames">Day by day or coarser, the first on day 0.</param>
/// <param name="Sheets">Board by board, in the order of the net.</param>
/// <param name="Assumed">Air, heat, covers and materials taken for it, one line each.</param>
public sealed record DryingForecast(DryingCare Care, double TargetPercent, double Days, IReadOnlyList<DampFrame> Frames, IReadOnlyList<SheetDrying> Sheets, IReadOnlyList<string> Assumed);

/// <summary>Where water may have come from.</summary>
public enum WaterStory
{
    /// <summary>Water let in at a place.</summary>
    Leak,

    /// <summary>Damp air meeting cold skin.</summary>
    Condensation,
}

/// <summary>One way in which the water may have come, and how well the readings bear it out.</summary>
/// <param name="Story">Leak or condensation.</param>
/// <param name="Source">Finding or part it comes from, in words with its id.</param>
/// <param name="At">Where it comes in [mm]; for condensation the middle of the cold boards.</param>
/// <param name="Chance">Chance among the stories told for the same boards, no nearer to certain than the courses that count can bear [0–1].</param>
/// <param name="SinceDays">Days before the newest reading when it began.</param>
/// <param name="Litres">Water let in until then, what has dried meanwhile included [l].</param>
/// <param name="LitresHeld">Water over the dry board that is still there, its ends let out by how far a course may be off the wet readings [l].</param>
/// <param name="Sheets">Boards it wets.</param>
public sealed record DampStory(WaterStory Story, string Source, Fitout.Place At, double Chance, Span SinceDays, Span Litres, Span LitresHeld, IReadOnlyList<DampSheet> Sheets);

/// <summary>How the van got wet, from physics held against the readings of one day.</summary>
/// <param name="Map">The map of that day that it rests on.</param>
/// <param name="Stories">Likeliest first.</param>
/// <param name="Frames">The wetting, oldest first, the last on day 0.</param>
/// <param name="Members">Courses computed.</param>
/// <param name="Effective">How many of them the readings leave, in the patch with the fewest: how well ranges and chances are known, not how well a story fits.</param>
/// <param name="Told">What was taken for granted, left out or does not fit, one line each.</param>
public sealed record DampHistory(DampMap Map, IReadOnlyList<DampStory> Stories, IReadOnlyList<DampFrame> Frames, int Members, double Effective, IReadOnlyList<string> Told)
{
    /// <summary>What stands behind it.</summary>
    public static Basis Basis => Methods.Moisture.Drying.SheetMaterial.Basis;

    /// <summary>The map of the same day with the wetting as what was thought beforehand: the readings laid over the computed course. Null when nothing reads wet.</summary>
    public DampMap? Combined { get; init; }

    /// <summary>What the courses say at each reading of the map that belongs to a wet patch, without the readings laid over: 5, 50 and 95 of 100.</summary>
    public IReadOnlyList<(DampReading Reading, Span Percent)> AtReadings { get; init; } = [];
}
