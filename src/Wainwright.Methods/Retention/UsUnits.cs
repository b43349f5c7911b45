namespace Wainwright.Methods.Retention;

/// <summary>Exact factors of the units in which the American documents print their equations.</summary>
static class UsUnits
{
    public const double MmPerIn = 25.4, NPerLb = 4.4482216152605, MPaPerPsi = NPerLb / (MmPerIn * MmPerIn), NPerMmPerLbPerIn = NPerLb / MmPerIn;
}
