using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

/// <summary>An invented van small enough to hold in the head: a locker that hangs by a thread, a wet floor corner, a heater nobody has opened.</summary>
internal static class SmallJob
{
    public static readonly PhotoHash Picture = new("9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");

    public static Job Job { get; } = new()
    {
        Format = 1,
        Id = "TEST-7",
        Title = "Small camper",
        Currency = "EUR",
        RatePerHour = 60,
        Intake = new() { On = new(2026, 3, 2), Owner = "the owner", OwnersWords = ["water on the floor after rain"], Limits = ["ask before spending over 500"] },
        Vehicle = new()
        {
            Name = "short panel van",
            LoadSpace = new()
            {
                LengthMm = 2400,
                WidthMm = new Measured(1700, 5),
                HeightMm = 1800,
                WheelArches = [new() { Side = Direction.Left, FromXMm = 1500, ToXMm = 2100, WidthMm = 180, HeightMm = 280 }],
                Taper = new() { FromZMm = 1000, InAtRoofMm = 100 },
            },
            Frames = [new() { Name = "bow 1", Kind = FrameKind.Bow, XMm = 600, Known = Known.Measured }, new() { Name = "rib 1", Kind = FrameKind.Rib, XMm = 900, Known = Known.Seen }],
            Openings =
            [
                new() { Name = "sliding door", Face = Face.Right, FromMm = 100, WidthMm = 1000, SillMm = 0, HeightMm = 1500, Passable = true, Known = Known.Measured },
                new() { Name = "rear doors", Face = Face.Rear, FromMm = 150, WidthMm = 1400, SillMm = 0, HeightMm = 1600, Passable = true, Known = Known.Measured },
            ],
            Axles = [new() { Name = "front", XMm = -1000 }, new() { Name = "rear", XMm = 1800 }],
        },
        Parts =
        [
            Box("L1", "upper locker 10 mm ply", PartSystem.Furniture, new(300, 10, 1350), new(900, 300, 300)) with { Overhead = true, MassKg = 9 },
            Box("S1", "subfloor 12 mm ply", PartSystem.Floor, new(0, 0, 0), new(2400, 1700, 12)) with { MassKg = 30 },
            Box("K1", "kitchen box", PartSystem.Furniture, new(1200, 1200, 12), new(800, 480, 880)) with { MassKg = 25 },
            Box("H1", "fuel air heater", PartSystem.Heating, new(400, 100, 30), new(340, 150, 140)) with { MassKg = 3, Known = Known.NotInspected },
            new Part { Id = new("X1"), Name = "cable behind the lining", System = PartSystem.Dc, Known = Known.Inferred },
        ],
        Joints =
        [
            new()
            {
                Id = new("J1"), Part = new("L1"), Type = FixingType.WoodScrew, Size = "4x30", Count = 4, Base = "5 mm ply lining", Known = Known.Seen,
                Points = [new(350, 10, 1600), new(550, 10, 1600), new(750, 10, 1600), new(1150, 10, 1600)], Axis = Direction.Left, Release = new() { Way = ReleaseWay.Unscrew },
            },
        ],
        Points =
        [
            new() { Id = new("P1"), At = new(2200, 200, 12), Where = "rear left floor corner", Part = new("S1"), Material = "birch ply", Mode = "pins, wood scale", DryReference = new("P2") },
            new() { Id = new("P2"), At = new(300, 900, 12), Where = "floor by the sliding door", Part = new("S1"), Material = "birch ply", Mode = "pins, wood scale" },
        ],
        Readings =
        [
            Moisture("R1", "P1", 27.5, new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero)),
            Moisture("R2", "P2", 11.0, new(2026, 3, 2, 9, 5, 0, TimeSpan.Zero)),
            Moisture("R3", "P1", 19.0, new(2026, 3, 9, 9, 0, 0, TimeSpan.Zero)),
            new()
            {
                Id = new("R4"), Quantity = Quantity.Length, Value = 6, Unit = "mm", Part = new("L1"), What = "gap at the top rear of the locker",
                TakenAt = new(2026, 3, 2, 9, 10, 0, TimeSpan.Zero), Instrument = "feeler gauge",
            },
        ],
        Findings =
        [
            new()
            {
                Id = new("F2"), What = "The rear left floor corner is wet: 27.5 % at P1, dry reference P2 11 %", Parts = [new("S1")], Points = [new("P1")], Known = Known.Measured,
                Evidence = "pin meter, soft to the probe over 80 mm", Readings = [new("R1"), new("R2")], Severity = Severity.Negligible, Likelihood = Likelihood.Probable,
                Urgency = Urgency.U1, Remedies = ["open the corner, dry, cut out what stays soft", "do nothing: the rot spreads"], WouldTell = "lift the covering over 300 mm",
            },
            new()
            {
                Id = new("F1"), What = "The upper locker hangs on four screws in 5 mm ply", Parts = [new("L1")], Joints = [new("J1")], Known = Known.Seen, Photos = [Picture],
                Severity = Severity.Critical, Likelihood = Likelihood.Occasional, Urgency = Urgency.U0, AppliesTo = [Use.Drive], Remedies = ["fix to the ribs with rivet nuts"],
            },
            new()
            {
                Id = new("F3"), What = "The fuel heater was not opened", Parts = [new("H1")], Known = Known.NotInspected, WouldTell = "look at its burner and its exhaust pipe",
                ReservedFor = "a heater engineer", AppliesTo = [Use.Heater],
            },
        ],
        Photos = [new() { Hash = Picture, Shows = "screws of the upper locker, lining bulged", MediaType = "image/png", Parts = [new("L1")] }],
        Isolation = [new() { Id = "I1", What = "battery negative lifted and insulated", Medium = Medium.Dc, DoneAt = new(2026, 3, 2, 8, 20, 0, TimeSpan.Zero), By = "fitter", Remains = "solar leads are live in daylight" }],
        Estimate =
        [
            new() { Id = "E1", What = "Fix the upper locker to the ribs", EasyHours = 2, LikelyHours = 3, HardHours = 5, Materials = 40, Findings = [new("F1")] },
            new() { Id = "E2", What = "Open and dry the floor corner", EasyHours = 4, LikelyHours = 6, HardHours = 11, Materials = 80, Findings = [new("F2")], Option = "mend" },
            new() { Id = "E3", What = "Cut out a floor section", EasyHours = 6, LikelyHours = 9, HardHours = 14, Materials = 120, ChanceLow = 0.2, ChanceHigh = 0.4, Findings = [new("F2")], Option = "mend" },
            new() { Id = "E4", What = "Strip and rebuild the whole van", EasyHours = 150, LikelyHours = 220, HardHours = 340, Materials = 5000, Option = "rebuild" },
        ],
        Tests = [new() { Id = "T1", What = "Water system under pressure", Limit = "no fall in 20 min", Result = "2.6 bar held 20 min", By = "fitter" }],
        Bags = [new() { Id = "B1", Part = new("L1"), Joint = new("J1"), Holds = "4 screws 4x30", KeptAt = "shelf 2" }],
    };

    private static Part Box(string id, string name, PartSystem system, Place at, Place size) => new()
    {
        Id = new(id),
        Name = name,
        System = system,
        Known = Known.Measured,
        Solids = [new BoxSolid { At = at, Size = size }],
    };

    private static Reading Moisture(string id, string point, double percent, DateTimeOffset at) => new()
    {
        Id = new(id),
        Quantity = Quantity.Moisture,
        Value = percent,
        Unit = "%",
        Point = new(point),
        TakenAt = at,
        Instrument = "pin meter",
        AirC = 19,
        AirRhPercent = 61,
    };
}
