using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>What has to be done to a part again and again, fact by fact.</summary>
public static class NeedFacts
{
    /// <summary>The facts in the order they are asked.</summary>
    public static IReadOnlyList<Fact<ServiceNeed>> Of(ServiceNeed need, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(need);
        var facts = new FactsOf<ServiceNeed>(measures);
        facts.Text("What is done", need.What, t => need with { What = t! }, needed: true);
        facts.Number("Every how many months", need.EveryMonths, v => need with { EveryMonths = v!.Value }, needed: true);
        facts.Choice("One has to", need.Access, v => need with { Access = v });
        return [.. facts];
    }
}
