using System.Text.Json;
using Wainwright.Access;

namespace Wainwright.Cli;

/// <summary>A certificate written to a file.</summary>
/// <param name="Path">The file.</param>
/// <param name="Faults">What is wrong with it, read back; absent when it was not checked.</param>
internal sealed record CertificateFile(string Path, IReadOnlyList<string>? Faults)
{
    /// <summary>Writes the certificate of a plan; an older file of that name is replaced.</summary>
    public static CertificateFile Write(string path, RemovalPlan plan, RemovalPlanner planner, bool check)
    {
        NewFile.Replace(path, JsonSerializer.Serialize(PlanCertificate.Of(plan), Shown.Options) + "\n");
        return new(path, check ? planner.Check(Read(path)) : null);
    }

    private static PlanCertificate Read(string path) => JsonSerializer.Deserialize<PlanCertificate>(File.ReadAllText(path), Shown.Options)!;
}
