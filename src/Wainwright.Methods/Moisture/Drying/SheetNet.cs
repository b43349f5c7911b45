namespace Wainwright.Methods.Moisture.Drying;

/// <summary>A cell of a net of sheets.</summary>
/// <param name="AreaMm2">Area [mm²], above 0.</param>
/// <param name="BuildUp">Which build-up of the net.</param>
/// <param name="Top">Which face of the net it has on top.</param>
/// <param name="Bottom">Which face of the net it has below.</param>
public readonly record struct SheetCell(double AreaMm2, int BuildUp, int Top, int Bottom);

/// <summary>A way along the sheet from cell to cell, slice to slice of the same number.</summary>
/// <param name="A">One cell.</param>
/// <param name="B">The other.</param>
/// <param name="Conductance">Length of the common edge over the distance of the middles [-], times what a joint lets through (0–1).</param>
public readonly record struct SheetLink(int A, int B, double Conductance);

/// <summary>Water that comes in.</summary>
/// <param name="Cell">Into which cell.</param>
/// <param name="Layer">Into which layer of it.</param>
/// <param name="KgPerH">How fast [kg/h], 0 or more.</param>
/// <param name="FromDay">From when [d].</param>
/// <param name="ToDay">Until when [d], not before.</param>
public sealed record LeakSource(int Cell, int Layer, double KgPerH, double FromDay, double ToDay);

/// <summary>Sheets as cells, joined at edges however the caller likes.</summary>
/// <param name="BuildUps">Build-ups that cells refer to.</param>
/// <param name="Faces">Faces that cells refer to.</param>
/// <param name="Cells">Cells.</param>
/// <param name="Links">Links.</param>
public sealed record SheetNet(IReadOnlyList<BuildUp> BuildUps, IReadOnlyList<SheetFace> Faces, IReadOnlyList<SheetCell> Cells, IReadOnlyList<SheetLink> Links)
{
    /// <summary>A flat rectangle of square cells, all alike but for the face on top.</summary>
    /// <param name="columns">Cells along x, 1 or more.</param>
    /// <param name="rows">Cells along y, 1 or more.</param>
    /// <param name="edgeMm">Edge of a cell [mm], above 0.</param>
    /// <param name="buildUp">Layers.</param>
    /// <param name="top">Face on top of a cell, by column and row.</param>
    /// <param name="bottom">Face below.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static SheetNet Flat(int columns, int rows, double edgeMm, BuildUp buildUp, Func<int, int, SheetFace> top, SheetFace bottom)
    {
        var area = Must.BePositive(edgeMm) * edgeMm;
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        List<SheetFace> faces = [bottom];
        List<SheetCell> cells = [];
        List<SheetLink> links = [];
        for (var row = 0; row < rows; row++)
            for (var column = 0; column < columns; column++)
            {
                var face = top(column, row);
                var at = faces.IndexOf(face);
                if (at < 0)
                {
                    at = faces.Count;
                    faces.Add(face);
                }
                var cell = cells.Count;
                cells.Add(new(area, 0, at, 0));
                if (column > 0) links.Add(new(cell - 1, cell, 1));
                if (row > 0) links.Add(new(cell - columns, cell, 1));
            }
        return new([buildUp], faces, cells, links);
    }
}
