using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>One writing of a folder.</summary>
internal sealed class FolderRun(string given, IReadOnlyList<OutputFile> files, ManifestData data, bool overwriteEdited, Means means)
{
    private readonly OutputPath _path = OutputPath.Of(given);
    private readonly string[] _names = [.. files.Select(file => file.Name)];

    public WrittenFolder Write()
    {
        using var made = MadeFolders.Make(_path.MissingFolders);
        means.Reached(Moment.ParentsMade);
        using var parent = ParentFolder.Open(_path.Parent);
        var notes = parent.IsLocked ? Leftovers.Settle(_path) : [];
        var existing = ExistingFolder.Look(_path.Full);
        existing.Refuse(_names, overwriteEdited);
        var kept = existing.Kept(_names);
        var standsInside = existing.Exists && StandsInside();
        notes = [.. notes, .. Replace(Build(existing, kept), existing, parent)];
        made.Keep();
        means.Reached(Moment.Done);
        if (standsInside)
        {
            notes = notes.Add("The folder you are in was replaced by a new one: enter it again");
        }

        return new(given, [.. _names.Append(Manifest.FileName).Order(StringComparer.Ordinal)], kept, notes);
    }

    // What goes wrong is undone; what cuts the program short cannot be, and is left to the next run.
    private static void Undoing(string folder, Action work)
    {
        try
        {
            work();
        }
        catch (Exception e) when (Trouble.IsForPeople(e))
        {
            Trees.TryRemove(folder);
            throw;
        }
    }

    private string Build(ExistingFolder existing, ImmutableArray<string> kept)
    {
        var folder = TemporaryNames.New(_path);
        Undoing(folder, () =>
        {
            Directory.CreateDirectory(folder);
            means.Reached(Moment.Started);
            WriteFiles(folder);
            foreach (var name in kept)
            {
                Carrier.Carry(Path.Join(_path.Full, name), Path.Join(folder, name), means.MayLink);
                means.Reached(Moment.EntryCarried);
            }

            if (existing.Exists)
            {
                Carrier.TakeAfter(_path.Full, existing.Status, folder);
            }

            Durable.FlushFolder(folder);
            means.Reached(Moment.Built);
        });
        return folder;
    }

    private void WriteFiles(string folder)
    {
        foreach (var file in files)
        {
            Durable.WriteNew(Path.Join(folder, file.Name), file.Content.Span);
            means.Reached(Moment.FileWritten);
        }

        Durable.WriteNew(Path.Join(folder, Manifest.FileName), Manifest.Write(files.Select(ManifestFile.Of), data));
        means.Reached(Moment.ManifestWritten);
    }

    private ImmutableArray<string> Replace(string built, ExistingFolder existing, ParentFolder parent)
    {
        if (!existing.Exists)
        {
            Undoing(built, () => Moves.Folder(built, _path.Full));
            means.Reached(Moment.InPlace);
            parent.Flush();
            return [];
        }

        var former = TakePlace(built);
        means.Reached(Moment.InPlace);

        // The exchange must have reached the disk before anything of the former folder goes.
        parent.Flush();
        return Leftovers.Retire(former, _path);
    }

    // Puts the new folder in place; where the former one lies then.
    private string TakePlace(string built)
    {
        var old = TemporaryNames.Old(_path);
        if (means.MayExchange && TryExchange(built, old))
        {
            return old;
        }

        Undoing(built, () => Moves.Folder(_path.Full, old));
        means.Reached(Moment.MovedAside);
        Undoing(built, () =>
        {
            try
            {
                Moves.Folder(built, _path.Full);
            }
            catch (Exception e) when (Trouble.IsForPeople(e))
            {
                Moves.Folder(old, _path.Full);
                throw;
            }
        });
        return old;
    }

    // The name is changed first, since after the exchange a folder lies under it that is no longer to be thrown away.
    private bool TryExchange(string built, string old)
    {
        Undoing(built, () => Moves.Folder(built, old));
        means.Reached(Moment.Named);
        var isDone = false;
        Undoing(old, () => isDone = Moves.Exchange(old, _path.Full));
        if (!isDone)
        {
            Moves.Folder(old, built);
        }

        return isDone;
    }

    private bool StandsInside()
    {
        var here = OutputPath.Here();
        return here is not null && (here + Path.DirectorySeparatorChar).StartsWith(_path.Full + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }
}
