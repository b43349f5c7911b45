using System.Text;

namespace Wainwright.Cli;

/// <summary>A file that a command makes: whole under its name, or not there at all.</summary>
internal static class NewFile
{
    /// <summary>Writes beside the name first and moves there when it is whole.</summary>
    /// <exception cref="BadInputException">The file is there already, or may not be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        RefuseToOverwrite(path);
        Put(path, overwrite: false, write);
    }

    /// <summary>The same for a page that can be made again: an older one of that name is replaced once the new one is whole.</summary>
    public static void Replace(string path, string text) => Put(path, overwrite: true, file => file.Write(Encoding.UTF8.GetBytes(text)));

    /// <summary>Stops when something stands there already.</summary>
    public static void RefuseToOverwrite(string path)
    {
        if (File.Exists(path) || Directory.Exists(path)) throw new BadInputException($"{path} is there already; name another file, or move that one away");
    }

    private static void Put(string path, bool overwrite, Action<Stream> write)
    {
        var beside = path + ".part";
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite, FileShare.None)) write(file);
            File.Move(beside, path, overwrite);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            if (File.Exists(beside)) File.Delete(beside);
            throw new BadInputException($"{path} cannot be written: {error.Message}");
        }
        catch
        {
            if (File.Exists(beside)) File.Delete(beside);
            throw;
        }
    }
}
