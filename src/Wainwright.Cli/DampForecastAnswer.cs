using System.Globalization;
using Wainwright.Survey;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli;

/// <summary>When the wet boards are dry under each kind of care, as it is shown: to a person as a table with what opens them in words, to a program as JSON.</summary>
internal sealed class DampForecastAnswer
{
    private const int NameWide = 34;

    private readonly DampMap map;

    private readonly DryingOutlook outlook;

    private readonly IReadOnlyList<int> wet;

    private DampForecastAnswer(DampMap map, DryingOutlook outlook)
    {
        (this.map, this.outlook) = (map, outlook);
        wet = DryingOutlook.Wet(map);
    }

    /// <summary>The forecasts, care by care.</summary>
    public IReadOnlyList<DryingForecast> Forecasts => outlook.Forecasts;

    /// <summary>Care as it is written on the command line.</summary>
    public static readonly IReadOnlyList<(string Word, DryingCare Care, string Says)> Cares =
    [
        ("as-built", DryingCare.AsBuilt, "as it stands"), ("finish-lifted", DryingCare.FinishLifted, "finish lifted"),
        ("one-side", DryingCare.OneSideOpened, "side opened"), ("heated", DryingCare.HeatedAndAired, "heated, aired"),
    ];

    public static DampForecastAnswer Of(Terminal at, DampMap map, double days, IReadOnlyList<DryingCare> cares, DampHistory? wetting, CancellationToken stop)
    {
        var outlook = DryingOutlook.Of(map, days, cares, wetting, new ShareTold(at, "drying worked out"), stop);
        ShareTold.Done(at);
        return new(map, outlook);
    }

    public object ForPrograms() => new
    {
        targetPercent = Forecasts[0].TargetPercent,
        days = Forecasts[0].Days,
        cares = Forecasts.Select(f => new
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
        inWords = wet.Select(s => new { id = map.Sheets[s].Sheet.Part.Text, says = outlook.InWords(s) }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(string.Create(CultureInfo.InvariantCulture, $"how it dries: days until less than a hand is over {Forecasts[0].TargetPercent:0.#} %, {Forecasts[0].Days:0} days looked at, likely (5 to 95 of 100)")));
        at.Out.WriteLine(ink.Faint(string.Create(CultureInfo.InvariantCulture, $"{"",-NameWide}{string.Concat(Forecasts.Select(f => $" {Cares.Single(c => c.Care == f.Care).Says,18}"))}  mould index")));
        foreach (var s in wet)
        {
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{Cut($"{map.Sheets[s].Sheet.Part} {map.Sheets[s].Sheet.Name}"),-NameWide}{string.Concat(Forecasts.Select(f => $" {Days(f.Sheets[s].Days),18}"))}  {Mould(s)}")));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"    {outlook.InWords(s)}")));
        }
        var unread = map.Sheets.Where(s => s.Advice == DampAdvice.CannotTell).Select(s => s.Sheet.Part).ToList();
        if (unread.Count > 0) at.Out.WriteLine(Shown.Plain($"cannot tell how {string.Join(", ", unread)} dr{(unread.Count > 1 ? "y" : "ies")}: too little read of {(unread.Count > 1 ? "them" : "it")}"));
        foreach (var told in Forecasts.SelectMany(f => f.Assumed).Distinct()) at.Out.WriteLine(ink.Faint(Shown.Plain($"taken: {told}")));
    }

    private string Days(Span days)
    {
        string One(double d) => double.IsInfinity(d) ? string.Create(CultureInfo.InvariantCulture, $">{Forecasts[0].Days:0}") : string.Create(CultureInfo.InvariantCulture, $"{d:0}");
        return double.IsInfinity(days.Low) ? One(days.Low) : $"{One(days.Likely)} ({One(days.Low)}–{One(days.High)})";
    }

    private string Mould(int sheet) => string.Join(" / ", Forecasts.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Sheets[sheet].MouldIndex.Likely:0.#}")));

    private static object Ends(Span span)
    {
        // JSON has no infinity
        static double? Finite(double d) => double.IsFinite(d) ? d : null;
        return new { low = Finite(span.Low), likely = Finite(span.Likely), high = Finite(span.High) };
    }

    private static string Cut(string text) => text.Length <= NameWide ? text : text[..(NameWide - 1)] + "…";
}
