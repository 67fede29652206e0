namespace GearBlanks.Files.Folders;

/// <summary>
/// The folder that an output lies in, open so that it can be flushed, and locked so that two runs of the program take
/// turns. The lock is the system's and ends with the program, however that ends.
/// </summary>
internal sealed class ParentFolder : IDisposable
{
    // Together ten seconds: far longer than any run writes.
    private const int Tries = 400;
    private const int Pause = 25;

    private readonly int _handle;
    private readonly FileStream? _lockFile;

    private ParentFolder(int handle, bool isLocked, FileStream? lockFile = null)
    {
        _handle = handle;
        _lockFile = lockFile;
        IsLocked = isLocked;
    }

    /// <summary>False where the file system knows no locks: then what other runs left must be left alone.</summary>
    public bool IsLocked { get; }

    /// <exception cref="RefusedException">Another run holds the lock and does not end.</exception>
    public static ParentFolder Open(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return OpenWithFile(path);
        }

        var handle = Posix.OpenFolder(path);
        return handle < 0 ? new(handle, false) : new(handle, TakeLock(handle));
    }

    /// <summary>Makes sure that the names in the folder outlast a power cut.</summary>
    public void Flush()
    {
        if (_handle >= 0)
        {
            Durable.Flush(_handle);
        }
    }

    public void Dispose()
    {
        _lockFile?.Dispose();
        if (_handle >= 0)
        {
            _ = Posix.Close(_handle);
        }
    }

    private static bool TakeLock(int handle)
    {
        for (var i = 0; i < Tries; i++)
        {
            var error = Posix.TryLock(handle);
            if (error != Posix.WouldBlock && error != Posix.Interrupted)
            {
                return error == 0;
            }

            Thread.Sleep(Pause);
        }

        _ = Posix.Close(handle);
        throw Occupied();
    }

    private static ParentFolder OpenWithFile(string path)
    {
        for (var i = 0; i < Tries; i++)
        {
            try
            {
                var file = new FileStream(
                    Path.Join(path, ".gearblanks.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
                return new(-1, true, file);
            }
            catch (IOException)
            {
                Thread.Sleep(Pause);
            }
        }

        throw Occupied();
    }

    private static RefusedException Occupied() =>
        new("Another run of the program has been writing here for ten seconds", "wait until it is done, or choose another place");
}
