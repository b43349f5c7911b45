using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Wainwright.Records;

/// <summary>Turns what SQLite and the file system say into the exception that names the remedy.</summary>
internal static class Remedy
{
    // numbers of SQLite result codes: sqlite.org/rescode.html
    private const int Perm = 3, Busy = 5, Locked = 6, ReadOnly = 8, IoError = 10, Corrupt = 11, Full = 13, CannotOpen = 14, TooBig = 18, Constraint = 19, Auth = 23, NotADatabase = 26;

    /// <summary>Does something with disk or database.</summary>
    /// <param name="doing">What is being done, to say it could not be.</param>
    /// <param name="work">The work.</param>
    public static T Of<T>(string doing, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException error)
        {
            throw For(doing, error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw For(doing, error);
        }
        catch (Exception error) when (error is FormatException or JsonException)
        {
            throw new StoreDamagedException($"{doing}: what is stored cannot be right ({error.Message})", error);
        }
    }

    public static StoreException For(string doing, SqliteException error) => error.SqliteErrorCode switch
    {
        Full => new StoreFullException($"{doing}: the disk is full", error),
        Busy or Locked => new StoreBusyException($"{doing}: another program is writing to the store", error),
        Perm or ReadOnly or CannotOpen or Auth => new StoreUnwritableException($"{doing}: the store cannot be opened for writing", error),
        Corrupt => new StoreDamagedException($"{doing}: the store's file is damaged", error),
        NotADatabase => new StoreDamagedException($"{doing}: the file in the store's place is no store", error),
        IoError => new StoreDamagedException($"{doing}: the disk reports an error", error),
        Constraint or TooBig => new StoreDamagedException($"{doing}: what is stored contradicts itself ({error.Message})", error),
        _ => new StoreDamagedException($"{doing}: {error.Message}", error),
    };

    public static StoreException For(string doing, Exception error) => error switch
    {
        IOException io when IsFull(io) => new StoreFullException($"{doing}: the disk is full", error),
        IOException io when IsHeld(io) => new StoreBusyException($"{doing}: another program holds the file", error),
        UnauthorizedAccessException or DirectoryNotFoundException or FileNotFoundException or PathTooLongException =>
            new StoreUnwritableException($"{doing}: {error.Message}", error),
        IOException { HResult: 17 or unchecked((int)0x80070050) or unchecked((int)0x800700B7) or 30 or unchecked((int)0x80070013) } =>
            new StoreUnwritableException($"{doing}: {error.Message}", error), // EEXIST, ERROR_FILE_EXISTS, ERROR_ALREADY_EXISTS, EROFS, ERROR_WRITE_PROTECT
        _ => new StoreDamagedException($"{doing}: the disk reports an error ({error.Message})", error),
    };

    /// <summary>ENOSPC, EDQUOT, EFBIG; ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL.</summary>
    private static bool IsFull(IOException error) => error.HResult is 28 or 122 or 27 or unchecked((int)0x80070070) or unchecked((int)0x80070027);

    /// <summary>EAGAIN (a lock by another process on Unix); ERROR_SHARING_VIOLATION, ERROR_LOCK_VIOLATION.</summary>
    private static bool IsHeld(IOException error) => error.HResult is 11 or unchecked((int)0x80070020) or unchecked((int)0x80070021);
}
