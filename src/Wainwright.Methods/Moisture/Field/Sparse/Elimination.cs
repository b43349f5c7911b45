namespace Wainwright.Methods.Moisture.Field.Sparse;

/// <summary>What elimination will touch, worked out once for a pattern: for each piece its own unknowns and those it hands on to.</summary>
sealed class Elimination
{
    /// <summary>A dense block: own unknowns first, then the later ones it reaches.</summary>
    public sealed record Front(int[] Unknowns, int OwnCount, int[] Children)
    {
        /// <summary>For each unknown handed on, its place in the parent's block.</summary>
        public int[] InParent { get; set; } = [];

        public int Size => Unknowns.Length;

        public int Parent { get; set; } = -1;
    }

    readonly List<Front> fronts = [];

    public Elimination(SparseSymmetric pattern, NestedDissection.Node tree)
    {
        Pattern = pattern;
        Turn = new int[pattern.Size];
        var next = 0;
        Number(tree, ref next);
        Visit(tree);
        var place = new int[pattern.Size];
        for (var p = 0; p < fronts.Count; p++)
        {
            for (var i = 0; i < fronts[p].Size; i++) place[fronts[p].Unknowns[i]] = i;
            foreach (var c in fronts[p].Children)
            {
                fronts[c].InParent = [.. fronts[c].Unknowns.Skip(fronts[c].OwnCount).Select(u => place[u])];
                fronts[c].Parent = p;
            }
        }
    }

    public SparseSymmetric Pattern { get; }

    /// <summary>When each unknown is eliminated.</summary>
    public int[] Turn { get; }

    /// <summary>The blocks, children before parents; the last is the root.</summary>
    public IReadOnlyList<Front> Fronts => fronts;

    void Number(NestedDissection.Node node, ref int next)
    {
        foreach (var child in node.Children) Number(child, ref next);
        foreach (var own in node.Own) Turn[own] = next++;
    }

    int Visit(NestedDissection.Node node)
    {
        var children = node.Children.Select(Visit).ToArray();
        var own = new HashSet<int>(node.Own);
        var last = node.Own.Length > 0 ? Turn[node.Own[^1]] : children.Max(c => Turn[fronts[c].Unknowns[0]]);
        var reached = new HashSet<int>();
        foreach (var u in node.Own)
            for (var k = Pattern.Start[u]; k < Pattern.Start[u + 1]; k++)
                if (Turn[Pattern.Column[k]] > last) reached.Add(Pattern.Column[k]);
        foreach (var c in children)
            foreach (var u in fronts[c].Unknowns.AsSpan(fronts[c].OwnCount))
                if (!own.Contains(u)) reached.Add(u);
        fronts.Add(new([.. node.Own, .. reached.OrderBy(u => Turn[u])], node.Own.Length, children));
        return fronts.Count - 1;
    }
}
