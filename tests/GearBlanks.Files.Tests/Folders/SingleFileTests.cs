using GearBlanks.Files.Folders;

namespace GearBlanks.Files.Tests.Folders;

public class SingleFileTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_new_file_is_written(bool mustBeNew)
    {
        using var place = new Workplace();
        var written = SingleFile.Write(place["a.dxf"], "gear"u8, mustBeNew).Value;
        Assert.Equal(new WrittenFile(place["a.dxf"], 4), written);
        Assert.Equal("gear", File.ReadAllText(place["a.dxf"]));
        place.AssertTidy();
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_and_keeps_its_permissions()
    {
        using var place = new Workplace();
        File.WriteAllText(place["a.dxf"], "a longer one");
        File.SetUnixFileMode(place["a.dxf"], (UnixFileMode)0b110_010_000);
        Assert.NotNull(SingleFile.Write(place["a.dxf"], "gear"u8, mustBeNew: false).Value);
        Assert.Equal("gear", File.ReadAllText(place["a.dxf"]));
        Assert.Equal((UnixFileMode)0b110_010_000, File.GetUnixFileMode(place["a.dxf"]));
        place.AssertTidy();
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_points_to_is_written()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["far"]);
        File.WriteAllText(place["far/a.dxf"], "old");
        File.CreateSymbolicLink(place["a.dxf"], "far/a.dxf");
        Assert.NotNull(SingleFile.Write(place["a.dxf"], "gear"u8, mustBeNew: false).Value);
        Assert.Equal("far/a.dxf", new FileInfo(place["a.dxf"]).LinkTarget);
        Assert.Equal("gear", File.ReadAllText(place["far/a.dxf"]));
    }

    [Fact]
    public void What_a_killed_run_left_goes_with_the_next()
    {
        using var place = new Workplace();
        File.WriteAllText(place[".a.dxf.new-0123456789abcdef"], "ge");
        File.WriteAllText(place[".b.dxf.new-0123456789abcdef"], "another's");
        Assert.NotNull(SingleFile.Write(place["a.dxf"], "gear"u8, mustBeNew: false).Value);
        Assert.Equal([".b.dxf.new-0123456789abcdef", "a.dxf"], Trees.Names(place.Root));
    }

    [Theory]
    [InlineData("folder", false, "This is the name of a folder")]
    [InlineData("folder", true, "This is the name of a folder")]
    [InlineData("new.dxf/", false, "This is the name of a folder")]
    [InlineData("missing/a.dxf", false, "There is no folder to write this file into")]
    [InlineData("file/a.dxf", false, "A part of this path is a file, not a folder")]
    [InlineData("file", true, "There is a file of this name already")]
    [InlineData("pipe", false, "This is not a plain file")]
    [InlineData("locked", false, "This file is read-only")]
    [InlineData("nothing", false, "This is a link to nothing")]
    [InlineData("nothing", true, "This is a link to nothing")]
    public void What_stands_in_the_way_is_said_and_stays(string name, bool mustBeNew, string message)
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["folder"]);
        File.WriteAllText(place["file"], "a file");
        File.WriteAllText(place["locked"], "kept");
        File.SetUnixFileMode(place["locked"], UnixFileMode.UserRead);
        File.CreateSymbolicLink(place["nothing"], "nowhere");
        Machine.Run("mkfifo", place["pipe"]);
        var before = Trees.Names(place.Root);
        var problem = Assert.Single(SingleFile.Write(place[name], "gear"u8, mustBeNew).Problems);
        Assert.StartsWith(message, problem.Message, StringComparison.Ordinal);
        Assert.False(string.IsNullOrEmpty(problem.Allowed));
        Assert.Equal(before, Trees.Names(place.Root));
        Assert.Equal("a file", File.ReadAllText(place["file"]));
        Assert.Equal("kept", File.ReadAllText(place["locked"]));
    }

    [Fact]
    public void A_device_is_never_replaced()
    {
        Assert.StartsWith("This is not a plain file", Assert.Single(SingleFile.Write("/dev/null", "gear"u8, false).Problems).Message, StringComparison.Ordinal);
        Assert.Equal(EntryKind.Other, EntryStatus.Of("/dev/null").Kind);
    }

    [Fact]
    public void Without_permission()
    {
        using var place = new Workplace();
        File.SetUnixFileMode(place.Root, (UnixFileMode)0b111_101_101);
        File.WriteAllText(place["a.dxf"], "old");
        Machine.AsNobody(() =>
        {
            foreach (var name in new[] { "a.dxf", "b.dxf" })
            {
                Assert.Equal("Permission to write here is denied", Assert.Single(SingleFile.Write(place[name], "gear"u8, false).Problems).Message);
            }
        });
        Assert.Equal(["a.dxf"], Trees.Names(place.Root));
        Assert.Equal("old", File.ReadAllText(place["a.dxf"]));
    }

    [Fact]
    public void Of_two_that_must_be_new_one_wins()
    {
        using var place = new Workplace();
        var won = 0;
        Thread[] threads = [.. Enumerable.Range(0, 6).Select(i => new Thread(() =>
        {
            if (SingleFile.Write(place["a.dxf"], [(byte)i], mustBeNew: true).Value is not null)
            {
                Interlocked.Increment(ref won);
            }
        }))];
        Array.ForEach(threads, thread => thread.Start());
        Array.ForEach(threads, thread => thread.Join());
        Assert.Equal(1, won);
        Assert.Equal(["a.dxf"], Trees.Names(place.Root));
    }
}
