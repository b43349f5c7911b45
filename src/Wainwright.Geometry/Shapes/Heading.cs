namespace Wainwright.Geometry;

/// <summary>The six directions along the axes; each pair is an even value and the next odd one.</summary>
public enum Heading
{
    /// <summary>Towards smaller x.</summary>
    MinusX,

    /// <summary>Towards greater x.</summary>
    PlusX,

    /// <summary>Towards smaller y.</summary>
    MinusY,

    /// <summary>Towards greater y.</summary>
    PlusY,

    /// <summary>Towards smaller z.</summary>
    MinusZ,

    /// <summary>Towards greater z.</summary>
    PlusZ,
}

/// <summary>What a heading means in numbers.</summary>
public static class Headings
{
    /// <summary>0 for x, 1 for y, 2 for z.</summary>
    public static int Axis(this Heading heading) => (int)heading / 2;

    /// <summary>−1 or +1.</summary>
    public static int Sign(this Heading heading) => ((int)heading & 1) == 0 ? -1 : 1;

    /// <summary>The way back.</summary>
    public static Heading Opposite(this Heading heading) => (Heading)((int)heading ^ 1);
}
