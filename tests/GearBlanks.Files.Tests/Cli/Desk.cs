using System.Security.Cryptography;
using System.Text;
using GearBlanks.Files.Folders;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>A folder of a test's own with a good job and everything that may stand in the way of one.</summary>
internal sealed class Desk : IDisposable
{
    private static readonly Lazy<(string Name, byte[] Content)[]> CutPair = new(() =>
    {
        using Desk desk = WithJob();
        Assert.Equal(0, Ran.Of("cut", desk["pair.toml"], "--out", desk["out"]).Exit);
        return [.. Directory.EnumerateFiles(desk["out"]).Select(file => (Path.GetFileName(file), File.ReadAllBytes(file)))];
    });

    public string Root { get; } = Directory.CreateTempSubdirectory("gearblanks-desk-").FullName;

    public string this[string name] => Path.Join(Root, name);

    /// <summary>A desk with a good job only.</summary>
    public static Desk WithJob()
    {
        var desk = new Desk();
        File.WriteAllText(desk["pair.toml"], JobTexts.Pair);
        return desk;
    }

    /// <summary>A desk with a good job and bad files, and an output of which a file has been edited.</summary>
    public static Desk WithClutter()
    {
        Desk desk = WithJob();
        File.WriteAllText(desk["empty.toml"], "");
        File.WriteAllText(desk["prose.toml"], "The tide turns at noon.\n");
        File.WriteAllBytes(desk["binary.toml"], [0x7F, (byte)'E', (byte)'L', (byte)'F', 2, 1, 1, 0]);
        File.WriteAllBytes(desk["utf16.toml"], [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("title = 1")]);
        File.WriteAllBytes(desk["latin.toml"], [.. "title = \"x\"\n# Gl"u8, 0xF6, .. "ckchen\n"u8]);
        File.WriteAllBytes(desk["large.toml"], new byte[(1 << 20) + 1].Select(_ => (byte)'#').ToArray());
        File.WriteAllText(desk["file"], "a regular file");
        File.CreateSymbolicLink(desk["nothing.toml"], "nowhere.toml");
        File.CreateSymbolicLink(desk["round.toml"], "round.toml");
        Directory.CreateDirectory(desk["folder.toml"]);
        Directory.CreateDirectory(desk["letters"]);
        File.WriteAllText(desk["letters/letter.txt"], "dear");
        Directory.CreateDirectory(desk["racks"]);
        File.WriteAllText(desk["racks/steep.toml"], "pressure-angle = 95\n");
        Directory.CreateDirectory(desk["edited"]);
        foreach ((string name, byte[] content) in CutPair.Value)
        {
            File.WriteAllBytes(desk["edited/" + name], content);
        }

        File.AppendAllText(desk["edited/wheel.svg"], "<!-- larger bore, agreed -->");
        Directory.CreateDirectory(desk["unlisted"]);
        File.WriteAllText(desk["unlisted/manifest.json"], "{}");
        return desk;
    }

    /// <summary>Every entry with its permissions, time and content, so that any change shows.</summary>
    public string[] Seen() =>
    [
        .. Directory.EnumerateFileSystemEntries(Root, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 })
            .Order(StringComparer.Ordinal)
            .Select(Line),
    ];

    public void Dispose() => Trees.Remove(Root);

    private static string Line(string entry)
    {
        var info = new FileInfo(entry);
        string head = $"{entry} {info.UnixFileMode} {info.LastWriteTimeUtc.Ticks}";
        return info.LinkTarget is { } target ? $"{entry} -> {target}"
            : Directory.Exists(entry) ? head
            : $"{head} {Content(entry)}";
    }

    private static string Content(string file)
    {
        try
        {
            return Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)));
        }
        catch (UnauthorizedAccessException)
        {
            return "not to be read";
        }
    }
}
