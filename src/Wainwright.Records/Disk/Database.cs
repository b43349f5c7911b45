using Microsoft.Data.Sqlite;

namespace Wainwright.Records;

/// <summary>The SQLite file: how it is opened, and short words for asking it. Parameters are <c>$1</c>, <c>$2</c> …</summary>
internal sealed class Database : IDisposable
{
    private readonly SqliteConnection connection;

    private Database(SqliteConnection connection) => this.connection = connection;

    /// <summary>Opens the file and makes it ready; a new one gets the schema.</summary>
    /// <param name="file">The file.</param>
    /// <param name="patienceMs">How long to wait for another program [ms].</param>
    public static Database Open(string file, int patienceMs)
    {
        var database = Connect(file, SqliteOpenMode.ReadWriteCreate, patienceMs);
        try
        {
            database.Execute($"PRAGMA busy_timeout = {patienceMs}");
            // what others put into the file may not run when it is read
            database.Execute("PRAGMA trusted_schema = OFF");
            Schema.Check(database);
            if (database.Query("PRAGMA journal_mode = WAL", r => r.GetString(0)).Single() != "wal")
                throw new StoreUnwritableException("the store's folder does not allow a write-ahead log; is it on a network drive?");
            // every commit reaches the disk before it is acknowledged: sqlite.org/pragma.html#pragma_synchronous
            database.Execute("PRAGMA synchronous = FULL");
            Schema.Make(database);
            return database;
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>Opens a file only to read it, as it is.</summary>
    public static Database OpenToRead(string file)
    {
        var database = Connect(file, SqliteOpenMode.ReadOnly, patienceMs: 5_000);
        database.Execute("PRAGMA trusted_schema = OFF");
        return database;
    }

    private static Database Connect(string file, SqliteOpenMode mode, int patienceMs)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file, Mode = mode, ForeignKeys = true, Pooling = false,
            // whole seconds, and 0 would be for ever
            DefaultTimeout = Math.Max(1, patienceMs / 1000),
        }.ToString());
        try
        {
            connection.Open();
            return new(connection);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Begins a transaction that is the only one writing: what it reads stays true until it ends.</summary>
    public SqliteTransaction Write() => connection.BeginTransaction(deferred: false);

    /// <summary>Begins a transaction that sees one state of the file throughout.</summary>
    public SqliteTransaction Read() => connection.BeginTransaction(deferred: true);

    public int Execute(string sql, params object?[] parameters)
    {
        using var command = Command(sql, parameters);
        return command.ExecuteNonQuery();
    }

    public IEnumerable<T> Query<T>(string sql, Func<SqliteDataReader, T> row, params object?[] parameters)
    {
        using var command = Command(sql, parameters);
        using var reader = command.ExecuteReader();
        while (reader.Read()) yield return row(reader);
    }

    /// <summary>What SQLite finds wrong with the file's own structure (sqlite.org/pragma.html#pragma_integrity_check).</summary>
    public IReadOnlyList<string> Faults() =>
        [.. Query("PRAGMA integrity_check(5)", r => r.GetString(0)).Where(f => f != "ok"),
         .. Query("PRAGMA foreign_key_check", r => $"a row of {r.GetString(0)} belongs to no job").Take(5)];

    private SqliteCommand Command(string sql, object?[] parameters)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // every text is a constant of this room; what comes from outside goes into parameters
        command.CommandText = sql;
#pragma warning restore CA2100
        for (var i = 0; i < parameters.Length; i++)
            command.Parameters.AddWithValue(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"${i + 1}"), parameters[i] ?? DBNull.Value);
        return command;
    }

    public void Dispose() => connection.Dispose();
}
