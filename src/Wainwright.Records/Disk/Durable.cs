using System.ComponentModel;
using System.Runtime.InteropServices;
using System.Text;

namespace Wainwright.Records;

/// <summary>Files that are still there after the power went.</summary>
internal static class Durable
{
    private const int InvalidArgument = 22;

    /// <summary>Gives a finished file its name, so that after a power cut there is the whole file or none.</summary>
    /// <param name="written">The file, flushed to disk and closed.</param>
    /// <param name="name">Its name, in a folder of the same file system.</param>
    /// <param name="overwrite">Whether a file of that name gives way.</param>
    public static void Name(string written, string name, bool overwrite = false)
    {
        File.Move(written, name, overwrite);
        FlushFolder(Path.GetDirectoryName(Path.GetFullPath(name))!);
    }

    /// <summary>Gives a finished folder its name.</summary>
    public static void NameFolder(string written, string name)
    {
        Directory.Move(written, name);
        FlushFolder(Path.GetDirectoryName(Path.GetFullPath(name))!);
    }

    /// <summary>Makes a folder and what leads to it.</summary>
    public static void MakeFolder(string folder)
    {
        var full = Path.GetFullPath(folder);
        if (Directory.Exists(full)) return;
        var above = Path.GetDirectoryName(full);
        if (above is not null) MakeFolder(above);
        Directory.CreateDirectory(full);
        if (above is not null) FlushFolder(above);
    }

    /// <summary>Puts the names in a folder on disk. Windows does so with the file itself and cannot flush a folder.</summary>
    private static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows()) return;
        var handle = Open([.. Encoding.UTF8.GetBytes(folder), 0], 0);
        if (handle < 0) throw Failed(folder);
        try
        {
            // EINVAL: this file system has nothing to flush for a folder (fsync(2))
            if (Flush(handle) != 0 && Marshal.GetLastPInvokeError() != InvalidArgument) throw Failed(folder);
        }
        finally
        {
            _ = Close(handle);
        }
    }

    private static IOException Failed(string folder)
    {
        var error = Marshal.GetLastPInvokeError();
        return new IOException($"{folder}: {new Win32Exception(error).Message}", error);
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Flush(int handle);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int handle);
}
