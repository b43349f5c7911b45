namespace Wainwright.Published.Retention;

/// <summary>Exact factors of the units in which the sources print.</summary>
static class Us
{
    public const double In = 25.4, Lb = 4.4482216152605, Psi = Lb / (In * In), Ksi = 1000 * Psi, LbPerIn = Lb / In;
}
