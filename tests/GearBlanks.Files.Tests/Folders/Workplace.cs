using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using GearBlanks.Files.Folders;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Folders;

/// <summary>A folder of a test's own, gone after it, with what the tests of writing ask of it.</summary>
internal sealed class Workplace : IDisposable
{
    public static readonly ManifestData Data = new("GearBlanks 0.1.0", [new("job", "dial.toml")], ["tight: mesh day-tide"], "tight");

    public string Root { get; } = Directory.CreateTempSubdirectory("gearblanks-folders-").FullName;

    public string Out => this["out"];

    public string this[string name] => Path.Join(Root, name);

    public static OutputFile File(string name, string content) => new(name, Encoding.UTF8.GetBytes(content));

    public static OutputFile[] Version(string word) => [File("day.dxf", word + " day"), File("tide.dxf", word + " tide"), File(word + ".svg", word)];

    public Outcome<WrittenFolder> Write(string word, bool overwriteEdited = false, Means? means = null) =>
        FolderWriter.Write(Out, Version(word), Data, overwriteEdited, means ?? Means.All);

    /// <summary>A folder of version one with things of a person's: a file, a folder, a link, all with their own times and permissions.</summary>
    public void MakeUsed()
    {
        WriteDone(Write("one"));
        System.IO.File.WriteAllText(Path.Join(Out, "notes.txt"), "cut on the left machine");
        System.IO.File.SetUnixFileMode(Path.Join(Out, "notes.txt"), UnixFileMode.UserRead | UnixFileMode.GroupRead);
        System.IO.File.SetLastWriteTimeUtc(Path.Join(Out, "notes.txt"), new DateTime(2001, 2, 3, 4, 5, 6, DateTimeKind.Utc));
        Directory.CreateDirectory(Path.Join(Out, "photos", "small"));
        System.IO.File.WriteAllText(Path.Join(Out, "photos", "small", "dial.png"), "a picture");
        System.IO.File.WriteAllText(this["elsewhere.txt"], "not in the folder");
        System.IO.File.CreateSymbolicLink(Path.Join(Out, "link"), "../elsewhere.txt");
        System.IO.File.CreateSymbolicLink(Path.Join(Out, "photos", "dangling"), "nowhere");
        Directory.SetLastWriteTimeUtc(Path.Join(Out, "photos"), new DateTime(2003, 2, 3, 4, 5, 6, DateTimeKind.Utc));
        System.IO.File.SetUnixFileMode(Path.Join(Out, "photos"), (UnixFileMode)0b101_101_000);
    }

    public static WrittenFolder WriteDone(Outcome<WrittenFolder> outcome)
    {
        Assert.True(outcome.Value is not null, string.Join("; ", outcome.Problems.Select(p => p.Message)));
        return outcome.Value;
    }

    /// <summary>A line an entry: name, permissions, time, content. Folders' own times only of a person's folders.</summary>
    public static ImmutableArray<string> Seen(string folder) =>
    [
        .. Directory.EnumerateFileSystemEntries(folder, "*", new EnumerationOptions { AttributesToSkip = 0, IgnoreInaccessible = false })
            .Order(StringComparer.Ordinal)
            .SelectMany(entry => Line(entry, Path.GetFileName(entry))),
    ];

    /// <summary>What a person has put there, as <see cref="Seen"/>.</summary>
    public static ImmutableArray<string> SeenOwn(string folder) =>
        [.. Seen(folder).Where(line => new[] { "notes.txt", "photos", "link" }.Any(own => line.StartsWith(own, StringComparison.Ordinal)))];

    /// <summary>The folder holds exactly this version's files, and a manifest that agrees with them.</summary>
    public static void AssertWhole(string folder, string word)
    {
        foreach (var file in Version(word))
        {
            Assert.Equal(file.Content.ToArray(), System.IO.File.ReadAllBytes(Path.Join(folder, file.Name)));
        }

        Assert.Equal(
            Version(word).Select(file => file.Name).Append("manifest.json").Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)).Where(name => name is not ("notes.txt" or "link")).Order(StringComparer.Ordinal));
        Assert.Equal(Manifest.Write(Version(word).Select(ManifestFile.Of), Data), System.IO.File.ReadAllBytes(Path.Join(folder, "manifest.json")));
    }

    /// <summary>Nothing hidden is left beside the output.</summary>
    public void AssertTidy() => Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(Root), entry => Path.GetFileName(entry).StartsWith('.'));

    public void Dispose() => Trees.Remove(Root);

    private static IEnumerable<string> Line(string entry, string name)
    {
        var info = new FileInfo(entry);
        if (info.LinkTarget is { } target)
        {
            return [$"{name} -> {target}"];
        }

        var time = info.LastWriteTimeUtc.Ticks.ToString(CultureInfo.InvariantCulture);
        return Directory.Exists(entry)
            ? Seen(entry).Select(line => name + "/" + line).Prepend($"{name}/ {info.UnixFileMode} {time}")
            : [$"{name} {info.UnixFileMode} {time} {System.IO.File.ReadAllText(entry)}"];
    }
}
