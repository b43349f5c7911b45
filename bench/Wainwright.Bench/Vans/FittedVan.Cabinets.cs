using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

sealed partial class FittedVan
{
    private void Cabinet(Place place, int things)
    {
        var (x0, x1, deep) = (place.FromMm, place.ToMm, place.DeepMm);
        var top = LowMm - BoardMm;
        var carcass = Carcass(place, x0, x1, deep, FloorMm, top, [.. floor.Where(f => Under(f, place))]);
        var (middle, inside) = ((x0 + x1) / 2.0, deep - BoardMm);
        Held(carcass, null, Heading.PlusZ, place.At(middle, deep / 2, FloorMm + BoardMm), place.At(middle, deep * 3 / 4, FloorMm + BoardMm));
        Front(place, carcass, deep, FloorMm, top);
        var slab = Add(Sort.Top, 3 + random.Next(4), [carcass], place.Box(x0, 0, top, x1, deep, LowMm));
        Held(slab, carcass, Heading.MinusZ, place.At(middle, deep / 2, top));
        Things(place, carcass, new(x0 + BoardMm, 0, FloorMm + BoardMm, x1 - BoardMm, inside, top), things);
    }

    private void Locker(Place place, int things)
    {
        var carcass = Carcass(place, place.FromMm, place.ToMm, LockerDeepMm, LockerFromMm, LockerToMm, []);
        var middle = (place.FromMm + place.ToMm) / 2.0;
        Held(carcass, null, place.Inwards, place.At(middle, BoardMm, LockerToMm - 100), place.At(middle, BoardMm, LockerFromMm + 100));
        Front(place, carcass, LockerDeepMm, LockerFromMm, LockerToMm);
        Things(place, carcass, new(place.FromMm + BoardMm, 0, LockerFromMm + BoardMm, place.ToMm - BoardMm, LockerDeepMm - BoardMm, LockerToMm), things);
    }

    /// <summary>Bottom, back and two sides: open in front and above.</summary>
    private int Carcass(Place place, int x0, int x1, int deep, int z0, int z1, IReadOnlyList<int> on) => Add(
        Sort.Carcass, 5 + random.Next(8), on,
        place.Box(x0, 0, z0, x1, deep - BoardMm, z0 + BoardMm), place.Box(x0, 0, z0, x1, BoardMm, z1),
        place.Box(x0, 0, z0, x0 + BoardMm, deep - BoardMm, z1), place.Box(x1 - BoardMm, 0, z0, x1, deep - BoardMm, z1));

    private void Front(Place place, int carcass, int deep, int z0, int z1)
    {
        var front = Add(Sort.Front, 1 + random.Next(3), [], place.Box(place.FromMm, deep - BoardMm, z0, place.ToMm, deep, z1));
        Held(front, carcass, place.Inwards, place.At(place.FromMm + 60, deep, z0 + 100), place.At(place.ToMm - 60, deep, z1 - 100));
    }

    /// <summary>Things that fill the inside, one above the other and every third behind its neighbour, each with a little room.</summary>
    private void Things(Place place, int carcass, Box inside, int count)
    {
        var rows = Math.Max(1, (count + 1) / 2);
        for (var i = 0; i < count; i++)
        {
            var (row, isBehind, isAlone) = (i / 2, i % 2 == 1, i == count - 1 && count % 2 == 1);
            var (z0, z1) = (inside.Z0 + (inside.Z1 - inside.Z0) * row / rows, inside.Z0 + (inside.Z1 - inside.Z0) * (row + 1) / rows - 10);
            var (near, far) = (BoardMm + 5, inside.Y1 - 5);
            var half = (near + far) / 2;
            if (!isAlone) (near, far) = isBehind ? (near, half - 5) : (half, far);
            var (x0, x1) = (inside.X0 + 5 + random.Next(10), inside.X1 - 5 - random.Next(10));
            var thing = Add(Sort.Fitted, 3 + random.Next(10), [carcass], place.Box(x0, near, z0 + 5, x1, far, z1));
            Held(thing, carcass, place.Inwards, place.At((x0 + x1) / 2.0, far, (z0 + z1) / 2.0));
            wanted.Add(thing);
        }
    }

    private bool Under(int sheet, Place place)
    {
        var box = parts[sheet].Boxes[0];
        return box.X0 < place.ToMm && place.FromMm < box.X1 && (box.Y0 == 0) == place.IsLeft;
    }
}
