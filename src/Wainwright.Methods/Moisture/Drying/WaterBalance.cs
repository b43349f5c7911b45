namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Where all the water is.</summary>
/// <param name="StartKg">In the sheets at the start [kg].</param>
/// <param name="LeakedKg">Let in by leaks [kg].</param>
/// <param name="GivenOffKg">Given off through the faces, less what they took up [kg].</param>
/// <param name="NowKg">In the sheets now [kg].</param>
public sealed record WaterBalance(double StartKg, double LeakedKg, double GivenOffKg, double NowKg)
{
    /// <summary>What the sum does not account for, against all water there was [-].</summary>
    public double RelativeError => Math.Abs(NowKg - StartKg - LeakedKg + GivenOffKg) / Math.Max(StartKg + LeakedKg, 1e-300);
}
