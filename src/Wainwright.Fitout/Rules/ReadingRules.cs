namespace Wainwright.Fitout;

/// <summary>What must hold of readings and findings.</summary>
internal static class ReadingRules
{
    public static IEnumerable<Issue> Of(Job job)
    {
        var quantities = job.Readings.GroupBy(r => r.Id).ToDictionary(g => g.Key, g => g.First().Quantity);
        foreach (var (reading, i) in job.Readings.Select((r, i) => (r, i)))
        {
            var at = $"job.readings[{i}] ({reading.Id})";
            var unit = Fitout.Units.Of(reading.Quantity);
            if (reading.Unit != unit) yield return new($"{at}.unit", $"{reading.Quantity} is written in {unit}, not in “{reading.Unit}”", $"convert the value and write “{unit}”");
            if (reading.Corrects == reading.Id) yield return new($"{at}.corrects", "corrects itself", "name the earlier reading");
            if (reading.UnderForce is { } force)
            {
                if (reading.Quantity != Quantity.Length) yield return new($"{at}.underForce", $"is for a movement, not for {reading.Quantity}", "let the movement name the force");
                if (quantities.TryGetValue(force, out var named) && named != Quantity.Force) yield return new($"{at}.underForce", $"“{force}” is not a force", "name the force reading");
            }
            if (reading.Toward is not null && reading.Quantity != Quantity.Force) yield return new($"{at}.toward", $"is for a force, not for {reading.Quantity}", "let the force say which way it pulled");
            var (least, most) = Range(reading.Quantity);
            if (reading.Value.Value < least || reading.Value.Value > most)
                yield return new($"{at}.value", FormattableString.Invariant($"{reading.Quantity} lies between {least} and {most} {unit}, is {reading.Value.Value}"), "check the value and its unit");
        }
        foreach (var (finding, i) in job.Findings.Select((f, i) => (f, i)))
        {
            var at = $"job.findings[{i}] ({finding.Id})";
            if (finding.SeverityAtBest < finding.Severity) yield return new($"{at}.severityAtBest", "is worse than the worst", "swap the two");
            if (finding.LikelihoodAtLeast < finding.Likelihood) yield return new($"{at}.likelihoodAtLeast", "is likelier than the most likely", "swap the two");
            if (finding is { Known: Known.NotInspected, WouldTell: null })
                yield return new($"{at}.wouldTell", "is not inspected and does not say what look would tell", "name the look or the measurement", Weight.Doubt);
        }
    }

    private static (double Least, double Most) Range(Quantity quantity) => quantity switch
    {
        Quantity.Moisture => (0, 300),
        Quantity.RelativeHumidity or Quantity.ExplosiveLimit => (0, 100),
        Quantity.Temperature => (-80, 1_500),
        Quantity.Voltage or Quantity.Current or Quantity.Length or Quantity.Force or Quantity.Pressure or Quantity.Power or Quantity.Torque => (-1e6, 1e6),
        _ => (0, 1e6),
    };
}
