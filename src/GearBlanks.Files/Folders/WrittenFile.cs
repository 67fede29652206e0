namespace GearBlanks.Files.Folders;

/// <summary>A single file that was written whole.</summary>
/// <param name="File">The file as the user gave it.</param>
/// <param name="Size">Its size, bytes.</param>
public sealed record WrittenFile(string File, long Size);
