using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A straight line with a thickness: a limb, or at no thickness a line of sight.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends; not the beginning.</param>
/// <param name="RadiusMm">Half its thickness, round, ends rounded off; 0 for a line of sight.</param>
internal readonly record struct Stick(Point From, Point To, double RadiusMm)
{
    private const double Nothing = 1e-7;
    private const int Halvings = 24;

    /// <summary>The smallest box around it.</summary>
    public Box Bounds => new(
        Down(Math.Min(From.XMm, To.XMm)), Down(Math.Min(From.YMm, To.YMm)), Down(Math.Min(From.ZMm, To.ZMm)),
        Up(Math.Max(From.XMm, To.XMm)), Up(Math.Max(From.YMm, To.YMm)), Up(Math.Max(From.ZMm, To.ZMm)));

    /// <summary>Whether it runs into a box; touching it is not running into it.</summary>
    public bool Meets(in Box box) => Enters(box) is not null;

    /// <summary>Where along it [0 to 1] it first comes as near to a box as its thickness allows; nothing when it clears the box.</summary>
    public double? Enters(in Box box)
    {
        var (low, high) = (0.0, 1.0);
        if (!Narrow(From.XMm, To.XMm - From.XMm, box.X0, box.X1, ref low, ref high)
            || !Narrow(From.YMm, To.YMm - From.YMm, box.Y0, box.Y1, ref low, ref high)
            || !Narrow(From.ZMm, To.ZMm - From.ZMm, box.Z0, box.Z1, ref low, ref high)) return null;
        if (RadiusMm == 0) return high - low > Nothing ? low : null;
        return Nearest(box, low, high) < RadiusMm - Nothing ? low : null;
    }

    /// <summary>From where to where along an axis the line is within a box that it meets [mm].</summary>
    public (double Low, double High) Within(in Box box, int axis)
    {
        var (low, high) = (0.0, 1.0);
        Narrow(From.XMm, To.XMm - From.XMm, box.X0, box.X1, ref low, ref high);
        Narrow(From.YMm, To.YMm - From.YMm, box.Y0, box.Y1, ref low, ref high);
        Narrow(From.ZMm, To.ZMm - From.ZMm, box.Z0, box.Z1, ref low, ref high);
        var (from, to) = axis switch { 0 => (From.XMm, To.XMm), 1 => (From.YMm, To.YMm), _ => (From.ZMm, To.ZMm) };
        var (a, b) = (from + low * (to - from), from + high * (to - from));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>The distance to a box is convex along the line: thirds are cut off where it is larger.</summary>
    private double Nearest(in Box box, double low, double high)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var (a, b) = (low + (high - low) / 3, high - (high - low) / 3);
            var (da, db) = (SquareTo(box, a), SquareTo(box, b));
            if (da == 0 || db == 0) return 0;
            if (da < db) high = b;
            else low = a;
        }
        return Math.Sqrt(SquareTo(box, (low + high) / 2));
    }

    private double SquareTo(in Box box, double at)
    {
        var x = Beyond(From.XMm + at * (To.XMm - From.XMm), box.X0, box.X1);
        var y = Beyond(From.YMm + at * (To.YMm - From.YMm), box.Y0, box.Y1);
        var z = Beyond(From.ZMm + at * (To.ZMm - From.ZMm), box.Z0, box.Z1);
        return x * x + y * y + z * z;
    }

    private static double Beyond(double at, double low, double high) => at < low ? low - at : at > high ? at - high : 0;

    private bool Narrow(double from, double along, double boxLow, double boxHigh, ref double low, ref double high)
    {
        (boxLow, boxHigh) = (boxLow - RadiusMm, boxHigh + RadiusMm);
        if (Math.Abs(along) < Nothing) return from > boxLow + Nothing && from < boxHigh - Nothing;
        var (a, b) = ((boxLow - from) / along, (boxHigh - from) / along);
        if (a > b) (a, b) = (b, a);
        low = Math.Max(low, a);
        high = Math.Min(high, b);
        return low < high;
    }

    private int Down(double mm) => (int)Math.Floor(mm - RadiusMm);

    private int Up(double mm) => (int)Math.Ceiling(mm + RadiusMm);
}
