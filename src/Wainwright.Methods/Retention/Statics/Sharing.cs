namespace Wainwright.Methods.Retention;

/// <summary>How pull N and shear V share a fixing's strength (capacities Nc and Vc).</summary>
public enum Sharing
{
    /// <summary>N/Nc + V/Vc ≤ 1: nails, and the careful choice where nothing is published.</summary>
    Straight,

    /// <summary>(N/Nc)² + (V/Vc)² ≤ 1: screws after Eurocode 5.</summary>
    Round,

    /// <summary>Each on its own: N ≤ Nc and V ≤ Vc.</summary>
    Apart,
}
