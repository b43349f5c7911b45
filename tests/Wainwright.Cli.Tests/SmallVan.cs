using System.Globalization;

namespace Wainwright.Cli.Tests;

/// <summary>A small sound job as text, with one thing in it that a test chooses.</summary>
static class SmallVan
{
    /// <summary>The job; each argument replaces the inside of its list.</summary>
    public static string Text(string parts = Pump, string joints = Screws, string readings = "", string more = "") => $$"""
        {
          "format": 1,
          "id": "J-1",
          "title": "small van",{{more}}
          "vehicle": {
            "name": "short low van",
            "loadSpace": { "lengthMm": 2400, "widthMm": 1600, "heightMm": 1400 },
            "openings": [
              { "name": "rear doors", "face": "rear", "fromMm": 100, "widthMm": 1400, "sillMm": 0, "heightMm": 1300, "passable": true, "known": "measured" }
            ]
          },
          "parts": [{{parts}}],
          "joints": [{{joints}}],
          "readings": [{{readings}}]
        }
        """;

    public const string Pump = """
        { "id": "P1", "name": "water pump", "system": "water", "known": "seen", "massKg": 1.5, "solids": [{ "shape": "box", "at": [100, 100, 0], "size": [200, 150, 120] }] }
        """;

    public const string Screws = """
        { "id": "F1", "part": "P1", "type": "woodScrew", "count": 4, "drive": "hexalobular", "release": { "way": "unscrew" }, "known": "seen" }
        """;

    /// <summary>A crate somewhere, with more fields if wanted.</summary>
    public static string Crate(string id, string at = "[800, 100, 0]", string size = "[200, 200, 200]", string more = "") =>
        string.Create(CultureInfo.InvariantCulture, $$"""{ "id": "{{id}}", "name": "crate {{id}}", "system": "loose", "known": "seen", "massKg": 4, "solids": [{ "shape": "box", "at": {{at}}, "size": {{size}} }]{{more}} }""");
}
