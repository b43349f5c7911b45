namespace Wainwright.Cli;

/// <summary>What the shell is told. One meaning each, the same for every command.</summary>
public static class Exit
{
    /// <summary>Done; every answer asked for is good.</summary>
    public const int Done = 0;

    /// <summary>Something falls short, or cannot be reached at all. Beats <see cref="CannotTell"/>.</summary>
    public const int FallsShort = 1;

    /// <summary>The file, the store, the disk or the command line is wrong; nothing was changed.</summary>
    public const int BadInput = 2;

    /// <summary>Nothing falls short, but something could not be told.</summary>
    public const int CannotTell = 3;

    /// <summary>Our fault.</summary>
    public const int OurFault = 70;
}
