using Wainwright.Fitout;

namespace Wainwright.Access;

internal sealed partial class Scene
{
    /// <summary>The items that say a part, and each of its pieces, is out.</summary>
    private void AddOut(Part part)
    {
        isOut[part.Id] = Add(new IsOut(part, null));
        if (part.ComesApartInto.Count == 0) return;
        foreach (var piece in PiecesOf(part))
        {
            pieceOut[(part.Id, piece.Name)] = Add(new IsOut(part, piece.Name));
            items[isOut[part.Id]].Needs.Add(pieceOut[(part.Id, piece.Name)]);
        }
    }

    /// <summary>The ways a part can go: with all it carries, alone when that is out already, or in pieces.</summary>
    private void AddWays(Part part)
    {
        var load = LoadOf(part);
        AddWay(part, [.. load.Skip(1)]);
        if (load.Count > 1)
        {
            var alone = AddWay(part, []);
            foreach (var with in load.Skip(1)) items[alone].Needs.Add(isOut[with.Id]);
        }
        if (part.ComesApartInto.Count == 0) return;
        foreach (var (name, minutes, solids) in PiecesOf(part))
        {
            var (carryOut, carryBack, _) = options.Labour.Carry(null, Longest(solids), isLoose: false);
            var piece = Add(new TakePiece(part, name, solids)
            {
                Price = new(minutes + carryOut, minutes + carryBack, 0),
                Origin = $"pieces: as recorded; carrying: {Estimate}",
            });
            NeedWhatHolds(piece, [part]);
            foreach (var with in load.Skip(1)) items[piece].Needs.Add(isOut[with.Id]);
            One(pieceOut[(part.Id, name)], piece);
        }
    }

    private int AddWay(Part part, IReadOnlyList<Part> with)
    {
        IReadOnlyList<Part> load = [part, .. with];
        double? mass = load.All(p => p.EmptyKg is not null) ? load.Sum(p => p.EmptyKg!.Value.Value + Can.FillKg(p)) : null;
        var (carryOut, carryBack, people) = options.Labour.Carry(mass, Longest([.. load.SelectMany(p => p.Solids)]), part.LooseGoods);
        var unload = options.Labour.ContentsPerKg * load.Sum(p => p.Contents.Sum(c => c.MassKg.Value));
        var hold = load.Any(p => Hanging.Of(p.Id) is not null) ? options.Labour.HoldOverhead : 0;
        var way = Add(new TakeOut(part, with)
        {
            Price = new(carryOut + unload + hold, carryBack + unload + hold, 0),
            Origin = Estimate,
            People = people,
        });
        NeedWhatHolds(way, load);
        Allow(part, way);
        return way;
    }

    private const string Estimate = "estimate, no source";

    /// <summary>A way by which the part, and each piece of it, is out.</summary>
    private void Allow(Part part, int way)
    {
        if (part.ComesApartInto.Count == 0) One(isOut[part.Id], way);
        foreach (var piece in part.ComesApartInto.Count == 0 ? [] : PiecesOf(part)) One(pieceOut[(part.Id, piece.Name)], way);
    }

    /// <summary>One more way to be out.</summary>
    private void One(int out_, int way)
    {
        var ways = items[out_].AnyOf;
        if (ways.Count == 0) ways.Add([way]);
        else ways[0] = [.. ways[0], way];
    }

    /// <summary>Joints, line ends, and what stands on any of the load; nothing that only holds the load together.</summary>
    private void NeedWhatHolds(int way, IReadOnlyList<Part> load)
    {
        var ids = load.Select(p => p.Id).ToHashSet();
        var needs = items[way].Needs;
        foreach (var joint in job.Joints.Where(j => undo.ContainsKey(j.Id) && ids.Contains(j.Part) != (j.To is { } to && ids.Contains(to))))
            if (joint.To is not { } other || !already.Contains(other) || ids.Contains(other)) needs.Add(undo[joint.Id]);
        foreach (var line in job.Lines) NeedLine(way, ids, line);
        foreach (var above in Standing.Where(p => !ids.Contains(p.Id) && p.StandsOn.Any(ids.Contains))) needs.Add(isOut[above.Id]);
        foreach (var (owner, device) in load.SelectMany(p => p.Devices.Select(d => (p, d))))
            switch (device)
            {
                case Battery: needs.Add(Safe(Medium.Dc)); break;
                case AirHeater: needs.Add(Safe(Medium.Exhaust)); break;
                // a level that nobody has read may be full
                case Tank tank when (tank.FilledL ?? tank.VolumeL).High > 0 && !(Can.Is(owner) && Can.HoldsWater(tank)): NeedSafe(way, tank.Holds); break;
            }
    }

    private void NeedLine(int way, HashSet<PartId> load, Line line)
    {
        var isLoad = line.Part is { } run && load.Contains(run);
        if (line.Part is { } gone && already.Contains(gone)) return;
        bool Within(LineEnd end) => end.Part is { } part && load.Contains(part);
        if (isLoad)
        {
            if (!Within(line.From)) items[way].Needs.Add(End(line, line.From, isFrom: true));
            if (!Within(line.To)) items[way].Needs.Add(End(line, line.To, isFrom: false));
            return;
        }
        if (Within(line.From) && !Within(line.To)) items[way].Needs.Add(End(line, line.From, isFrom: true));
        if (Within(line.To) && !Within(line.From)) items[way].Needs.Add(End(line, line.To, isFrom: false));
        // what runs through a hole of the part is freed at one end and drawn back
        if (line.Through.Any(load.Contains) && !(Within(line.From) && Within(line.To)))
            items[way].AnyOf.Add([End(line, line.From, isFrom: true), End(line, line.To, isFrom: false)]);
    }

    private static double Longest(IReadOnlyList<Fitout.Solid> solids)
    {
        if (solids.Count == 0) return 0;
        var all = solids.Select(s => s.Bounds()).ToList();
        return Math.Max(all.Max(b => b.High.XMm) - all.Min(b => b.Low.XMm), Math.Max(
            all.Max(b => b.High.YMm) - all.Min(b => b.Low.YMm), all.Max(b => b.High.ZMm) - all.Min(b => b.Low.ZMm)));
    }
}
