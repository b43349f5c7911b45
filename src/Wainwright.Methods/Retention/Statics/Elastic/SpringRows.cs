using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention.Elastic;

/// <summary>How far a spring in one direction is drawn out by each degree of freedom that it feels: six of its body, six of what holds that.</summary>
sealed class SpringRows
{
    private readonly double[] _drawn;
    private readonly int[] _at;

    public SpringRows(Vector3D way, in FixingArm fixing) : this(way, fixing.Body, fixing.ArmBody, fixing.To, fixing.ArmTo)
    {
    }

    public SpringRows(Vector3D way, int body, Vector3D armBody, int to, Vector3D armTo)
    {
        _drawn = new double[to < 0 ? 6 : 12];
        _at = [.. Enumerable.Range(0, _drawn.Length).Select(k => k < 6 ? 6 * body + k : 6 * to + k - 6)];
        Relative.Add(_drawn, 0, armBody, to < 0 ? -1 : 1, armTo, way);
    }

    public void Spread(double stiffness, double[] matrix, int n)
    {
        if (stiffness == 0) return;
        for (var r = 0; r < _drawn.Length; r++)
        {
            var by = stiffness * _drawn[r];
            var row = matrix.AsSpan(_at[r] * n, n);
            for (var c = 0; c < _drawn.Length; c++) row[_at[c]] += by * _drawn[c];
        }
    }
}
