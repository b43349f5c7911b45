using Wainwright.Fitout;
using Wainwright.Survey.Faults;

namespace Wainwright.Survey.Tests.Faults;

public sealed class FaultCatalogueTests
{
    [Fact]
    public void Ids_are_words_and_numbers_without_a_gap()
    {
        var families = FaultCatalogue.All.GroupBy(f => f.Id[..f.Id.IndexOf('-', StringComparison.Ordinal)]).ToList();
        Assert.Equal(
            ["water", "waste", "dc", "mains", "gas", "heater", "attach", "ceiling", "furniture", "roof", "vent", "floor", "weight", "escape"],
            families.Select(f => f.Key));
        Assert.All(families, f => Assert.Equal(Enumerable.Range(1, f.Count()).Select(n => $"{f.Key}-{n:00}"), f.Select(x => x.Id)));
    }

    [Fact]
    public void Every_fault_is_told_in_full() =>
        Assert.All(FaultCatalogue.All, f => Assert.All((string[])[f.What, f.ShowsAs, f.Test, f.Leads, f.Remedy, .. f.Who], Assert.NotEmpty));

    [Fact]
    public void Mains_faults_are_for_an_electrician_and_gas_faults_for_a_licensed_person()
    {
        Assert.All(FaultCatalogue.All.Where(f => f.Id.StartsWith("mains-", StringComparison.Ordinal)), f => Assert.Contains("qualified electrician", f.Who));
        Assert.All(FaultCatalogue.All.Where(f => f.Id.StartsWith("gas-", StringComparison.Ordinal) && f.Id != "gas-09"), f => Assert.Contains("licensed gas person", f.Who));
    }

    [Fact]
    public void A_fault_is_found_by_its_id_and_a_wrong_id_finds_none()
    {
        Assert.Equal(Urgency.U0, FaultCatalogue.Find("heater-03")!.Urgency);
        Assert.Null(FaultCatalogue.Find("heater-99"));
    }

    [Theory]
    [InlineData("touring-camper")]
    [InlineData("bicycle-workshop")]
    public void The_demonstration_vans_name_faults_that_exist(string van) =>
        Assert.All(A.Read("demo", van).Findings.SelectMany(f => f.Faults), f => Assert.NotNull(FaultCatalogue.Find(f)));
}
