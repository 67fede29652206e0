using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>Where an output really lies: its parent without links or dots, and its name there.</summary>
/// <param name="Parent">The parent folder, absolute.</param>
/// <param name="Name">The plain name.</param>
/// <param name="MissingFolders">The folders down to the parent that do not exist yet, outermost first.</param>
internal sealed record OutputPath(string Parent, string Name, ImmutableArray<string> MissingFolders)
{
    public string Full => Path.Join(Parent, Name);

    /// <exception cref="RefusedException">There can be no such place.</exception>
    public static OutputPath Of(string given)
    {
        if (string.IsNullOrWhiteSpace(given) || given.Contains('\0', StringComparison.Ordinal))
        {
            throw new RefusedException("No name is given", "the name of a file or a folder");
        }

        return OperatingSystem.IsWindows()
            ? OfExisting(Path.GetFullPath(given)) with { MissingFolders = MissingAbove(Path.GetFullPath(given)) }
            : OfPosix(Path.IsPathRooted(given) ? given : Path.Join(Here() ?? throw Gone(), given));
    }

    /// <summary>The folder that the program was started in; null where that has been removed since.</summary>
    public static string? Here()
    {
        try
        {
            return Directory.GetCurrentDirectory();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static RefusedException Gone() =>
        new("The folder you are in has been removed or replaced", "enter the folder again, or give a path from the root");

    private static OutputPath OfExisting(string real)
    {
        var trimmed = Path.TrimEndingDirectorySeparator(real);
        return Path.GetDirectoryName(trimmed) is { } parent
            ? new(parent, Path.GetFileName(trimmed), [])
            : throw new RefusedException("This is the root of a file system", "a folder inside it");
    }

    // The system's own way to read a path: '..' after a link leads to the parent of what the link points to.
    private static OutputPath OfPosix(string absolute)
    {
        var error = Posix.RealPath(absolute, out var real);
        if (error == 0)
        {
            return OfExisting(real);
        }

        if (error != Posix.NoSuchEntry)
        {
            throw Posix.Error(error, absolute);
        }

        var trimmed = absolute.TrimEnd('/');
        var (head, last) = (trimmed[..(trimmed.LastIndexOf('/') + 1)], Path.GetFileName(trimmed));
        if (EntryStatus.Of(trimmed).Kind == EntryKind.Link)
        {
            throw new RefusedException("This is a link to nothing", "remove the link, or make what it points to", last);
        }

        return last switch
        {
            "." => OfPosix(head),
            ".." => throw new RefusedException("There is no folder to go up from", "a path through folders that exist"),
            _ => Below(head, last),
        };
    }

    private static OutputPath Below(string head, string name)
    {
        if (Posix.RealPath(head, out var parent) == 0)
        {
            return new(parent, name, []);
        }

        var above = OfPosix(head);
        return new(above.Full, name, above.MissingFolders.Add(above.Full));
    }

    private static ImmutableArray<string> MissingAbove(string full)
    {
        List<string> missing = [];
        for (var folder = Path.GetDirectoryName(full); folder is not null && !Directory.Exists(folder); folder = Path.GetDirectoryName(folder))
        {
            missing.Insert(0, folder);
        }

        return [.. missing];
    }
}
