using Wainwright.Fitout;

namespace Wainwright.Survey.Damp;

/// <summary>A board of the van as the damp map sees it: one part, all its solids.</summary>
/// <param name="Part">The part.</param>
/// <param name="Name">Its name.</param>
/// <param name="System">What it belongs to.</param>
/// <param name="Material">Its wood, in short.</param>
/// <param name="AreaM2">Area of one face [m²].</param>
/// <param name="ThicknessMm">Thickness [mm].</param>
/// <param name="Group">Sheets of one material share a dry board; the number of that group.</param>
public sealed record DampSheet(PartId Part, string Name, PartSystem System, string Material, double AreaM2, double ThicknessMm, int Group);

/// <summary>A piece of a board, small enough for one figure.</summary>
/// <param name="Sheet">The sheet, by its place in the net's list.</param>
/// <param name="Low">Corner with the smallest coordinates [mm].</param>
/// <param name="High">Corner with the largest [mm].</param>
/// <param name="Across">The axis through the board: 0 x, 1 y, 2 z.</param>
/// <param name="Solid">The solid of the part it was cut from.</param>
public sealed record DampCell(int Sheet, Place Low, Place High, int Across, int Solid)
{
    /// <summary>Its middle [mm].</summary>
    public Place Middle => new((Low.XMm + High.XMm) / 2, (Low.YMm + High.YMm) / 2, (Low.ZMm + High.ZMm) / 2);

    /// <summary>Area of one face [mm²].</summary>
    public double AreaMm2
    {
        get
        {
            var size = High - Low;
            return Across switch { 0 => size.YMm * size.ZMm, 1 => size.XMm * size.ZMm, _ => size.XMm * size.YMm };
        }
    }

    /// <summary>Straight distance from a place to the piece; 0 inside [mm].</summary>
    public double DistanceMm(Place place)
    {
        static double Out(double low, double high, double at) => Math.Max(0, Math.Max(low - at, at - high));
        return new Place(0, 0, 0).DistanceMm(new(Out(Low.XMm, High.XMm, place.XMm), Out(Low.YMm, High.YMm, place.YMm), Out(Low.ZMm, High.ZMm, place.ZMm)));
    }
}
