namespace GearBlanks.Files.Folders;

/// <summary>What an entry of a folder is.</summary>
internal enum EntryKind
{
    Missing,
    File,
    Folder,
    Link,
    Other,
}

/// <summary>What is known of an entry without opening it, or following it where it is a link.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Size">Its size, bytes.</param>
/// <param name="Modified">When it was changed last, in units of 100 ns, finer than which no copy keeps it; only good for comparing.</param>
/// <param name="Owner">Number of its owner; null where the system does not tell.</param>
/// <param name="Group">Number of its group; null where the system does not tell.</param>
internal readonly record struct EntryStatus(EntryKind Kind, long Size, long Modified, uint? Owner, uint? Group)
{
    private const int TypeMask = 0xF000;
    private const long TicksPerSecond = 10_000_000;
    private const uint NanosecondsPerTick = 100;

    public static EntryStatus Of(string path)
    {
        if (!OperatingSystem.IsLinux())
        {
            return Portable(path);
        }

        Span<byte> status = stackalloc byte[256];
        var error = Posix.Status(path, status);
        return error switch
        {
            0 => Parse(status),
            Posix.NoSuchEntry or Posix.NotAFolder => default,
            Posix.NotImplemented => Portable(path),
            _ => throw Posix.Error(error, path),
        };
    }

    // The layout of statx is the same on every Linux; its numbers are in the order of the machine.
    private static EntryStatus Parse(ReadOnlySpan<byte> status) => new(
        KindOf(BitConverter.ToUInt16(status[28..])),
        BitConverter.ToInt64(status[40..]),
        BitConverter.ToInt64(status[112..]) * TicksPerSecond + BitConverter.ToUInt32(status[120..]) / NanosecondsPerTick,
        BitConverter.ToUInt32(status[20..]),
        BitConverter.ToUInt32(status[24..]));

    private static EntryKind KindOf(ushort mode) => (mode & TypeMask) switch
    {
        0x8000 => EntryKind.File,
        0x4000 => EntryKind.Folder,
        0xA000 => EntryKind.Link,
        _ => EntryKind.Other,
    };

    private static EntryStatus Portable(string path)
    {
        var info = new FileInfo(path);
        var attributes = info.Attributes;
        if ((int)attributes == -1)
        {
            return default;
        }

        var kind = attributes.HasFlag(FileAttributes.ReparsePoint) ? EntryKind.Link
            : attributes.HasFlag(FileAttributes.Directory) ? EntryKind.Folder
            : EntryKind.File;
        return new(kind, kind == EntryKind.File ? info.Length : 0, info.LastWriteTimeUtc.Ticks, null, null);
    }
}
