namespace GearBlanks.Files.Folders;

/// <summary>
/// Gives a person's own entries a second place in the new folder. A second name for the same file keeps all that
/// belongs to it and takes no room; only where the system has no such names is it copied.
/// </summary>
internal static class Carrier
{
    public static void Carry(string from, string to, bool mayLink)
    {
        var status = EntryStatus.Of(from);
        if (status.Kind == EntryKind.Folder)
        {
            CarryFolder(from, to, status, mayLink);
        }
        else if (!mayLink || !TryLink(from, to))
        {
            Copy(from, to, status);
        }
    }

    /// <summary>Gives a folder the owner and the permissions of another one.</summary>
    public static void TakeAfter(string from, EntryStatus status, string to)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        if (status is { Owner: { } owner, Group: { } group })
        {
            // Only the system's administrator can give files away; for everybody else they are their own already.
            _ = Posix.ChangeOwner(to, owner, group);
        }

        File.SetUnixFileMode(to, File.GetUnixFileMode(from));
    }

    private static void CarryFolder(string from, string to, EntryStatus status, bool mayLink)
    {
        Directory.CreateDirectory(to);
        foreach (var name in Trees.Names(from))
        {
            Carry(Path.Join(from, name), Path.Join(to, name), mayLink);
        }

        Durable.FlushFolder(to);
        TakeAfter(from, status, to);
        Directory.SetLastWriteTimeUtc(to, Directory.GetLastWriteTimeUtc(from));
    }

    private static bool TryLink(string from, string to)
    {
        if (OperatingSystem.IsWindows())
        {
            return false;
        }

        var error = Posix.Link(from, to);
        switch (error)
        {
            case 0:
                return true;
            case Posix.OtherFileSystem:
                throw new RefusedException(
                    "Another file system is mounted inside this folder, so the folder cannot be replaced whole", "another folder", Path.GetFileName(from));
            case Posix.NotPermitted or Posix.TooManyNames:
                return false;
            default:
                if (!Posix.IsLacking(error))
                {
                    throw Posix.Error(error, from);
                }

                return false;
        }
    }

    private static void Copy(string from, string to, EntryStatus status)
    {
        switch (status.Kind)
        {
            case EntryKind.File:
                File.Copy(from, to);
                File.SetLastWriteTimeUtc(to, File.GetLastWriteTimeUtc(from));
                Durable.FlushFile(to);
                break;
            case EntryKind.Link:
                File.CreateSymbolicLink(to, new FileInfo(from).LinkTarget ?? "");
                break;
            default:
                throw new RefusedException(
                    "There is something in this folder that can be neither kept nor copied", "move it away, or choose another folder", Path.GetFileName(from));
        }
    }
}
