namespace Wainwright.Survey.Damp.Drying;

/// <summary>Weights of draws: brought to a sum of 1, softened, counted.</summary>
internal static class Weights
{
    /// <summary>Weights that sum to 1, raised to the power at which so many of them count: 1 where enough do anyway.</summary>
    public static double[] Tempered(IReadOnlyList<double> logWeights, double counting) => Tempered(logWeights, new double[logWeights.Count], counting, out _);

    /// <summary>Weights of which one part alone is softened.</summary>
    /// <param name="logSoft">Logarithm of the part that may be softened.</param>
    /// <param name="logFixed">Logarithm of the part that stays.</param>
    /// <param name="counting">So many are to count.</param>
    /// <param name="power">The power found [0–1].</param>
    public static double[] Tempered(IReadOnlyList<double> logSoft, IReadOnlyList<double> logFixed, double counting, out double power)
    {
        power = 1;
        var weights = Raised(logSoft, logFixed, 1);
        if (Effective(weights) >= counting) return weights;
        double low = 0, high = 1;
        for (var i = 0; i < 14; i++)
        {
            var middle = (low + high) / 2;
            if (Effective(Raised(logSoft, logFixed, middle)) >= counting) low = middle;
            else high = middle;
        }
        power = low;
        return Raised(logSoft, logFixed, low);
    }

    /// <summary>Weights of which none is above their mean times the root of their number: one course that the drawing nearly missed does not speak for all.</summary>
    /// <remarks>Truncated importance sampling (Ionides 2008, J. Comput. Graph. Stat. 17, from memory).</remarks>
    public static double[] Cut(IReadOnlyList<double> logWeights)
    {
        var most = LogSum(logWeights) - (0.5 * Math.Log(logWeights.Count));
        return [.. logWeights.Select(l => Math.Min(l, most))];
    }

    /// <summary>How many equal weights the weights are worth.</summary>
    public static double Effective(IReadOnlyList<double> weights) => 1 / weights.Sum(w => w * w);

    /// <summary>Logarithm of a sum of what is told by its logarithms.</summary>
    public static double LogSum(IReadOnlyList<double> logs)
    {
        var most = logs.Max();
        return double.IsNegativeInfinity(most) ? most : most + Math.Log(logs.Sum(l => Math.Exp(l - most)));
    }

    private static double[] Raised(IReadOnlyList<double> logSoft, IReadOnlyList<double> logFixed, double power)
    {
        var raised = new double[logSoft.Count];
        for (var i = 0; i < raised.Length; i++) raised[i] = (power * logSoft[i]) + logFixed[i];
        var most = raised.Max();
        double sum = 0;
        for (var i = 0; i < raised.Length; i++) sum += raised[i] = Math.Exp(raised[i] - most);
        for (var i = 0; i < raised.Length; i++) raised[i] /= sum;
        return raised;
    }
}
