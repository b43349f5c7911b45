using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Records;

// Writes so many edits to a job and says the number of each entry once it is acknowledged. Arguments: folder, job, edits.
// Every tenth edit also takes a photo in, so that a kill can come between the two.
using var store = Store.Open(args[0], TimeProvider.System);
for (var i = 0; i < int.Parse(args[2], CultureInfo.InvariantCulture); i++)
{
    var job = store.Find(args[1])!;
    var part = job.Job.Parts[0] with { Note = $"edit {job.Sequence}" };
    List<Edit> edits = [Edit.Put(job.Job, "parts", part.Id.Text, part)];
    if (i % 10 == 0)
    {
        byte[] photo = [0xFF, 0xD8, 0xFF, 0xE0, .. BitConverter.GetBytes(job.Sequence), .. new byte[20_000]];
        var hash = store.AddPhoto(new MemoryStream(photo)).Hash!.Value;
        edits.Add(Edit.Put(job.Job, "photos", hash.Text, new Photo { Hash = hash, Shows = $"after {job.Sequence}", MediaType = "image/jpeg" }));
    }
    var done = store.Append(args[1], new Change($"edit after {job.Sequence}", edits), "killed");
    Console.Out.WriteLine(done.Entry!.Seq.ToString(CultureInfo.InvariantCulture));
    Console.Out.Flush();
}
