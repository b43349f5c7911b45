namespace Wainwright.Methods.Labour;

/// <summary>Index of fastening or loosening by tool and count: the Basic MOST tool-use card. Index × 10 = TMU.</summary>
/// <remarks>An index covers counts up to the figure on the card; the next count takes the next index.</remarks>
public static class ToolUse
{
    /// <summary>Basic MOST, fasten or loosen.</summary>
    public static readonly Basis Basis = new(
        Source: "Basic MOST tool-use data card, fasten/loosen, as a training text transcribes it",
        Assumes: ["a trained worker at normal pace", "the fastener turns freely"],
        Caution: "A driver's index goes by thread size alone: for long screws add the tool's running time. Corroded and painted screws are another matter.",
        How: Provenance.Quoted);

    /// <summary>Which motion turns the fastener.</summary>
    public enum Motion
    {
        /// <summary>Finger spins.</summary>
        FingerSpin,

        /// <summary>Wrist turns: hand, screwdriver, ratchet, T-key.</summary>
        WristTurn,

        /// <summary>Wrist strokes of a spanner, re-seated each time.</summary>
        WristStroke,

        /// <summary>Wrist cranks.</summary>
        WristCrank,

        /// <summary>Hammer taps from the wrist.</summary>
        Tap,

        /// <summary>Arm turns of a ratchet.</summary>
        ArmTurn,

        /// <summary>Arm strokes of a spanner, re-seated each time.</summary>
        ArmStroke,

        /// <summary>Arm cranks.</summary>
        ArmCrank,

        /// <summary>Hammer strikes from the arm.</summary>
        Strike,
    }

    static readonly int[] Index = [1, 3, 6, 10, 16, 24, 32, 42, 54];

    // largest count that the index covers; 0 where the card is empty
    static readonly Dictionary<Motion, int[]> Most = new()
    {
        [Motion.FingerSpin] = [1, 2, 3, 8, 16, 25, 35, 47, 61],
        [Motion.WristTurn] = [0, 1, 3, 5, 9, 13, 17, 23, 29],
        [Motion.WristStroke] = [0, 1, 2, 3, 5, 8, 10, 13, 17],
        [Motion.WristCrank] = [0, 1, 3, 5, 8, 11, 15, 20, 25],
        [Motion.Tap] = [1, 3, 6, 10, 16, 23, 30, 39, 50],
        [Motion.ArmTurn] = [0, 1, 2, 4, 6, 9, 12, 15, 20],
        [Motion.ArmStroke] = [0, 1, 0, 2, 3, 4, 6, 8, 10],
        [Motion.ArmCrank] = [0, 0, 1, 2, 3, 5, 6, 8, 11],
        [Motion.Strike] = [0, 1, 3, 5, 8, 12, 16, 21, 27],
    };

    /// <summary>Index of turning a fastener so many times; null when the card ends: split the run.</summary>
    /// <param name="motion">Motion.</param>
    /// <param name="count">How often, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count below 1.</exception>
    public static int? Of(Motion motion, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var at = Array.FindIndex(Most[motion], most => most >= count);
        return at < 0 ? null : Index[at];
    }

    /// <summary>Index of a power driver by thread diameter; null above 25 mm.</summary>
    /// <param name="threadMm">Thread diameter [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static int? OfPowerDriver(double threadMm) => Must.BePositive(threadMm) switch { <= 6 => 3, <= 25 => 6, _ => null };
}
