using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Web;

/// <summary>Addresses of the screens.</summary>
internal static class Go
{
    public static string Job(string job, string screen = "", string item = "") =>
        $"job/{Uri.EscapeDataString(job)}{(screen.Length > 0 ? "/" + screen : "")}{(item.Length > 0 ? "/" + Uri.EscapeDataString(item) : "")}";

    /// <summary>The screen that answers a question for the planner.</summary>
    public static string Way(string job, WayQuestion asked) => Job(job, Word(asked.Kind), Ids(asked.Targets)) + Query(asked, '?');

    /// <summary>The work sheet of the same question.</summary>
    public static string WorkSheet(string job, WayQuestion asked) => $"{Job(job, "work.html")}?parts={Uri.EscapeDataString(Ids(asked.Targets))}&how={Word(asked.Kind)}{Query(asked, '&')}";

    /// <summary>Who does what when, for the plan of the same question.</summary>
    public static string Crew(string job, WayQuestion asked) => $"{Job(job, "crew", Ids(asked.Targets))}?how={Word(asked.Kind)}{Query(asked, '&')}";

    public static AccessKind? Kind(string screen) => screen switch { "way" => AccessKind.Remove, "reach" => AccessKind.Reach, "see" => AccessKind.See, _ => null };

    public static Objective Least(string? least) => least switch { "parts" => Objective.FewestPartsOut, "damage" => Objective.LeastDestroyed, _ => Objective.LeastLabour };

    private static string Word(AccessKind kind) => kind switch { AccessKind.See => "see", AccessKind.Reach => "reach", _ => "way" };

    private static string Ids(IEnumerable<PartId> parts) => string.Join(' ', parts);

    private static string Query(WayQuestion asked, char first)
    {
        (string Name, string Value)[] said = [("stay", Ids(asked.LeaveAlone)), ("out", Ids(asked.OutAlready)), ("least", asked.Objective switch { Objective.FewestPartsOut => "parts", Objective.LeastDestroyed => "damage", _ => "" }), ("tilt", asked.TiltPast ? "past" : "")];
        var given = said.Where(s => s.Value.Length > 0).Select(s => $"{s.Name}={Uri.EscapeDataString(s.Value)}").ToList();
        return given.Count == 0 ? "" : first + string.Join('&', given);
    }

    public static string Part(string job, PartId part) => Job(job, "part", part.Text);

    /// <summary>Whether what is fitted holds, all of it or one part, against a load case or the job's own choice.</summary>
    public static string Hold(string job, PartId? part = null, string? load = null) =>
        Job(job, "hold", part?.Text ?? "") + (string.IsNullOrEmpty(load) ? "" : $"?case={Uri.EscapeDataString(load)}");

    /// <summary>The same on paper.</summary>
    public static string HoldSheet(string job, string? load = null) => Job(job, "hold.html") + (string.IsNullOrEmpty(load) ? "" : $"?case={Uri.EscapeDataString(load)}");

    /// <summary>Where the water went, or one board of it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="board">The board; absent for all.</param>
    /// <param name="on">Readings up to this day, as 2026-03-14; absent for the latest.</param>
    /// <param name="over">Thresholds in percent with commas between; absent for the usual.</param>
    public static string Damp(string job, PartId? board = null, string? on = null, string? over = null)
    {
        (string Name, string? Value)[] said = [("on", on), ("over", over)];
        var given = said.Where(s => !string.IsNullOrEmpty(s.Value)).Select(s => $"{s.Name}={Uri.EscapeDataString(s.Value!)}").ToList();
        return Job(job, "damp", board?.Text ?? "") + (given.Count == 0 ? "" : "?" + string.Join('&', given));
    }

    /// <summary>The drying log on paper.</summary>
    /// <param name="job">The job.</param>
    /// <param name="on">Readings up to this day; absent for all.</param>
    /// <param name="promised">The day that was promised; absent when none was.</param>
    public static string DryingSheet(string job, DateOnly? on, DateOnly? promised)
    {
        (string Name, DateOnly? Day)[] said = [("on", on), ("promised", promised)];
        var given = said.Where(s => s.Day is not null).Select(s => FormattableString.Invariant($"{s.Name}={s.Day:yyyy-MM-dd}")).ToList();
        return Job(job, "drying.html") + (given.Count == 0 ? "" : "?" + string.Join('&', given));
    }

    public static string Photo(PhotoHash photo) => $"photo/{photo}";
}
