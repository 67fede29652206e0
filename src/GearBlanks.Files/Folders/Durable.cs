using System.Runtime.InteropServices;

namespace GearBlanks.Files.Folders;

/// <summary>Writes that outlast a power cut.</summary>
internal static class Durable
{
    /// <summary>Writes a new file and flushes it.</summary>
    public static void WriteNew(string path, ReadOnlySpan<byte> content)
    {
        using var handle = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write, FileShare.ReadWrite);
        RandomAccess.Write(handle, content, 0);
        RandomAccess.FlushToDisk(handle);
    }

    public static void FlushFile(string path)
    {
        using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        RandomAccess.FlushToDisk(handle);
    }

    public static void FlushFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Posix.OpenFolder(path);
        if (handle >= 0)
        {
            try
            {
                Flush(handle);
            }
            finally
            {
                _ = Posix.Close(handle);
            }
        }
    }

    /// <summary>Flushes an open folder; a file system that cannot flush folders has nothing to flush.</summary>
    public static void Flush(int handle)
    {
        if (Posix.Flush(handle) != 0)
        {
            var error = Marshal.GetLastPInvokeError();
            if (!Posix.IsLacking(error) && error != Posix.ReadOnlyFileSystem)
            {
                throw Posix.Error(error, "folder");
            }
        }
    }
}
