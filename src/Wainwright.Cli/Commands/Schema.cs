using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain schema</c>: the published schema of the job file.</summary>
internal static class Schema
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static Command Command(Terminal at)
    {
        var command = new Taught("schema", "Write the job file's schema (JSON Schema 2020-12).", """
            Examples:
              wain schema > docs/job.schema.json
            """);
        command.SetAction(_ =>
        {
            at.Out.WriteLine(JobSchema.Document().ToJsonString(Readable));
            return Exit.Done;
        });
        return command;
    }
}
