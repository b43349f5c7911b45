namespace Wainwright.Records;

/// <summary>
/// The store cannot do what was asked. One type per remedy; a face catches this one type and shows <see cref="Exception.Message"/>
/// and <see cref="Mend"/>. Whatever was being written is not written, in whole.
/// </summary>
public abstract class StoreException : Exception
{
    private protected StoreException(string message, string mend, Exception? inner) : base(message, inner) => Mend = mend;

    /// <summary>What a person can do about it.</summary>
    public string Mend { get; }
}

/// <summary>No room on the disk.</summary>
public sealed class StoreFullException(string message, Exception? inner = null)
    : StoreException(message, "make room on the disk, or move the store to a larger one, then do it again", inner);

/// <summary>Another program holds the store.</summary>
public sealed class StoreBusyException(string message, Exception? inner = null)
    : StoreException(message, "do it again; if it stays so, close the other program that has the store open", inner);

/// <summary>What is in the store cannot be right, or the disk does not give it back.</summary>
public sealed class StoreDamagedException(string message, Exception? inner = null)
    : StoreException(message, "leave the folder as it is, take a copy of it, and restore the last backup into another folder", inner);

/// <summary>The folder or a file in it may not be written, or not even opened.</summary>
public sealed class StoreUnwritableException(string message, Exception? inner = null)
    : StoreException(message, "choose another folder, or give yourself the right to write in this one", inner);

/// <summary>A newer program wrote the store.</summary>
public sealed class StoreNewerException(string message)
    : StoreException(message, "open it with the newer program; this one would lose what it does not know", null);
