using Wainwright.Bench;
using Wainwright.Fitout;

// dotnet run -c Release --project bench/Wainwright.Bench
// Medians of one machine in one run: compare with the run before a change, not with another machine.

var workshop = File.ReadAllBytes(Demo.File("bicycle-workshop.wain.json"));
var large = JobFile.Write(Demo.WithParts(300));

Median.Of("read and check the bicycle workshop's job file", times: 30, () => JobFile.Read(workshop).Job!.Parts.Count);
Median.Of("read and check a job file of 300 parts", times: 30, () => JobFile.Read(large).Job!.Parts.Count);
