namespace Wainwright.Methods.Combustion;

/// <summary>Loss coefficients of air-duct fittings: Δp = K·ρ·v²/2.</summary>
public static class FittingLoss
{
    /// <summary>A public engineering table.</summary>
    public static readonly Basis Basis = new(
        Source: "engineeringtoolbox.com, minor losses in air ducts fittings, table d_208",
        Assumes: ["turbulent flow", "fittings apart from each other"],
        Caution: "Coefficients of one fitting differ by half between tables.",
        How: Provenance.Read);

    /// <summary>90° bend, sharp [-].</summary>
    public const double SharpBend90 = 1.3;

    /// <summary>90° bend, rounded, small radius [-].</summary>
    public const double TightBend90 = 0.5;

    /// <summary>90° bend, rounded, large radius [-].</summary>
    public const double WideBend90 = 0.25;

    /// <summary>45° bend, sharp [-].</summary>
    public const double SharpBend45 = 0.5;

    /// <summary>Tee, flow to the branch [-].</summary>
    public const double TeeToBranch = 0.3;

    /// <summary>Duct into a room [-].</summary>
    public const double DuctToRoom = 1.0;

    /// <summary>Room into a duct [-].</summary>
    public const double RoomToDuct = 0.35;

    static readonly (double FreeFraction, double K)[] Grilles = [(0.2, 50), (0.3, 20), (0.4, 10), (0.5, 6), (0.6, 4), (0.7, 3)];

    /// <summary>Grille by the free part of its face, log-interpolated between the table's rows [-].</summary>
    /// <param name="freeFraction">Free part of the face [0.2–0.7].</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the table: it is never extrapolated.</exception>
    public static double OfGrille(double freeFraction)
    {
        Must.BeWithin(freeFraction, Grilles[0].FreeFraction, Grilles[^1].FreeFraction);
        var above = Array.FindIndex(Grilles, g => g.FreeFraction >= freeFraction);
        if (above == 0) return Grilles[0].K;
        var (lowF, lowK) = Grilles[above - 1];
        var (highF, highK) = Grilles[above];
        return lowK * Math.Pow(highK / lowK, (freeFraction - lowF) / (highF - lowF));
    }

    /// <summary>A bend of another angle, in proportion to a right angle's [-].</summary>
    /// <param name="right">Coefficient of the 90° bend [-].</param>
    /// <param name="degrees">Angle [°], 0 to 180.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfBend(double right, double degrees) => Must.NotBeNegative(right) * Must.BeWithin(degrees, 0, 180) / 90;
}
