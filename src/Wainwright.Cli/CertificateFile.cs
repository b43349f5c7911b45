using System.Text;
using System.Text.Json;
using Wainwright.Access;

namespace Wainwright.Cli;

/// <summary>A certificate written to a file.</summary>
/// <param name="Path">The file.</param>
/// <param name="Faults">What is wrong with it, read back; absent when it was not checked.</param>
internal sealed record CertificateFile(string Path, IReadOnlyList<string>? Faults)
{
    /// <summary>Writes the certificate of a plan; a file that is there already is left as it is.</summary>
    public static CertificateFile Write(string path, RemovalPlan plan, RemovalPlanner planner, bool check)
    {
        NewFile.Write(path, file => file.Write(Encoding.UTF8.GetBytes(JsonSerializer.Serialize(PlanCertificate.Of(plan), Shown.Options) + "\n")));
        return new(path, check ? planner.Check(Read(path), plan) : null);
    }

    private static PlanCertificate Read(string path) => JsonSerializer.Deserialize<PlanCertificate>(File.ReadAllText(path), Shown.Options)!;
}
