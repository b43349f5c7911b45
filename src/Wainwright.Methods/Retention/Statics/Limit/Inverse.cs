namespace Wainwright.Methods.Retention.Limit;

/// <summary>Gauss and Jordan with the largest pivot of the column.</summary>
static class Inverse
{
    /// <param name="matrix">Square; is used up.</param>
    /// <param name="inverse">Row by row.</param>
    /// <exception cref="InvalidOperationException">The matrix is singular.</exception>
    public static void Into(double[,] matrix, double[] inverse)
    {
        var n = matrix.GetLength(0);
        Array.Clear(inverse);
        for (var i = 0; i < n; i++) inverse[i * n + i] = 1;
        for (var c = 0; c < n; c++)
        {
            var pivot = c;
            for (var r = c + 1; r < n; r++)
                if (Math.Abs(matrix[r, c]) > Math.Abs(matrix[pivot, c])) pivot = r;
            if (matrix[pivot, c] == 0) throw new InvalidOperationException("a basis of the limit analysis lost its rank");
            if (pivot != c) Swap(matrix, inverse, n, pivot, c);
            var over = 1 / matrix[c, c];
            for (var k = 0; k < n; k++)
            {
                matrix[c, k] *= over;
                inverse[c * n + k] *= over;
            }
            for (var r = 0; r < n; r++)
            {
                var by = matrix[r, c];
                if (r == c || by == 0) continue;
                for (var k = 0; k < n; k++)
                {
                    matrix[r, k] -= by * matrix[c, k];
                    inverse[r * n + k] -= by * inverse[c * n + k];
                }
            }
        }
    }

    private static void Swap(double[,] matrix, double[] inverse, int n, int a, int b)
    {
        for (var k = 0; k < n; k++)
        {
            (matrix[a, k], matrix[b, k]) = (matrix[b, k], matrix[a, k]);
            (inverse[a * n + k], inverse[b * n + k]) = (inverse[b * n + k], inverse[a * n + k]);
        }
    }
}
