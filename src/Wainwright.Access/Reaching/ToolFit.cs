using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>How the tool fits at one fixing with some things gone: what it needs in front, what is free, and what stands there.</summary>
public sealed record ToolFit
{
    /// <summary>The joint.</summary>
    public required JointId Joint { get; init; }

    /// <summary>The fixing [mm].</summary>
    public required Place At { get; init; }

    /// <summary>The side the tool comes from.</summary>
    public required Direction From { get; init; }

    /// <summary>The tool, in words.</summary>
    public required string Tool { get; init; }

    /// <summary>What tool and hand need in front of the fixing, in line [mm].</summary>
    public required int NeedMm { get; init; }

    /// <summary>What is free there, at most <see cref="NeedMm"/>, the hand beside the tool's line where that helps [mm].</summary>
    public required int FreeMm { get; init; }

    /// <summary>What is missing [mm]; 0 when it fits.</summary>
    public int ShortMm => NeedMm - FreeMm;

    /// <summary>What it is short to; absent for the van itself, or when it fits.</summary>
    public PartId? By { get; init; }

    /// <summary>What the screw itself needs to be drawn [mm]; absent where its length is not known.</summary>
    public int? DrawMm { get; init; }

    /// <summary>What is missing for it to be drawn [mm]; 0 when it can be, or its length is not known.</summary>
    public required int DrawShortMm { get; init; }

    /// <summary>What it cannot be drawn for; absent for the van itself, or when it can be.</summary>
    public PartId? DrawBy { get; init; }

    /// <summary>Free swing of a spanner laid square on it [°], 0 to 360; absent where no spanner goes on.</summary>
    public int? SwingDegrees { get; init; }

    /// <summary>All of it in words a fitter reads.</summary>
    public required string Words { get; init; }
}
