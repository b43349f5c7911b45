using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A moisture reading as typed, at a point that is there or at a new one.</summary>
public sealed class TypedReading
{
    private readonly Fields typed;
    private readonly Place? at;
    private readonly double percent;
    private readonly double? airC, airRhPercent;

    private TypedReading(Fields typed, Place? at, double percent, double? airC, double? airRhPercent, string? fault, string what) =>
        (this.typed, this.at, this.percent, this.airC, this.airRhPercent, Fault, What) = (typed, at, percent, airC, airRhPercent, fault, what);

    /// <summary>The fields of the form.</summary>
    /// <param name="Point">Id of the point; empty for a new one.</param>
    /// <param name="Board">Id of the part that a new point is on; empty when nobody said.</param>
    /// <param name="At">Where a new point is: three measures.</param>
    /// <param name="Where">The same in words.</param>
    /// <param name="Percent">What the meter shows [%].</param>
    /// <param name="AtLeast">The meter was at its end.</param>
    /// <param name="AirC">Air [°C]; empty when not read.</param>
    /// <param name="AirRhPercent">Air humidity [%]; empty when not read.</param>
    /// <param name="Instrument">Instrument.</param>
    /// <param name="Conditions">Conditions.</param>
    public sealed record Fields(string Point, string Board, string At, string Where, string Percent, bool AtLeast, string AirC, string AirRhPercent, string Instrument, string Conditions);

    /// <summary>Why it cannot be stored; absent when it can.</summary>
    public string? Fault { get; }

    /// <summary>What the journal says of it.</summary>
    public string What { get; }

    /// <summary>Reads the form.</summary>
    public static TypedReading Of(Job job, Fields typed, Measures bare)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(typed);
        var at = typed.Point.Length > 0 ? null : Spot(typed.At, bare);
        var (percent, air, humid) = (Number(typed.Percent), Number(typed.AirC), Number(typed.AirRhPercent));
        var fault = percent is not (>= 0 and <= 100) ? "Moisture: a number from 0 to 100, as the meter shows it."
            : typed.AirC.Trim().Length > 0 && air is null ? "Air: a number in °C, or nothing."
            : typed.AirRhPercent.Trim().Length > 0 && humid is null ? "Air humidity: a number in %, or nothing."
            : typed.Point.Length == 0 && at is null ? "Where: three measures with commas between, along from the front, across from the left, up from the floor."
            : typed.Point.Length == 0 && typed.Where.Trim().Length == 0 ? "Say in words where the point is, as it is chalked beside it."
            : null;
        var point = typed.Point.Length > 0 ? typed.Point : Next(job);
        return new(typed, at, percent ?? 0, air, humid, fault, $"{point} {(job.Points.FirstOrDefault(p => p.Id.Text == point)?.Where ?? typed.Where.Trim())} read: {(typed.AtLeast ? "≥ " : "")}{Figures.Number(percent ?? 0)} % moisture");
    }

    /// <summary>The edits: the point where it is new, and the reading.</summary>
    public IEnumerable<Edit> Edits(Job job, DateTimeOffset now, string who)
    {
        ArgumentNullException.ThrowIfNull(job);
        var old = job.Points.FirstOrDefault(p => p.Id.Text == typed.Point);
        var point = old ?? new ReadingPoint { Id = new(Next(job)), At = at!.Value, Where = typed.Where.Trim(), Part = typed.Board.Length > 0 ? new(typed.Board) : null };
        if (old is null) yield return Edit.Put(job, "points", point.Id.Text, point);
        var reading = new Reading
        {
            Id = new(NextId.After(job.Readings.Select(r => r.Id.Text), "R", 3)), Quantity = Quantity.Moisture, Value = percent, Unit = Units.Of(Quantity.Moisture), AtLeast = typed.AtLeast,
            Point = point.Id, Part = point.Part, AirC = airC, AirRhPercent = airRhPercent, Instrument = Text(typed.Instrument), Conditions = Text(typed.Conditions),
            TakenAt = now, TakenBy = who, Stage = job.Stages is [.., var last] ? last.Id : null,
        };
        yield return Edit.Put(job, "readings", reading.Id.Text, reading);
    }

    private static string Next(Job job) => NextId.After(job.Points.Select(p => p.Id.Text), "P");

    private static Place? Spot(string text, Measures bare) =>
        text.Split([',', ';'], StringSplitOptions.TrimEntries) is [var x, var y, var z] && Figures.Mm(x, bare) is { } along && Figures.Mm(y, bare) is { } across && Figures.Mm(z, bare) is { } up ? new(along, across, up) : null;

    private static double? Number(string text) => double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var v) ? v : null;

    private static string? Text(string text) => text.Trim().Length == 0 ? null : text.Trim();
}
