using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>A schedule as it is shown: to a person as a table by the clock, to a program as JSON.</summary>
internal sealed class CrewAnswer(Job job, RemovalPlan plan, CrewSchedule crew)
{
    private readonly PlanAnswer planned = new(job, plan);

    public int Exit => crew.TooFew.Count > 0 ? Cli.Exit.FallsShort : planned.Exit;

    public object ForPrograms() => new
    {
        targets = plan.Targets.Select(t => t.Text),
        people = crew.People,
        answer = crew.TooFew.Count > 0 ? "tooFew" : crew.Tasks.Count > 0 ? "schedule" : planned.Exit == Cli.Exit.FallsShort ? "unreachable" : "cannotTell",
        minutes = crew.Minutes,
        lowerBoundMinutes = crew.LowerBoundMinutes,
        proved = crew.IsProved,
        labourMinutes = crew.LabourMinutes,
        tasks = crew.Tasks.Select(t => new
        {
            step = t.Step.Number,
            action = t.Step.Action,
            part = t.Step.Part?.Text,
            from = t.FromMinutes,
            to = t.ToMinutes,
            people = t.People,
            tool = t.Tool,
            where = t.Where,
            through = t.Step.Through,
            cautions = t.Step.Cautions,
        }),
        critical = crew.Critical.Select(l => new { step = l.Number, why = l.Why, words = l.Words }),
        tooFew = crew.TooFew.Select(s => new { step = s.Number, action = s.Action, people = s.People }),
        assumes = crew.Assumes,
        toMeasure = plan.ToMeasure,
        cautions = plan.Cautions,
    };

    public void InWords(Terminal at)
    {
        if (plan.Steps.Count == 0)
        {
            planned.InWords(at);
            return;
        }
        var ink = new Ink(at.Colour);
        void Say(string text) => at.Out.WriteLine(Shown.Plain(text));
        at.Out.WriteLine(ink.Strong(Shown.Plain($"{Wish} {string.Join(" and ", plan.Targets.Select(Name))}: {People(crew.People)}")));
        if (crew.TooFew.Count > 0)
        {
            at.Out.WriteLine(ink.Bad($"{People(crew.People)} cannot do it: {(crew.TooFew.Count == 1 ? "one step takes" : $"{crew.TooFew.Count} steps take")} more"));
            foreach (var step in crew.TooFew) Say($"  step {step.Number} takes {step.People}: {step.Action}");
            return;
        }
        at.Out.WriteLine(crew.IsProved
            ? ink.Good($"{Long(crew.Minutes)} by the clock, proved: no order of these steps is shorter")
            : ink.Doubt($"{Long(crew.Minutes)} by the clock, the best found; no order of these steps takes less than {Long(crew.LowerBoundMinutes)}"));
        at.Out.WriteLine($"  labour of all together until it is out {Long(crew.LabourMinutes)}{(crew.Minutes > 0.9 * crew.LabourMinutes && crew.People > 1 ? ": more hands save little here" : "")}");
        at.Out.WriteLine();
        at.Out.WriteLine("   from     to  who  where           step");
        foreach (var t in crew.Tasks)
        {
            var more = $"{(t.Step.Through is { } door ? $", through {door}" : "")}{(t.Tool is { } tool ? $" [{tool}]" : "")}{(t.Step.Licence is { } licence ? $" (licence: {licence})" : "")}";
            Say(string.Create(CultureInfo.InvariantCulture, $"{Clock(t.FromMinutes),7}{Clock(t.ToMinutes),7}  {string.Join('+', t.People),-4} {t.Where,-15} {t.Step.Number}. {t.Step.Action}{more}"));
        }
        at.Out.WriteLine(ink.Faint("  where: metres from the front of the load space; loads take up their way to the door"));
        Chain(at, ink);
        at.Out.WriteLine();
        foreach (var taken in crew.Assumes) at.Out.WriteLine(ink.Faint($"assumed  {taken}"));
        foreach (var look in plan.ToMeasure) at.Out.WriteLine($"{ink.Doubt("measure")}  {Shown.Plain(look)}");
        foreach (var caution in plan.Cautions) at.Out.WriteLine($"{ink.Doubt("caution")}  {Shown.Plain(caution)}");
    }

    private void Chain(Terminal at, Ink ink)
    {
        if (crew.Critical.Count == 0) return;
        at.Out.WriteLine();
        at.Out.WriteLine(ink.Strong($"What sets the length: {crew.Critical.Count} steps, one after another"));
        at.Out.WriteLine($"  {string.Join(" · ", crew.Critical.Select(l => l.Number))}");
        string? Waits(WaitFor why, string words) => crew.Critical.Count(l => l.Why == why) is > 0 and var n ? $"{n} {words}" : null;
        string?[] waits =
        [
            Waits(WaitFor.Step, "could not begin before the one ahead was done"), Waits(WaitFor.Room, "waited for room to stand or to pass"),
            Waits(WaitFor.Tool, "waited for a tool"), Waits(WaitFor.Person, "waited for somebody to be free"),
        ];
        if (waits.OfType<string>().Any()) at.Out.WriteLine($"  {string.Join("; ", waits.OfType<string>())}");
        foreach (var link in crew.Critical.Where(l => l.Why == WaitFor.Tool).Take(3)) at.Out.WriteLine(ink.Faint($"  step {link.Number} {link.Words}"));
    }

    private string Wish => plan.Kind switch { AccessKind.See => "See", AccessKind.Reach => "Reach", _ => "Take out" };

    private string Name(PartId id) => $"{id} {job.Parts.First(p => p.Id == id).Name}";

    private static string People(int count) => count == 1 ? "one person" : $"{count} people";

    private static string Clock(double minutes)
    {
        var seconds = (int)Math.Round(minutes * 60);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }

    private static string Long(double minutes) => minutes < 90
        ? string.Create(CultureInfo.InvariantCulture, $"{minutes:0.#} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(Math.Round(minutes) / 60):0} h {Math.Round(minutes) % 60:00} min");
}
