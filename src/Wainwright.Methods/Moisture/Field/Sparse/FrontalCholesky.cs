namespace Wainwright.Methods.Moisture.Field.Sparse;

/// <summary>Cholesky factor of a sparse positive definite matrix, block by block along a nested dissection (multifrontal: Duff and Reid 1983, from memory).</summary>
sealed class FrontalCholesky
{
    readonly Elimination plan;
    // for each front its first OwnCount columns, by rows: size × own
    readonly double[][] factor;

    FrontalCholesky(Elimination plan)
    {
        this.plan = plan;
        factor = new double[plan.Fronts.Count][];
    }

    /// <summary>Logarithm of the determinant.</summary>
    public double LogDeterminant { get; private set; }

    /// <summary>Factors the matrix; throws when it is not positive definite.</summary>
    /// <exception cref="ArithmeticException">A pivot is not above 0.</exception>
    public static FrontalCholesky Of(Elimination plan, SparseSymmetric matrix)
    {
        var made = new FrontalCholesky(plan);
        var handedOn = new double[plan.Fronts.Count][];
        var place = new int[matrix.Size];
        for (var p = 0; p < plan.Fronts.Count; p++)
        {
            var front = plan.Fronts[p];
            var block = new double[front.Size * front.Size];
            Assemble(plan, matrix, front, place, block);
            foreach (var c in front.Children)
            {
                ExtendAdd(plan.Fronts[c], handedOn[c], front.Size, block);
                handedOn[c] = [];
            }
            made.EliminateOwn(front, block);
            made.factor[p] = Columns(block, front.Size, front.OwnCount);
            handedOn[p] = HandOn(block, front.Size, front.OwnCount);
        }
        return made;
    }

    static void Assemble(Elimination plan, SparseSymmetric matrix, Elimination.Front front, int[] place, double[] block)
    {
        for (var i = 0; i < front.Size; i++) place[front.Unknowns[i]] = i;
        for (var j = 0; j < front.OwnCount; j++)
        {
            var u = front.Unknowns[j];
            for (var k = matrix.Start[u]; k < matrix.Start[u + 1]; k++)
                if (plan.Turn[matrix.Column[k]] >= plan.Turn[u]) block[(place[matrix.Column[k]] * front.Size) + j] += matrix.Value[k];
        }
    }

    static void ExtendAdd(Elimination.Front child, double[] from, int size, double[] block)
    {
        var n = child.InParent.Length;
        for (var i = 0; i < n; i++)
        {
            var row = child.InParent[i];
            for (var j = 0; j <= i; j++)
            {
                var col = child.InParent[j];
                block[row >= col ? (row * size) + col : (col * size) + row] += from[(i * n) + j];
            }
        }
    }

    void EliminateOwn(Elimination.Front front, double[] block)
    {
        int size = front.Size, own = front.OwnCount;
        for (var i = 0; i < size; i++)
        {
            var row = block.AsSpan(i * size, size);
            for (var j = 0; j < Math.Min(i, own); j++)
                row[j] = (row[j] - DenseRows.Dot(row[..j], block.AsSpan(j * size, j))) / block[(j * size) + j];
            if (i < own)
            {
                var pivot = row[i] - DenseRows.Dot(row[..i], row[..i]);
                if (!(pivot > 0)) throw new ArithmeticException("the matrix is not positive definite");
                row[i] = Math.Sqrt(pivot);
                LogDeterminant += Math.Log(pivot);
            }
            else DenseRows.AddProducts(row[own..], row[..own], block.AsSpan(own * size), size, i - own + 1, -1);
        }
    }

    static double[] Columns(double[] block, int size, int own)
    {
        var kept = new double[size * own];
        for (var i = 0; i < size; i++) block.AsSpan(i * size, Math.Min(own, i + 1)).CopyTo(kept.AsSpan(i * own));
        return kept;
    }

    static double[] HandOn(double[] block, int size, int own)
    {
        var n = size - own;
        var kept = new double[n * n];
        for (var i = 0; i < n; i++) block.AsSpan(((own + i) * size) + own, i + 1).CopyTo(kept.AsSpan(i * n));
        return kept;
    }

    /// <summary>Right sides turned in place into the solutions of matrix · x = right side.</summary>
    /// <param name="x">Right sides, side by side: unknown after unknown, each with all its right sides.</param>
    /// <param name="wide">How many right sides.</param>
    public void SolveMany(double[] x, int wide)
    {
        for (var p = 0; p < factor.Length; p++)
        {
            var (front, own) = (plan.Fronts[p], plan.Fronts[p].OwnCount);
            for (var i = 0; i < front.Size; i++)
            {
                var into = x.AsSpan(front.Unknowns[i] * wide, wide);
                var row = factor[p].AsSpan(i * own, own);
                for (var j = 0; j < Math.Min(i, own); j++) DenseRows.Add(into, x.AsSpan(front.Unknowns[j] * wide, wide), -row[j]);
                if (i < own) Divide(into, row[i]);
            }
        }
        for (var p = factor.Length - 1; p >= 0; p--)
        {
            var (front, own) = (plan.Fronts[p], plan.Fronts[p].OwnCount);
            for (var i = front.Size - 1; i >= 0; i--)
            {
                var from = x.AsSpan(front.Unknowns[i] * wide, wide);
                var row = factor[p].AsSpan(i * own, own);
                if (i < own) Divide(from, row[i]);
                for (var j = 0; j < Math.Min(i, own); j++) DenseRows.Add(x.AsSpan(front.Unknowns[j] * wide, wide), from, -row[j]);
            }
        }
    }

    static void Divide(Span<double> x, double by)
    {
        for (var i = 0; i < x.Length; i++) x[i] /= by;
    }

    /// <summary>Normal numbers turned into a draw whose covariance is the inverse of the matrix; made of them in place.</summary>
    public void Draw(double[] normal) => Up(normal);

    void Up(double[] x)
    {
        for (var p = factor.Length - 1; p >= 0; p--)
        {
            var (front, own) = (plan.Fronts[p], plan.Fronts[p].OwnCount);
            Span<double> y = new double[own];
            for (var i = 0; i < own; i++) y[i] = x[front.Unknowns[i]];
            for (var i = front.Size - 1; i >= 0; i--)
            {
                var row = factor[p].AsSpan(i * own, own);
                if (i < own) x[front.Unknowns[i]] = y[i] /= row[i];
                DenseRows.Add(y[..Math.Min(i, own)], row, -x[front.Unknowns[i]]);
            }
        }
    }

    /// <summary>Diagonal of the inverse, from the blocks alone, root first (Takahashi 1973, from memory).</summary>
    public double[] InverseDiagonal()
    {
        var diagonal = new double[plan.Pattern.Size];
        var inverse = new double[plan.Fronts.Count][];
        var waiting = new int[plan.Fronts.Count];
        for (var p = plan.Fronts.Count - 1; p >= 0; p--)
        {
            var front = plan.Fronts[p];
            inverse[p] = InverseBlock(p, front, front.Parent < 0 ? [] : inverse[front.Parent], front.Parent < 0 ? 0 : plan.Fronts[front.Parent].Size);
            for (var i = 0; i < front.OwnCount; i++) diagonal[front.Unknowns[i]] = inverse[p][(i * front.Size) + i];
            waiting[p] = front.Children.Length;
            if (front.Parent >= 0 && --waiting[front.Parent] == 0) inverse[front.Parent] = [];
            if (waiting[p] == 0) inverse[p] = [];
        }
        return diagonal;
    }

    double[] InverseBlock(int p, Elimination.Front front, double[] parent, int parentSize)
    {
        int size = front.Size, own = front.OwnCount, n = size - own;
        var l = factor[p];
        var z = new double[size * size];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                z[((own + i) * size) + own + j] = parent[(front.InParent[i] * parentSize) + front.InParent[j]];
        // inverse of the own triangle, kept transposed by rows: t[c] is column c of L11⁻¹
        var t = new double[own * own];
        for (var c = 0; c < own; c++)
        {
            var row = t.AsSpan(c * own, own);
            row[c] = 1 / l[(c * own) + c];
            for (var i = c + 1; i < own; i++) row[i] = -DenseRows.Dot(l.AsSpan((i * own) + c, i - c), row[c..i]) / l[(i * own) + i];
        }
        // w[c] = column c of L21·L11⁻¹
        var w = new double[own * n];
        for (var c = 0; c < own; c++)
            for (var i = 0; i < n; i++) w[(c * n) + i] = DenseRows.Dot(l.AsSpan(((own + i) * own) + c, own - c), t.AsSpan((c * own) + c, own - c));
        for (var c = 0; c < own; c++)
        {
            var cross = new double[n];
            for (var i = 0; i < n; i++) cross[i] = -DenseRows.Dot(z.AsSpan(((own + i) * size) + own, n), w.AsSpan(c * n, n));
            for (var i = 0; i < n; i++) z[(c * size) + own + i] = z[((own + i) * size) + c] = cross[i];
        }
        for (var a = 0; a < own; a++)
            for (var b = 0; b <= a; b++)
                z[(a * size) + b] = z[(b * size) + a] =
                    DenseRows.Dot(t.AsSpan((a * own) + a, own - a), t.AsSpan((b * own) + a, own - a)) - DenseRows.Dot(w.AsSpan(a * n, n), z.AsSpan((b * size) + own, n));
        return z;
    }
}
