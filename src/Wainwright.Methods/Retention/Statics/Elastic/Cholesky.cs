namespace Wainwright.Methods.Retention.Elastic;

/// <summary>Square root of a positive matrix, in place, and the solution with it.</summary>
static class Cholesky
{
    /// <returns>False when the matrix is not positive.</returns>
    public static bool Factor(double[] matrix, int n)
    {
        for (var c = 0; c < n; c++)
        {
            var sum = matrix[c * n + c];
            for (var k = 0; k < c; k++) sum -= matrix[c * n + k] * matrix[c * n + k];
            if (!(sum > 0)) return false;
            var root = Math.Sqrt(sum);
            matrix[c * n + c] = root;
            for (var r = c + 1; r < n; r++)
            {
                var cell = matrix[r * n + c];
                for (var k = 0; k < c; k++) cell -= matrix[r * n + k] * matrix[c * n + k];
                matrix[r * n + c] = cell / root;
            }
        }
        return true;
    }

    public static void Solve(double[] factor, int n, double[] right)
    {
        for (var r = 0; r < n; r++)
        {
            var sum = right[r];
            for (var k = 0; k < r; k++) sum -= factor[r * n + k] * right[k];
            right[r] = sum / factor[r * n + r];
        }
        for (var r = n - 1; r >= 0; r--)
        {
            var sum = right[r];
            for (var k = r + 1; k < n; k++) sum -= factor[k * n + r] * right[k];
            right[r] = sum / factor[r * n + r];
        }
    }
}
