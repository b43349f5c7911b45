namespace Wainwright.Records;

/// <summary>What is taken from a pack at most.</summary>
/// <param name="Entries">Entries in the zip.</param>
/// <param name="FileBytes">Size of the zip itself [bytes].</param>
/// <param name="TotalBytes">Size of everything, unpacked [bytes].</param>
/// <param name="Ratio">Unpacked size over packed size of one entry.</param>
/// <param name="BytesOf">Largest size of the file of a name [bytes]; <see langword="null"/> when there is no such file in this kind of pack.</param>
internal sealed record PackLimits(int Entries, long FileBytes, long TotalBytes, int Ratio, Func<string, long?> BytesOf);

/// <summary>A pack passed a limit; it is not read any further.</summary>
internal sealed class PackRefusedException(string rule, string mend) : Exception(rule)
{
    public string Mend { get; } = mend;
}
