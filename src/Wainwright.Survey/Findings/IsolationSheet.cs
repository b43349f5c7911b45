using Wainwright.Fitout;

namespace Wainwright.Survey.Findings;

/// <summary>What was made safe before hands went in, what stays live, and what nobody has isolated yet.</summary>
/// <param name="Done">Steps done, in the order done.</param>
/// <param name="ToDo">Steps written down and not done.</param>
/// <param name="StaysLive">What stays live or dangerous in spite of the steps done.</param>
/// <param name="NotIsolated">Services of the van that no done step speaks of.</param>
public sealed record IsolationSheet(
    IReadOnlyList<IsolationStep> Done, IReadOnlyList<IsolationStep> ToDo, IReadOnlyList<string> StaysLive, IReadOnlyList<Medium> NotIsolated)
{
    private static readonly Medium[] Isolable = [Medium.Mains, Medium.Dc, Medium.Gas, Medium.Fuel, Medium.Water];

    /// <summary>The caution that belongs on every sheet.</summary>
    public const string Caution = "Written down is not dead: prove dead with a tester proved on a known source before and after. Gas and mains belong to licensed people; local codes rule.";

    /// <summary>The sheet of a job.</summary>
    public static IsolationSheet Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var done = job.Isolation.Where(s => s.DoneAt is not null).ToList();
        return new(
            done,
            [.. job.Isolation.Where(s => s.DoneAt is null)],
            [.. done.Where(s => s.Remains is not null).Select(s => s.Remains!)],
            [.. Isolable.Where(m => IsAboard(job, m) && !done.Exists(s => s.Medium == m))]);
    }

    private static bool IsAboard(Job job, Medium medium) =>
        job.Lines.Any(l => l.Medium == medium) || job.Parts.Any(p => p.System == SystemOf(medium) || p.Devices.Any(d => Carries(d, medium)));

    private static PartSystem? SystemOf(Medium medium) => medium switch
    {
        Medium.Mains => PartSystem.Mains,
        Medium.Dc => PartSystem.Dc,
        Medium.Gas => PartSystem.Gas,
        Medium.Water => PartSystem.Water,
        _ => null,
    };

    private static bool Carries(Device device, Medium medium) => device switch
    {
        MainsInlet or ResidualCurrentDevice => medium == Medium.Mains,
        Battery => medium == Medium.Dc,
        Converter c => c.From == medium || c.To == medium,
        Outlet o => o.Medium == medium,
        GasStore or GasAppliance => medium == Medium.Gas,
        AirHeater => medium == Medium.Fuel,
        Tank t => t.Holds == medium,
        WetFitting => medium == Medium.Water,
        _ => false,
    };
}
