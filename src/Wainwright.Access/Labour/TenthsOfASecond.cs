namespace Wainwright.Access;

/// <summary>The search counts labour in whole tenths of a second.</summary>
internal static class TenthsOfASecond
{
    /// <summary>Tenths of a second in a minute.</summary>
    public const double InAMinute = 600;
}
