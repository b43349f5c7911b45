using System.CommandLine;
using Wainwright.Records;

namespace Wainwright.Cli;

/// <summary>Which store a command works on: the one named, else that of <c>WAIN_STORE</c>, else the one in the user's data folder.</summary>
internal static class StoreFolder
{
    /// <summary>The option by which a store is named.</summary>
    public static Option<string?> Option() => new("--store")
    {
        HelpName = "FOLDER",
        Description = "Folder of the store. Without it WAIN_STORE, without that the one in your data folder.",
    };

    /// <summary>The folder.</summary>
    public static string Named(string? given, Terminal at) =>
        given is { Length: > 0 } ? given : at.Setting("WAIN_STORE") is { Length: > 0 } set ? set : Store.DefaultFolder();

    /// <summary>Opens the store, making it when it is not there: for commands that put something in.</summary>
    public static Store OpenOrMake(string? given, Terminal at) => Store.Open(Named(given, at), at.Clock);

    /// <summary>Opens a store that must be there: a question with a typing mistake in it leaves no folder behind.</summary>
    public static Store OpenThere(string? given, Terminal at)
    {
        var folder = Named(given, at);
        return Directory.Exists(folder) ? Store.Open(folder, at.Clock) : throw new BadInputException($"there is no store in {folder}; name another with --store, or put a job in with wain import");
    }

    /// <summary>A store for the time of one command, gone afterwards: the bytes of a container's photos come out of it.</summary>
    public static PassingStore ForNow(Terminal at) => new(at);
}

/// <summary>A store in a temporary folder.</summary>
internal sealed class PassingStore : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wain-");

    public PassingStore(Terminal at) => Store = Store.Open(folder.FullName, at.Clock);

    public Store Store { get; }

    public void Dispose()
    {
        Store.Dispose();
        folder.Delete(recursive: true);
    }
}
