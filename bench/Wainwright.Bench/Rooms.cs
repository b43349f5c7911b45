using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Survey;

namespace Wainwright.Bench;

/// <summary>Medians of what the rooms do for the screens. Compare with the run before a change, not with another machine.</summary>
static class Rooms
{
    public static int Run()
    {
        var workshop = File.ReadAllBytes(Demo.File("bicycle-workshop.wain.json"));
        var large = JobFile.Write(Demo.WithParts(300));

        Median.Of("read and check the bicycle workshop's job file", times: 30, () => JobFile.Read(workshop).Job!.Parts.Count);
        Median.Of("read and check a job file of 300 parts", times: 30, () => JobFile.Read(large).Job!.Parts.Count);

        var folder = Directory.CreateTempSubdirectory("wain-bench-");
        try
        {
            using (var store = Store.Open(folder.FullName, TimeProvider.System)) store.Import(Demo.WithParts(300), "bench");
            // a new store each time: nothing is held from the run before
            Median.Of("open the store and a job of 300 parts in it", times: 30, () =>
            {
                using var store = Store.Open(folder.FullName, TimeProvider.System);
                return store.Find("bench-300")!.Job.Parts.Count;
            }, limitMs: 200);
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        var camper = JobFile.Read(File.ReadAllBytes(Demo.File("touring-camper.wain.json"))).Job!;
        Median.Of("judge the touring camper: every check", times: 20, () => Checks.All(camper, new DateOnly(2026, 6, 1)).Count);
        Median.Of("plan how to take out the camper's water pump", times: 5, () => RemovalPlanner.Remove(camper, [camper.Parts.First(p => p.Name.Contains("pump", StringComparison.Ordinal)).Id]).Steps.Count);
        return 0;
    }
}
