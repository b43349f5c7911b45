using Google.OrTools.LinearSolver;
using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>The same question put to a general linear solver: one program a direction, polyhedra written as their facets. The bench races it too.</summary>
static class GeneralProgram
{
    const double GravityMPerS2 = 9.80665;

    /// <returns>Largest throw [g]; infinite when unbounded; absent when it cannot stand at rest.</returns>
    public static double? Factor(Held held, Vector3D direction, RegionShape shape) =>
        Solve(held, direction, shape, 0) is null ? null : OfStanding(held, direction, shape);

    /// <summary>The same for what is known to stand at rest: one program less.</summary>
    public static double? OfStanding(Held held, Vector3D direction, RegionShape shape) => Solve(held, direction, shape, double.PositiveInfinity);

    static double? Solve(Held held, Vector3D direction, RegionShape shape, double mostG)
    {
        using var solver = Solver.CreateSolver("GLOP");
        solver.SetSolverSpecificParametersAsString("primal_feasibility_tolerance: 1e-10 dual_feasibility_tolerance: 1e-10 use_dual_simplex: false");
        var throwG = solver.MakeNumVar(0, mostG, "a");
        var rows = held.Bodies.SelectMany((b, n) => Enumerable.Range(0, 6).Select(r => solver.MakeConstraint(0, 0, $"{n} {r}"))).ToArray();
        const double kN = 1000, m = 1000;
        void On(int body, Vector3D atMm, Vector3D force, Variable variable)
        {
            var moment = (1 / m) * (atMm - held.Bodies[body].CentreMm).Cross(force);
            double[] six = [force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z];
            for (var r = 0; r < 6; r++) rows[6 * body + r].SetCoefficient(variable, rows[6 * body + r].GetCoefficient(variable) + six[r]);
        }
        for (var b = 0; b < held.Bodies.Count; b++)
        {
            var weight = held.Bodies[b].MassKg * GravityMPerS2 / kN;
            On(b, held.Bodies[b].CentreMm, weight * direction.Unit(), throwG);
            rows[6 * b + 2].SetBounds(weight, weight);
        }
        foreach (var fixing in held.Fixings)
        {
            var (first, second) = fixing.PullAxis.Across();
            var pull = solver.MakeNumVar(0, double.PositiveInfinity, "n");
            Variable[] shear = [solver.MakeNumVar(double.NegativeInfinity, double.PositiveInfinity, "v"), solver.MakeNumVar(double.NegativeInfinity, double.PositiveInfinity, "w")];
            foreach (var (variable, way) in ((Variable, Vector3D)[])[(pull, fixing.PullAxis.Unit()), (shear[0], first), (shear[1], second)])
            {
                On(fixing.Body, fixing.AtMm, -way, variable);
                if (fixing.To is { } to) On(to, fixing.AtMm, way, variable);
            }
            foreach (var (p, s, most) in Facets(fixing.Strength.Sharing, shape))
                for (var k = 0; k < shape.Corners; k++)
                {
                    // p N/Nc + s V/Vc ≤ most, V measured square to the k-th side of the polygon
                    var (sin, cos) = Math.SinCos(2 * Math.PI * (k + 0.5) / shape.Corners);
                    var side = shape.Around ? 1 : Math.Cos(Math.PI / shape.Corners);
                    var limit = solver.MakeConstraint(double.NegativeInfinity, most);
                    limit.SetCoefficient(pull, p * kN / fixing.Strength.PullN);
                    limit.SetCoefficient(shear[0], s * kN / fixing.Strength.ShearN / side * cos);
                    limit.SetCoefficient(shear[1], s * kN / fixing.Strength.ShearN / side * sin);
                }
        }
        foreach (var contact in held.Contacts)
        {
            var push = solver.MakeNumVar(0, double.PositiveInfinity, "p");
            On(contact.Body, contact.AtMm, contact.Normal.Unit(), push);
            if (contact.To is { } to) On(to, contact.AtMm, -contact.Normal.Unit(), push);
        }
        solver.Objective().SetCoefficient(throwG, 1);
        solver.Objective().SetMaximization();
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => solver.Objective().Value(),
            Solver.ResultStatus.INFEASIBLE => null,
            // this solver says "abnormal" or "unbounded" for a ray
            _ => double.PositiveInfinity,
        };
    }

    /// <summary>Sides of the region in the plane of pull and shear: p N/Nc + s V/Vc ≤ most.</summary>
    static IEnumerable<(double P, double S, double Most)> Facets(Sharing sharing, RegionShape shape)
    {
        if (sharing == Sharing.Straight) return [(1, 1, 1)];
        if (sharing == Sharing.Apart) return [(1, 0, 1), (0, 1, 1)];
        var steps = Math.Max(2, shape.Corners / 4);
        var half = Math.PI / (4 * steps);
        // sides between neighbouring corners on the quarter circle; around it, the corners lie 1/cos(half) out and the sides touch
        return [.. Enumerable.Range(0, steps).Select(k => Math.SinCos((2 * k + 1) * half)).Select(t => (t.Sin, t.Cos, shape.Around ? 1 : Math.Cos(half))),
            .. shape.Around ? [(1.0, 0.0, 1 / Math.Cos(half)), (0.0, 1.0, 1 / Math.Cos(half))] : Array.Empty<(double, double, double)>()];
    }
}
