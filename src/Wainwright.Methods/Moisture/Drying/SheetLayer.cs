namespace Wainwright.Methods.Moisture.Drying;

/// <summary>One layer of a sheet.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="ThicknessMm">Thickness [mm], above 0.</param>
/// <param name="TemperatureC">Its temperature [°C], −20 to 60.</param>
/// <param name="Slices">Into how many slices it is cut for the sum, 1 to 200.</param>
/// <param name="ResistanceBelow">Z of a film under it, adhesive or membrane [m²·s·Pa/kg], 0 or more; infinite stops all vapour.</param>
public sealed record SheetLayer(SheetMaterial Material, double ThicknessMm, double TemperatureC, int Slices = 1, double ResistanceBelow = 0);

/// <summary>The layers of a sheet, from the face that people see to the face they do not.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Layers">From top (inside) to bottom (outside), at least one.</param>
public sealed record BuildUp(string Name, IReadOnlyList<SheetLayer> Layers);
