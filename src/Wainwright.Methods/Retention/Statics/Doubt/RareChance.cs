namespace Wainwright.Methods.Retention.Doubt;

/// <summary>Chance of something rare: draws are moved to where it most likely happens, and each counts with the odds of having been drawn there.</summary>
/// <remarks>The likeliest failure is found from the middle by Newton steps on the logarithm of the margin (Hasofer, Lind; Rackwitz, Fiessler).</remarks>
sealed class RareChance(Decider decider, Luck luck)
{
    private const int MostSteps = 25;
    private const double Near = 1.0, Far = 8;

    /// <returns>Chance and standard error; absent when the likeliest failure is not rare, or was not found.</returns>
    public (double Chance, double StandardError)? Of(int draws, Random chance)
    {
        if (Likeliest() is not { } middle) return null;
        var far = middle.Sum(z => z * z);
        var (sum, squares, numbers) = (0.0, 0.0, new double[luck.Numbers]);
        for (var draw = 0; draw < draws; draw++)
        {
            Luck.Draw(chance, numbers);
            var odds = 0.5 * far;
            for (var k = 0; k < numbers.Length; k++)
            {
                numbers[k] += middle[k];
                odds -= middle[k] * numbers[k];
            }
            luck.Take(numbers);
            if (decider.Holds(luck.PullN, luck.ShearN)) continue;
            var weight = Math.Exp(odds);
            (sum, squares) = (sum + weight, squares + weight * weight);
        }
        var mean = sum / draws;
        return sum == 0 ? null : (Math.Min(1, mean), Math.Sqrt(Math.Max(0, squares / draws - mean * mean) / draws));
    }

    /// <summary>The point of failure nearest the middle, in standard deviations.</summary>
    private double[]? Likeliest()
    {
        var at = new double[luck.Numbers];
        for (var step = 0; step < MostSteps; step++)
        {
            luck.Take(at);
            var (times, byPull, byShear) = decider.Margin(luck.PullN, luck.ShearN);
            if (double.IsInfinity(times) || !(times > 0)) return null;
            var slope = luck.Slope(at, byPull, byShear);
            for (var k = 0; k < slope.Length; k++) slope[k] /= times;
            var steep = slope.Sum(s => s * s);
            if (steep < 1e-16) return null;
            var along = 0.0;
            for (var k = 0; k < slope.Length; k++) along += slope[k] * at[k];
            var to = (along - Math.Log(times)) / steep;
            var moved = 0.0;
            for (var k = 0; k < at.Length; k++)
            {
                // later steps are shorter: two mechanisms of like margin would be jumped between for ever
                var next = at[k] + (step < 6 ? 1 : 0.4) * (to * slope[k] - at[k]);
                moved = Math.Max(moved, Math.Abs(next - at[k]));
                at[k] = next;
            }
            if (moved < 0.02) break;
        }
        var distance = Math.Sqrt(at.Sum(z => z * z));
        return distance is > Near and < Far ? at : null;
    }
}
