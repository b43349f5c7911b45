using Wainwright.Fitout;

namespace Wainwright.Survey.Tests;

/// <summary>Small vans of one situation each; the right verdicts were reasoned out by hand and stand in the cases' notes.</summary>
public class CasesJudgedTests
{
    /// <summary>Case, check, what it is about, the right verdict.</summary>
    public static TheoryData<string, string, string, Verdict> Verdicts => new()
    {
        { "outlet-near-sink-protected", "mains-outlet-near-water", "B", Verdict.Holds },
        { "outlet-near-sink-unprotected", "mains-outlet-near-water", "B", Verdict.FallsShort },
        { "outlet-near-sink-not-traced", "mains-outlet-near-water", "B", Verdict.CannotTell },
        { "heater-return-too-small", "heater-circulation-air", "A", Verdict.FallsShort },
        { "heater-return-enough", "heater-circulation-air", "A", Verdict.Holds },
        { "heater-return-not-measured", "heater-circulation-air", "A", Verdict.CannotTell },
        { "axle-over-its-limit", "axle-load", "rear", Verdict.FallsShort },
        { "axle-over-its-limit", "axle-load", "front", Verdict.Holds },
        { "axle-within-its-limit", "axle-load", "rear", Verdict.Holds },
        { "axle-within-its-limit", "axle-load", "front", Verdict.Holds },
        { "axle-not-weighed", "axle-load", "rear", Verdict.CannotTell },
        { "axle-not-weighed", "axle-load", "front", Verdict.CannotTell },
        { "cupboard-two-of-three-screws-sheared", "held-in-driving", "A", Verdict.FallsShort },
        { "cupboard-two-of-three-screws-sheared", "held-in-crash", "A", Verdict.FallsShort },
        { "shelf-with-no-lip", "held-in-driving", "A", Verdict.Holds },
        { "shelf-with-no-lip", "shelf-goods-stay", "A", Verdict.FallsShort },
        { "tank-with-no-restraint", "held-in-driving", "A", Verdict.FallsShort },
        { "drawer-without-a-latch", "held-in-driving", "A", Verdict.Holds },
        { "drawer-without-a-latch", "stays-shut", "A", Verdict.FallsShort },
        { "screws-6-mm-from-a-plywood-edge", "held-in-driving", "A", Verdict.Holds },
        { "screws-6-mm-from-a-plywood-edge", "held-in-crash", "A", Verdict.FallsShort },
    };

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void The_verdict_is_the_one_that_the_note_of_the_case_calls_right(string name, string check, string subject, Verdict right)
    {
        var judged = Judged(name, check, subject);

        Assert.Equal(right, judged.Verdict);
        Assert.Equal(right == Verdict.CannotTell, judged.Missing.Count > 0);
    }

    [Fact]
    public void An_axle_over_its_limit_is_named_although_the_total_passes()
    {
        Assert.Equal(Verdict.Holds, Checks.All(Case("axle-over-its-limit"), Day).Single(c => c.Id == "plated-mass").Verdict);
        Assert.Contains("60 kg", Judged("axle-over-its-limit", "axle-load", "rear").Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_heater_that_breathes_through_one_small_hole_is_short_by_the_ratio_in_the_note() =>
        Assert.Contains("0.28", Judged("heater-return-too-small", "heater-circulation-air", "A").Because, StringComparison.Ordinal);

    [Fact]
    public void Parts_that_overlap_by_the_tape_are_a_doubt_of_30_mm()
    {
        var overlap = Assert.Single(Overlaps.Of(Case("overlap-in-the-measures")));

        Assert.Equal((PartId.Of("A"), PartId.Of("B"), 30), (overlap.First, overlap.Second, overlap.DepthMm));
    }

    [Fact]
    public void Nothing_in_the_workshop_van_stands_in_anything_else() =>
        Assert.Empty(Overlaps.Of(Read("bicycle-workshop")));

    [Fact]
    public void In_the_workshop_van_the_outlet_nobody_traced_is_in_doubt_and_those_on_the_tested_device_hold()
    {
        var outlets = Checks.All(Read("bicycle-workshop"), Day).Where(c => c.Id == "mains-outlet-near-water").ToLookup(c => c.Subject.Id, c => c.Verdict);

        Assert.Equal([Verdict.Holds, Verdict.Holds], outlets["B06"]);
        Assert.Equal([Verdict.CannotTell], outlets["B27"]);
    }

    private static readonly DateOnly Day = new(2026, 5, 11);

    private static Check Judged(string name, string check, string subject) =>
        Checks.All(Case(name), Day).Single(c => c.Id == check && c.Subject.Id == subject);

    private static Job Case(string name) => Read(Path.Combine("cases", name));

    private static Job Read(string name) => JobFile.Read(File.ReadAllBytes(Path.Combine(Top(), "demo", $"{name}.wain.json"))).Job
        ?? throw new InvalidDataException($"{name} does not load");

    private static string Top()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Wainwright.slnx"))) return folder.FullName;
        throw new InvalidOperationException($"no Wainwright.slnx above {AppContext.BaseDirectory}");
    }
}
