using System.Reflection;
using PublicApiGenerator;

namespace Wainwright.Architecture;

/// <summary>What others may build on is agreed as text: a change of it is seen in review.</summary>
public sealed class PublicSurfaceTests
{
    /// <summary>Set to write the approved files anew: <c>WAIN_APPROVE=1 ./test --filter-class '*PublicSurface*'</c>.</summary>
    static readonly bool Approving = Environment.GetEnvironmentVariable("WAIN_APPROVE") == "1";

    [Theory, InlineData("Fitout"), InlineData("Methods")]
    public void The_public_surface_is_the_approved_one(string room)
    {
        var approved = Path.Combine(House.Top, "tests", "Wainwright.Architecture", "approved", $"{room}.txt");
        var surface = Assembly.LoadFrom(House.Assembly(room)).GeneratePublicApi(new() { IncludeAssemblyAttributes = false }).ReplaceLineEndings("\n") + "\n";
        if (Approving) File.WriteAllText(approved, surface);
        Assert.Equal(File.ReadAllText(approved), surface);
    }
}
