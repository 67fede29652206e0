using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>A folder as it was found where the output is to go.</summary>
/// <param name="Status">What the system says of it; missing where there is none.</param>
/// <param name="Edited">Names of the files that the program wrote and a person has edited since, in ordinal order.</param>
/// <param name="Own">Names of a person's own entries, which the program never wrote, in ordinal order.</param>
internal sealed record ExistingFolder(EntryStatus Status, ImmutableArray<string> Edited, ImmutableArray<string> Own)
{
    private const UnixFileMode AnyWrite = UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;
    private const int MostNamed = 10;

    public bool Exists => Status.Kind == EntryKind.Folder;

    /// <exception cref="RefusedException">It is not a folder that the program may replace.</exception>
    public static ExistingFolder Look(string path)
    {
        var status = EntryStatus.Of(path);
        if (status.Kind == EntryKind.Missing)
        {
            return new(status, [], []);
        }

        if (status.Kind != EntryKind.Folder)
        {
            throw new RefusedException("This is not a folder", "the name of a folder, or one that is not taken");
        }

        if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & AnyWrite) == 0)
        {
            throw new RefusedException("This folder is read-only", "another folder, or make this one writable");
        }

        var names = Trees.Names(path);
        return names.Count == 0 ? new(status, [], []) : Sort(path, status, names, ReadManifest(path));
    }

    /// <exception cref="RefusedException">Writing these files would overwrite something of a person's.</exception>
    public void Refuse(IEnumerable<string> newNames, bool overwriteEdited)
    {
        if (!overwriteEdited && Edited.Length > 0)
        {
            throw new RefusedException(
                "Files in this folder were edited since they were written", "rename or move them, choose another folder, or say --overwrite-edited", Listed(Edited));
        }

        // On some systems names differing only by case are one file.
        string[] taken = [.. Own.Where(newNames.ToHashSet(StringComparer.OrdinalIgnoreCase).Contains)];
        if (taken.Length > 0)
        {
            throw new RefusedException(
                "This folder has something of yours under the name of a file to be written", "rename or move it, or choose another folder", Listed(taken));
        }
    }

    /// <summary>
    /// Names of the entries that must live on in the new folder: a person's own, and edited files that are not written
    /// anew, for which leave to overwrite is no leave to remove.
    /// </summary>
    public ImmutableArray<string> Kept(IEnumerable<string> newNames) =>
        [.. Own.Concat(Edited.Except(newNames, StringComparer.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)];

    private static Manifest ReadManifest(string folder)
    {
        var path = Path.Join(folder, Manifest.FileName);
        switch (EntryStatus.Of(path).Kind)
        {
            case EntryKind.Missing:
                throw new RefusedException(
                    $"This folder has files in it but no {Manifest.FileName}, so this program did not write it", "another folder, or one that is empty");
            case EntryKind.File when Manifest.Read(File.ReadAllBytes(path)) is { } manifest:
                return manifest;
            default:
                throw new RefusedException(
                    $"The {Manifest.FileName} in this folder is not one of this program's, or is damaged, so edited files could not be told", "another folder, or one that is empty");
        }
    }

    private static ExistingFolder Sort(string path, EntryStatus status, IEnumerable<string> names, Manifest manifest)
    {
        var listed = manifest.Files.DistinctBy(file => file.Name).ToDictionary(file => file.Name, StringComparer.Ordinal);
        List<string> edited = [];
        List<string> own = [];
        foreach (var name in names.Where(name => name != Manifest.FileName))
        {
            var entry = Path.Join(path, name);
            var found = EntryStatus.Of(entry);
            if (!listed.TryGetValue(name, out var written) || found.Kind == EntryKind.Folder)
            {
                own.Add(name);
            }
            else if (!IsUntouched(entry, found, written))
            {
                edited.Add(name);
            }
        }

        return new(status, [.. edited], [.. own]);
    }

    private static bool IsUntouched(string path, EntryStatus found, ManifestFile written) =>
        found.Kind == EntryKind.File && found.Size == written.Size && Sha256.HexOf(File.ReadAllBytes(path)) == written.Sha256;

    private static string Listed(IReadOnlyCollection<string> names) =>
        string.Join(", ", names.Take(MostNamed)) + (names.Count > MostNamed ? FormattableString.Invariant($" and {names.Count - MostNamed} more") : "");
}
