namespace Wainwright.Paper;

/// <summary>The van's drawing plane set on a piece of paper: scale, and where the origin lies.</summary>
/// <param name="Scale">Millimetres of van to one millimetre of paper.</param>
/// <param name="OriginXMm">Paper x of u = 0.</param>
/// <param name="OriginYMm">Paper y of v = 0.</param>
internal sealed record Sheet(double Scale, double OriginXMm, double OriginYMm)
{
    public double X(double u) => OriginXMm + u / Scale;

    public double Y(double v) => OriginYMm - v / Scale;

    public (double X, double Y) At(Flat p) => (X(p.U), Y(p.V));

    public IEnumerable<(double X, double Y)> At(IEnumerable<Flat> points) => points.Select(At);

    public double Mm(double van) => van / Scale;
}

/// <summary>A rectangle of the drawing plane [mm of the van].</summary>
internal readonly record struct Extent(double U0, double V0, double U1, double V1)
{
    public Extent With(IEnumerable<Flat> points) => points.Aggregate(this, (e, p) =>
        new(Math.Min(e.U0, p.U), Math.Min(e.V0, p.V), Math.Max(e.U1, p.U), Math.Max(e.V1, p.V)));

    public double Width => U1 - U0;

    public double Height => V1 - V0;
}

/// <summary>A rectangle of paper [mm].</summary>
internal readonly record struct PaperBox(double X0, double Y0, double X1, double Y1)
{
    public static PaperBox Around(double x, double y, double width, double height) => new(x - width / 2, y - height / 2, x + width / 2, y + height / 2);

    public static PaperBox Of(IEnumerable<(double X, double Y)> points) => points.Aggregate(
        new PaperBox(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue),
        (f, p) => new(Math.Min(f.X0, p.X), Math.Min(f.Y0, p.Y), Math.Max(f.X1, p.X), Math.Max(f.Y1, p.Y)));

    public bool Meets(PaperBox other) => X0 < other.X1 && other.X0 < X1 && Y0 < other.Y1 && other.Y0 < Y1;

    public double Width => X1 - X0;

    public double Height => Y1 - Y0;
}
