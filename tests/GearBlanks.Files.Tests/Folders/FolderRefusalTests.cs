using GearBlanks.Files.Folders;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Folders;

/// <summary>Whatever stands in the way is said in a sentence, and what was there stays as it was.</summary>
public class FolderRefusalTests
{
    [Fact]
    public void A_file_of_the_folders_name()
    {
        using var place = new Workplace();
        File.WriteAllText(place.Out, "a file");
        AssertRefused(place, place.Out, "This is not a folder");
    }

    [Theory]
    [InlineData("file/out")]
    [InlineData("file/sub/out")]
    public void A_path_through_a_file(string name)
    {
        using var place = new Workplace();
        File.WriteAllText(place["file"], "a file");
        AssertRefused(place, place[name], "A part of this path is a file, not a folder");
    }

    [Fact]
    public void A_folder_that_the_program_did_not_write()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Out);
        File.WriteAllText(Path.Join(place.Out, "letter.txt"), "dear");
        AssertRefused(place, place.Out, "This folder has files in it but no manifest.json");
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("")]
    public void A_damaged_manifest(string text)
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.WriteAllText(Path.Join(place.Out, "manifest.json"), text);
        AssertRefused(place, place.Out, "The manifest.json in this folder is not one of this program's, or is damaged");
    }

    [Fact]
    public void A_manifest_that_is_a_pipe_does_not_stop_the_program()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Out);
        Machine.Run("mkfifo", Path.Join(place.Out, "manifest.json"));
        AssertRefused(place, place.Out, "The manifest.json in this folder is not one", mayLook: false);
    }

    [Fact]
    public void A_link_to_nothing_and_links_in_a_circle()
    {
        using var place = new Workplace();
        File.CreateSymbolicLink(place["nothing"], "nowhere");
        File.CreateSymbolicLink(place["round"], "round");
        AssertRefused(place, place["nothing"], "This is a link to nothing");
        AssertRefused(place, place["nothing/out"], "This is a link to nothing");
        AssertRefused(place, place["round"], "This path's links lead in a circle");
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a\0b")]
    public void No_name(string name)
    {
        using var place = new Workplace();
        AssertRefused(place, name, "No name is given");
    }

    [Fact]
    public void The_root_a_name_too_long_and_no_way_up()
    {
        using var place = new Workplace();
        AssertRefused(place, "/", "This is the root of a file system");
        AssertRefused(place, place[new string('n', 300)], "The name is too long");
        AssertRefused(place, place[new string('n', 250)], "The name is too long");
        AssertRefused(place, place["new/" + new string('n', 300)], "The name is too long");
        AssertRefused(place, place["missing/.."], "There is no folder to go up from");
    }

    [Fact]
    public void A_read_only_folder()
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.SetUnixFileMode(place.Out, (UnixFileMode)0b101_101_101);
        AssertRefused(place, place.Out, "This folder is read-only");
    }

    [Fact]
    public void Without_permission()
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.SetUnixFileMode(place.Root, (UnixFileMode)0b111_101_101);
        File.SetUnixFileMode(place.Out, (UnixFileMode)0b111_101_101);
        Directory.CreateDirectory(place["closed"], (UnixFileMode)0b111_000_000);
        var before = Workplace.Seen(place.Root);
        Machine.AsNobody(() =>
        {
            foreach (var name in new[] { "out", "new", "new/below", "closed", "closed/out" })
            {
                AssertSays(FolderWriter.Write(place[name], Workplace.Version("two"), Workplace.Data, true).Problems, "Permission to write here is denied");
            }
        });
        Assert.Equal(before, Workplace.Seen(place.Root));
    }

    [Fact]
    public void A_full_disk()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["small"]);
        Machine.Mounted(place["small"], "size=64k", () =>
        {
            OutputFile[] large = [.. Enumerable.Range(0, 10).Select(i => Workplace.File($"gear-{i}.dxf", new string('g', 16000)))];
            AssertFull(place, FolderWriter.Write(place["small/new/out"], large, Workplace.Data, false), []);
            Workplace.WriteDone(FolderWriter.Write(place["small/out"], Workplace.Version("one"), Workplace.Data, false));
            var before = Workplace.Seen(place["small/out"]);
            AssertFull(place, FolderWriter.Write(place["small/out"], large, Workplace.Data, false), ["out"]);
            Assert.Equal(before, Workplace.Seen(place["small/out"]));
            Assert.StartsWith("The disk is full", Assert.Single(SingleFile.Write(place["small/a.dxf"], new byte[100_000], false).Problems).Message, StringComparison.Ordinal);
            Assert.Equal(["out"], Trees.Names(place["small"]));
        });
    }

    [Fact]
    public void A_read_only_file_system()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["disc"]);
        Machine.Mounted(place["disc"], "size=1m", () =>
        {
            Workplace.WriteDone(FolderWriter.Write(place["disc/out"], Workplace.Version("one"), Workplace.Data, false));
            Machine.Remount(place["disc"], "ro");
            AssertRefused(place, place["disc/out"], "The file system is read-only");
            AssertRefused(place, place["disc/new/out"], "The file system is read-only");
            AssertSays(SingleFile.Write(place["disc/a.dxf"], "a"u8, false).Problems, "The file system is read-only");
        });
    }

    [Fact]
    public void A_mount_point_cannot_be_replaced()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Out);
        Machine.Mounted(place.Out, "size=1m", () => AssertRefused(place, place.Out, "This folder is a mount point"));
    }

    [Fact]
    public void Another_file_system_inside_a_persons_folder()
    {
        using var place = new Workplace();
        place.MakeUsed();
        Directory.CreateDirectory(Path.Join(place.Out, "stick"));
        Machine.Mounted(Path.Join(place.Out, "stick"), "size=1m", () =>
        {
            File.WriteAllText(Path.Join(place.Out, "stick", "a"), "a");
            AssertRefused(place, place.Out, "Another file system is mounted inside this folder");
        });
    }

    private static void AssertRefused(Workplace place, string folder, string message, bool mayLook = true)
    {
        var before = mayLook ? Workplace.Seen(place.Root) : [];
        AssertSays(FolderWriter.Write(folder, Workplace.Version("two"), Workplace.Data, false).Problems, message);
        Assert.Equal(before, mayLook ? Workplace.Seen(place.Root) : []);
        place.AssertTidy();
    }

    private static void AssertSays(IEnumerable<Problem> problems, string message)
    {
        var problem = Assert.Single(problems);
        Assert.StartsWith(message, problem.Message, StringComparison.Ordinal);
        Assert.False(string.IsNullOrEmpty(problem.Allowed));
    }

    private static void AssertFull(Workplace place, Outcome<WrittenFolder> outcome, string[] left)
    {
        AssertSays(outcome.Problems, "The disk is full");
        Assert.Equal(left, Trees.Names(place["small"]));
    }
}
