using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>A folder that was written whole.</summary>
/// <param name="Folder">The folder as the user gave it.</param>
/// <param name="Files">Names of the files written, the manifest among them, in ordinal order.</param>
/// <param name="Kept">Names of a person's own files and folders in it that were kept, in ordinal order.</param>
/// <param name="Notes">Sentences on what else a person should know; mostly empty.</param>
public sealed record WrittenFolder(string Folder, ImmutableArray<string> Files, ImmutableArray<string> Kept, ImmutableArray<string> Notes);
