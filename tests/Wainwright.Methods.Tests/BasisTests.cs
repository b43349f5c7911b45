using System.Reflection;
using Wainwright.Methods;

namespace Wainwright.Methods.Tests;

public sealed class BasisTests
{
    public static TheoryData<string> Methods() =>
        [.. typeof(Basis).Assembly.GetExportedTypes()
            .Where(t => t.GetField("Basis", BindingFlags.Public | BindingFlags.Static) is not null)
            .Select(t => t.FullName!)];

    [Theory, MemberData(nameof(Methods))]
    public void Every_method_names_its_source_its_assumptions_and_a_caution(string method)
    {
        var basis = (Basis)typeof(Basis).Assembly.GetType(method)!.GetField("Basis")!.GetValue(null)!;
        Assert.NotEmpty(basis.Source);
        Assert.NotEmpty(basis.Assumes);
        Assert.All(basis.Assumes, Assert.NotEmpty);
        Assert.NotEmpty(basis.Caution);
    }

    [Fact]
    public void Every_public_static_class_of_the_room_carries_a_basis() =>
        Assert.Empty(typeof(Basis).Assembly.GetExportedTypes()
            .Where(t => t is { IsAbstract: true, IsSealed: true, IsNested: false } && t.GetField("Basis") is null)
            .Select(t => t.FullName));
}
