using System.Text;
using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>What the exit status says, and that a failing gear's files say so too.</summary>
public class ExitTests
{
    // The same pair a millimetre too close: its backlash is gone.
    private static readonly string TooClose = JobTexts.Pair.Replace("distance = 30", "distance = 29", StringComparison.Ordinal);

    [Theory]
    [InlineData("tide-dial")]
    [InlineData("slipway-counter-pair")]
    [InlineData("chart-sled")]
    [InlineData("watch-hut-motion-work")]
    [InlineData("first-pair")]
    public void The_jobs_that_come_along_pass(string job)
    {
        Ran ran = Ran.Of("check", Path.Combine(Repository.Root, "profiles", "jobs", job + ".toml"));
        Assert.True(ran.Exit == 0, ran.Told);
        Assert.Contains("0 fails", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tight_is_done()
    {
        Ran ran = Ran.Of("mesh", "--module", "1", "--teeth", "8", "40", "--profile-shift", "0.4", "0", "--json");
        Assert.Equal((0, "tight"), (ran.Exit, ran.Json.GetProperty("verdict").GetString()));
    }

    [Fact]
    public void A_mesh_without_room_fails()
    {
        Ran ran = Ran.Of("mesh", "--module", "1", "--teeth", "20", "40", "--distance", "29.9", "--json");
        Assert.Equal((1, "fails"), (ran.Exit, ran.Json.GetProperty("verdict").GetString()));
        JsonElement worst = ran.Json.GetProperty("findings")[0];
        Assert.Equal(("backlash", "mesh", "fails"), (worst.GetProperty("name").GetString(), worst.GetProperty("place").GetString(), worst.GetProperty("level").GetString()));
        Assert.Contains("open the centre distance by", worst.GetProperty("advice").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pointed_gear_fails_and_is_written_and_its_file_says_so()
    {
        using var desk = new Desk();
        Ran ran = Ran.Of("gear", "--module", "1", "--teeth", "10", "--profile-shift", "0.9", "--out", desk["pointed.dxf"]);
        Assert.True(ran.Exit == 1, ran.Told);
        Assert.Contains("pointed-tip", ran.Output, StringComparison.Ordinal);
        string pointed = File.ReadAllText(desk["pointed.dxf"]);
        Assert.True(NoteReader.Says(pointed, "nominal, kerf not compensated"));
        Assert.True(NoteReader.Says(pointed, "CHECK FAILS: pointed-tip, gear"));
        Assert.False(NoteReader.Says(pointed, "check: nothing fails"));

        Assert.Equal(0, Ran.Of("gear", "--module", "1", "--teeth", "20", "--out", desk["sound.dxf"]).Exit);
        string sound = File.ReadAllText(desk["sound.dxf"]);
        Assert.True(NoteReader.Says(sound, "check: nothing fails"));
        Assert.False(NoteReader.Says(sound, "CHECK FAILS: pointed-tip, gear"));
    }

    [Fact]
    public void A_failing_job_fails_and_is_written_and_each_file_says_so()
    {
        using var desk = new Desk();
        File.WriteAllText(desk["close.toml"], TooClose);
        Ran check = Ran.Of("check", desk["close.toml"]);
        Assert.True(check.Exit == 1, check.Told);

        // The worst comes first.
        Assert.StartsWith("Bell pull: fails", check.Output, StringComparison.Ordinal);
        Assert.StartsWith("  fails", check.Output.Split('\n')[1], StringComparison.Ordinal);

        Ran cut = Ran.Of("cut", desk["close.toml"], "--out", desk["out"]);
        Assert.Equal(1, cut.Exit);
        Assert.Contains("A check fails: the files say so", cut.Errors, StringComparison.Ordinal);
        foreach (string name in (string[])["pinion.dxf", "wheel.dxf"])
        {
            string file = File.ReadAllText(desk["out/" + name]);
            Assert.True(NoteReader.Says(file, "CHECK FAILS: tip-clearance, mesh pinion - wheel"), name);
            Assert.False(NoteReader.Says(file, "check: nothing fails"), name);
        }

        using JsonDocument manifest = JsonDocument.Parse(File.ReadAllBytes(desk["out/manifest.json"]));
        Assert.Equal("fails", manifest.RootElement.GetProperty("verdict").GetString());
        Assert.Contains(manifest.RootElement.GetProperty("warnings").EnumerateArray(), warning => warning.GetString()!.StartsWith("fails: mesh", StringComparison.Ordinal));
    }

    [Fact]
    public void A_result_that_cannot_be_printed_is_the_programs_failure()
    {
        using var error = new StringWriter();
        using var gone = new BrokenWriter();
        Assert.Equal(3, GearBlanks.Cli.App.Run(["mesh", "--module", "1", "--teeth", "20", "40"], gone, error));
        Assert.Equal("gearblanks failed: its output could not be written: the pipe is gone\n", error.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_new_job_passes_and_is_never_written_over()
    {
        using var desk = new Desk();
        Assert.Equal(0, Ran.Of("new", desk["dial.toml"]).Exit);
        string written = File.ReadAllText(desk["dial.toml"]);
        Assert.Equal(written, File.ReadAllText(Path.Combine(Repository.Root, "profiles", "jobs", "first-pair.toml")));
        Assert.True(written.Split('\n').Count(line => line.Length > 0 && line[0] != '#') < 15);
        Ran check = Ran.Of("check", desk["dial.toml"], "--json");
        Assert.Equal((0, "ok"), (check.Exit, check.Json.GetProperty("verdict").GetString()));
        Assert.Equal(0, Ran.Of("cut", desk["dial.toml"], "--out", desk["dial"]).Exit);

        File.WriteAllText(desk["dial.toml"], "mine");
        Ran again = Ran.Of("new", desk["dial.toml"]);
        Assert.Equal((2, "mine"), (again.Exit, File.ReadAllText(desk["dial.toml"])));
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("new --help")]
    [InlineData("check -h")]
    [InlineData("cut --help")]
    [InlineData("gear --help")]
    [InlineData("mesh -?")]
    public void Help_has_examples(string words)
    {
        Ran ran = Ran.Of(words.Split(' '));
        Assert.Equal((0, ""), (ran.Exit, ran.Errors));
        Assert.Contains("Example", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_a_person_has_edited_is_overwritten_only_when_told_to()
    {
        using Desk desk = Desk.WithClutter();
        Assert.Equal(2, Ran.Of("cut", desk["pair.toml"], "--out", desk["edited"]).Exit);
        Assert.EndsWith("agreed -->", File.ReadAllText(desk["edited/wheel.svg"]), StringComparison.Ordinal);
        Assert.Equal(0, Ran.Of("cut", desk["pair.toml"], "--out", desk["edited"], "--overwrite-edited").Exit);
        Assert.EndsWith("</svg>\n", File.ReadAllText(desk["edited/wheel.svg"]), StringComparison.Ordinal);
    }

    private sealed class BrokenWriter : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("the pipe is gone");
    }
}
