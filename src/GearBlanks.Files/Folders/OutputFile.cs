namespace GearBlanks.Files.Folders;

/// <summary>A file to be written into a folder.</summary>
/// <param name="Name">Its plain name, without any folder.</param>
/// <param name="Content">All its bytes.</param>
public sealed record OutputFile(string Name, ReadOnlyMemory<byte> Content)
{
    /// <summary>The content's SHA-256 as 64 lower-case hexadecimal digits, worked out where the file is made.</summary>
    public string Sha256 { get; } = Folders.Sha256.HexOf(Content.Span);
}
