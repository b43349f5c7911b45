namespace Wainwright.Methods.Retention;

/// <summary>Fixings that hold by their shank or thread in wood.</summary>
public enum WoodFixing
{
    /// <summary>Lag screw (coach screw), nominal 6 mm and more.</summary>
    LagScrew,

    /// <summary>Wood screw with a smooth shank under the head.</summary>
    WoodScrew,

    /// <summary>Screw threaded to the head; NDS gives it no row of its own: counted as a wood screw there.</summary>
    SheetMetalScrew,

    /// <summary>Smooth round nail or brad.</summary>
    SmoothNail,
}
