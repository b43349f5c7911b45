using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Cli.Tests;

/// <summary>Into the store, out of it, and back: through the command line alone.</summary>
public sealed class StoreCommandTests : IDisposable
{
    readonly TempFolder folder = new();

    string Store => folder.At("store");

    public void Dispose() => folder.Dispose();

    Ran Imported(string text) => Ran.Wain("import", folder.Write("job.json", text), "--store", Store, "--who", "RT");

    [Fact]
    public void A_job_taken_in_is_listed_and_comes_out_the_same()
    {
        Assert.Equal(Exit.Done, Imported(SmallVan.Text()).Exit);
        Assert.Equal("J-1", Ran.Wain("jobs", "--store", Store, "--json").Json.GetProperty("jobs")[0].GetProperty("id").GetString());

        Assert.Equal(Exit.Done, Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("back.json")).Exit);
        var before = JobFile.Read(File.ReadAllBytes(folder.At("job.json"))).Job!;
        Assert.Equal(JobFile.Write(before), File.ReadAllBytes(folder.At("back.json")));
    }

    [Fact]
    public void The_store_may_be_named_by_the_surroundings()
    {
        var settings = new Dictionary<string, string> { ["WAIN_STORE"] = Store };
        Assert.Equal(Exit.Done, Ran.Wain(settings, "import", folder.Write("job.json", SmallVan.Text())).Exit);
        Assert.Contains("J-1", Ran.Wain(settings, "jobs").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_import_of_the_same_job_is_refused_and_replace_takes_it_with_its_history()
    {
        Imported(SmallVan.Text());
        var again = Imported(SmallVan.Text().Replace("small van", "another van", StringComparison.Ordinal));
        Assert.Equal(Exit.BadInput, again.Exit);
        Assert.Contains("nothing was stored", again.Error, StringComparison.Ordinal);
        Assert.Contains("small van", Ran.Wain("jobs", "--store", Store).Out, StringComparison.Ordinal);

        var replaced = Ran.Wain("import", folder.At("job.json"), "--store", Store, "--replace", "--json");
        Assert.Equal(Exit.Done, replaced.Exit);
        Assert.Equal(2, replaced.Json.GetProperty("sequence").GetInt32());
        Assert.Contains("another van", Ran.Wain("jobs", "--store", Store).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_container_carries_the_job_with_its_journal_to_another_store()
    {
        Imported(SmallVan.Text());
        Assert.Equal(Exit.Done, Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("J-1.zip")).Exit);
        Assert.Equal(Exit.Done, Ran.Wain("verify", folder.At("J-1.zip")).Exit);

        Assert.Equal(Exit.Done, Ran.Wain("import", folder.At("J-1.zip"), "--store", folder.At("other")).Exit);
        var here = Ran.Wain("verify", "J-1", "--store", Store, "--json").Json;
        var there = Ran.Wain("verify", "J-1", "--store", folder.At("other"), "--json").Json;
        Assert.Equal(here.GetProperty("lastHash").GetString(), there.GetProperty("lastHash").GetString());
    }

    [Fact]
    public void A_container_may_be_named_where_a_job_is_asked_for()
    {
        Imported(SmallVan.Text());
        Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("J-1.zip"));
        Assert.Equal(Exit.Done, Ran.Wain("export", folder.At("J-1.zip"), "--out", folder.At("out.json")).Exit);
        Assert.Equal("J-1", JobFile.Read(File.ReadAllBytes(folder.At("out.json"))).Job!.Id);
    }

    [Fact]
    public void A_job_is_validated_as_a_file_a_container_and_in_the_store()
    {
        Imported(SmallVan.Text());
        Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("J-1.zip"));
        foreach (var name in (string[])[folder.At("job.json"), folder.At("J-1.zip"), "J-1"])
        {
            var answer = Ran.Wain("validate", name, "--store", Store, "--json").Json;
            Assert.Equal(["job", "format", "usable", "errors", "doubts", "issues"], Names(answer));
            Assert.True(answer.GetProperty("usable").GetBoolean());
            Assert.Equal(1, answer.GetProperty("format").GetInt32());
        }
        Assert.Equal(Exit.BadInput, Ran.Wain("validate", folder.Write("cut.zip", File.ReadAllBytes(folder.At("J-1.zip"))[..400])).Exit);
    }

    [Fact]
    public void Sound_records_are_called_sound_with_the_hash_to_write_down()
    {
        Imported(SmallVan.Text());
        var ran = Ran.Wain("verify", "J-1", "--store", Store);
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Matches("J-1: sound, 1 entries, 0 photos\nlast hash [0-9a-f]{64}\n", ran.Out);
    }

    [Fact]
    public void A_backup_restored_elsewhere_holds_the_same_jobs()
    {
        Imported(SmallVan.Text());
        Assert.Equal(Exit.Done, Ran.Wain("backup", "--store", Store, "--out", folder.At("all.backup")).Exit);
        Assert.Equal(Exit.Done, Ran.Wain("restore", folder.At("all.backup"), "--store", folder.At("restored")).Exit);
        Assert.Equal(Ran.Wain("verify", "J-1", "--store", Store).Out, Ran.Wain("verify", "J-1", "--store", folder.At("restored")).Out);
    }

    [Fact]
    public void A_backup_is_never_restored_over_something_nor_written_over_something()
    {
        Imported(SmallVan.Text());
        Ran.Wain("backup", "--store", Store, "--out", folder.At("all.backup"));
        var bytes = File.ReadAllBytes(folder.At("all.backup"));
        Assert.Contains("is there already", Ran.Wain("backup", "--store", Store, "--out", folder.At("all.backup")).Error, StringComparison.Ordinal);
        Assert.Contains("is not empty", Ran.Wain("restore", folder.At("all.backup"), "--store", Store).Error, StringComparison.Ordinal);
        Assert.Equal(bytes, File.ReadAllBytes(folder.At("all.backup")));
        Assert.Equal(Exit.Done, Ran.Wain("verify", "J-1", "--store", Store).Exit);
    }

    [Fact]
    public void A_damaged_backup_restores_nothing()
    {
        Imported(SmallVan.Text());
        Ran.Wain("backup", "--store", Store, "--out", folder.At("all.backup"));
        var bytes = File.ReadAllBytes(folder.At("all.backup"));
        var ran = Ran.Wain("restore", folder.Write("half.backup", bytes[..(bytes.Length / 2)]), "--store", folder.At("restored"));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.False(Directory.Exists(folder.At("restored")) && Directory.EnumerateFileSystemEntries(folder.At("restored")).Any());
    }

    [Theory, InlineData("verify", "J-9"), InlineData("jobs", null), InlineData("export", "J-9")]
    public void A_question_to_a_store_that_is_not_there_makes_none(string command, string? job)
    {
        string[] args = [command, .. job is null ? [] : (string[])[job], .. command == "export" ? (string[])["--out", folder.At("x.zip")] : [], "--store", Store];
        var ran = Ran.Wain(args);
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("there is no store in", ran.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Store));
    }

    [Fact]
    public void A_job_that_is_not_in_the_store_is_answered_with_those_that_are()
    {
        Imported(SmallVan.Text());
        var ran = Ran.Wain("verify", "J-9", "--store", Store);
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("there is no job “J-9” in the store; it has J-1", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_there_is_never_overwritten_by_an_export()
    {
        Imported(SmallVan.Text());
        var ran = Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("job.json"));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Equal(SmallVan.Text(), File.ReadAllText(folder.At("job.json")));
    }

    [Fact]
    public void A_file_given_to_a_command_is_left_as_it_is()
    {
        var path = folder.Write("job.json", SmallVan.Text());
        File.SetAttributes(path, FileAttributes.ReadOnly);
        Assert.Equal(Exit.Done, Ran.Wain("validate", path).Exit);
        Assert.Equal(Exit.Done, Ran.Wain("import", path, "--store", Store).Exit);
        Assert.Equal(SmallVan.Text(), File.ReadAllText(path));
        File.SetAttributes(path, FileAttributes.Normal);
    }

    [Fact]
    public void The_answers_for_programs_have_the_documented_shape()
    {
        Assert.Equal(["id", "title", "sequence", "doubts"], Names(Ran.Wain("import", folder.Write("job.json", SmallVan.Text()), "--store", Store, "--json").Json));
        Assert.Equal(["id", "title", "changedAt", "changedBy", "sequence", "counts"], Names(Ran.Wain("jobs", "--store", Store, "--json").Json.GetProperty("jobs")[0]));
        Assert.Equal(["job", "sound", "entries", "firstBadEntry", "lastHash", "photos", "issues"], Names(Ran.Wain("verify", "J-1", "--store", Store, "--json").Json));
    }

    static IEnumerable<string> Names(JsonElement answer) => answer.EnumerateObject().Select(p => p.Name);
}
