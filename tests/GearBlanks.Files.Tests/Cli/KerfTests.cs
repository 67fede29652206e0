using System.Text.Json;
using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Tests.Cli;

/// <summary>Compensation on the command line: what files, manifest and JSON say of the kerf, and what is refused.</summary>
public sealed class KerfTests
{
    private const string Nominal = "nominal, kerf not compensated";

    [Theory]
    [InlineData("0.18", "compensated, kerf 0.18 mm", 0.18, 0.18)]
    [InlineData("7 thou", "compensated, kerf 0.1778 mm", 0.1778, 0.1778)]
    [InlineData("0", Nominal, 0, 0)]
    [InlineData("0.18,0.2", "compensated, kerf 0.18 x 0.20 mm", 0.18, 0.2)]
    public void A_gear_s_file_says_what_it_carries_and_is_as_wide(string kerf, string words, double x, double y)
    {
        using Desk desk = Desk.WithJob();
        Ran ran = Ran.Of("gear", "--module", "1", "--teeth", "20", "--bore", "4", "--kerf", kerf, "--out", desk["gear.dxf"], "--json");
        Assert.Equal(words, ran.Json.GetProperty("kerf").GetProperty("words").GetString());
        Assert.True(NoteReader.Says(File.ReadAllText(desk["gear.dxf"]), words));
        Assert.Equal(words == Nominal, !ran.Json.GetProperty("kerf").GetProperty("compensated").GetBoolean());

        // The outside grows by the kerf: tips stand on both axes.
        Extent outside = Outside(Draw(desk, kerf));
        Assert.Equal(11 + (x / 2), outside.Right, 0.002);
        Assert.Equal(11 + (y / 2), outside.Top, 0.002);

        // A round hole stays one where the beam is round.
        Assert.Equal(x == y, Draw(desk, kerf).Contains("CIRCLE", StringComparison.Ordinal));
    }

    [Fact]
    public void A_cut_job_says_it_in_every_file_and_the_manifest_predicts_the_sizes()
    {
        using Desk desk = Desk.WithJob();
        Ran ran = Ran.Of("cut", desk["pair.toml"], "--out", desk["out"], "--kerf", "0.2", "--json");
        Assert.Equal(0, ran.Exit);
        Assert.All(ran.Json.GetProperty("kerf").EnumerateArray(), gear => Assert.Equal([0.2, 0.2], gear.GetProperty("width").EnumerateArray().Select(width => width.GetDouble())));
        Assert.All(Directory.EnumerateFiles(desk["out"], "*.dxf"), file => Assert.True(NoteReader.Says(File.ReadAllText(file), "compensated, kerf 0.20 mm")));
        Dictionary<string, string?> inputs = Inputs(desk);
        Assert.Equal("compensated, kerf 0.20 mm", inputs["kerf"]);
        Assert.Contains(inputs, input => input.Key.EndsWith("as cut", StringComparison.Ordinal) && input.Value!.StartsWith("tip diameter ", StringComparison.Ordinal));
        Assert.Contains(ran.Json.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.Contains("compensates again", StringComparison.Ordinal));
    }

    [Fact]
    public void A_kerf_that_the_machine_does_not_know_leaves_nominal_files_and_says_so()
    {
        using Desk desk = Desk.WithJob();
        Ran ran = Ran.Of("cut", desk["pair.toml"], "--out", desk["out"], "--machine", "co2-laser", "--json");
        Assert.Equal(Nominal, Inputs(desk)["kerf"]);
        Assert.Contains(ran.Json.GetProperty("remarks").EnumerateArray(), remark => remark.GetString()!.Contains("is not known", StringComparison.Ordinal));
    }

    [Fact]
    public void A_shop_that_compensates_gets_nominal_files_and_never_a_second_compensation()
    {
        using Desk desk = Desk.WithJob();
        Ran nominal = Ran.Of("cut", desk["pair.toml"], "--out", desk["out"], "--machine", "compensating-shop", "--json");
        Assert.Equal((Nominal, "compensating-shop"), (Inputs(desk)["kerf"], Inputs(desk)["machine"]));
        Assert.All(nominal.Json.GetProperty("kerf").EnumerateArray(), gear => Assert.True(gear.GetProperty("shopCompensates").GetBoolean()));
        Ran twice = Ran.Of("cut", desk["pair.toml"], "--out", desk["twice"], "--machine", "compensating-shop", "--kerf", "0.2", "--json");
        Assert.Equal(2, twice.Exit);
        Assert.Contains("kerf-twice", twice.Json.GetProperty("problems")[0].GetProperty("message").GetString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(desk["twice"]));
    }

    [Theory]
    [InlineData("--kerf", "-0.1")]
    [InlineData("--kerf", "5.5")]
    [InlineData("--kerf", "0.1,0.2,0.3")]
    [InlineData("--kerf", "0.1,0.9")]
    [InlineData("--kerf", "0,0.2")]
    [InlineData("--kerf", "wide")]
    [InlineData("--kerf", ",")]
    [InlineData("--kerf", "4")]
    [InlineData("--machine", "co2-lase")]
    [InlineData("--machine", "../drawing")]
    public void What_cannot_be_is_refused_by_the_option_s_name(string option, string word)
    {
        using Desk desk = Desk.WithJob();
        Ran ran = Ran.Of("cut", desk["pair.toml"], "--out", desk["out"], option, word, "--json");
        Assert.Equal(2, ran.Exit);
        Assert.Equal(option, ran.Json.GetProperty("problems")[0].GetProperty("key").GetString());
        Assert.False(Directory.Exists(desk["out"]));
    }

    private static Dictionary<string, string?> Inputs(Desk desk) =>
        JsonDocument.Parse(File.ReadAllText(desk["out/manifest.json"])).RootElement.GetProperty("inputs").EnumerateArray()
            .ToDictionary(input => input.GetProperty("name").GetString()!, input => input.GetProperty("value").GetString());

    private static string Draw(Desk desk, string kerf)
    {
        Assert.True(Ran.Of("gear", "--module", "1", "--teeth", "20", "--bore", "4", "--kerf", kerf, "--out", desk["gear.dxf"]).Exit < 2);
        return File.ReadAllText(desk["gear.dxf"]);
    }

    // The outline is the last path. Its arcs reach beyond its vertices.
    private static Extent Outside(string dxf)
    {
        string[] lines = dxf.Split("\r\n");
        (string Code, string Value)[] tags = [.. lines.Chunk(2).Where(pair => pair.Length == 2).Select(pair => (pair[0].Trim(), pair[1]))];
        int start = Array.FindLastIndex(tags, tag => tag == ("0", "LWPOLYLINE"));
        List<PathVertex> vertices = [];
        foreach ((string code, string value) in tags.Skip(start + 1).TakeWhile(tag => tag.Code != "0"))
        {
            double Number() => double.Parse(value, System.Globalization.CultureInfo.InvariantCulture);
            switch (code)
            {
                case "10":
                    vertices.Add(new PathVertex(new Point(Number(), 0), 0));
                    break;
                case "20":
                    vertices[^1] = vertices[^1] with { Point = vertices[^1].Point with { Y = Number() } };
                    break;
                case "42":
                    vertices[^1] = vertices[^1] with { Bulge = Number() };
                    break;
            }
        }

        return Extent.Of(new ArcPath([.. vertices], true));
    }
}
