using System.Globalization;
using System.Text;

namespace Wainwright.Cli.Tests;

/// <summary>A job file mangled at random, with a printed seed: whatever comes of it, it is never a fault of ours.</summary>
public sealed class MangledFileTests
{
    static readonly string[] Odd = ["null", "true", "-1", "1e308", "1e-308", "0", "\"\"", "[]", "{}", "\"\\u0000\"", "99999999999999999999", "\"A\"", "[0,0,0]", "0.1"];

    [Theory, InlineData(1), InlineData(2), InlineData(3), InlineData(4)]
    public void Bytes_changed_left_out_and_doubled_are_refused_or_taken_but_never_break_the_program(int seed)
    {
        var random = new Random(seed);
        var sound = Encoding.UTF8.GetBytes(SmallVan.Text(parts: $"{SmallVan.Pump}, {SmallVan.Crate("C1")}"));
        Tried(seed, leastTaken: 0, () =>
        {
            var bytes = sound.ToList();
            for (var i = random.Next(1, 4); i > 0; i--)
            {
                var at = random.Next(bytes.Count);
                switch (random.Next(3))
                {
                    case 0: bytes[at] = (byte)random.Next(256); break;
                    case 1: bytes.RemoveRange(at, Math.Min(random.Next(1, 30), bytes.Count - at)); break;
                    default: bytes.InsertRange(at, bytes.GetRange(at, Math.Min(random.Next(1, 60), bytes.Count - at))); break;
                }
            }
            return [.. bytes];
        });
    }

    [Theory, InlineData(5), InlineData(6), InlineData(7), InlineData(8)]
    public void Values_swapped_for_odd_ones_are_refused_or_taken_but_never_break_the_program(int seed)
    {
        var random = new Random(seed);
        var job = File.ReadAllText(Path.Combine(Repository.Top, "demo", "cases", "duct-through-a-plinth.wain.json"));
        var values = System.Text.RegularExpressions.Regex.Matches(job, "(?<=: )(?:-?[0-9.]+|\"[^\"]*\"|true|false)");
        Tried(seed, leastTaken: 10, () =>
        {
            var value = values[random.Next(values.Count)];
            // half of the numbers only shift, so that many odd vans are taken and judged
            var other = double.TryParse(value.Value, CultureInfo.InvariantCulture, out var number) && random.Next(2) == 0
                ? (number * random.Next(0, 4) / 2).ToString(CultureInfo.InvariantCulture) : Odd[random.Next(Odd.Length)];
            return Encoding.UTF8.GetBytes(job[..value.Index] + other + job[(value.Index + value.Length)..]);
        });
    }

    [Theory, InlineData(9), InlineData(10)]
    public void A_container_with_bytes_changed_is_refused_whole_or_taken_whole(int seed)
    {
        var random = new Random(seed);
        using var folder = new TempFolder();
        Ran.Wain("import", folder.Write("job.json", SmallVan.Text()), "--store", folder.At("store"));
        Ran.Wain("export", "J-1", "--store", folder.At("store"), "--out", folder.At("sound.zip"));
        var sound = File.ReadAllBytes(folder.At("sound.zip"));
        for (var i = 0; i < 60; i++)
        {
            byte[] bytes = [.. sound];
            for (var n = random.Next(1, 3); n > 0; n--) bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            var store = folder.At(FormattableString.Invariant($"store-{i}"));
            var ran = Ran.Wain("import", folder.Write("mangled.zip", bytes), "--store", store);
            Assert.True(ran.Exit is Exit.Done or Exit.BadInput, $"seed {seed}, try {i}: {ran.Error}");
            Assert.Equal(ran.Exit == Exit.Done ? "J-1" : null, Ran.Wain("jobs", "--store", store, "--json").Json.GetProperty("jobs").EnumerateArray().Select(j => j.GetProperty("id").GetString()).SingleOrDefault());
        }
    }

    static void Tried(int seed, int leastTaken, Func<byte[]> mangled)
    {
        using var folder = new TempFolder();
        var taken = 0;
        for (var i = 0; i < 120; i++)
        {
            var file = folder.Write("job.json", mangled());
            var ran = Ran.Wain("validate", file);
            Assert.True(ran.Exit is Exit.Done or Exit.BadInput, $"seed {seed}, try {i}: {ran.Error}\n{File.ReadAllText(file)}");
            if (ran.Exit == Exit.BadInput)
            {
                Assert.NotEmpty(ran.Error);
                continue;
            }
            taken++;
            foreach (string[] question in (string[][])[["check", file], ["plan", file, "--remove", File.ReadAllText(file).Contains("\"id\": \"P1\"", StringComparison.Ordinal) ? "P1" : "A"]])
                Assert.True(Ran.Wain(question).Exit != Exit.OurFault, $"seed {seed}, try {i}, {question[0]}: {Ran.Wain(question).Error}\n{File.ReadAllText(file)}");
        }
        Assert.InRange(taken, leastTaken, 119);
    }
}
