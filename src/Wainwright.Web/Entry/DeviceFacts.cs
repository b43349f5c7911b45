using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>What a part does, fact by fact.</summary>
public static class DeviceFacts
{
    /// <summary>The facts of a device, those of its holes and fittings aside.</summary>
    public static IReadOnlyList<Fact<Device>> Of(Device device, Measures measures)
    {
        var f = new FactsOf<Device>(measures);
        switch (device)
        {
            case Battery b:
                f.Number("Volts", b.Volts, v => b with { Volts = v!.Value }, needed: true);
                f.Number("Capacity, Ah", b.CapacityAh, v => b with { CapacityAh = v });
                f.Text("Chemistry", b.Chemistry, v => b with { Chemistry = v }, placeholder: "lithium iron phosphate");
                break;
            case MainsInlet i:
                f.Number("Volts", i.Volts, v => i with { Volts = v!.Value }, needed: true);
                break;
            case ResidualCurrentDevice r:
                f.Number("Rated residual current, mA", r.RatedMa, v => r with { RatedMa = v });
                f.Number("Trip time at rated current, ms", r.TripAtRatedMs, v => r with { TripAtRatedMs = v });
                f.Number("Trip time at five times, ms", r.TripAtFiveTimesMs, v => r with { TripAtFiveTimesMs = v });
                f.YesNo("Breaks all live conductors", r.BreaksAllPoles, v => r with { BreaksAllPoles = v });
                f.Day("Tested with an instrument on", r.TestedOn, v => r with { TestedOn = v });
                f.Parts("Protects", r.Protects, v => r with { Protects = v });
                break;
            case Overcurrent o:
                f.Number("Rating, A", o.RatedA, v => o with { RatedA = v });
                f.Whole("Ways of the board", o.Ways, v => o with { Ways = v });
                f.Whole("Ways labelled", o.WaysLabelled, v => o with { WaysLabelled = v });
                break;
            case Isolator i:
                f.Choice("Isolates", i.Medium, v => i with { Medium = v }, needed: true);
                break;
            case Converter c:
                f.Choice("Takes", c.From, v => c with { From = v }, needed: true);
                f.Choice("Gives", c.To, v => c with { To = v }, needed: true);
                f.Number("Power, W", c.PowerW, v => c with { PowerW = v });
                f.Number("Output current, A", c.CurrentA, v => c with { CurrentA = v });
                break;
            case Outlet o:
                f.Choice("Gives", o.Medium, v => o with { Medium = v }, needed: true);
                f.Number("Volts", o.Volts, v => o with { Volts = v!.Value }, needed: true);
                f.Part("Fed by", o.FedBy, v => o with { FedBy = v }, "nobody has traced it");
                f.Place("Where its front is", o.At, v => o with { At = v });
                break;
            case WetFitting w:
                f.Choice("What it is", w.Wet, v => w with { Wet = v }, needed: true);
                f.Place("Where it can leak", w.At, v => w with { At = v });
                break;
            case Tank t:
                f.Choice("Holds", t.Holds, v => t with { Holds = v }, needed: true);
                f.Number("Volume when full, l", t.VolumeL, v => t with { VolumeL = v!.Value }, needed: true);
                f.Number("In it now, l", t.FilledL, v => t with { FilledL = v });
                break;
            case AirHeater h:
                f.Number("Heat output, kW", h.PowerKw, v => h with { PowerKw = v });
                f.Choice("Burner takes its air from", h.CombustionAirFrom, v => h with { CombustionAirFrom = v });
                f.Length("Bore of the burner's air pipe at its narrowest", h.CombustionIntakeBoreMm, v => h with { CombustionIntakeBoreMm = v });
                f.Length("Bore it should have", h.CombustionIntakeNominalMm, v => h with { CombustionIntakeNominalMm = v });
                f.Number("Volts at its plug when it starts", h.StartVolts, v => h with { StartVolts = v });
                break;
            case WaterHeater w:
                f.Number("Volume, l", w.VolumeL, v => w with { VolumeL = v });
                f.Choice("Heated by", w.HeatedBy, v => w with { HeatedBy = v }, needed: true);
                f.YesNo("Relief valve piped outside", w.ReliefPipedOutside, v => w with { ReliefPipedOutside = v });
                break;
            case GasStore g:
                f.Number("Gas when full, kg", g.GasKg, v => g with { GasKg = v });
                f.Number("Free area of the low drop-out, mm²", g.DropOutMm2, v => g with { DropOutMm2 = v });
                break;
            case GasAppliance g:
                f.Text("What it is", g.Kind, v => g with { Kind = v! }, needed: true);
                f.YesNo("Room-sealed", g.RoomSealed, v => g with { RoomSealed = v });
                break;
            case Alarm a:
                f.Choice("Senses", a.Senses, v => a with { Senses = v }, needed: true);
                f.Day("Runs out", a.Expires, v => a with { Expires = v });
                f.YesNo("Test button works", a.TestButtonWorks, v => a with { TestButtonWorks = v });
                break;
            case Extinguisher e:
                f.Day("Due for service or renewal", e.Due, v => e with { Due = v });
                break;
            case Vent v:
                f.YesNo("Can be shut", v.CanBeShut, t => v with { CanBeShut = t });
                break;
            case Consumer c:
                f.Choice("Fed with", c.Medium, v => c with { Medium = v }, needed: true);
                f.Number("Power, W", c.PowerW, v => c with { PowerW = v });
                f.Number("Current, A", c.CurrentA, v => c with { CurrentA = v });
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(device));
        }
        return [.. f];
    }
}
