using System.Globalization;
using Wainwright.Bench;
using Wainwright.Bench.Vans;
using Wainwright.Fitout;

// dotnet run -c Release --project bench/Wainwright.Bench -- WHAT; bench/README.md says what there is and how long it takes.

int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;
Family Kind() => args.Length > 1 ? Enum.Parse<Family>(args[1], ignoreCase: true) : Family.VanLike;

switch (args.FirstOrDefault() ?? "rooms")
{
    case "rooms":
        return Rooms.Run();
    case "van":
        using (var output = Console.OpenStandardOutput()) output.Write(JobFile.Write(VanJob.Of(BoxVan.Make(Kind(), Number(2, 200), Number(3, 1)))));
        return 0;
    case "boxes":
        return OneByOne.Boxes(Kind(), Number(2, 100), Number(3, 5));
    case "jobs":
        return OneByOne.Jobs(Kind(), Number(2, 100), Number(3, 5));
    default:
        Console.Error.WriteLine("usage: rooms | van FAMILY PARTS SEED | boxes FAMILY PARTS SEEDS | jobs FAMILY PARTS SEEDS");
        return 2;
}
