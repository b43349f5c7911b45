using Wainwright.Fitout;

namespace Wainwright.Survey.Tests;

/// <summary>A small van in which every check finds everything it asks for; some claims hold, some fall short, some are too close to tell.</summary>
static class FullVan
{
    static readonly DateTimeOffset At = new(2026, 2, 1, 9, 0, 0, TimeSpan.Zero);

    static Part Weighing(this Part part, double kg) => part with { MassKg = new(kg, 0.5) };

    public static Job Job => A.Van(
        A.Part("sink", new WetFitting { Wet = WetKind.Sink }).At(1_000, 0, 800).Weighing(4),
        A.Part("tank", new Tank { Holds = Medium.Water, VolumeL = new(60, 1), FilledL = new(20, 2), Fittings = [new() { Name = "lid", At = new(300, 100, 300) }] }).At(200, 0, 0, 400, 300, 300).Weighing(6),
        A.Part("boiler", new WaterHeater { HeatedBy = Medium.Mains, ReliefPipedOutside = true }).At(2_700, 1_500, 0).Weighing(7),
        A.Part("near", Outlet("board")).At(1_500, 0, 800).Weighing(0.3),
        A.Part("bare", Outlet("inverter")).At(1_000, 300, 600).Weighing(0.3),
        A.Part("edge", Outlet("inverter")).At(2_900, 0, 800).Weighing(0.3),
        A.Part("inverter", new Converter { From = Medium.Dc, To = Medium.Mains, PowerW = 1_500 }).At(2_500, 0, 100).Weighing(5),
        A.Part("board", new ResidualCurrentDevice { RatedMa = 30, TripAtRatedMs = new(120, 1), TripAtFiveTimesMs = new(31, 1), Protects = [new("near")], TestedOn = A.Day }).At(2_500, 300, 100).Weighing(2),
        A.Part("inlet", new MainsInlet { Volts = 230 }).At(2_900, 1_700, 600).Weighing(0.8),
        A.Part("fuse", new Overcurrent { RatedA = 20 }).At(2_600, 900, 100).Weighing(0.2),
        A.Part("battery", new Battery { Volts = 12.8 }).At(2_600, 700, 50).Weighing(22),
        Heater("good", new(65, 0.5), new(22, 0.3), new(12.1, 0.05), AirFrom.Outside).At(400, 1_200, 50).Weighing(3),
        Heater("poor", new(31.75, 0.5), new(11, 0.3), new(10.5, 0.05), AirFrom.Room).At(800, 1_200, 50).Weighing(3),
        Heater("close", new(60, 1), new(19.9, 0.5), new(11.65, 0.05), AirFrom.Outside).At(1_200, 1_200, 50).Weighing(3),
        A.Part("alarm", new Alarm { Senses = Senses.CarbonMonoxide, Expires = A.Day.AddYears(1), TestButtonWorks = true }).At(0, 0, 1_200).Weighing(0.2),
        A.Part("old alarm", new Alarm { Senses = Senses.CarbonMonoxide, Expires = A.Day.AddYears(-1), TestButtonWorks = true }).At(0, 200, 1_200).Weighing(0.2),
        A.Part("dead alarm", new Alarm { Senses = Senses.CarbonMonoxide, Expires = A.Day.AddYears(1), TestButtonWorks = false }).At(0, 400, 1_200).Weighing(0.2),
        A.Part("extinguisher", new Extinguisher { Due = A.Day.AddDays(-5) }).At(0, 600, 0).Weighing(3),
        A.Part("gas locker", new GasStore { DropOutMm2 = new(3_200, 100) }).At(1_000, 1_500, 100).Weighing(14),
        (A.Part("locker") with { Overhead = true, Contents = [new() { What = "pans", MassKg = new(6, 1) }] }).At(1_000, 0, 1_500).Weighing(11),
        (A.Part("lining") with { Overhead = true }).At(1_000, 500, 1_800).Weighing(4),
        (A.Part("cabinet") with
        {
            Made = [new() { Material = "birch ply", ThicknessMm = new(15, 0.5) }],
            Moving = [Drawer("top drawer", "turn button", new(120, 10)), Drawer("bottom drawer", "nothing", null), new() { Name = "flap", Kind = MovingKind.DropFlap, Opens = Direction.Right, MassKg = new(3, 0.2), KeptShutBy = "magnet", HoldsN = new(11, 2) }],
            Shelves = [Shelf("railed shelf", 150), Shelf("bare shelf", 0)],
        }).At(2_000, 0, 0, 500, 400, 900).Weighing(14),
        (A.Part("chest") with
        {
            Moving =
            [
                new()
                {
                    Name = "lid", Kind = MovingKind.Lid, Opens = Direction.Up, MassKg = new(10, 0.2), KeptShutBy = "turn button", HoldsN = new(200, 20), Hinge = new(600, 0, 400), CentreShut = new(600, 250, 400), FarEdgeShut = new(600, 500, 400),
                    OpensDeg = 80, Springs = new() { ForceN = new(300, 10), Count = 2, DrawnOutMm = 400, StrokeMm = 180, FixedAt = new(600, 30, 170), MovingAt = new(600, 200, 400) },
                },
            ],
        }).At(500, 0, 0, 300, 500, 400).Weighing(4),
        A.Part("rack").At(1_500, 1_500, 0, 400, 300, 900).Weighing(20)) with
    {
        Vehicle = A.Van().Vehicle with
        {
            PlatedMassKg = new(2_300, 0), TrackMm = new(1_700, 5),
            Axles =
            [
                new() { Name = "front", XMm = new(-1_000, 5), RatingKg = 1_400, BareKg = new(1_200, 5) },
                new() { Name = "rear", XMm = new(2_500, 5), RatingKg = 905, BareKg = new(800, 5) },
            ],
            Seats = [new() { Name = "driver", XMm = -300, YMm = 500, UsedOnRoad = true }, new() { Name = "passenger", XMm = -300, YMm = 1_300, UsedOnRoad = true }],
        },
        Weighings =
        [
            new()
            {
                Id = "W", On = A.Day, PeopleAboard = 0, State = "as found", UnlistedKg = new(5, 1), LeftKg = new(1_100, 5), RightKg = new(1_030, 5),
                Axles = [new() { Axle = "front", LoadKg = new(1_240, 5) }, new() { Axle = "rear", LoadKg = new(890, 5) }],
            },
        ],
        Joints =
        [
            Held("screws", "locker", FixingState.Loose, 2), Held("cups", "lining", FixingState.Sound, null),
            Bolts("cabinet bolts", "cabinet", Direction.Left, [new(2_050, 15, 800), new(2_450, 15, 800), new(2_050, 15, 100), new(2_450, 15, 100)]),
            Bolts("rack feet", "rack", Direction.Down, [new(1_510, 1_510, 5), new(1_890, 1_510, 5), new(1_510, 1_790, 5), new(1_890, 1_790, 5)]),
        ],
        Lines =
        [
            Cable("thick", new(6, 0.1)), Cable("thin", new(0.9, 0.05)), Cable("middling", new(2.5, 0.1)),
            new() { Id = new("hose"), Name = "gas hose", Medium = Medium.Gas, Build = LineBuild.Hose, From = new(), To = new(), MadeOn = A.Day.AddYears(-11), Known = Known.Seen },
        ],
        Points =
        [
            new() { Id = new("dry"), At = new(1_000, 500, 1_800), Where = "lining where no water came", Part = new("lining"), Material = "ply", Mode = "long pins" },
            new() { Id = new("wet"), At = new(1_050, 550, 1_800), Where = "lining under the leak", Part = new("lining"), Material = "ply", Mode = "long pins", DryReference = new PointId("dry") },
            new() { Id = new("foot"), At = new(2_050, 100, 50), Where = "foot of the cabinet", Part = new("cabinet"), Material = "ply", Mode = "long pins", DryReference = new PointId("dry") },
        ],
        Readings =
        [
            .. Moist("dry", 12.1, 12, 11.9), .. Moist("wet", 24, 13.4, 13.1), .. Moist("foot", 25, 19, 17.5),
            Megohm("R1", 0.6, null), Megohm("R2", 6, "R1"), Megohm("R3", 1.4, null),
            .. Pull("F1", 200, "S1", 3, 0), .. Pull("F2", 0, "S2", 2, 1),
        ],
    };

    static Outlet Outlet(string fedBy) => new() { Medium = Medium.Mains, Volts = 230, FedBy = new(fedBy) };

    static Part Heater(string id, Measured inlet, Measured bore, Measured volts, AirFrom from) => A.Part(id, new AirHeater
    {
        CombustionAirFrom = from, CombustionIntakeBoreMm = bore, CombustionIntakeNominalMm = 22, StartVolts = volts,
        CirculationInlets = [new() { Name = "hole", DiameterMm = inlet }], HotAirOutlets = [new() { Name = "outlet", WidthMm = new(53.2, 0.3), HeightMm = new(53.2, 0.3) }],
    });

    static Joint Held(string id, string part, FixingState state, int? inState) => new()
    {
        Id = new(id), Part = new(part), Type = FixingType.WoodScrew, Count = 8, State = state, StateCount = inState, Release = new() { Way = ReleaseWay.Unscrew }, Known = Known.Seen,
    };

    static Joint Bolts(string id, string part, Direction axis, IReadOnlyList<Place> points) => new()
    {
        Id = new(id), Part = new(part), Type = FixingType.RivetNut, Size = "M6", Count = 4, Points = points, Axis = axis, Base = "side rib, steel", BaseMm = new(1.2, 0.1), UnderHead = "birch ply", UnderHeadMm = new(15, 0.5), HeadMm = new(18, 1),
        State = FixingState.Sound, Release = new() { Way = ReleaseWay.Unscrew }, Known = Known.Measured,
    };

    static MovingThing Drawer(string name, string by, Measured? holds) => new() { Name = name, Kind = MovingKind.Drawer, Opens = Direction.Right, MassKg = new(6, 0.3), KeptShutBy = by, HoldsN = holds };

    static OpenShelf Shelf(string name, double lip) => new()
    {
        Name = name, LipMm = new(lip, 1), OpenSides = [Direction.Forward], Holds = "tins", CentreMm = new(60, 2), FootMm = new(70, 2), HeaviestKg = new(0.5, 0.05), HeightMm = new(1_200, 5), Friction = new(0.4, 0.05),
    };

    static IEnumerable<Reading> Pull(string force, double n, string movement, double mm, int minute) =>
    [
        new() { Id = new(force), Quantity = Quantity.Force, Value = new(n, 5), Unit = "N", Part = new("rack"), At = new(1_500, 1_650, 900), Toward = Direction.Forward, TakenAt = At.AddMinutes(minute) },
        new() { Id = new(movement), Quantity = Quantity.Length, Value = new(mm, 0.2), Unit = "mm", Part = new("rack"), UnderForce = new ReadingId(force), TakenAt = At.AddMinutes(minute) },
    ];

    static Line Cable(string id, Measured mm2) => new()
    {
        Id = new(id), Name = id, Medium = Medium.Dc, Build = LineBuild.Cable, From = new(), To = new(), ConductorMm2 = mm2, ProtectedBy = new("fuse"), Known = Known.Seen,
    };

    static IEnumerable<Reading> Moist(string point, params IReadOnlyList<double> percent) => percent.Select((v, i) => new Reading
    {
        Id = new($"{point} {i}"), Quantity = Quantity.Moisture, Value = v, Unit = "%", Point = new PointId(point), TakenAt = At.AddDays(5 * i), AirC = 20, AirRhPercent = 45, Conditions = "heat off overnight", Instrument = "pin meter",
    });

    static Reading Megohm(string id, double value, string? corrects) => new()
    {
        Id = new(id), Quantity = Quantity.Insulation, Value = new(value, 0.05), Unit = "MΩ", TakenAt = At, Corrects = corrects is null ? null : new ReadingId(corrects),
    };
}
