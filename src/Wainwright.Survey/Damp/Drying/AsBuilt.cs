using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Makes layered sheets of the boards of a van, as they are built and under each kind of care.</summary>
/// <remarks>
/// A piece of board is a column: the board in four slices, up to two layers behind it, and a face on either side. What lies on it towards the room is
/// a resistance before the air; under furniture the air is that of a hollow that is aired little. A board that lies whole under another is a layer of its column.
/// Rates of airing, and what a sheet over a seam carries, are own rules, no source.
/// </remarks>
internal sealed class AsBuilt
{
    // air that changes in a hollow under furniture and behind a lining [m³/(h·m²)]: own rules, no source
    private static readonly (double Low, double Likely, double High) UnderFurniture = (0.1, 0.5, 2.5), BehindLining = (0.02, 0.08, 0.4);

    // film of air on a face [m²·s·Pa/kg]: about 4 to 30 mm of it, before a fan 2 to 8; own rules round SheetFace.StillAir
    private static readonly (double Low, double Likely, double High) InStillRoom = (2e7, 5e7, 1.5e8), BeforeFan = (1e7, 2e7, 4e7);

    // a glued sheet over a seam lets water creep along under it; one between two boards keeps it from going through: own rules, no source
    private const double CarriedUnderSheet = 2, HeldBySheet = 0.1;

    private const int MostBehind = 2;

    private const double FinishMm = 12;

    private readonly DampNet net;

    private readonly double panelFactor;

    private readonly List<(SideOfBoard Front, SideOfBoard Back, bool Free)> sides;

    private readonly Dictionary<PartId, Part> parts;

    // the piece whose column each piece is in: itself, or the one it lies under
    private readonly int[] over, layerOf;

    private readonly double[] underSheet;

    /// <summary>Looks at every piece of the net.</summary>
    /// <param name="job">The job.</param>
    /// <param name="net">Its net.</param>
    /// <param name="outNow">Parts that are out.</param>
    /// <param name="panelFactor">Panel against solid wood [-].</param>
    public AsBuilt(Job job, DampNet net, IReadOnlyList<PartId> outNow, double panelFactor)
    {
        (this.net, this.panelFactor) = (net, panelFactor);
        parts = job.Parts.ToDictionary(p => p.Id);
        var lying = new Lying(job, net, outNow);
        sides = [.. net.Cells.Select(c =>
        {
            var way = lying.ToRoom(c);
            SideOfBoard front = lying.Of(c, way == 0 ? 1 : way), back = lying.Of(c, way == 0 ? -1 : -way);
            return way == 0 && Opener(back) < Opener(front) ? (back, front, true) : (front, back, way == 0);
        })];
        (over, layerOf) = Columns();
        underSheet = [.. net.Surface.Links.Select(l => UnderSheet(l.A, l.B))];
    }

    /// <summary>The piece whose column a piece is in: itself, or the one it lies under.</summary>
    public int Over(int cell) => over[cell];

    /// <summary>Whether metal lies behind a piece, with or without a hollow or insulation between.</summary>
    public bool BacksSkin(int cell) => sides[over[cell]].Back.End is Beyond.Skin or Beyond.Void;

    private static int Opener(SideOfBoard side) => (side.End == Beyond.Room ? 0 : side.End == Beyond.Hollow ? 10 : 20) + side.On.Count;

    /// <summary>Every piece its own column, but for one that lies under another board with all of its middle.</summary>
    private (int[] Over, int[] Layer) Columns()
    {
        var column = new int[net.Cells.Count];
        var layer = new int[net.Cells.Count];
        Array.Fill(column, -1);
        var onSheet = net.Cells.Select((c, i) => (c, i)).ToLookup(p => p.c.Sheet, p => p.i);
        for (var i = 0; i < net.Cells.Count; i++)
        {
            var cell = net.Cells[i];
            if (sides[i].Front.On is not [{ Sheet: >= 0, IsClose: true } first, ..]) continue;
            foreach (var other in onSheet[first.Sheet])
                if (net.Cells[other].Across == cell.Across && Holds(net.Cells[other], cell.Middle) && !sides[other].Free && sides[other].Back.On is [{ IsClose: true } behind, ..] && behind.Sheet == cell.Sheet)
                {
                    (column[i], layer[i]) = (other, 1);
                    break;
                }
        }
        // what hangs on a piece that itself lies under another stands for itself
        for (var i = 0; i < column.Length; i++)
            if (column[i] >= 0 && column[column[i]] >= 0) (column[i], layer[i]) = (-1, 0);
        return ([.. column.Select((c, i) => c < 0 ? i : c)], layer);
    }

    private static bool Holds(DampCell cell, Place middle)
    {
        double[] low = BoardCells.Sides(cell.Low), high = BoardCells.Sides(cell.High), at = BoardCells.Sides(middle);
        return Enumerable.Range(0, 3).All(a => a == cell.Across || (low[a] <= at[a] && at[a] <= high[a]));
    }

    /// <summary>The sheets under a kind of care.</summary>
    /// <param name="care">What is done.</param>
    /// <param name="air">The air of it.</param>
    /// <param name="doubt">How far materials and airing are from likely.</param>
    /// <param name="cut">Into how many slices.</param>
    /// <param name="only">These pieces only, with every piece that one of them lies under; null for all.</param>
    public BuiltSheets Under(DryingCare care, DryingAir air, MaterialDoubt doubt, SlicesOfSheet cut, IReadOnlyList<int>? only = null)
    {
        var woods = new WoodsOnce(air.C, doubt, panelFactor);
        only ??= [.. Enumerable.Range(0, net.Cells.Count)];
        var columns = new int[net.Cells.Count];
        Array.Fill(columns, -1);
        Dictionary<string, int> known = [];
        List<BuildUp> buildUps = [];
        List<SheetFace> faces = [];
        List<SheetCell> cells = [];
        List<(int, int)> behind = [];
        foreach (var i in only)
        {
            if (layerOf[i] > 0) continue;
            columns[i] = cells.Count;
            var (layers, faceBelow) = Layers(i, care, air, doubt, woods, cut);
            var name = string.Join('|', layers.Select(l => FormattableString.Invariant($"{l.Material.Name} {l.ThicknessMm:0.#} {l.ResistanceBelow:0.##e0}")));
            if (!known.TryGetValue(name, out var buildUp))
            {
                known.Add(name, buildUp = buildUps.Count);
                buildUps.Add(new(name, layers));
            }
            behind.AddRange(Enumerable.Range(1, layers.Count - 1).Select(l => (cells.Count, l)));
            cells.Add(new(net.Cells[i].AreaMm2, buildUp, Number(faces, FaceAbove(i, care, air, doubt)), Number(faces, faceBelow)));
        }
        int[] column = [.. only.Select(i => columns[over[i]])], layer = [.. only.Select(i => layerOf[i])];
        var read = column.Zip(layer).ToHashSet();
        return new(new(buildUps, faces, cells, Links(columns)), column, layer, [.. behind.Where(b => !read.Contains(b))], cut);
    }

    // free water passes only within one material, so that a board's wood must be the same one in every column
    private sealed class WoodsOnce(double airC, MaterialDoubt doubt, double panelFactor)
    {
        private readonly Dictionary<string, SheetMaterial> woods = [];

        public SheetMaterial Of(string material) => woods.TryGetValue(material, out var known) ? known : woods[material] = BoardStuff.Wood(material, airC, doubt, panelFactor);
    }

    /// <summary>What keeps the water of a board in under a kind of care, in words, by area.</summary>
    public string Closed(int sheet, DryingCare care)
    {
        const double Least = 0.1; // of its area; less is not told
        int[] own = [.. Enumerable.Range(0, net.Cells.Count).Where(c => net.Cells[c].Sheet == sheet)];
        var all = own.Sum(c => net.Cells[c].AreaMm2);
        Dictionary<string, double> told = [];
        void Tell(string what, int cell) => told[what] = told.GetValueOrDefault(what) + net.Cells[cell].AreaMm2;
        foreach (var cell in own)
        {
            // a board in front stays with its own column, whatever is opened
            foreach (var on in sides[cell].Front.On.Where(o => layerOf[cell] > 0 ? o.Sheet >= 0 || !IsAway(o, care) : !IsAway(o, care))) Tell($"under {on.Part.Name} ({on.Part.Id})", cell);
            if (care < DryingCare.OneSideOpened && sides[cell].Front.End == Beyond.Hollow) Tell("in a hollow under or behind furniture", cell);
            if (care < DryingCare.OneSideOpened && sides[cell].Front.End == Beyond.Closed) Tell("something stands hard on it", cell);
        }
        return string.Join("; ", told.Where(t => t.Value > Least * all).OrderByDescending(t => t.Value)
            .Select(t => t.Value > 0.9 * all ? t.Key : FormattableString.Invariant($"{100 * t.Value / all:0} % {t.Key}")));
    }

    private static bool IsAway(Layed on, DryingCare care) => care >= DryingCare.OneSideOpened || (care == DryingCare.FinishLifted && IsFinish(on));

    private static bool IsFinish(Layed on) => on.Sheet < 0 && on.ThicknessMm <= FinishMm && on.Part.System is PartSystem.Floor or PartSystem.Lining;

    private static int Number(List<SheetFace> faces, SheetFace face)
    {
        var at = faces.IndexOf(face);
        if (at >= 0) return at;
        faces.Add(face);
        return faces.Count - 1;
    }

    private (List<SheetLayer> Layers, SheetFace Below) Layers(int cell, DryingCare care, DryingAir air, MaterialDoubt doubt, WoodsOnce woods, SlicesOfSheet cut)
    {
        var sheet = net.Sheets[net.Cells[cell].Sheet];
        List<SheetLayer> layers = [new(woods.Of(sheet.Material), WoodMm(cell), air.C, cut.Board)];
        var back = sides[cell].Back;
        if (sides[cell].Free && care >= DryingCare.OneSideOpened) return (layers, ToRoom(care, 0, air, doubt));
        double film = Facing(cell, air.C, doubt).Back;
        foreach (var on in back.On)
        {
            if (Stuff(on, woods, doubt) is { } material && layers.Count <= MostBehind)
            {
                layers[^1] = layers[^1] with { ResistanceBelow = film };
                layers.Add(new(material, Math.Max(1, on.ThicknessMm), air.C, cut.Behind));
                film = 0;
                continue;
            }
            if (CoverStuff.Resistance(Words(on.Part), on.ThicknessMm, air.C, doubt) is not { } stops || double.IsPositiveInfinity(stops)) return (layers, SheetFace.Sealed);
            film += stops;
        }
        return (layers, FaceOf(back.End, care, film, air, doubt));
    }

    private SheetMaterial? Stuff(Layed on, WoodsOnce woods, MaterialDoubt doubt) =>
        (on.Sheet >= 0 ? net.Sheets[on.Sheet].Material : BoardMaterial.Of(on.Part, [])) is { } wood ? woods.Of(wood) : BoardStuff.Insulation(Words(on.Part), doubt);

    private SheetFace FaceAbove(int cell, DryingCare care, DryingAir air, MaterialDoubt doubt)
    {
        var front = sides[cell].Front;
        var film = Facing(cell, air.C, doubt).Front;
        if (care >= DryingCare.OneSideOpened) return ToRoom(care, film, air, doubt);
        foreach (var on in front.On)
        {
            if (IsAway(on, care)) continue;
            if (CoverStuff.Resistance(Words(on.Part), on.ThicknessMm, air.C, doubt) is not { } stops || double.IsPositiveInfinity(stops)) return SheetFace.Sealed;
            film += stops;
        }
        return FaceOf(front.End, care, film, air, doubt);
    }

    /// <summary>A face to the room behind a film of air, thin before a fan and thick in a van that is shut.</summary>
    private static SheetFace ToRoom(DryingCare care, double film, DryingAir air, MaterialDoubt doubt)
    {
        var (thin, usual, thick) = care == DryingCare.HeatedAndAired ? BeforeFan : InStillRoom;
        return SheetFace.ToAir(air.C, air.HumidityFraction) with { Resistance = film + MaterialDoubt.At(-doubt.Airing, thin, usual, thick) };
    }

    private static SheetFace FaceOf(Beyond end, DryingCare care, double film, DryingAir air, MaterialDoubt doubt)
    {
        SheetFace Aired((double Low, double Likely, double High) rate)
        {
            var hollow = SheetFace.ToCavity(air.C, air.HumidityFraction, MaterialDoubt.At(doubt.Airing, rate.Low, rate.Likely, rate.High));
            return hollow with { Resistance = hollow.Resistance + film };
        }
        return end switch
        {
            Beyond.Room => ToRoom(care, film, air, doubt),
            Beyond.Hollow => Aired(UnderFurniture),
            Beyond.Void => Aired(BehindLining),
            _ => SheetFace.Sealed,
        };
    }

    /// <summary>What the board's own facings stop, on the face to the room and on the other: layers before and after its wood, and a film that its words tell of.</summary>
    private (double Front, double Back) Facing(int cell, double airC, MaterialDoubt doubt)
    {
        var made = Made(cell);
        var wood = made.FindIndex(l => BoardMaterial.Named(l.Material) is not null);
        if (wood < 0) return (0, 0);
        double Sum(IEnumerable<Layer> layers) => layers.Sum(l => CoverStuff.Resistance(l.Material, l.ThicknessMm?.Value ?? 1, airC, doubt) ?? 0);
        return (Sum(made.Take(wood)) + CoverStuff.Film(made[wood].Material, doubt.Resistance), Sum(made.Skip(wood + 1).Where(l => BoardMaterial.Named(l.Material) is null)));
    }

    private double WoodMm(int cell)
    {
        var size = net.Cells[cell].High - net.Cells[cell].Low;
        var thick = BoardCells.Sides(size)[net.Cells[cell].Across];
        var faced = Made(cell).Where(l => BoardMaterial.Named(l.Material) is null).Sum(l => l.ThicknessMm?.Value ?? 0);
        return Math.Round(Math.Max(1, thick - faced < thick / 3 ? thick : thick - faced), 1);
    }

    private List<Layer> Made(int cell) => parts.TryGetValue(net.Sheets[net.Cells[cell].Sheet].Part, out var part) ? [.. part.Made] : [];

    private static string Words(Part part) => part.Made.Count > 0 ? string.Join(", ", part.Made.Select(l => l.Material)) : part.Name;

    private List<SheetLink> Links(int[] columns)
    {
        List<SheetLink> links = [];
        for (var l = 0; l < net.Surface.Links.Count; l++)
        {
            var link = net.Surface.Links[l];
            if (columns[link.A] >= 0 && columns[link.B] >= 0) links.Add(new(columns[link.A], columns[link.B], link.Conductance * underSheet[l]));
        }
        return links;
    }

    /// <summary>What a covering does to a join: carries water along a seam that it covers whole, keeps it from a board that it parts from the other.</summary>
    private double UnderSheet(int a, int b)
    {
        DampCell one = net.Cells[a], other = net.Cells[b];
        if (one.Across != other.Across || (one.Sheet == other.Sheet && parts.TryGetValue(net.Sheets[one.Sheet].Part, out var part) && BoardJoins.IsOnePiece(part, one.Solid, other.Solid))) return 1;
        if (sides[a].Front.On is [{ Sheet: < 0 } over, ..] && sides[b].Front.On is [{ Sheet: < 0 } next, ..] && over.Part.Id == next.Part.Id) return CarriedUnderSheet;
        double[] low = BoardCells.Sides(one.Low), high = BoardCells.Sides(one.High), otherLow = BoardCells.Sides(other.Low), otherHigh = BoardCells.Sides(other.High);
        var apart = Math.Max(otherLow[one.Across] - high[one.Across], low[one.Across] - otherHigh[one.Across]);
        return apart > 0.5 ? HeldBySheet : 1;
    }
}
