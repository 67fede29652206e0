using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Rolls;

/// <summary>The verb: what it prints, writes and refuses.</summary>
public sealed class RollCommandTests
{
    private static string Job(string name) => Path.Combine(Repository.Root, "profiles", "jobs", name);

    [Fact]
    public void A_job_s_mesh_has_every_field()
    {
        JsonElement roll = Ran.Of("roll", "--job", Job("first-pair.toml"), "--double", "--json").Json;
        Assert.Equal("gearblanks.roll/1", roll.GetProperty("schema").GetString());
        Assert.Equal("ok", roll.GetProperty("verdict").GetString());
        Assert.All((string[])["left", "right"], side =>
            Assert.All((string[])["total", "toothToTooth", "totalMicrometres"], field => Assert.InRange(roll.GetProperty("singleFlank").GetProperty(side).GetProperty(field).GetDouble(), 0, 0.5)));
        JsonElement mesh = Ran.Of("check", Job("first-pair.toml"), "--json").Json.GetProperty("meshes")[0];
        double expected = mesh.GetProperty("backlash").GetProperty("circumferential").GetDouble();
        Assert.All((string[])["least", "mean", "greatest"], field => Assert.Equal(expected, roll.GetProperty("backlash").GetProperty(field).GetDouble(), 0.001));
        Assert.Equal(mesh.GetProperty("backlash").GetProperty("angular")[1].GetDouble(), roll.GetProperty("backlash").GetProperty("angular")[0].GetDouble(), 1e-6);
        Assert.Equal(mesh.GetProperty("zeroBacklashCentreDistance").GetDouble(), roll.GetProperty("doubleFlank").GetProperty("leastDistance").GetDouble(), 1e-4);
        Assert.Equal("reference circle", roll.GetProperty("singleFlank").GetProperty("micrometresAt").GetString());
    }

    [Theory]
    [InlineData("dial", "ring")]
    [InlineData("sled", "rack")]
    public void Rings_and_racks_of_a_job_roll(string mesh, string kind)
    {
        JsonElement roll = Ran.Of("roll", "--job", Job("chart-sled.toml"), "--mesh", mesh, "--json").Json;
        Assert.Equal(kind, roll.GetProperty("gears")[1].GetProperty("kind").GetString());
        Assert.InRange(roll.GetProperty("singleFlank").GetProperty("left").GetProperty("totalMicrometres").GetDouble(), 0, 0.05);
        Assert.Equal(0.04, roll.GetProperty("backlash").GetProperty("least").GetDouble(), 0.001);
        Assert.Equal(kind == "rack" ? JsonValueKind.Null : JsonValueKind.Number, roll.GetProperty("singleFlank").GetProperty("left").GetProperty("total").ValueKind);
    }

    [Fact]
    public void A_mill_too_large_is_in_the_way_and_a_small_one_is_not()
    {
        Ran fine = Ran.Of("roll", "--job", Job("first-pair.toml"), "--as-cut", "--tool", "0.5", "--json");
        Assert.Equal(0, fine.Exit);
        Ran bad = Ran.Of("roll", "--job", Job("first-pair.toml"), "--as-cut", "--tool", "1.5", "--json");
        Assert.Equal(1, bad.Exit);
        JsonElement found = bad.Json.GetProperty("interference");
        Assert.True(found.GetProperty("depth").GetDouble() > 0.01);
        Assert.Contains(found.GetProperty("place").GetString(), (string[])["fillet", "root"]);
        Assert.Contains(bad.Json.GetProperty("remarks").EnumerateArray(), remark => remark.GetString()!.Contains("1.5 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Table_and_picture_are_written_the_same_in_every_culture()
    {
        using var pair = new DrawnPair();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(0, Ran.Of("roll", pair.First, pair.Second, "--distance", "30", "--double", "--csv", pair["a.csv"], "--plot", pair["a.svg"]).Exit);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Equal(0, Ran.Of("roll", pair.First, pair.Second, "--distance", "30", "--double", "--csv", pair["b.csv"], "--plot", pair["b.svg"]).Exit);
        Assert.Equal(File.ReadAllBytes(pair["a.csv"]), File.ReadAllBytes(pair["b.csv"]));
        Assert.Equal(File.ReadAllBytes(pair["a.svg"]), File.ReadAllBytes(pair["b.svg"]));
        string[] lines = File.ReadAllLines(pair["a.csv"]);
        Assert.Equal("turn_degrees,left_arcseconds,right_arcseconds,left_micrometres,right_micrometres,backlash_mm,distance_mm", lines[0]);

        // Two turns of the smaller gear in steps of 0.1 degree, both ends counted.
        Assert.Equal(7202, lines.Length);
        Assert.All(lines.Skip(1), line => Assert.Equal(7, line.Split(',').Length));
        Assert.Equal("720", lines[^1].Split(',')[0]);
        var plot = XDocument.Parse(File.ReadAllText(pair["a.svg"]));
        Assert.EndsWith("mm", plot.Root!.Attribute("width")!.Value, StringComparison.Ordinal);
        Assert.InRange(new FileInfo(pair["a.svg"]).Length, 10_000, 2_000_000);
        Assert.Contains("roll: first.dxf and second.dxf, distance 30 mm", File.ReadAllText(pair["a.svg"]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_hunting_period_is_longer_than_a_turn()
    {
        JsonElement turn = Ran.Of("roll", "--job", Job("tide-dial.toml"), "--mesh", "day to first lay", "--json").Json;
        JsonElement period = Ran.Of("roll", "--job", Job("tide-dial.toml"), "--mesh", "day to first lay", "--hunting", "--json").Json;
        Assert.Equal(1 + (24 * (turn.GetProperty("positions").GetInt32() - 1)), period.GetProperty("positions").GetInt32());
    }

    [Fact]
    public void Text_tells_the_figures_and_what_to_do()
    {
        using var pair = new DrawnPair();
        Ran close = Ran.Of("roll", pair.First, pair.Second, "--distance", "29.9");
        Assert.Equal(1, close.Exit);
        Assert.Contains("roll-backlash", close.Output, StringComparison.Ordinal);
        Assert.Contains("Open the distance by about 0.05 mm", close.Output, StringComparison.Ordinal);
        Assert.Contains("transmission error, one flank", close.Output, StringComparison.Ordinal);
        Assert.Contains("Not in the roll", close.Output, StringComparison.Ordinal);
        Assert.Equal(0, Ran.Of("roll", pair.First, pair.Second, "--distance", "29.96").Exit);
    }

    [Fact]
    public void Other_pitches_roll_only_when_told_to()
    {
        using var pair = new DrawnPair();
        string other = pair["other.dxf"];
        Assert.True(Ran.Of("gear", "--module", "1.05", "--teeth", "38", "--bore", "5", "--out", other).Exit < 2);
        Ran refused = Ran.Of("roll", pair.First, other, "--distance", "30.2");
        Assert.Equal(2, refused.Exit);
        Assert.Contains("The pitches do not match: base pitch 2.95", refused.Errors, StringComparison.Ordinal);
        Assert.Contains("mm of other.dxf (38 teeth)", refused.Errors, StringComparison.Ordinal);
        Ran told = Ran.Of("roll", pair.First, other, "--distance", "30.2", "--any-pitch", "--json");
        Assert.InRange(told.Exit, 0, 1);
        Assert.True(told.Json.GetProperty("singleFlank").GetProperty("left").GetProperty("total").GetDouble() > 100);
    }

    [Theory]
    [InlineData("", "Nothing to roll is given")]
    [InlineData("{a}", "The second drawing is missing")]
    [InlineData("{a} {b}", "--distance: It is missing")]
    [InlineData("{a} {b} {a} --distance 30", "This is one word too many")]
    [InlineData("{a} {b} --distance 0", "--distance = 0: This is too small")]
    [InlineData("{a} {b} --distance 33", "out-of-reach")]
    [InlineData("{a} {b} --distance 30 --mesh x", "Only a job has meshes")]
    [InlineData("{a} {b} --distance 30 --as-cut", "Drawings are rolled as they are")]
    [InlineData("{a} {b} --distance 30 --tool 1", "Drawings are rolled as they are")]
    [InlineData("{a} {b} --distance 30 --csv {a}", "It would be written over")]
    [InlineData("{a} {b} --distance 30 --plot {folder}/../second.dxf", "It would be written over")]
    [InlineData("{a} {b} --distance 30 --plot {link}", "It would be written over")]
    [InlineData("--job {job} --csv {job}", "It would be written over")]
    [InlineData("{a} {b} --distance 30 --csv x.txt", "a name that ends in .csv")]
    [InlineData("{a} {b} --distance 30 --plot x.png", "The picture is an SVG file")]
    [InlineData("{a} {b} --distance 30 --plot x.svg --csv x.svg", "Table and picture have one name")]
    [InlineData("{a} {b} --distance 30 --csv /nowhere/x.csv", "There is no folder to write this file into")]
    [InlineData("{a} {b} --distance 30 --eccentricity 0.1", "A value is missing")]
    [InlineData("{a} {b} --distance 30 --eccentricity 0.1 x", "--eccentricity = x")]
    [InlineData("{a} {b} --distance 30 --eccentricity -0.1 0", "This is too small")]
    [InlineData("{a} {b} --distance 30 --centre-a 0 far", "--centre-a = far")]
    [InlineData("{a} {b} --distance 30 --centre-a 30 0", "lies outside the contour")]
    [InlineData("{a} {b} --distance 30 --centre-a 4 0", "no-teeth")]
    [InlineData("{a} {missing} --distance 30", "There is no such file")]
    [InlineData("{a} {folder} --distance 30", "This is a folder")]
    [InlineData("{a} --job {job}", "Drawings and a job are given")]
    [InlineData("--job {job} --mesh nowhere", "This job has no mesh of that name")]
    [InlineData("--job {job} --tool 1", "The tool matters only to gears as it leaves them")]
    [InlineData("--job {job} --centre-a 0 0", "A job knows its axes")]
    [InlineData("--job {missing}", "There is no such file")]
    [InlineData("--job {job} --distance 20", "roll")]
    [InlineData("--job {job} --hunted", "There is no such option")]
    public void What_cannot_be_is_refused(string words, string told)
    {
        using var pair = new DrawnPair();
        Directory.CreateDirectory(pair["folder"]);
        File.CreateSymbolicLink(pair["link.svg"], pair.First);
        string[] line = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Ran ran = Ran.Of(["roll", .. line.Select(word => word.Replace("{a}", pair.First, StringComparison.Ordinal).Replace("{b}", pair.Second, StringComparison.Ordinal)
            .Replace("{missing}", pair["missing"], StringComparison.Ordinal).Replace("{folder}", pair["folder"], StringComparison.Ordinal)
            .Replace("{link}", pair["link.svg"], StringComparison.Ordinal)
            .Replace("{job}", pair["pair.toml"], StringComparison.Ordinal))]);
        Assert.True(words.EndsWith("20", StringComparison.Ordinal) ? ran.Exit is 1 or 2 : ran.Exit == 2, ran.Told);
        Assert.Contains(told, ran.Errors + ran.Output, StringComparison.Ordinal);
        Assert.Contains("SECTION", File.ReadAllText(pair.First), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.016", "20", 39, 30.0)]
    [InlineData("1", "20.5", 40, 30.05)]
    public void Pitches_that_nearly_match_are_told(string module, string angle, int teeth, double distance)
    {
        using var pair = new DrawnPair();
        string other = pair["other.dxf"];
        Assert.True(Ran.Of("gear", "--module", module, "--pressure-angle", angle, "--teeth", $"{teeth}", "--thinning", "0.05", "--bore", "5", "--out", other).Exit < 2);
        Ran told = Ran.Of("roll", pair.First, other, "--distance", $"{distance}");
        Assert.Contains("roll-pitch", told.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("roll-pitch", Ran.Of("roll", pair.First, pair.Second, "--distance", "30").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Nanometres_do_not_fail()
    {
        Assert.Equal(0, Ran.Of("roll", "--job", Job("chart-sled.toml"), "--mesh", "dial", "--eccentricity", "0.01", "0").Exit);
    }
}
