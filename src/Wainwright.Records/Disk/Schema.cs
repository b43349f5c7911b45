namespace Wainwright.Records;

/// <summary>The tables of the store and their version.</summary>
internal static class Schema
{
    /// <summary>Version this program writes.</summary>
    public const int Version = 1;

    /// <summary>“WAIN”: tells the store from any other SQLite file (sqlite.org/pragma.html#pragma_application_id).</summary>
    private const int Mark = 0x5741494E;

    /// <summary>
    /// Photos are not here. A row of state can always be had again from the journal; the journal can be had from nowhere, so it is guarded.
    /// The column that may be long stands last: reading the others then leaves its pages alone.
    /// </summary>
    private static readonly string[] Tables =
    [
        "CREATE TABLE job (key INTEGER PRIMARY KEY, id TEXT NOT NULL UNIQUE) STRICT",
        """
        CREATE TABLE journal (
          job INTEGER NOT NULL REFERENCES job (key),
          seq INTEGER NOT NULL,
          at TEXT NOT NULL,
          who TEXT NOT NULL,
          what TEXT NOT NULL,
          kind TEXT NOT NULL,
          of INTEGER,
          previous TEXT NOT NULL,
          hash TEXT NOT NULL,
          edits TEXT NOT NULL,
          PRIMARY KEY (job, seq)
        ) STRICT
        """,
        "CREATE TRIGGER journal_is_not_changed BEFORE UPDATE ON journal BEGIN SELECT RAISE (ABORT, 'the journal is only added to'); END",
        "CREATE TRIGGER journal_is_not_shortened BEFORE DELETE ON journal BEGIN SELECT RAISE (ABORT, 'the journal is only added to'); END",
        """
        CREATE TRIGGER journal_has_no_gap BEFORE INSERT ON journal
        WHEN NEW.seq <> 1 + (SELECT coalesce(max(seq), 0) FROM journal WHERE job = NEW.job)
        BEGIN SELECT RAISE (ABORT, 'the journal has no gap'); END
        """,
        """
        CREATE TABLE state (
          job INTEGER NOT NULL REFERENCES job (key),
          section TEXT NOT NULL,
          place INTEGER NOT NULL,
          id TEXT NOT NULL,
          json TEXT NOT NULL,
          PRIMARY KEY (job, section, id)
        ) STRICT, WITHOUT ROWID
        """,
        "CREATE UNIQUE INDEX one_entry_per_place ON state (job, section, place) WHERE section <> ''",
    ];

    /// <summary>Refuses a file of another kind or of a newer program before anything in it is changed.</summary>
    public static void Check(Database database)
    {
        var version = Number(database, "PRAGMA user_version");
        if (version == 0 && Number(database, "SELECT count(*) FROM sqlite_schema") == 0) return;
        if (Number(database, "PRAGMA application_id") != Mark) throw new StoreDamagedException("the file in the store's place belongs to another program");
        if (version > Version) throw new StoreNewerException($"the store is of version {version}, this program knows versions up to {Version}");
    }

    /// <summary>Makes the tables in a new file.</summary>
    public static void Make(Database database)
    {
        if (Number(database, "PRAGMA user_version") == Version) return;
        using var transaction = database.Write();
        // another program may have been quicker
        if (Number(database, "PRAGMA user_version") == Version) return;
        foreach (var table in Tables) database.Execute(table);
        database.Execute($"PRAGMA application_id = {Mark}");
        database.Execute($"PRAGMA user_version = {Version}");
        transaction.Commit();
    }

    /// <summary>What of the tables and their guards is not as this program makes them.</summary>
    public static IReadOnlyList<string> Differences(Database database)
    {
        var there = database.Query("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL", r => (Name: r.GetString(0), Sql: r.GetString(1))).ToDictionary(t => t.Name, t => t.Sql);
        var wanted = Tables.ToDictionary(sql => sql.Split(' ', '\n').SkipWhile(w => w is not ("TABLE" or "TRIGGER" or "INDEX")).ElementAt(1));
        return [.. wanted.Keys.Union(there.Keys).Where(name => there.GetValueOrDefault(name) != wanted.GetValueOrDefault(name))];
    }

    private static long Number(Database database, string sql) => database.Query(sql, r => r.GetInt64(0)).Single();
}
