using System.Globalization;
using Wainwright.Bench;
using Wainwright.Bench.Hold;
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
        return OneByOne.Boxes(Kind(), Number(2, 100), Number(3, 5), Number(4, 0));
    case "jobs":
        return OneByOne.Jobs(Kind(), Number(2, 100), Number(3, 5));
    case "asks":
        return Asking.Run(Kind(), Number(2, 200), Number(3, 1));
    case "race":
        return Race.Run(args.Length > 1 && args[1] != "all" ? [Kind()] : Enum.GetValues<Family>(), Number(2, 50), Number(3, 5), Number(4, 20));
    case "listed":
        return Listed.Run(Number(1, 60), Number(2, 5), Number(3, 20));
    case "camper":
        return Camper.Run(args.Length > 1 ? args[1] : "A52");
    case "replan":
        return Replans.Run(Kind(), Number(2, 50), Number(3, 5));
    case "growth":
        return Growth.Run(Number(1, 5));
    case "hold":
        return HoldRace.Run(Number(1, 2_000));
    case "damp":
        return Damp.Run(Number(1, 25));
    case "wetting":
        return Wetting.Run(Number(1, 50), Number(2, 200));
    case "field":
        return Field.Run(Number(1, 20_000), Number(2, 500));
    case "check":
        return Checking.Run(Number(1, 10_000));
    default:
        Console.Error.WriteLine("usage: rooms | van FAMILY PARTS SEED | boxes FAMILY PARTS SEEDS [SECONDS] | jobs FAMILY PARTS SEEDS | asks FAMILY PARTS SEED | race FAMILY PARTS SEEDS SECONDS | listed ITEMS SEEDS SECONDS | growth SEEDS | camper PART | hold DRAWS | replan FAMILY PARTS SEEDS | check COUNT | damp EDGE | wetting EDGE MEMBERS | field CELLS READINGS");
        return 2;
}
