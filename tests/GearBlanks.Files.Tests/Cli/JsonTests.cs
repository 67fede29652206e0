using System.Text.Json;
using GearBlanks.Files.Tests.Jobs;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>With --json every verb prints one object and nothing else: versioned, unrounded, mm and degrees.</summary>
public class JsonTests
{
    private static readonly string[] PairFields =
    [
        "workingPressureAngle", "centreDistance", "zeroBacklashCentreDistance", "backlash", "contactRatio", "tipClearance", "gears", "findings", "verdict",
    ];

    private static readonly string[] GearFields = ["teeth", "module", "pressureAngle", "profileShift", "diameters", "toothThickness", "tipThickness", "undercut"];

    private static readonly string[] Diameters = ["reference", "base", "tip", "root", "form", "working"];

    [Fact]
    public void Mesh_has_every_field()
    {
        Ran ran = Ran.Of("mesh", "--module", "0.8", "--teeth", "13", "87", "--profile-shift", "0.1", "-0.3", "--thinning", "0.016", "0.016", "--distance", "40", "--json");
        Assert.Equal("gearblanks.mesh/1", ran.Json.GetProperty("schema").GetString());
        AssertPair(ran.Json);
        Assert.Equal("", ran.Errors);
        JsonElement undercut = ran.Json.GetProperty("gears")[0].GetProperty("undercut");
        Assert.True(undercut.GetProperty("depth").GetDouble() > 0);
        Assert.True(undercut.GetProperty("formDiameter").GetDouble() > ran.Json.GetProperty("gears")[0].GetProperty("diameters").GetProperty("base").GetDouble());
        Assert.Equal(JsonValueKind.Null, ran.Json.GetProperty("gears")[1].GetProperty("undercut").ValueKind);
    }

    [Fact]
    public void Check_has_every_field_for_every_mesh()
    {
        Ran ran = Ran.Of("check", Path.Combine(Repository.Root, "profiles", "jobs", "tide-dial.toml"), "--json");
        Assert.Equal(("gearblanks.check/1", ""), (ran.Json.GetProperty("schema").GetString(), ran.Errors));
        JsonElement[] meshes = [.. ran.Json.GetProperty("meshes").EnumerateArray()];
        Assert.Equal(4, meshes.Length);
        Assert.All(meshes, AssertPair);
        Assert.NotEmpty(ran.Json.GetProperty("findings").EnumerateArray());
        Assert.Equal("ok", ran.Json.GetProperty("verdict").GetString());

        // Exact speeds, worked out by hand: 24/59 x 57/24 = 57/59; 57/59 x 13/87 x 19/81 = 4693/138591.
        Dictionary<string, string?> speeds = ran.Json.GetProperty("speeds").EnumerateArray()
            .ToDictionary(speed => speed.GetProperty("sandwich").GetString()!, speed => speed.GetProperty("speed").GetString());
        Assert.Equal(("1/1", "57/59", "4693/138591"), (speeds["day"], speeds["tide"], speeds["moon"]));

        // 24 h x 59/57 against 24.8412 h; 24 h x 138591/4693 against 29.530589 d.
        double[] errors = [.. ran.Json.GetProperty("hands").EnumerateArray().Select(hand => hand.GetProperty("errorPpm").GetDouble())];
        Assert.Equal(((24.0 * 59 / 57 / 24.8412) - 1) * 1e6, errors[0], 1e-6);
        Assert.Equal(((138591.0 / 4693 / 29.530589) - 1) * 1e6, errors[1], 1e-6);
    }

    [Fact]
    public void Writing_verbs_say_what_they_wrote()
    {
        using Desk desk = Desk.WithJob();
        Ran made = Ran.Of("new", desk["dial.toml"], "--json");
        Assert.Equal(("gearblanks.new/1", desk["dial.toml"], ""), (made.Json.GetProperty("schema").GetString(), made.Json.GetProperty("file").GetString(), made.Errors));

        Ran gear = Ran.Of("gear", "--module", "1", "--teeth", "20", "--out", desk["gear.svg"], "--json");
        Assert.Equal(("gearblanks.gear/1", desk["gear.svg"], ""), (gear.Json.GetProperty("schema").GetString(), gear.Json.GetProperty("file").GetString(), gear.Errors));
        Assert.All(GearFields, field => Assert.True(gear.Json.TryGetProperty(field, out _), field));
        Assert.NotEmpty(gear.Json.GetProperty("cautions").EnumerateArray());

        Ran cut = Ran.Of("cut", desk["pair.toml"], "--out", desk["out"], "--json");
        Assert.Equal(("gearblanks.cut/1", desk["out"], ""), (cut.Json.GetProperty("schema").GetString(), cut.Json.GetProperty("folder").GetString(), cut.Errors));
        Assert.Equal(
            Directory.EnumerateFiles(desk["out"]).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal),
            cut.Json.GetProperty("files").EnumerateArray().Select(file => file.GetString()!).Order(StringComparer.Ordinal));
        AssertPair(cut.Json.GetProperty("check").GetProperty("meshes")[0]);
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, Table 4.3 profile shifted spur gears; from memory.
    // The digits beyond those printed come from an independent calculation with 40 digits.
    [Fact]
    public void A_published_shifted_pair()
    {
        Ran ran = Ran.Of("mesh", "--module", "3", "--teeth", "12", "24", "--profile-shift", "0.6", "0.36", "--tip-rule", "clearance", "--json");
        JsonElement pair = ran.Json;
        AssertShows("26.0886", 26.08856344206988449398, pair.GetProperty("workingPressureAngle"));
        AssertShows("56.4999", 56.49986972030518222259, pair.GetProperty("centreDistance"));
        AssertShows("56.4999", 56.49986972030518222259, pair.GetProperty("zeroBacklashCentreDistance"));
        JsonElement first = pair.GetProperty("gears")[0].GetProperty("diameters");
        JsonElement second = pair.GetProperty("gears")[1].GetProperty("diameters");
        AssertShows("33.8289", 33.82893434829270182595, first.GetProperty("base"));
        AssertShows("67.6579", 67.65786869658540365190, second.GetProperty("base"));
        AssertShows("37.667", 37.66657981353678814840, first.GetProperty("working"));
        AssertShows("75.333", 75.33315962707357629679, second.GetProperty("working"));
        Assert.Equal(0, pair.GetProperty("backlash").GetProperty("circumferential").GetDouble(), 1e-12);
    }

    // The same, Table 4.1 standard spur gears; from memory.
    [Fact]
    public void A_published_standard_pair()
    {
        JsonElement pair = Ran.Of("mesh", "--module", "3", "--teeth", "12", "24", "--json").Json;
        AssertShows("54.000", 54, pair.GetProperty("centreDistance"));
        AssertShows("20.000", 20, pair.GetProperty("workingPressureAngle"));
        AssertShows("42.000", 42, pair.GetProperty("gears")[0].GetProperty("diameters").GetProperty("tip"));
        AssertShows("64.500", 64.5, pair.GetProperty("gears")[1].GetProperty("diameters").GetProperty("root"));
    }

    [Fact]
    public void Distance_to_backlash_and_back()
    {
        const string wanted = "0.0437";
        JsonElement there = Ran.Of("mesh", "--module", "0.8", "--teeth", "13", "87", "--profile-shift", "0.3", "-0.3", "--backlash", wanted, "--json").Json;
        string distance = there.GetProperty("centreDistance").GetRawText();
        JsonElement back = Ran.Of("mesh", "--module", "0.8", "--teeth", "13", "87", "--profile-shift", "0.3", "-0.3", "--distance", distance, "--json").Json;
        Assert.Equal(0.0437, back.GetProperty("backlash").GetProperty("circumferential").GetDouble(), 1e-9);

        // Radial backlash is the distance beyond the one without backlash, exactly.
        Assert.Equal(
            back.GetProperty("centreDistance").GetDouble() - back.GetProperty("zeroBacklashCentreDistance").GetDouble(),
            back.GetProperty("backlash").GetProperty("radial").GetDouble());
    }

    private static void AssertPair(JsonElement pair)
    {
        Assert.All(PairFields, field => Assert.True(pair.TryGetProperty(field, out _), field));
        JsonElement backlash = pair.GetProperty("backlash");
        Assert.All((string[])["circumferential", "normal", "radial"], field => Assert.Equal(JsonValueKind.Number, backlash.GetProperty(field).ValueKind));
        Assert.Equal(2, backlash.GetProperty("angular").GetArrayLength());
        Assert.Equal(2, pair.GetProperty("tipClearance").GetArrayLength());
        Assert.Equal(2, pair.GetProperty("gears").GetArrayLength());
        foreach (JsonElement gear in pair.GetProperty("gears").EnumerateArray())
        {
            Assert.All(GearFields, field => Assert.True(gear.TryGetProperty(field, out _), field));
            Assert.All(Diameters, diameter => Assert.True(gear.GetProperty("diameters").GetProperty(diameter).GetDouble() > 0));
        }
    }

    // Unrounded: the number agrees far beyond the digits that are printed.
    private static void AssertShows(string printed, double exact, JsonElement value)
    {
        int decimals = printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1;
        Assert.Equal(printed, value.GetDouble().ToString("F" + decimals, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(exact, value.GetDouble(), 1e-12 * exact);
    }

    [Theory]
    [InlineData("--tip-round", 0.2, 0)]
    [InlineData("--tip-chamfer", 0, 0.15)]
    public void A_gear_has_the_tips_asked_for(string option, double round, double chamfer)
    {
        using Desk desk = Desk.WithJob();
        JsonElement gear = Ran.Of("gear", "--module", "1", "--teeth", "20", option, $"{round + chamfer}", "--out", desk["gear.dxf"], "--json").Json;
        Toothing expected = Toothing.Of(new GearData(20, 1, new BasicRack("type A", 20 * Math.PI / 180, 1, 1.25, 0.38)) { Tip = new TipForm(round, chamfer) });
        Assert.Equal(expected.TipThickness, gear.GetProperty("tipThickness").GetDouble(), 1e-12);
    }
}
