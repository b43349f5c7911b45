using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>A point on the drawing plane [mm of the van].</summary>
/// <param name="U">To the right of the page.</param>
/// <param name="V">Up the page, unless what gives it says down.</param>
public readonly record struct Flat(double U, double V);

/// <summary>Vehicle axes laid onto the page: u, v, and depth, which grows away from the eye.</summary>
internal sealed class Projection(SectionView view)
{
    /// <summary>Depth of the cut.</summary>
    public double CutDepth { get; } = view.From is SeenFrom.Left ? view.CutMm : -view.CutMm;

    public Flat Of(Place p) => view.From switch
    {
        SeenFrom.Left => new(p.XMm, p.ZMm),
        SeenFrom.Right => new(-p.XMm, p.ZMm),
        SeenFrom.Above => new(p.XMm, p.YMm),
        _ => new(p.YMm, p.ZMm),
    };

    public double Depth(Place p) => view.From switch
    {
        SeenFrom.Left => p.YMm,
        SeenFrom.Right => -p.YMm,
        SeenFrom.Above => -p.ZMm,
        _ => -p.XMm,
    };
}
