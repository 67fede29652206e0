using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Folders;

/// <summary>Writes one file whole or not at all: a hidden neighbour is made and flushed, and then takes its name in one step.</summary>
public static class SingleFile
{
    private const UnixFileMode AnyWrite = UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;

    /// <summary>Writes the file; its folder must exist. A link is followed, and permissions of a file that is replaced are kept.</summary>
    /// <param name="path">The file as the user gave it.</param>
    /// <param name="content">All its bytes.</param>
    /// <param name="mustBeNew">True to refuse where there is something of this name.</param>
    public static Outcome<WrittenFile> Write(string path, ReadOnlySpan<byte> content, bool mustBeNew)
    {
        ArgumentNullException.ThrowIfNull(path);
        try
        {
            WriteTo(Place(path, mustBeNew), content, mustBeNew);
            return new WrittenFile(path, content.Length);
        }
        catch (Exception e) when (Trouble.IsForPeople(e))
        {
            return Trouble.Of(e, path);
        }
    }

    private static OutputPath Place(string path, bool mustBeNew)
    {
        var place = OutputPath.Of(path);
        var kind = EntryStatus.Of(place.Full).Kind;
        if (kind == EntryKind.Folder || Path.EndsInDirectorySeparator(path))
        {
            throw new RefusedException("This is the name of a folder", "the name of a file");
        }

        if (!place.MissingFolders.IsEmpty)
        {
            throw new RefusedException("There is no folder to write this file into", "make the folder first, or choose one that exists", place.MissingFolders[0]);
        }

        if (mustBeNew && kind != EntryKind.Missing)
        {
            throw Taken();
        }

        if (kind is not (EntryKind.Missing or EntryKind.File))
        {
            throw new RefusedException("This is not a plain file", "the name of a file");
        }

        if (kind == EntryKind.File && IsReadOnly(place.Full))
        {
            throw new RefusedException("This file is read-only", "another name, or make the file writable");
        }

        return place;
    }

    private static void WriteTo(OutputPath place, ReadOnlySpan<byte> content, bool mustBeNew)
    {
        using var parent = ParentFolder.Open(place.Parent);
        if (parent.IsLocked)
        {
            foreach (var left in TemporaryNames.AllNew(place).Where(left => EntryStatus.Of(left).Kind == EntryKind.File))
            {
                Trees.TryRemove(left);
            }
        }

        var made = TemporaryNames.New(place);
        try
        {
            Durable.WriteNew(made, content);
            TakeName(made, place.Full, mustBeNew);
        }
        catch (Exception e) when (Trouble.IsForPeople(e))
        {
            Trees.TryRemove(made);
            throw;
        }

        parent.Flush();
    }

    private static void TakeName(string made, string path, bool mustBeNew)
    {
        if (mustBeNew)
        {
            if (!Moves.ToFreeName(made, path))
            {
                throw Taken();
            }

            return;
        }

        if (!OperatingSystem.IsWindows() && EntryStatus.Of(path) is { Kind: EntryKind.File } status)
        {
            Carrier.TakeAfter(path, status, made);
        }

        File.Move(made, path, overwrite: true);
    }

    private static RefusedException Taken() => new("There is a file of this name already", "a name that is not taken");

    private static bool IsReadOnly(string path) => OperatingSystem.IsWindows()
        ? File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly)
        : (File.GetUnixFileMode(path) & AnyWrite) == 0;
}
