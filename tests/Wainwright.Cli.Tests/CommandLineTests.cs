namespace Wainwright.Cli.Tests;

/// <summary>The command line as a whole: help, mistakes in typing, exit codes.</summary>
public sealed class CommandLineTests
{
    public static TheoryData<string> Commands => ["serve", "validate", "check", "damp", "plan", "crew", "access", "report", "jobs", "import", "export", "verify", "backup", "restore", "schema"];

    [Fact]
    public void Help_names_every_command_and_the_exit_codes()
    {
        var ran = Ran.Wain("--help");
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.All(Commands, c => Assert.Contains($"\n  {c.Data}", ran.Out, StringComparison.Ordinal));
        Assert.Contains("0 done · 1 something falls short · 2 bad input · 3 cannot tell · 70 our fault", ran.Out, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Commands))]
    public void Every_command_teaches_by_examples_that_begin_with_its_name(string command)
    {
        var ran = Ran.Wain(command, "--help");
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains($"Examples:\n  wain {command}", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_is_no_command_is_named_and_sends_to_the_help()
    {
        var ran = Ran.Wain("valdate");
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("'valdate'", ran.Error, StringComparison.Ordinal);
        Assert.Contains("Try: wain --help", ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Out);
    }

    [Fact]
    public async Task Colour_stands_beside_the_word_and_only_where_it_is_shown()
    {
        var job = Path.Combine(Repository.Top, "demo", "cases", "outlet-near-sink-unprotected.wain.json");
        using var coloured = new StringWriter { NewLine = "\n" };
        await Wain.Run(["check", job, "--on", "2026-06-01"], new(coloured, TextWriter.Null, _ => null, Colour: true, TimeProvider.System), TestContext.Current.CancellationToken);
        Assert.Contains("\u001b[31;1mFALLS SHORT\u001b[0m", coloured.ToString(), StringComparison.Ordinal);

        var plain = Ran.Wain("check", job, "--on", "2026-06-01").Out;
        Assert.Equal(plain, System.Text.RegularExpressions.Regex.Replace(coloured.ToString(), "\u001b\\[[0-9;]*m", ""));
    }

    [Fact]
    public void A_missing_argument_and_an_unknown_option_are_bad_input()
    {
        Assert.Equal(Exit.BadInput, Ran.Wain("validate").Exit);
        Assert.Equal(Exit.BadInput, Ran.Wain("validate", "x.json", "--jsno").Exit);
        Assert.Equal(Exit.BadInput, Ran.Wain().Exit);
    }

    [Fact]
    public async Task A_fault_of_our_own_is_one_calm_line_that_says_where_the_details_are()
    {
        using var broken = new BrokenWriter();
        using var errors = new StringWriter();
        var exit = await Wain.Run(["schema"], new(broken, errors, _ => null, false, TimeProvider.System), TestContext.Current.CancellationToken);
        Assert.Equal(Exit.OurFault, exit);
        var line = Assert.Single(errors.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries));
        var details = line.Split("The details are in ")[1];
        Assert.Contains("it broke on purpose", File.ReadAllText(details), StringComparison.Ordinal);
        File.Delete(details);
    }

    sealed class BrokenWriter : StringWriter
    {
        public override void WriteLine(string? value) => throw new InvalidOperationException("it broke on purpose");
    }

    [Fact]
    public void A_job_whose_name_begins_with_an_at_sign_is_not_taken_for_a_list_of_arguments() =>
        Assert.Contains("there is no file @job.json", Ran.Wain("validate", "@job.json").Error, StringComparison.Ordinal);
}
