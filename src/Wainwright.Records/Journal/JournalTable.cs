using Microsoft.Data.Sqlite;

namespace Wainwright.Records;

/// <summary>Journal and state of the jobs as rows of the database. Whoever calls has the transaction.</summary>
internal sealed class JournalTable(Database database)
{
    private const string Columns = "id, seq, at, who, what, kind, of, previous, edits, hash";

    public long? KeyOf(string jobId) => database.Query("SELECT key FROM job WHERE id = $1", r => (long?)r.GetInt64(0), jobId).SingleOrDefault();

    public long Add(string jobId)
    {
        database.Execute("INSERT INTO job (id) VALUES ($1)", jobId);
        return KeyOf(jobId)!.Value;
    }

    public IReadOnlyList<string> JobIds() => [.. database.Query("SELECT id FROM job ORDER BY id", r => r.GetString(0))];

    /// <summary>Number and hash of the last entry.</summary>
    /// <exception cref="FormatException">There is none.</exception>
    public (int Seq, string Hash) Last(long key)
    {
        var last = database.Query("SELECT seq, hash FROM journal WHERE job = $1 ORDER BY seq DESC LIMIT 1", r => (r.GetInt32(0), r.GetString(1)), key).ToList();
        return last is [var found] ? found : throw new FormatException("a job has no journal");
    }

    /// <summary>Entries in order. Read to the end before anything else is asked.</summary>
    public IEnumerable<RawEntry> Entries(long key, int from = 1, int most = int.MaxValue) =>
        database.Query($"SELECT {Columns} FROM journal JOIN job ON job.key = journal.job WHERE journal.job = $1 AND seq >= $2 ORDER BY seq LIMIT $3", Entry, key, from, most);

    public string? HashAt(long key, int seq) =>
        database.Query("SELECT hash FROM journal WHERE job = $1 AND seq = $2", r => r.GetString(0), key, seq).SingleOrDefault();

    public Steps Steps(long key)
    {
        var steps = Records.Steps.None;
        foreach (var (kind, seq, of, who, what) in database.Query("SELECT kind, seq, of, who, what FROM journal WHERE job = $1 ORDER BY seq",
            r => (JournalLine.KindOf(r.GetString(0)), r.GetInt32(1), r.IsDBNull(2) ? (int?)null : r.GetInt32(2), r.GetString(3), r.GetString(4)), key))
            steps = steps.Then(kind, seq, of, who, what);
        return steps;
    }

    public void Append(long key, RawEntry entry) =>
        database.Execute("INSERT INTO journal (job, seq, at, who, what, kind, of, previous, edits, hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
            key, entry.Seq, entry.At, entry.Who, entry.What, entry.Kind, entry.Of, entry.Previous, entry.Edits, entry.Hash);

    public JobState State(long key) =>
        JobState.Of(database.Query("SELECT section, place, id, json FROM state WHERE job = $1", r => new StateRow(r.GetString(0), r.GetInt64(1), r.GetString(2), r.GetString(3)), key));

    /// <summary>Brings the rows of some places to what <paramref name="state"/> says.</summary>
    public void Put(long key, JobState state, IEnumerable<string> places)
    {
        var touched = places.Distinct().ToList();
        foreach (var where in touched)
        {
            var (section, id) = where.Split('/', 2) is [var list, var entry] ? (list, entry) : ("", where);
            database.Execute("DELETE FROM state WHERE job = $1 AND section = $2 AND id = $3", key, section, id);
        }
        foreach (var where in touched)
            if (state.At(where) is { } row) Insert(key, row);
    }

    /// <summary>Puts all rows anew.</summary>
    public void PutAll(long key, JobState state)
    {
        database.Execute("DELETE FROM state WHERE job = $1", key);
        foreach (var row in state.Rows()) Insert(key, row);
    }

    public IReadOnlyList<JobListing> Listings()
    {
        var counts = database.Query("SELECT job, section, count(*) FROM state WHERE section <> '' GROUP BY job, section", r => (Job: r.GetInt64(0), Section: r.GetString(1), Count: r.GetInt32(2)))
            .ToLookup(c => c.Job);
        const string listing = """
            SELECT job.key, job.id, state.json, journal.at, journal.who, journal.seq FROM job
            JOIN journal ON journal.job = job.key AND journal.seq = (SELECT max(seq) FROM journal WHERE job = job.key)
            JOIN state ON state.job = job.key AND state.section = '' AND state.id = 'title'
            ORDER BY journal.at DESC, job.id
            """;
        return [.. database.Query(listing, r => new JobListing(r.GetString(1), System.Text.Json.JsonSerializer.Deserialize<string>(r.GetString(2)) ?? "",
            JournalLine.Time(r.GetString(3)), r.GetString(4), r.GetInt32(5), counts[r.GetInt64(0)].ToDictionary(c => c.Section, c => c.Count)))];
    }

    private void Insert(long key, StateRow row) =>
        database.Execute("INSERT INTO state (job, section, place, id, json) VALUES ($1, $2, $3, $4, $5)", key, row.Section, row.Place, row.Id, row.Json);

    private static RawEntry Entry(SqliteDataReader row) => new(row.GetString(0), row.GetInt32(1), row.GetString(2), row.GetString(3), row.GetString(4), row.GetString(5),
        row.IsDBNull(6) ? null : row.GetInt32(6), row.GetString(7), row.GetString(8), row.GetString(9));
}
