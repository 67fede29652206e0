namespace GearBlanks.Files.Folders;

/// <summary>Walks folders without ever following a link.</summary>
internal static class Trees
{
    private const UnixFileMode OwnerAll = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private static readonly EnumerationOptions Everything = new() { AttributesToSkip = 0, IgnoreInaccessible = false };

    /// <summary>Names of the entries of a folder, in ordinal order.</summary>
    public static IReadOnlyList<string> Names(string folder) =>
        [.. Directory.EnumerateFileSystemEntries(folder, "*", Everything).Select(entry => Path.GetFileName(entry)).Order(StringComparer.Ordinal)];

    /// <summary>Removes an entry with all that is in it.</summary>
    public static void Remove(string path)
    {
        if (EntryStatus.Of(path).Kind != EntryKind.Folder)
        {
            File.Delete(path);
            return;
        }

        Open(path);
        foreach (var name in Names(path))
        {
            Remove(Path.Join(path, name));
        }

        Directory.Delete(path);
    }

    /// <summary>Removes an entry as far as possible: where it fails, the next run tries again.</summary>
    public static void TryRemove(string path)
    {
        try
        {
            Remove(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What made this necessary is already on its way to the user.
        }
    }

    /// <summary>Lets its owner remove what is in a folder, even where the folder was read-only.</summary>
    public static void Open(string folder)
    {
        if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(folder) & OwnerAll) != OwnerAll)
        {
            File.SetUnixFileMode(folder, File.GetUnixFileMode(folder) | OwnerAll);
        }
    }
}
