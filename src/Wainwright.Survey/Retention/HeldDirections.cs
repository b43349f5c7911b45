using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>The ways everything in a van is thrown, in the words of people who drive one.</summary>
public enum ThrownWord
{
    /// <summary>Forward: a hard stop.</summary>
    Stop,

    /// <summary>To the left or to the right, whichever is worse.</summary>
    Swerve,

    /// <summary>Up or down, whichever is worse; at rest everything stands 1 g down already.</summary>
    Bump,

    /// <summary>Up and to one side at once, whichever side is worse.</summary>
    Roll,
}

/// <summary>Ways of throwing, as vectors of the van.</summary>
public static class HeldDirections
{
    private static readonly Vector3D Forward = new(-1, 0, 0), Left = new(0, -1, 0), Up = new(0, 0, 1);

    /// <summary>The directions that a word stands for; unit vectors.</summary>
    public static IReadOnlyList<Vector3D> Of(ThrownWord word) => word switch
    {
        ThrownWord.Stop => [Forward],
        ThrownWord.Swerve => [Left, -Left],
        ThrownWord.Bump => [Up, -Up],
        _ => [(Left + Up).Unit(), (Up - Left).Unit()],
    };

    /// <summary>A direction in words: <c>forward, up and left</c>.</summary>
    public static string Words(Vector3D way)
    {
        List<string> words = [];
        void Say(double along, string positive, string negative)
        {
            if (Math.Abs(along) > 0.3) words.Add(along > 0 ? positive : negative);
        }
        Say(way.X, "rearward", "forward");
        Say(way.Y, "right", "left");
        Say(way.Z, "up", "down");
        return words.Count <= 1 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";
    }
}
