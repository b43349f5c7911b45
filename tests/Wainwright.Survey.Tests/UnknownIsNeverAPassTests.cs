using System.Text.Json.Nodes;
using Wainwright.Fitout;

namespace Wainwright.Survey.Tests;

/// <summary>Takes every single measurement out of a van, one at a time, and asks again.</summary>
public sealed class UnknownIsNeverAPassTests
{
    // What these say when they are absent is a statement of its own, not a gap: nothing lies over the hole, one hole, one
    // turn of nought, a common tolerance.
    static readonly string[] AbsentMeansSomething = ["openFraction", "count", "yawDeg", "tiltDeg", "plusMinus", "plusMinusMm"];

    public static TheoryData<string> Vans() => ["full", "touring-camper", "bicycle-workshop"];

    [Fact]
    public void Taking_one_measurement_away_never_turns_another_verdict_into_a_pass()
    {
        var van = FullVan.Job;
        var before = Checks.All(van, A.Day).ToLookup(c => (c.Id, c.Subject.Id), c => c.Verdict);
        var whole = JsonNode.Parse(JobFile.Write(van))!.AsObject();
        var all = Measurements(whole).ToList();
        var tried = 0;
        foreach (var (holder, key) in all)
        {
            var kept = holder[key];
            holder.Remove(key);
            if (JobFile.Read(System.Text.Encoding.UTF8.GetBytes(whole.ToJsonString())).Job is { } poorer)
            {
                tried++;
                foreach (var check in Checks.All(poorer, A.Day).Where(c => c.Verdict == Verdict.Holds))
                    if (before.Contains((check.Id, check.Subject.Id)))
                        Assert.True(before[(check.Id, check.Subject.Id)].Contains(Verdict.Holds), $"without {holder.GetPath()}.{key}: {check.Id} of {check.Subject.Id} now holds: {check.Because}");
            }
            holder[key] = kept;
        }
        Assert.True(tried > 110, $"only {tried} of {all.Count} measurements could be taken away");
    }

    [Fact]
    public void The_full_van_has_all_three_verdicts_and_every_check()
    {
        var checks = Checks.All(FullVan.Job, A.Day);
        Assert.All(Enum.GetValues<Verdict>(), v => Assert.Contains(checks, c => c.Verdict == v));
        string[] ids =
        [
            "heater-burner-air", "co-alarm-in-date", "gas-drop-out", "gas-hose-in-date", "mains-outlet-near-water", "residual-current-trips", "mains-insulation",
            "mains-below-leak", "fuse-guards-cable", "overhead-fixings", "held-in-driving", "held-in-crash", "pull-leaves-no-set", "stays-shut", "shelf-goods-stay", "axle-load", "plated-mass", "axle-load-loaded", "plated-mass-loaded",
            "heater-circulation-air", "heater-burner-air-pipe", "heater-supply-volts", "lid-stays-up", "tank-fittings-dry", "opened-board-is-dry", "extinguisher-in-date", "sides-level", "mass-sheet-agrees",
        ];
        Assert.Equal(ids, checks.Select(c => c.Id).Distinct());
    }

    [Theory, MemberData(nameof(Vans))]
    public void What_cannot_be_told_names_what_would_tell(string name) =>
        Assert.All(Checks.All(Van(name), A.Day), c => Assert.Equal(c.Verdict == Verdict.CannotTell, c.Missing.Count > 0));

    [Theory, MemberData(nameof(Vans))]
    public void Every_answer_carries_its_source_its_caution_and_the_use_it_speaks_of(string name) =>
        Assert.All(Checks.All(Van(name), A.Day), c =>
        {
            Assert.NotEmpty(c.Basis.Source);
            Assert.NotEmpty(c.Caution);
            Assert.NotEmpty(c.Governing);
            Assert.NotEmpty(c.Assumptions);
            Assert.NotEmpty(c.AppliesTo);
            Assert.Equal(c.Verdict == Verdict.Holds, c.Remedy is null);
            Assert.All(c.Faults, f => Assert.NotNull(Wainwright.Survey.Faults.FaultCatalogue.Find(f)));
        });

    static Job Van(string name) => name == "full" ? FullVan.Job : A.Read("demo", name);

    // lists of which the model says: none when nobody has measured, or traced, it; other lists say what there is and stay
    static readonly string[] EmptyMeansUnknown = ["solids", "circulationInlets", "hotAirOutlets", "protects"];

    /// <summary>Numbers, dates, words and objects that stand for one measurement, and the lists that stand for one.</summary>
    static IEnumerable<(JsonObject Holder, string Key)> Measurements(JsonNode? node)
    {
        if (node is JsonArray list)
        {
            foreach (var found in list.SelectMany(Measurements)) yield return found;
            yield break;
        }
        if (node is not JsonObject holder) yield break;
        foreach (var (key, value) in holder.ToList())
        {
            if (key is not ("photos" or "note" or "name" or "estimate" or "approvals" or "stages" or "custody" or "bags" or "tests" or "certificates" or "findings" or "points" or "intake" or "takeOutFirst" or "release")
                && (value is not JsonArray || EmptyMeansUnknown.Contains(key)) && !AbsentMeansSomething.Contains(key) && value is not null)
                yield return (holder, key);
            foreach (var found in Measurements(value)) yield return found;
        }
    }
}
