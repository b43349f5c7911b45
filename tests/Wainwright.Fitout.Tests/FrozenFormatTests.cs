namespace Wainwright.Fitout.Tests;

/// <summary>Files of every format ever published must open for good. These files are never edited.</summary>
public class FrozenFormatTests
{
    [Theory]
    [InlineData("format-1.wain.json", 1)]
    public void A_file_of_an_old_format_opens_as_the_current_one(string file, int format)
    {
        var reading = JobFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "frozen", file)));
        Assert.DoesNotContain(reading.Issues, i => i.Weight == Weight.Error);
        Assert.Equal(format, reading.Format);
        Assert.Equal(Job.CurrentFormat, reading.Job!.Format);
        var again = JobFile.Read(JobFile.Write(reading.Job));
        Assert.Equal(Job.CurrentFormat, again.Format);
        Assert.Equal(Samples.Text(reading.Job), Samples.Text(again.Job!));
    }
}
