namespace GearBlanks.Files.Tests.Cli;

/// <summary>Compares folders byte for byte.</summary>
internal static class Folder
{
    public static void AssertSame(string wanted, string found)
    {
        Assert.Equal(Names(wanted), Names(found));
        Assert.All(Names(wanted), name => Assert.True(
            File.ReadAllBytes(Path.Join(wanted, name)).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Join(found, name))), $"{name} differs"));
    }

    public static string[] Names(string folder) =>
        [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file)).Order(StringComparer.Ordinal)];
}
