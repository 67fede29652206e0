using System.Collections.Immutable;

namespace GearBlanks.Files.Folders;

/// <summary>The folders above an output that had to be made; unless they are kept, they go again where they are empty.</summary>
internal sealed class MadeFolders : IDisposable
{
    private ImmutableArray<string> _made = [];

    public static MadeFolders Make(ImmutableArray<string> missing)
    {
        var made = new MadeFolders();
        try
        {
            foreach (var folder in missing)
            {
                Directory.CreateDirectory(folder);
                made._made = made._made.Insert(0, folder);
                Durable.FlushFolder(Path.GetDirectoryName(folder)!);
            }

            return made;
        }
        catch
        {
            made.Dispose();
            throw;
        }
    }

    public void Keep() => _made = [];

    public void Dispose()
    {
        foreach (var folder in _made)
        {
            try
            {
                Directory.Delete(folder);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Somebody else has put something there meanwhile.
                return;
            }
        }
    }
}
