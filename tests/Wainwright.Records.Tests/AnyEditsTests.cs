using CsCheck;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>Whatever is done in whatever order, undo brings back every letter, and what is stored is what the model says.</summary>
public class AnyEditsTests
{
    // what to do, and a number to do it with
    static readonly Gen<(int What, int With)[]> Scripts = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 40]).Array[1, 25];

    [Fact]
    public void Any_edits_undone_give_the_first_state_byte_for_byte() =>
        Scripts.Sample(script =>
        {
            using var shop = new Workshop(inMemory: true);
            var before = Samples.Text(shop.Job);
            foreach (var (what, with) in script) Do(shop, what, with);
            var made = shop.Store.Find("TEST-1")!;
            shop.Reopen();
            Assert.Equal(Samples.Text(made.Job), Samples.Text(shop.Job));
            Assert.Equal(Samples.Text(made.Job), Samples.Text(shop.Store.AsOf("TEST-1", made.Sequence)!));

            var undone = 0;
            while (shop.Store.Find("TEST-1")!.CanUndo)
            {
                Assert.NotNull(shop.Store.Undo("TEST-1", "AB").Entry);
                undone++;
            }
            Assert.Equal(before, Samples.Text(shop.Job));
            for (var i = 0; i < undone; i++) Assert.NotNull(shop.Store.Redo("TEST-1", "AB").Entry);
            Assert.Equal(Samples.Text(made.Job), Samples.Text(shop.Job));
            Assert.Empty(shop.Store.Verify("TEST-1").Issues);
        }, seed: "0000KOIKMm12", iter: 60, threads: 1);

    [Fact]
    public void Any_history_goes_through_a_container_byte_for_byte() =>
        Scripts.Sample(script =>
        {
            using var shop = new Workshop(inMemory: true);
            foreach (var (what, with) in script) Do(shop, what, with);
            var packed = shop.Packed();
            using var elsewhere = new Workshop(withJob: false, inMemory: true);
            using (var read = Container.Read(new MemoryStream(packed)))
            {
                Assert.Empty(read.Issues);
                Assert.Empty(elsewhere.Store.Import(read, "CD").Issues);
            }
            Assert.Equal(packed, elsewhere.Packed());
            Assert.Equal(shop.Store.Find("TEST-1")!.Undo, elsewhere.Store.Find("TEST-1")!.Undo);
            Assert.Equal(shop.Store.Find("TEST-1")!.Redo, elsewhere.Store.Find("TEST-1")!.Redo);
            Assert.Empty(elsewhere.Store.Verify("TEST-1").Issues);
        }, seed: "0000KOIKMm13", iter: 40, threads: 1);

    private static void Do(Workshop shop, int what, int with)
    {
        var job = shop.Job;
        var id = $"X{with}";
        switch (what)
        {
            case 0 or 1:
                shop.Done(Samples.PutPart(job, Samples.Part(id) with { MassKg = with, Note = $"n{with}" }));
                break;
            case 2 when job.Parts.Count > 1 && job.Parts[with % job.Parts.Count] is var part && part.Id.Text is not ("P1" or "P2"):
                shop.Done(Samples.TakeOut(job, "parts", part.Id.Text));
                break;
            case 3:
                var changed = job.Parts[with % job.Parts.Count];
                shop.Done(Samples.PutPart(job, changed with { Note = $"é“{with}”\n" }));
                break;
            case 4:
                shop.Done(with % 3 == 0 ? new("no note", [Edit.Field<string?>(job, "note", null)]) : Samples.Note(job, $"note {with}"));
                break;
            case 5 when job.Readings.All(r => r.Id.Text != id):
                shop.Done(new("reading", [Edit.Put(job, "readings", id, Samples.Reading(id, with))]));
                break;
            case 6:
                shop.Done(new("rate and van", [Edit.Field<decimal?>(job, "ratePerHour", with + 0.50m), Edit.Field(job, "vehicle", job.Vehicle with { OdometerKm = with })]));
                break;
            case 7:
                shop.Store.Undo("TEST-1", "AB");
                break;
            case 8:
                shop.Store.Redo("TEST-1", "AB");
                break;
            case 9 when job.Photos.Count == 0 || with % 2 == 0:
                shop.Photographed(with);
                break;
            case 9:
                shop.Done(Samples.TakeOut(job, "photos", job.Photos[with % job.Photos.Count].Hash.Text));
                break;
        }
    }
}
