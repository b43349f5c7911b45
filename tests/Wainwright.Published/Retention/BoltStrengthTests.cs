using Wainwright.Methods.Retention;
using static Wainwright.Methods.Retention.BoltStrength;

namespace Wainwright.Published.Retention;

public sealed class BoltStrengthTests
{
    // Source:    ISO 898-1, minimum ultimate tensile loads, coarse thread, N.
    // Seen:      quoted by two suppliers (usefastener.com knowledge 404; slsbearings.com). One misprints M4 10.9 as 91 130: left out.
    // Tolerance: 0.5 %: the loads are printed to three figures and the areas too.
    [Theory]
    [InlineData(5, PropertyClass.C46, 5_680)]
    [InlineData(5, PropertyClass.C88, 11_350)]
    [InlineData(6, PropertyClass.C46, 8_040)]
    [InlineData(6, PropertyClass.C88, 16_100)]
    [InlineData(6, PropertyClass.C109, 20_900)]
    [InlineData(8, PropertyClass.C46, 14_600)]
    [InlineData(8, PropertyClass.C88, 29_200)]
    public void A_bolt_breaks_at_the_load_tabled(double size, PropertyClass propertyClass, double newton) =>
        Assert.Equal(newton, Of(new(size, propertyClass)).BreakingN, tolerance: 0.005 * newton);

    // Source:    ISO 898-1, proof loads, coarse thread, N.
    // Seen:      the same two suppliers.
    // Tolerance: 0.5 %.
    [Theory]
    [InlineData(5, PropertyClass.C48, 4_400)]
    [InlineData(5, PropertyClass.C88, 8_230)]
    [InlineData(6, PropertyClass.C88, 11_600)]
    [InlineData(8, PropertyClass.C88, 21_200)]
    public void A_bolt_stands_the_proof_load_tabled(double size, PropertyClass propertyClass, double newton) =>
        Assert.Equal(newton, Of(new(size, propertyClass)).ProofN, tolerance: 0.005 * newton);
}
