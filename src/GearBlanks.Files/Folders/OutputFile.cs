namespace GearBlanks.Files.Folders;

/// <summary>A file to be written into a folder.</summary>
/// <param name="Name">Its plain name, without any folder.</param>
/// <param name="Content">All its bytes.</param>
public sealed record OutputFile(string Name, ReadOnlyMemory<byte> Content);
