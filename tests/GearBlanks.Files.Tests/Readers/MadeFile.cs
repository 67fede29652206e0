using System.Text;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>A file for a reader, in a folder of its own that goes when it is done with.</summary>
public sealed class MadeFile : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("drawn-");

    public MadeFile(string name, byte[] content)
    {
        FilePath = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(FilePath, content);
    }

    public MadeFile(string name, string content)
        : this(name, Encoding.UTF8.GetBytes(content))
    {
    }

    public string FilePath { get; }

    public void Dispose() => _folder.Delete(recursive: true);
}
