using GearBlanks.Files.Folders;

namespace GearBlanks.Files.Tests.Folders;

/// <summary>Cuts a run short at every moment and looks at what is left, before and after the next run.</summary>
public class FolderCrashTests
{
    // What a person finds after each moment; without exchange there is one moment at which both are there under hidden names only.
    public static TheoryData<string, bool, bool> Moments()
    {
        var data = new TheoryData<string, bool, bool>();
        foreach (var moment in Enum.GetValues<Moment>())
        {
            foreach (var mayExchange in new[] { true, false })
            {
                data.Add(moment.ToString(), mayExchange, true);
                data.Add(moment.ToString(), mayExchange, false);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Moments))]
    public void A_used_folder_is_whole_and_the_next_run_tidies_up(string moment, bool mayExchange, bool mayLink)
    {
        using var place = new Workplace();
        place.MakeUsed();
        var own = Workplace.SeenOwn(place.Out);
        var at = Enum.Parse<Moment>(moment);
        var isCut = CutShort(place, at, new(mayExchange, mayLink, _ => { }));
        Assert.Equal(at != (mayExchange ? Moment.MovedAside : Moment.Named), isCut);

        if (isCut && at == Moment.MovedAside)
        {
            Assert.False(Directory.Exists(place.Out));
            Workplace.AssertWhole(Assert.Single(Directory.EnumerateDirectories(place.Root, ".out.old-*")), "one");
        }
        else
        {
            Workplace.AssertWhole(place.Out, at >= Moment.InPlace || !isCut ? "two" : "one");
            Assert.Equal(own, Workplace.SeenOwn(place.Out));
        }

        var written = Workplace.WriteDone(place.Write("three", means: new(mayExchange, mayLink, _ => { })));
        Assert.Empty(written.Notes);
        Workplace.AssertWhole(place.Out, "three");
        Assert.Equal(own, Workplace.SeenOwn(place.Out));
        place.AssertTidy();
    }

    [Theory]
    [InlineData(nameof(Moment.Started), false)]
    [InlineData(nameof(Moment.FileWritten), false)]
    [InlineData(nameof(Moment.ManifestWritten), false)]
    [InlineData(nameof(Moment.Built), false)]
    [InlineData(nameof(Moment.InPlace), true)]
    [InlineData(nameof(Moment.Done), true)]
    public void A_new_folder_is_there_whole_or_not_at_all(string moment, bool isThere)
    {
        using var place = new Workplace();
        Assert.True(CutShort(place, Enum.Parse<Moment>(moment), Means.All));
        Assert.Equal(isThere, Directory.Exists(place.Out));
        Workplace.WriteDone(place.Write("three"));
        Workplace.AssertWhole(place.Out, "three");
        place.AssertTidy();
    }

    [Fact]
    public void A_run_that_is_refused_still_puts_the_former_folder_back()
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.WriteAllText(Path.Join(place.Out, "tide.dxf"), "edited");
        var before = Workplace.Seen(place.Out);
        Assert.True(CutShort(place, Moment.MovedAside, Means.All with { MayExchange = false }, overwriteEdited: true));
        Assert.Equal("tide.dxf", Assert.Single(place.Write("three").Problems).Value);
        Assert.Equal(before, Workplace.Seen(place.Out));
        place.AssertTidy();
    }

    [Fact]
    public void Edits_overwritten_with_leave_do_not_come_back()
    {
        using var place = new Workplace();
        place.MakeUsed();
        File.WriteAllText(Path.Join(place.Out, "tide.dxf"), "edited");
        Assert.True(CutShort(place, Moment.InPlace, Means.All, overwriteEdited: true));
        Workplace.WriteDone(place.Write("three"));
        Workplace.AssertWhole(place.Out, "three");
        place.AssertTidy();
    }

    [Fact]
    public void Hidden_neighbours_of_others_are_left_alone()
    {
        using var place = new Workplace();
        string[] others = [".out.new-", ".out.new-12345", ".out.new-0123456789abcdeg", ".out2.new-0123456789abcdef", "out.new-0123456789abcdef", ".out.new-0123456789ABCDEF"];
        foreach (var other in others)
        {
            Directory.CreateDirectory(place[other]);
        }

        Workplace.WriteDone(place.Write("one"));
        Assert.All(others, other => Assert.True(Directory.Exists(place[other]), other));
    }

    [Fact]
    public void A_link_in_what_was_left_is_not_followed()
    {
        using var place = new Workplace();
        Directory.CreateDirectory(place["mine"]);
        File.WriteAllText(place["mine/precious"], "precious");
        Directory.CreateDirectory(place[".out.new-0123456789abcdef"]);
        File.CreateSymbolicLink(place[".out.new-0123456789abcdef/mine"], place["mine"]);
        File.CreateSymbolicLink(place[".out.new-0123456789abcde0"], place["mine"]);
        File.CreateSymbolicLink(place[".out.old-0123456789abcde0"], place["mine"]);
        Workplace.WriteDone(place.Write("one"));
        Assert.Equal("precious", File.ReadAllText(place["mine/precious"]));
    }

    private static bool CutShort(Workplace place, Moment at, Means means, bool overwriteEdited = false)
    {
        try
        {
            place.Write("two", overwriteEdited, means with { Reached = moment => _ = moment == at ? throw new CutShortException() : 0 });
            return false;
        }
        catch (CutShortException)
        {
            return true;
        }
    }

    private sealed class CutShortException : Exception;
}
