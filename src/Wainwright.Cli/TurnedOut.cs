using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>Reads from a command line how the van turned out to be: steps done, and what is not as recorded.</summary>
internal static class TurnedOut
{
    /// <summary>What <c>--done</c>, <c>--now</c> and <c>--found</c> say.</summary>
    /// <exception cref="BadInputException">One of them cannot be understood, or speaks of what is not there.</exception>
    public static Reality Read(Job job, string? done, IReadOnlyList<string> now, IReadOnlyList<string> found)
    {
        var (joints, glued, stays) = (new Dictionary<JointId, JointNow>(), new List<PartId>(), new List<PartId>());
        foreach (var word in now)
        {
            var at = word.LastIndexOf('=');
            var (id, state) = at > 0 ? (word[..at], word[(at + 1)..]) : throw new BadInputException($"“{word}”: write --now ID=sheared, glued, undone or stays");
            if (job.Joints.Any(j => j.Id.Text == id))
                joints[new(id)] = state switch
                {
                    "sheared" => JointNow.Sheared,
                    "glued" => JointNow.Glued,
                    "undone" => JointNow.Undone,
                    _ => throw new BadInputException($"“{word}”: a joint is now sheared, glued or undone"),
                };
            else if (!job.Parts.Any(p => p.Id.Text == id)) throw new BadInputException($"there is no joint and no part “{id}” in this job");
            else if (state == "glued") glued.Add(new(id));
            else if (state == "stays") stays.Add(new(id));
            else throw new BadInputException($"“{word}”: a part is now glued, or stays");
        }
        return new() { Done = [.. Steps(done)], Joints = joints, Glued = glued, DoNotMove = stays, Found = [.. found.Select((f, i) => Part(job, f, i))] };
    }

    private static IEnumerable<int> Steps(string? done)
    {
        foreach (var range in done?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? [])
        {
            var ends = range.Split('-');
            if (ends.Length > 2 || !int.TryParse(ends[0], NumberStyles.None, CultureInfo.InvariantCulture, out var from) || !int.TryParse(ends[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var to) || to < from || to > 100_000)
                throw new BadInputException($"“{range}”: write --done 1-4 or --done 1-3,5");
            for (var n = from; n <= to; n++) yield return n;
        }
    }

    /// <summary><c>NAME=X,Y,Z,LENGTH,WIDTH,HEIGHT</c>: a box, its low corner and its size in the van's axes.</summary>
    private static Part Part(Job job, string text, int number)
    {
        var at = text.LastIndexOf('=');
        var numbers = at > 0 ? text[(at + 1)..].Split(',') : [];
        var mm = numbers.Select(n => double.TryParse(n, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var v) && Math.Abs(v) <= 10_000 ? v : double.NaN).ToList();
        if (mm.Count != 6 || mm.Exists(double.IsNaN) || mm.Skip(3).Any(v => v <= 0)) throw new BadInputException($"“{text}”: write --found NAME=X,Y,Z,LENGTH,WIDTH,HEIGHT in mm");
        var id = Enumerable.Range(1, int.MaxValue - 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"found{n}")).Where(i => job.Parts.All(p => p.Id.Text != i)).ElementAt(number);
        return new()
        {
            Id = new(id), Name = text[..at], System = PartSystem.Furniture, Known = Known.Measured,
            Solids = [new BoxSolid { At = new(mm[0], mm[1], mm[2]), Size = new(mm[3], mm[4], mm[5]) }],
        };
    }
}
