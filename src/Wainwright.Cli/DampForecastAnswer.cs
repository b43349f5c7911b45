using System.Globalization;
using Wainwright.Survey;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli;

/// <summary>When the wet boards are dry under each kind of care, as it is shown: to a person as a table with what opens them in words, to a program as JSON.</summary>
internal sealed class DampForecastAnswer
{
    private const int NameWide = 34, FarDays = 1095;

    private readonly DampMap map;

    private readonly IReadOnlyList<DryingForecast> forecasts;

    // as it stands over three years, where the days asked do not show the end; null when they do
    private readonly DryingForecast? far;

    private readonly List<int> wet;

    private DampForecastAnswer(DampMap map, IReadOnlyList<DryingForecast> forecasts, DryingForecast? far)
    {
        (this.map, this.forecasts, this.far) = (map, forecasts, far);
        wet = Wet(map);
    }

    /// <summary>The forecasts, care by care.</summary>
    public IReadOnlyList<DryingForecast> Forecasts => forecasts;

    /// <summary>Care as it is written on the command line.</summary>
    public static readonly IReadOnlyList<(string Word, DryingCare Care, string Says, string Does)> Cares =
    [
        ("as-built", DryingCare.AsBuilt, "as it stands", "left as it stands"), ("finish-lifted", DryingCare.FinishLifted, "finish lifted", "lift the finish"),
        ("one-side", DryingCare.OneSideOpened, "side opened", "open the side to the room"), ("heated", DryingCare.HeatedAndAired, "heated, aired", "open it, heat and air"),
    ];

    public static DampForecastAnswer Of(Terminal at, DampMap map, double days, IReadOnlyList<DryingCare> cares, DampHistory? wetting, CancellationToken stop)
    {
        List<DryingForecast> made = [];
        DryingForecast One(DryingCare care, double until) =>
            Forecasting.Of(map, care, until, Forecasting.UsualTargetPercent, wetting, new ShareTold(at, "drying worked out", (double)made.Count / (cares.Count + 1), 1.0 / (cares.Count + 1)), stop);
        foreach (var care in cares) made.Add(One(care, days));
        var stands = made.FirstOrDefault(f => f.Care == DryingCare.AsBuilt);
        var far = days < FarDays && stands is not null && Wet(map).Any(s => double.IsInfinity(stands.Sheets[s].Days.High)) ? One(DryingCare.AsBuilt, FarDays) : null;
        ShareTold.Done(at);
        return new(map, made, far);
    }

    public object ForPrograms() => new
    {
        targetPercent = forecasts[0].TargetPercent,
        days = forecasts[0].Days,
        cares = forecasts.Select(f => new
        {
            care = f.Care,
            assumed = f.Assumed,
            sheets = f.Sheets.Select(s => new
            {
                id = s.Sheet.Part.Text,
                days = Ends(s.Days),
                wetAreaM2 = Ends(s.WetAreaM2),
                mouldIndex = Ends(s.MouldIndex),
                closed = s.Closed,
            }),
        }),
        inWords = wet.Select(s => new { id = map.Sheets[s].Sheet.Part.Text, says = InWords(s) }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(string.Create(CultureInfo.InvariantCulture, $"how it dries: days until less than a hand is over {forecasts[0].TargetPercent:0.#} %, {forecasts[0].Days:0} days looked at, likely (5 to 95 of 100)")));
        at.Out.WriteLine(ink.Faint(string.Create(CultureInfo.InvariantCulture, $"{"",-NameWide}{string.Concat(forecasts.Select(f => $" {Cares.Single(c => c.Care == f.Care).Says,18}"))}  mould index")));
        foreach (var s in wet)
        {
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{Cut($"{map.Sheets[s].Sheet.Part} {map.Sheets[s].Sheet.Name}"),-NameWide}{string.Concat(forecasts.Select(f => $" {Days(f.Sheets[s].Days),18}"))}  {Mould(s)}")));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"    {InWords(s)}")));
        }
        var unread = map.Sheets.Where(s => s.Advice == DampAdvice.CannotTell).Select(s => s.Sheet.Part).ToList();
        if (unread.Count > 0) at.Out.WriteLine(Shown.Plain($"cannot tell how {string.Join(", ", unread)} dr{(unread.Count > 1 ? "y" : "ies")}: too little read of {(unread.Count > 1 ? "them" : "it")}"));
        foreach (var told in forecasts.SelectMany(f => f.Assumed).Distinct()) at.Out.WriteLine(ink.Faint(Shown.Plain($"taken: {told}")));
    }

    /// <summary>What keeps the water in and what lets it out, in one sentence.</summary>
    private string InWords(int sheet)
    {
        var stands = forecasts.FirstOrDefault(f => f.Care == DryingCare.AsBuilt)?.Sheets[sheet];
        var closed = stands?.Closed is { Length: > 0 } c ? $"{c}: " : "";
        if (stands is not null && double.IsFinite(stands.Days.High)) return $"{closed}dries as it stands in {Within(stands.Days)}";
        var slow = stands is null ? "" : $"{closed}{Long(far?.Sheets[sheet].Days ?? stands.Days)} as it stands; ";
        var opens = forecasts.FirstOrDefault(f => f.Care != DryingCare.AsBuilt && double.IsFinite(f.Sheets[sheet].Days.High))
            ?? forecasts.FirstOrDefault(f => f.Care != DryingCare.AsBuilt && double.IsFinite(f.Sheets[sheet].Days.Likely));
        if (opens is null) return forecasts.Any(f => f.Care != DryingCare.AsBuilt) ? $"{slow}none of the cares dries it within the days looked at: open the other side too, or cut" : $"{slow}ask for the other cares";
        var days = opens.Sheets[sheet].Days;
        return $"{slow}{Cares.Single(c => c.Care == opens.Care).Does}: {Within(days)}{(double.IsFinite(days.High) ? "" : ", and it may not be enough")}";
    }

    private string Long(Span days) => double.IsInfinity(days.Low) ? $"more than {Period(far?.Days ?? forecasts[0].Days)}" : double.IsInfinity(days.High) ? $"{Period(days.Low)} to more than {Period(far?.Days ?? forecasts[0].Days)}" : $"{Period(days.Low)} to {Period(days.High)}";

    private static string Period(double days) => days >= 730 ? string.Create(CultureInfo.InvariantCulture, $"{days / 365:0.#} years") : days >= 90 ? string.Create(CultureInfo.InvariantCulture, $"{days / 30.4:0} months") : string.Create(CultureInfo.InvariantCulture, $"{days:0} days");

    private static string Within(Span days) => days.High < 0.5 ? "no time: it is dry" : string.Create(CultureInfo.InvariantCulture, $"{days.Low:0} to {(double.IsInfinity(days.High) ? $"more than {days.Likely:0}" : $"{days.High:0}")} days");

    private string Days(Span days)
    {
        string One(double d) => double.IsInfinity(d) ? string.Create(CultureInfo.InvariantCulture, $">{forecasts[0].Days:0}") : string.Create(CultureInfo.InvariantCulture, $"{d:0}");
        return double.IsInfinity(days.Low) ? One(days.Low) : $"{One(days.Likely)} ({One(days.Low)}–{One(days.High)})";
    }

    private string Mould(int sheet) => string.Join(" / ", forecasts.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Sheets[sheet].MouldIndex.Likely:0.#}")));

    private static List<int> Wet(DampMap map) => [.. Enumerable.Range(0, map.Sheets.Count).Where(s => map.Sheets[s].Advice is DampAdvice.Dry or DampAdvice.CutOrProbe)];

    private static object Ends(Span span)
    {
        // JSON has no infinity
        static double? Finite(double d) => double.IsFinite(d) ? d : null;
        return new { low = Finite(span.Low), likely = Finite(span.Likely), high = Finite(span.High) };
    }

    private static string Cut(string text) => text.Length <= NameWide ? text : text[..(NameWide - 1)] + "…";
}
