namespace Wainwright.Cli;

/// <summary>A file that a command makes: whole under its name, or not there at all; one that is there already is never overwritten.</summary>
internal static class NewFile
{
    /// <summary>Writes beside the name first and moves there when it is whole.</summary>
    /// <exception cref="BadInputException">The file is there already, or may not be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        RefuseToOverwrite(path);
        var beside = path + ".part";
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite, FileShare.None)) write(file);
            File.Move(beside, path, overwrite: false);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            File.Delete(beside);
            throw new BadInputException($"{path} cannot be written: {error.Message}");
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    /// <summary>Stops when something stands there already.</summary>
    public static void RefuseToOverwrite(string path)
    {
        if (File.Exists(path) || Directory.Exists(path)) throw new BadInputException($"{path} is there already; name another file, or move that one away");
    }
}
