using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>Where the eye is when the van is drawn.</summary>
public enum SeenFrom
{
    /// <summary>From the left, so that the front is to the left of the page: what stands right of the cut.</summary>
    Left,

    /// <summary>From the right, front to the right of the page: what stands left of the cut.</summary>
    Right,

    /// <summary>From above, front to the left of the page: what stands below the cut.</summary>
    Above,

    /// <summary>From the rear doors, left wall to the left of the page: what stands ahead of the cut.</summary>
    Rear,
}

/// <summary>A section: where the eye is and where the van is cut open.</summary>
/// <param name="From">Where the eye is.</param>
/// <param name="CutMm">Place of the cut along the line of sight [mm]: y for the sides, z from above, x from the rear.</param>
public sealed record SectionView(SeenFrom From, double CutMm)
{
    /// <summary>Cut along the middle, seen from the left: the right-hand half.</summary>
    public static SectionView RightHalf(Job job) => new(SeenFrom.Left, job.Vehicle.LoadSpace.WidthMm.Value / 2);

    /// <summary>Cut along the middle, seen from the right: the left-hand half.</summary>
    public static SectionView LeftHalf(Job job) => new(SeenFrom.Right, job.Vehicle.LoadSpace.WidthMm.Value / 2);

    /// <summary>Cut level at two thirds of the height: above benches and beds, below upper lockers.</summary>
    public static SectionView Plan(Job job) => new(SeenFrom.Above, Math.Round(job.Vehicle.LoadSpace.HeightMm.Value * 0.65));

    /// <summary>Cut across at <paramref name="xMm"/> from the front of the load floor, seen from the rear doors.</summary>
    public static SectionView Across(double xMm) => new(SeenFrom.Rear, xMm);

    /// <summary>The views that show the whole van: both halves, the plan, and a cut through the wheel arches or the middle.</summary>
    public static IReadOnlyList<SectionView> Usual(Job job)
    {
        var room = job.Vehicle.LoadSpace;
        var across = room.WheelArches is [var arch, ..] ? (arch.FromXMm + arch.ToXMm) / 2 : room.LengthMm.Value / 2;
        return [RightHalf(job), LeftHalf(job), Plan(job), Across(across)];
    }

    /// <summary>What the drawing is called.</summary>
    public string Title => From switch
    {
        SeenFrom.Left => "Right-hand half of the van, seen from the left",
        SeenFrom.Right => "Left-hand half of the van, seen from the right",
        SeenFrom.Above => "Plan: the van seen from above",
        _ => "Cross section: the van cut across, seen from the rear doors",
    };

    /// <summary>Where it is cut, in words.</summary>
    public string Cut => From switch
    {
        SeenFrom.Left or SeenFrom.Right => $"cut lengthwise {Mm} mm from the left inner skin",
        SeenFrom.Above => $"cut level {Mm} mm above the metal floor",
        _ => $"cut across {Mm} mm behind the front of the load floor",
    };

    private string Mm => CutMm.ToString("0", CultureInfo.InvariantCulture);
}
