using Wainwright.Fitout;

namespace Wainwright.Records;

public sealed partial class Store
{
    /// <summary>Writes everything into one new file. Others may go on working meanwhile; the backup is of the moment it began.</summary>
    /// <param name="file">The file; must not exist.</param>
    /// <exception cref="StoreUnwritableException">There is such a file already, or none can be made there.</exception>
    public BackupTally Backup(string file)
    {
        ArgumentException.ThrowIfNullOrEmpty(file);
        return Remedy.Of($"writing the backup {file}", () => new StoreBackup(Folder, Photos, clock).Write(file));
    }

    /// <summary>
    /// Unpacks a backup and checks all of it before the folder appears under its name. A job whose records are not sound is restored as it is,
    /// and what <see cref="Verify"/> finds is said.
    /// </summary>
    /// <param name="file">A file made by <see cref="Backup"/>.</param>
    /// <param name="folder">The folder; must not exist, or be empty.</param>
    /// <param name="clock">The clock of the store.</param>
    /// <exception cref="StoreDamagedException">The file is not a whole, sound backup; the message says in what.</exception>
    /// <exception cref="StoreUnwritableException">There is something in the folder already, or it cannot be made.</exception>
    public static BackupTally Restore(string file, string folder, TimeProvider clock)
    {
        ArgumentException.ThrowIfNullOrEmpty(file);
        ArgumentException.ThrowIfNullOrEmpty(folder);
        ArgumentNullException.ThrowIfNull(clock);
        return Remedy.Of($"restoring {file}", () => StoreRestore.Unpack(file, folder, clock));
    }
}
