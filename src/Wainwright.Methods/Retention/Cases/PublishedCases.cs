using static Wainwright.Methods.Provenance;
using static Wainwright.Methods.Retention.CaseKind;

namespace Wainwright.Methods.Retention;

/// <summary>Accelerations in published rules and tests, to compare with the six of <see cref="LoadCases"/>.</summary>
/// <remarks>Rows for seats, belts and gas containers are here to show what those stand; the parts themselves are out of scope.</remarks>
public static class PublishedCases
{
    /// <summary>Rows as published.</summary>
    public static readonly Basis Basis = new(
        Source: "each row names its own",
        Assumes: ["figures as printed, not converted to another purpose"],
        Caution: "None of them is a rule for furniture in a van. Where a row is from memory, open the document before quoting it.",
        How: Quoted);

    const string Cargo = "Cargo so secured stays put in driving.", CargoNot = "Written for cargo of lorries.", Seats = "Written for seats and belts: out of scope here.";

    /// <summary>All rows.</summary>
    public static IReadOnlyList<AccelerationCase> All { get; } =
    [
        new("en-12195-1", "EN 12195-1, stable cargo", Driving, 0.8, 0.5, 0.5, null, 1.0, true, "EN 12195-1, as a training page of the CTU Code quotes it", Quoted, Cargo, "Not for vehicles of 3.5 t total mass and less."),
        new("en-12195-1-tipping", "EN 12195-1, cargo liable to tip", Driving, 0.8, 0.6, 0.6, null, 1.0, true, "EN 12195-1, as the same page quotes it", Quoted, Cargo, "Not for vehicles of 3.5 t total mass and less."),
        new("vdi-2700-16-to-2", "VDI 2700 part 16, to 2.0 t", Driving, 0.9, 0.5, 0.7, null, null, false, "ESV paper 09-0008, figure 1", Quoted, Cargo, "Cargo, not furniture."),
        new("vdi-2700-16-to-3.5", "VDI 2700 part 16, over 2.0 to 3.5 t", Driving, 0.8, 0.5, 0.6, null, null, false, "ESV paper 09-0008, figure 1", Quoted, Cargo, "Cargo, not furniture.")
        {
            Notes = ["The running text of the same paper says 0.9 and 0.7: the source contradicts itself. Take the higher when in doubt."],
        },
        new("vdi-2700-16-over-3.5", "VDI 2700 part 16, over 3.5 t", Driving, 0.8, 0.5, 0.5, null, null, false, "ESV paper 09-0008, figure 1", Quoted, Cargo, "Cargo, not furniture."),
        new("cfr-393-102-breaking", "49 CFR 393.102, against breaking strength", Driving, 0.8, 0.5, 0.5, 0.2, null, false, "49 CFR 393.102(a)(1); up: 20 % of weight where not contained", Read, Cargo, CargoNot),
        new("cfr-393-102-working", "49 CFR 393.102, against working limit", Driving, 0.435, 0.5, 0.25, 0.2, null, false, "49 CFR 393.102(a)(2)", Read, Cargo, CargoNot),
        new("cargo-pitching", "Braking lorry that pitches", Driving, 1.0, null, null, null, null, false, "tis-gdv.de, load securing report, chapter 5.1: 0.8 g of braking may load cargo with 1.0", Read, Cargo, CargoNot),
        new("cfr-25-561", "14 CFR 25.561, airframe", Crash, 9, 1.5, 3.0, 3.0, 6.0, false, "14 CFR 25.561(b)(3), a mirror of the official text", Read, "Emergency landing, each direction alone.", "Aircraft."),
        new("nfpa-1901", "NFPA 1901, cab equipment", Crash, 9, 9, 3, 3, 3, false, "NFPA 1901, 14.1.11, quoted in three articles", Quoted, "Mounts in fire-appliance cabs.", "Fire appliances."),
        new("en-1789", "EN 1789, road ambulance", Crash, 10, 10, 10, 10, 10, false, "EN 1789, 4.5.9 and 5.3", FromMemory, "Fixed devices and items in ambulances.", "Text not opened."),
        new("cfr-238-735", "49 CFR 238.735, rail tier III", ToCompare, 5, 5, 3, 3, 3, false, "49 CFR 238.735, ecfr.io; third direction printed as 3 g", Read, "Seat attachment, alternative.", Seats),
        new("cfr-238-interior", "49 CFR 238.233 and .435, rail interior", ToCompare, 8, 8, 4, 4, 4, false, "49 CFR 238.233, .435", FromMemory, "Interior fittings of trains.", "Trains."),
        new("fmvss-201-doors", "FMVSS 201 S5.3, interior compartment doors", ToCompare, 30, 30, 10, 10, 10, false, "NHTSA letter aiam0132 (30 g both ways); 10 g from memory", Quoted, "A glove-box door stays shut.", "Small doors at the dashboard."),
        new("fmvss-206-latch", "FMVSS 206, door latch inertia", ToCompare, 30, 30, 30, null, null, false, "NHTSA letter nht75-4.27", Read, "An outer door's latch stays shut.", "Outer doors."),
        new("fmvss-207", "FMVSS 207 S4.2, seat anchorage", ToCompare, 20, 20, null, null, null, false, "49 CFR 571.207", FromMemory, "Seat held by its anchorage.", Seats),
        new("un-r17", "UN R17, seat anchorage", ToCompare, 20, 20, null, null, null, false, "UN R17: 20 g for 30 ms", FromMemory, "Seat held by its anchorage.", Seats),
        new("un-r67-r110", "UN R67, R110, gas containers in M1, N1", ToCompare, 20, 20, 8, null, null, false, "UN R67 17.4.5, R110 17.4.4", FromMemory, "Container stays on its frame.", "Gas containers: out of scope here."),
        new("un-r100", "UN R100, battery shock, M1, N1", ToCompare, 28, 28, 15, null, null, false, "UN R100, annex 8D/9D, upper ends of the bands", FromMemory, "Traction battery.", "Traction batteries."),
        new("sae-j3044", "SAE J3044, rear impact pulse", ToCompare, null, 11, null, null, null, false, "tnlab.org summary of J3044-2022, upper corridor", Quoted, "Pulse of a rear impact of 10 mph.", "Ambulance equipment tests."),
    ];

    /// <summary>Load on a lashing point that is tested in vans by total mass [N]; ISO 27956, from memory. Out of the tested classes null.</summary>
    /// <param name="totalMassKg">Total mass [kg], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not above 0.</exception>
    public static double? LashingPointN(double totalMassKg) => Must.BePositive(totalMassKg) switch
    {
        <= 2_500 => 4_000,
        <= 3_500 => 5_000,
        <= 5_000 => 8_000,
        <= 7_500 => 10_000,
        _ => null,
    };
}
