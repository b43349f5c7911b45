using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Growth;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Mould index of a board over a course of humidity at its wettest face.</summary>
internal static class BoardMould
{
    /// <summary>The highest index until the end.</summary>
    /// <param name="panel">A glued board; else solid wood, of which nobody said that it is no pine.</param>
    /// <param name="days">Days of the frames [d].</param>
    /// <param name="humidity">Humidity at the face on each [0–1].</param>
    /// <param name="surfaceC">Its temperature [°C].</param>
    /// <param name="before">Index that it has at the start [0–6].</param>
    public static double Highest(bool panel, IReadOnlyList<double> days, IReadOnlyList<double> humidity, double surfaceC, double before = 0)
    {
        var surface = panel ? MouldSurface.Sensitive : MouldSurface.VerySensitive;
        var state = new MouldIndex.State(before, 0);
        var highest = before;
        for (var f = 1; f < days.Count; f++)
        {
            var middle = 50 * (humidity[f - 1] + humidity[f]);
            state = MouldIndex.Steady(state, surfaceC, Math.Clamp(middle, 0, 100), days[f] - days[f - 1], surface);
            highest = Math.Max(highest, state.Index);
        }
        return highest;
    }

    /// <summary>Index that grew on a piece while it got wet; 0 where nobody worked out how.</summary>
    /// <param name="net">The net.</param>
    /// <param name="wetting">How it got wet; null when nobody knows.</param>
    /// <param name="cell">The piece.</param>
    /// <param name="end">0 low, 1 likely, 2 high.</param>
    /// <param name="surfaceC">Its temperature [°C].</param>
    public static double Before(DampNet net, DampHistory? wetting, int cell, int end, double surfaceC)
    {
        if (wetting is null || wetting.Frames.Count < 2) return 0;
        var material = net.Sheets[net.Cells[cell].Sheet].Material;
        var panel = BoardMaterial.IsPanel(material);
        var humid = wetting.Frames.Select(f => PanelEquilibrium.HumidityFraction((end switch { 0 => f.LowPercent, 1 => f.LikelyPercent, _ => f.HighPercent })[cell], surfaceC, panel ? BoardStuff.PanelFactor : 1)).ToList();
        return Highest(panel, [.. wetting.Frames.Select(f => f.Day)], humid, surfaceC);
    }
}
