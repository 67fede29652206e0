using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Folders;

/// <summary>
/// Writes an output folder whole or not at all. The files are made in a hidden folder beside it and flushed; that one
/// then takes its place in one step where the system has such a step. Whenever the program is cut short, the former
/// folder or the new one is there, and the next run tidies up.
/// </summary>
/// <remarks>
/// A folder that exists is replaced only where it is empty or has this program's manifest. Files that the manifest lists
/// and a person has edited since are not overwritten without leave. Whatever it does not list is a person's own: it is
/// kept, with its times and permissions, and never overwritten. An edited file that is not written anew is kept too.
/// Between looking at a folder and replacing it there are some milliseconds: a file that appears in them is brought
/// over, but an edit in them of a file that the program wrote may be lost.
/// </remarks>
public static class FolderWriter
{
    /// <summary>Name of the manifest in the folder.</summary>
    public const string ManifestName = Manifest.FileName;

    /// <summary>Writes the files and the manifest.</summary>
    /// <param name="folder">The folder as the user gave it; folders above it are made.</param>
    /// <param name="files">The files: plain names, not the manifest's, that differ by more than case.</param>
    /// <param name="data">What the manifest tells besides.</param>
    /// <param name="overwriteEdited">True to overwrite files that a person has edited since they were written.</param>
    /// <exception cref="ArgumentException">A file's name is not allowed.</exception>
    public static Outcome<WrittenFolder> Write(string folder, IReadOnlyList<OutputFile> files, ManifestData data, bool overwriteEdited) =>
        Write(folder, files, data, overwriteEdited, Means.All);

    internal static Outcome<WrittenFolder> Write(
        string folder, IReadOnlyList<OutputFile> files, ManifestData data, bool overwriteEdited, Means means)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(data);
        OutputNames.Check(files);
        try
        {
            return new FolderRun(folder, files, data, overwriteEdited, means).Write();
        }
        catch (Exception e) when (Trouble.IsForPeople(e))
        {
            return Trouble.Of(e, folder);
        }
    }
}
