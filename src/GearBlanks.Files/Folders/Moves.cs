namespace GearBlanks.Files.Folders;

/// <summary>Gives entries other names in one step.</summary>
internal static class Moves
{
    /// <summary>Renames a folder to a name that is free, or an empty folder's.</summary>
    public static void Folder(string path, string newPath)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.Move(path, newPath);
            return;
        }

        Posix.Check(Posix.Rename(path, newPath), newPath);
    }

    /// <summary>Exchanges two folders in one step; false where the system cannot.</summary>
    public static bool Exchange(string path, string other)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        var error = Posix.Rename(path, other, Posix.Exchange);
        if (Posix.IsLacking(error))
        {
            return false;
        }

        Posix.Check(error, other);
        return true;
    }

    /// <summary>Renames an entry of any kind to a free name; false where the name is taken.</summary>
    public static bool ToFreeName(string path, string newPath)
    {
        var error = OperatingSystem.IsLinux() ? Posix.Rename(path, newPath, Posix.NoReplace) : Posix.NotImplemented;
        if (!Posix.IsLacking(error))
        {
            if (error != Posix.Exists)
            {
                Posix.Check(error, newPath);
            }

            return error == 0;
        }

        if (EntryStatus.Of(newPath).Kind != EntryKind.Missing)
        {
            return false;
        }

        if (EntryStatus.Of(path).Kind == EntryKind.Folder)
        {
            Directory.Move(path, newPath);
        }
        else
        {
            File.Move(path, newPath, overwrite: false);
        }

        return true;
    }
}
