namespace Wainwright.Survey.Retention;

/// <summary>Which end of the doubt is asked for.</summary>
internal enum StrengthEnd
{
    /// <summary>Weak fixings, heavy parts: what can be counted on.</summary>
    Low,

    /// <summary>As expected.</summary>
    Likely,

    /// <summary>Strong fixings, light parts: what cannot be ruled out.</summary>
    High,
}
