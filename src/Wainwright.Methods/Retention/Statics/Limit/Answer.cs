using Wainwright.Methods.Retention.Elastic;

namespace Wainwright.Methods.Retention.Limit;

/// <summary>The solver's flat arrays as a load factor in the words of the trade.</summary>
static class Answer
{
    public static LoadFactor Of(Rig rig, LimitSolver solver, FirstYield? springs, Vector3D direction)
    {
        var solved = solver.Of(direction);
        var (firstG, first) = springs is null ? (double.NaN, null) : solved.CarriesItself ? springs.Of(direction, solved.LowG) : (solved.LowG, null);
        var forces = solver.Forces(solved.State);
        return new(direction, solved.LowG, solved.HighG, solved.CarriesItself,
            Math.Min(firstG, solved.LowG), Governing(rig, solved.Motion), first,
            Motions(rig, solved.Motion),
            [.. forces.Select((f, i) => new FixingForce(f.PullN, f.ShearN, rig.Held.Fixings[i].Strength.ShareOf(f.PullN, f.ShearN.Length)))],
            solver.ContactN(solved.State));
    }

    private static Motion[] Motions(Rig rig, double[] motion) =>
        [.. Enumerable.Range(0, motion.Length / 6).Select(b => new Motion(
            new(motion[6 * b], motion[6 * b + 1], motion[6 * b + 2]),
            (1 / rig.ReachMm) * new Vector3D(motion[6 * b + 3], motion[6 * b + 4], motion[6 * b + 5])))];

    private static int? Governing(Rig rig, double[] motion)
    {
        if (motion.Length == 0) return null;
        var (most, power) = ((int?)null, 0.0);
        for (var i = 0; i < rig.Fixings.Length; i++)
            if (Resisting.To(rig.Fixings[i], rig.Fixings[i].Slip(motion)).Power is var own && own > power) (most, power) = (i, own);
        return most;
    }
}
