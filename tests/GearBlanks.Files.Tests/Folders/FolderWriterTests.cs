using GearBlanks.Files.Folders;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Folders;

public class FolderWriterTests
{
    [Fact]
    public void A_new_folder_holds_the_files_and_the_manifest()
    {
        using var place = new Workplace();
        var written = Workplace.WriteDone(place.Write("one"));
        Assert.Equal(["day.dxf", "manifest.json", "one.svg", "tide.dxf"], written.Files);
        Assert.Equal(place.Out, written.Folder);
        Assert.Empty(written.Notes);
        Workplace.AssertWhole(place.Out, "one");
        place.AssertTidy();
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        using var place = new Workplace();
        Workplace.WriteDone(place.Write("one"));
        var first = Contents(place.Out);
        Workplace.WriteDone(place.Write("one"));
        Assert.Equal(first, Contents(place.Out));
        Workplace.WriteDone(FolderWriter.Write(place["other"], [.. Workplace.Version("one").Reverse()], Workplace.Data, false));
        Assert.Equal(first, Contents(place["other"]));
    }

    [Fact]
    public void Missing_folders_above_are_made()
    {
        using var place = new Workplace();
        Workplace.WriteDone(FolderWriter.Write(place["a/b/c"], Workplace.Version("one"), Workplace.Data, false));
        Workplace.AssertWhole(place["a/b/c"], "one");
    }

    [Fact]
    public void An_empty_folder_is_taken_and_keeps_its_permissions()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place.Out, (UnixFileMode)0b111_001_000);
        Workplace.WriteDone(place.Write("one"));
        Workplace.AssertWhole(place.Out, "one");
        Assert.Equal((UnixFileMode)0b111_001_000, File.GetUnixFileMode(place.Out));
        place.AssertTidy();
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void What_is_a_persons_own_survives_as_it_was(bool mayExchange, bool mayLink)
    {
        using var place = new Workplace();
        place.MakeUsed();
        var own = Workplace.SeenOwn(place.Out);
        Assert.Equal(6, own.Length);
        var written = Workplace.WriteDone(place.Write("two", means: new(mayExchange, mayLink, _ => { })));
        Assert.Equal(["link", "notes.txt", "photos"], written.Kept);
        Assert.Empty(written.Notes);
        Assert.Equal(own, Workplace.SeenOwn(place.Out));
        Assert.Equal("not in the folder", File.ReadAllText(place["elsewhere.txt"]));
        Workplace.AssertWhole(place.Out, "two");
        place.AssertTidy();
    }

    [Fact]
    public void Files_that_are_no_longer_made_go_and_lost_ones_come_back()
    {
        using var place = new Workplace();
        Workplace.WriteDone(place.Write("one"));
        File.Delete(Path.Join(place.Out, "day.dxf"));
        Workplace.WriteDone(place.Write("two"));
        Workplace.AssertWhole(place.Out, "two");
    }

    [Fact]
    public void Edited_files_are_named_and_left_alone()
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.WriteAllText(Path.Join(place.Out, "day.dxf"), "one DAY");
        File.AppendAllText(Path.Join(place.Out, "one.svg"), "more");
        var before = Workplace.Seen(place.Root);
        var problem = Assert.Single(place.Write("two").Problems);
        Assert.Equal("day.dxf, one.svg", problem.Value);
        Assert.Contains("edited", problem.Message, StringComparison.Ordinal);
        Assert.Equal(before, Workplace.Seen(place.Root));
    }

    [Fact]
    public void With_leave_edited_files_are_overwritten_and_those_not_made_anew_are_kept()
    {
        using var place = new Workplace();
        Workplace.WriteDone(place.Write("one"));
        File.WriteAllText(Path.Join(place.Out, "day.dxf"), "edited");
        File.WriteAllText(Path.Join(place.Out, "one.svg"), "edited");
        var written = Workplace.WriteDone(place.Write("two", overwriteEdited: true));
        Assert.Equal(["one.svg"], written.Kept);
        Assert.Equal("two day", File.ReadAllText(Path.Join(place.Out, "day.dxf")));
        Assert.Equal("edited", File.ReadAllText(Path.Join(place.Out, "one.svg")));
        place.AssertTidy();
    }

    [Fact]
    public void A_link_put_in_place_of_a_file_counts_as_edited_and_is_never_written_through()
    {
        using var place = new Workplace();
        Workplace.WriteDone(place.Write("one"));
        File.WriteAllText(place["elsewhere"], "one day");
        File.Delete(Path.Join(place.Out, "day.dxf"));
        File.CreateSymbolicLink(Path.Join(place.Out, "day.dxf"), place["elsewhere"]);
        Assert.Equal("day.dxf", Assert.Single(place.Write("two").Problems).Value);
        Workplace.WriteDone(place.Write("two", overwriteEdited: true));
        Assert.Equal("one day", File.ReadAllText(place["elsewhere"]));
        Workplace.AssertWhole(place.Out, "two");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_persons_own_file_under_a_new_name_is_never_overwritten(bool overwriteEdited)
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.WriteAllText(Path.Join(place.Out, "TWO.svg"), "mine");
        Directory.CreateDirectory(Path.Join(place.Out, "two.svg"));
        File.Delete(Path.Join(place.Out, "day.dxf"));
        Directory.CreateDirectory(Path.Join(place.Out, "day.dxf"));
        var before = Workplace.Seen(place.Root);
        Assert.Equal("TWO.svg, day.dxf, two.svg", Assert.Single(place.Write("two", overwriteEdited).Problems).Value);
        Assert.Equal(before, Workplace.Seen(place.Root));
    }

    [Fact]
    public void A_file_that_appears_meanwhile_is_brought_over()
    {
        using var place = new Workplace();
        place.MakeUsed();
        Means late = Means.All with { Reached = moment => Do(moment == Moment.Built, () => File.WriteAllText(Path.Join(place.Out, "late.txt"), "late")) };
        Workplace.WriteDone(place.Write("two", means: late));
        Assert.Equal("late", File.ReadAllText(Path.Join(place.Out, "late.txt")));
        place.AssertTidy();
    }

    [Fact]
    public void A_file_of_a_persons_that_is_replaced_meanwhile_is_not_lost()
    {
        using var place = new Workplace();
        place.MakeUsed();
        var notes = Path.Join(place.Out, "notes.txt");
        Means late = Means.All with
        {
            Reached = moment => Do(moment == Moment.Built, () =>
            {
                File.Delete(notes);
                File.WriteAllText(notes, "saved just now");
            }),
        };
        var note = Assert.Single(Workplace.WriteDone(place.Write("two", means: late)).Notes);
        var former = Assert.Single(Directory.EnumerateDirectories(place.Root, ".out.old-*"));
        Assert.Contains(former, note, StringComparison.Ordinal);
        Assert.Equal("saved just now", File.ReadAllText(Path.Join(former, "notes.txt")));
        Workplace.AssertWhole(place.Out, "two");
    }

    [Theory]
    [InlineData("out/")]
    [InlineData("./out//")]
    [InlineData("sub/../out/.")]
    [InlineData("link")]
    [InlineData("link/")]
    [InlineData("deep-link/../out")]
    public void However_it_is_named_it_is_the_same_folder(string name)
    {
        using var place = new Workplace();
        Workplace.WriteDone(place.Write("one"));
        Directory.CreateDirectory(place["sub/deep"]);
        File.CreateSymbolicLink(place["link"], "out");
        Directory.CreateDirectory(place["far"]);
        File.CreateSymbolicLink(place["far/out"], "../out");
        File.CreateSymbolicLink(place["deep-link"], "far/../sub");
        Workplace.WriteDone(FolderWriter.Write(place.Root + "/" + name, Workplace.Version("two"), Workplace.Data, false));
        Workplace.AssertWhole(place.Out, "two");
        Assert.Equal("out", new FileInfo(place["link"]).LinkTarget);
        place.AssertTidy();
    }

    [Fact]
    public void Two_dots_after_a_link_lead_where_the_system_says()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["a/b"]);
        File.CreateSymbolicLink(place["link"], "a/b");
        Workplace.WriteDone(FolderWriter.Write(place.Root + "/link/../out", Workplace.Version("one"), Workplace.Data, false));
        Workplace.AssertWhole(place["a/out"], "one");
    }

    [Fact]
    public void Paths_from_where_one_stands_and_the_folder_one_stands_in()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["out/below"]);
        Machine.StandingIn(place.Root, () => Workplace.WriteDone(FolderWriter.Write("other", Workplace.Version("one"), Workplace.Data, false)));
        Machine.StandingIn(place["other"], () =>
        {
            Assert.Contains("enter it again", Assert.Single(Workplace.WriteDone(FolderWriter.Write(".", Workplace.Version("two"), Workplace.Data, false)).Notes), StringComparison.Ordinal);
            var gone = Assert.Single(FolderWriter.Write(".", Workplace.Version("three"), Workplace.Data, false).Problems);
            Assert.StartsWith("The folder you are in has been removed", gone.Message, StringComparison.Ordinal);
            Assert.Empty(Workplace.WriteDone(FolderWriter.Write(place["other"], Workplace.Version("four"), Workplace.Data, false)).Notes);
        });
        Workplace.AssertWhole(place["other"], "four");
        Directory.Delete(place["out/below"]);
        Directory.CreateDirectory(place["beside"]);
        Machine.StandingIn(place["beside"], () => Assert.Empty(Workplace.WriteDone(FolderWriter.Write("../out", Workplace.Version("one"), Workplace.Data, false)).Notes));
        Workplace.AssertWhole(place.Out, "one");
        place.AssertTidy();
    }

    [Fact]
    public void Runs_at_the_same_time_do_not_mix()
    {
        using var place = new Workplace();
        place.MakeUsed();
        var own = Workplace.SeenOwn(place.Out);
        string[] words = ["two", "three", "four", "five"];
        Thread[] threads = [.. words.Select(word => new Thread(() => Repeat(place, word)))];
        foreach (var thread in threads)
        {
            thread.Start();
        }

        foreach (var thread in threads)
        {
            thread.Join();
        }

        var winner = File.ReadAllText(Path.Join(place.Out, "day.dxf"))[..^" day".Length];
        Assert.Contains(winner, words);
        Workplace.AssertWhole(place.Out, winner);
        Assert.Equal(own, Workplace.SeenOwn(place.Out));
        place.AssertTidy();
    }

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("..")]
    [InlineData("a/b")]
    [InlineData("a\\b")]
    [InlineData("manifest.json")]
    [InlineData("Manifest.JSON")]
    [InlineData("a\nb")]
    public void Names_that_are_not_plain_are_the_programs_fault(string name)
    {
        using var place = new Workplace();
        Assert.Throws<ArgumentException>(() => FolderWriter.Write(place.Out, [Workplace.File(name, "")], Workplace.Data, false));
        Assert.Empty(Directory.EnumerateFileSystemEntries(place.Root));
    }

    [Fact]
    public void Names_that_differ_by_case_only_are_the_programs_fault()
    {
        using var place = new Workplace();
        Assert.Throws<ArgumentException>(
            () => FolderWriter.Write(place.Out, [Workplace.File("a.dxf", ""), Workplace.File("A.dxf", "")], Workplace.Data, false));
    }

    private static void Do(bool isTime, Action action)
    {
        if (isTime)
        {
            action();
        }
    }

    private static void Repeat(Workplace place, string word)
    {
        for (var i = 0; i < 8; i++)
        {
            Outcome<WrittenFolder> outcome = place.Write(word);
            Assert.NotNull(outcome.Value);
        }
    }

    private static List<(string Name, string Content)> Contents(string folder) =>
        [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal).Select(file => (Path.GetFileName(file), File.ReadAllText(file)))];
}
