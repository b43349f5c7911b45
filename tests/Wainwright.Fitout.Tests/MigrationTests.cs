using System.Text.Json.Nodes;

namespace Wainwright.Fitout.Tests;

public class MigrationTests
{
    static readonly Action<JsonObject>[] Invented =
    [
        d => d["trail"] = d["trail"] + "1>2 ",
        d => d["trail"] = d["trail"] + "2>3 ",
        d => d["trail"] = d["trail"] + "3>4 ",
    ];

    [Theory]
    [InlineData(1, "1>2 2>3 3>4 ")]
    [InlineData(3, "3>4 ")]
    [InlineData(4, "")]
    public void Every_step_from_the_files_format_on_is_made_once_and_in_order(int format, string trail)
    {
        var document = new JsonObject { ["format"] = format, ["trail"] = "" };
        Migration.Run(document, format, Invented);
        Assert.Equal(trail, (string?)document["trail"]);
        Assert.Equal(4, (int?)document["format"]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void A_format_nobody_knows_is_refused(int format) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Migration.Run([], format, Invented));

    [Fact]
    public void The_steps_lead_to_the_current_format() => Assert.Equal(Job.CurrentFormat, Migration.LeadsTo);
}
