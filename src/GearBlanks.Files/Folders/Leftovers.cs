using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>Tidies up: after a run that was cut short, and after one that was not.</summary>
internal static class Leftovers
{
    /// <summary>Finishes or undoes what runs that were cut short left beside an output folder; notes for the user.</summary>
    public static ImmutableArray<string> Settle(OutputPath path)
    {
        foreach (var folder in TemporaryNames.AllOld(path).Where(IsFolder))
        {
            // Cut short between the two renames of a system without exchange: undo the first.
            if (EntryStatus.Of(path.Full).Kind == EntryKind.Missing)
            {
                Moves.Folder(folder, path.Full);
            }
        }

        foreach (var made in TemporaryNames.AllNew(path))
        {
            Trees.TryRemove(made);
        }

        return [.. TemporaryNames.AllOld(path).Where(IsFolder).SelectMany(folder => Retire(folder, path))];
    }

    /// <summary>
    /// Removes a former folder that another one has taken the place of, but nothing in it that the program did not
    /// write and that is not in the other one too: that is brought over, or stays.
    /// </summary>
    public static ImmutableArray<string> Retire(string former, OutputPath path)
    {
        try
        {
            return TryRetire(former, path.Full) ? [] : [$"{former} has files of yours that are not in {path.Full}: look through it and remove it"];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [$"{former}, the former folder, could not be removed whole: remove it when you can"];
        }
    }

    private static bool IsFolder(string path) => EntryStatus.Of(path).Kind == EntryKind.Folder;

    private static bool TryRetire(string former, string present)
    {
        Trees.Open(former);
        var manifestPath = Path.Join(former, Manifest.FileName);
        var hasManifest = EntryStatus.Of(manifestPath).Kind == EntryKind.File;
        var listed = hasManifest && Manifest.Read(File.ReadAllBytes(manifestPath)) is { } manifest ? manifest.Files.Select(file => file.Name).ToHashSet() : [];
        var gone = true;
        foreach (var name in Trees.Names(former).Where(name => !hasManifest || name != Manifest.FileName))
        {
            var entry = Path.Join(former, name);
            if (listed.Contains(name) && !IsFolder(entry))
            {
                File.Delete(entry);
            }
            else
            {
                gone &= BringOver(entry, Path.Join(present, name));
            }
        }

        // The manifest goes last: until then it tells the next run which files may go.
        if (gone)
        {
            File.Delete(manifestPath);
            Directory.Delete(former);
        }

        return gone;
    }

    // True where the entry is gone from the former folder.
    private static bool BringOver(string entry, string present)
    {
        var (former, there) = (EntryStatus.Of(entry), EntryStatus.Of(present));
        if (there.Kind == EntryKind.Missing)
        {
            return Moves.ToFreeName(entry, present);
        }

        if (former.Kind == EntryKind.Folder && there.Kind == EntryKind.Folder)
        {
            Trees.Open(entry);
            var gone = Trees.Names(entry).Aggregate(true, (all, name) => BringOver(Path.Join(entry, name), Path.Join(present, name)) && all);
            if (gone)
            {
                Directory.Delete(entry);
            }

            return gone;
        }

        if (!IsSame(entry, former, present, there))
        {
            return false;
        }

        File.Delete(entry);
        return true;
    }

    // Two names of one file, or a copy that kept its time.
    private static bool IsSame(string entry, EntryStatus former, string present, EntryStatus there) => former.Kind == EntryKind.Link
        ? there.Kind == EntryKind.Link && new FileInfo(entry).LinkTarget == new FileInfo(present).LinkTarget
        : former.Kind == there.Kind && former.Size == there.Size && former.Modified == there.Modified;
}
