using System.Globalization;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>How honest the map is on boards of seven kinds. The priors were chosen on other boards of the same kinds; the figures stand in docs/damp.md.</summary>
public sealed class DampKindTests(ITestOutputHelper said)
{
    const int Each = 15;

    static readonly SurfaceNet Net = Sheets.Flat(DampKind.Across, DampKind.Along);

    [Fact]
    public void How_often_the_truth_lies_inside_on_boards_of_seven_kinds()
    {
        List<MapScore> all = [];
        foreach (var cause in Enum.GetValues<DampCause>())
        {
            List<MapScore> scores = [];
            for (var board = 0; board < Each; board++)
            {
                var truth = new DampKind(40_000 + (100 * (int)cause) + board, cause);
                scores.Add(MapScore.Of(DampField.Fit(Net, truth.Pricked(14, 10), new() { DryPercent = [12], DrySigmaPoints = 2 }), truth.Truth, board));
            }
            Say(cause.ToString(), scores);
            all.AddRange(scores);
        }
        Say("all", all);
        Assert.InRange(all.Average(s => s.Cells), 0.85, 0.96);
        Assert.InRange((double)all.Count(s => s.Area) / all.Count, 0.80, 0.97);
        Assert.InRange((double)all.Count(s => s.Region) / all.Count, 0.80, 0.97);
    }

    void Say(string name, List<MapScore> s) => said.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"{name}: cells {100 * s.Average(x => x.Cells):0.0} %, area on {s.Count(x => x.Area)} of {s.Count}, region on {s.Count(x => x.Region)}, {s.Average(x => x.RegionCells) / 100:0.00} m² for {s.Average(x => x.WetCells) / 100:0.00} m² wet"));
}
