using System.Runtime.InteropServices;

namespace GearBlanks.Files.Folders;

/// <summary>The few calls of the C library that the runtime does not offer; not for Windows.</summary>
internal static partial class Posix
{
    // Error numbers that Linux and macOS share, but for the last three, which are Linux's.
    public const int NotPermitted = 1;
    public const int NoSuchEntry = 2;
    public const int Interrupted = 4;
    public const int WouldBlock = 11;
    public const int AccessDenied = 13;
    public const int Busy = 16;
    public const int Exists = 17;
    public const int OtherFileSystem = 18;
    public const int NotAFolder = 20;
    public const int Invalid = 22;
    public const int NoSpace = 28;
    public const int ReadOnlyFileSystem = 30;
    public const int TooManyNames = 31;
    public const int NameTooLong = 36;
    public const int NotImplemented = 38;
    public const int TooManyLinks = 40;
    public const int NotSupported = 95;
    public const int QuotaExceeded = 122;

    public const uint NoReplace = 1;
    public const uint Exchange = 2;

    private const int CurrentFolder = -100;
    private const int CloseOnExecLinux = 0x80000;
    private const int LockAtOnce = 2 | 4;
    private const int DoNotFollow = 0x100;
    private const uint BasicStatus = 0x7FF;
    private const int StatusBytes = 256;
    private const int LongestPath = 4096;

    /// <summary>Opens a folder; a negative number where it cannot be, with the error set.</summary>
    public static int OpenFolder(string path) => Open(path, OperatingSystem.IsLinux() ? CloseOnExecLinux : 0);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    public static partial int Flush(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    public static partial int Close(int handle);

    /// <summary>Takes the lock of an open file or folder if it is free: 0, or the error number.</summary>
    public static int TryLock(int handle) => Lock(handle, LockAtOnce) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Gives a file a second name: 0, or the error number. A symbolic link is not followed.</summary>
    public static int Link(string path, string newPath) =>
        LinkAt(CurrentFolder, path, CurrentFolder, newPath, 0) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Renames in one step, over a file or an empty folder: 0, or the error number.</summary>
    public static int Rename(string path, string newPath) => RenamePlain(path, newPath) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Renames or exchanges by the flags: 0, or the error number; <see cref="NotImplemented"/> where there is no such call.</summary>
    public static int Rename(string path, string newPath, uint flags)
    {
        try
        {
            return RenameAt(CurrentFolder, path, CurrentFolder, newPath, flags) == 0 ? 0 : Marshal.GetLastPInvokeError();
        }
        catch (EntryPointNotFoundException)
        {
            return NotImplemented;
        }
    }

    /// <summary>True where the error only says that the system cannot do such a thing.</summary>
    public static bool IsLacking(int error) => error is Invalid or NotImplemented or NotSupported;

    /// <summary>The path without links or dots: 0, or the error number.</summary>
    public static unsafe int RealPath(string path, out string real)
    {
        var buffer = stackalloc byte[LongestPath + 1];
        var found = Resolve(path, buffer) != 0;
        real = found ? Marshal.PtrToStringUTF8((nint)buffer) ?? "" : "";
        return found ? 0 : Marshal.GetLastPInvokeError();
    }

    /// <summary>The bytes of the system's answer on an entry, a link not followed: 0, or the error number.</summary>
    public static unsafe int Status(string path, Span<byte> status)
    {
        if (status.Length < StatusBytes)
        {
            throw new ArgumentException("Too short for the answer.", nameof(status));
        }

        fixed (byte* start = status)
        {
            try
            {
                return StatusAt(CurrentFolder, path, DoNotFollow, BasicStatus, start) == 0 ? 0 : Marshal.GetLastPInvokeError();
            }
            catch (EntryPointNotFoundException)
            {
                return NotImplemented;
            }
        }
    }

    [LibraryImport("libc", EntryPoint = "lchown", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    public static partial int ChangeOwner(string path, uint owner, uint group);

    public static IOException Error(int error, string path) =>
        new($"{Marshal.GetPInvokeErrorMessage(error)}: {path}", error);

    public static void Check(int error, string path)
    {
        if (error != 0)
        {
            throw Error(error, path);
        }
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "flock", SetLastError = true)]
    private static partial int Lock(int handle, int operation);

    [LibraryImport("libc", EntryPoint = "linkat", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int LinkAt(int folder, string path, int newFolder, string newPath, int flags);

    [LibraryImport("libc", EntryPoint = "rename", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenamePlain(string path, string newPath);

    [LibraryImport("libc", EntryPoint = "renameat2", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int RenameAt(int folder, string path, int newFolder, string newPath, uint flags);

    [LibraryImport("libc", EntryPoint = "realpath", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static unsafe partial nint Resolve(string path, byte* buffer);

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static unsafe partial int StatusAt(int folder, string path, int flags, uint mask, byte* status);
}
