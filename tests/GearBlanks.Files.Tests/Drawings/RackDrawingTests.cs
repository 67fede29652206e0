using System.Globalization;
using System.Text.Json;
using GearBlanks.Files.Tests.Cli;
using GearBlanks.Files.Tests.Jobs;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>Racks from drawings, wherever they lie: against the job that they were cut from, and against a rack drawn by hand.</summary>
public sealed class RackDrawingTests : IDisposable
{
    // mm: the greatest that two files within 0.001 mm may move the rack, and the rounding of what is written.
    private const double Bound = (2 * 0.002 / 0.93969) + 2e-5;

    private const int Teeth = 12;
    private const double Pitch = Math.PI;

    private static readonly double Tangent = Math.Tan(20 * Math.PI / 180);
    private static readonly string Job = Path.Combine(Repository.Root, "profiles", "jobs", "chart-sled.toml");

    private readonly Desk _desk = Desk.WithJob();

    public RackDrawingTests()
    {
        Ran ran = Ran.Of("cut", Job, "--out", _desk["out"], "--kerf", "0");
        Assert.True(ran.Exit < 2, ran.Told);
    }

    [Theory]
    [InlineData("dxf")]
    [InlineData("svg")]
    public void Rolls_as_the_job_s_own_does(string ending)
    {
        JsonElement drawn = Roll(_desk["out/sled-wheel." + ending], _desk["out/sled-rack." + ending], "18", "--centre-b", "0", "0", "--double");
        JsonElement own = Ran.Of("roll", "--job", Job, "--mesh", "sled", "--double", "--json").Json;
        AssertSame(own, drawn);
        Assert.Equal(
            own.GetProperty("doubleFlank").GetProperty("leastDistance").GetDouble(), drawn.GetProperty("doubleFlank").GetProperty("leastDistance").GetDouble(), Bound / Tangent);
    }

    [Theory]
    [InlineData("rotate(37)")]
    [InlineData("translate(300 -120) rotate(-143.7)")]
    [InlineData("scale(1 -1) rotate(90)")]
    [InlineData("matrix(-1 0 0 1 0 0)")]
    public void Wherever_it_lies(string transform)
    {
        string svg = File.ReadAllText(_desk["out/sled-rack.svg"]);
        int from = svg.IndexOf("<g", StringComparison.Ordinal);
        int to = svg.LastIndexOf("</g>", StringComparison.Ordinal) + 4;
        File.WriteAllText(_desk["turned.svg"], svg[..from] + $"<g transform=\"{transform}\">" + svg[from..to] + "</g>" + svg[to..]);
        JsonElement before = Roll(_desk["out/sled-wheel.svg"], _desk["out/sled-rack.svg"], "18.03");
        JsonElement turned = Roll(_desk["out/sled-wheel.svg"], _desk["turned.svg"], "18.03");
        Assert.Equal(0.04 + (2 * 0.03 * Tangent) - (0.02), before.GetProperty("backlash").GetProperty("mean").GetDouble(), Bound);
        AssertSame(before, turned);
    }

    [Fact]
    public void A_rack_that_is_named_first_is_driven_all_the_same()
    {
        JsonElement turned = Roll(_desk["out/sled-rack.dxf"], _desk["out/sled-wheel.dxf"], "18", "--centre-a", "0", "0");
        AssertSame(Roll(_desk["out/sled-wheel.dxf"], _desk["out/sled-rack.dxf"], "18", "--centre-b", "0", "0"), turned);
        Assert.Contains(turned.GetProperty("remarks").EnumerateArray(), remark => remark.GetString() == "sled-wheel.dxf drives: a rack is rolled as the driven one.");
    }

    // Teeth and gaps equally wide on the line y = 0: the wheel's own thinning is all the backlash there is.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 0.3)]
    [InlineData(1.25, 0)]
    public void A_rack_drawn_by_hand(double land, double cutOff)
    {
        File.WriteAllText(_desk["rack.dxf"], Drawn.Dxf(Drawn.Polygon(Rack(land, cutOff)) + Drawn.Circle(0, -6, 1)));
        Assert.True(Ran.Of("gear", "--module", "1", "--teeth", "30", "--thinning", "0.02", "--bore", "5", "--out", _desk["wheel.dxf"]).Exit < 2);
        JsonElement roll = Roll(_desk["wheel.dxf"], _desk["rack.dxf"], "15");
        Assert.Equal(("rack", Teeth), (roll.GetProperty("gears")[1].GetProperty("kind").GetString(), roll.GetProperty("gears")[1].GetProperty("teeth").GetInt32()));
        Assert.Equal(0.02, roll.GetProperty("backlash").GetProperty("least").GetDouble(), 0.002);
        Assert.Equal(0.02, roll.GetProperty("backlash").GetProperty("greatest").GetDouble(), 0.002);
        string remark = Assert.Single(roll.GetProperty("remarks").EnumerateArray().Select(one => one.GetString()!), one => one.StartsWith("rack.dxf", StringComparison.Ordinal));
        Assert.Contains("Taken for a rack: 12 teeth, pitch 3.1416 mm, module 1 mm. The distance counts from the line on which teeth and gaps are equally wide, through (0, 0)", remark, StringComparison.Ordinal);
        Assert.Contains("It lies 1 mm below the tips.", remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_pitch_and_flanks_must_be_the_gear_s()
    {
        File.WriteAllText(_desk["rack.dxf"], Drawn.Dxf(Drawn.Polygon(Rack(0, 0))));
        Assert.True(Ran.Of("gear", "--module", "1.1", "--teeth", "30", "--bore", "5", "--out", _desk["wheel.dxf"]).Exit < 2);
        Ran ran = Ran.Of("roll", _desk["wheel.dxf"], _desk["rack.dxf"], "--distance", "16");
        Assert.Equal(2, ran.Exit);
        Assert.Contains("2.952 mm of rack.dxf (12 teeth)", ran.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_one_and_two_of_them_are_refused()
    {
        (double X, double Y)[] rack = Rack(0, 0);
        File.WriteAllText(_desk["rack.dxf"], Drawn.Dxf(Drawn.Polygon(rack)));
        File.WriteAllText(_desk["short.dxf"], Drawn.Dxf(Drawn.Polygon(Rack(0, 0, 6))));
        Assert.Contains("rack-drives", Ran.Of("roll", _desk["rack.dxf"], _desk["rack.dxf"], "--distance", "3").Errors, StringComparison.Ordinal);
        Assert.Contains("rack-too-short", Ran.Of("roll", _desk["out/sled-wheel.dxf"], _desk["short.dxf"], "--distance", "18").Errors, StringComparison.Ordinal);
    }

    // A large gear's teeth stand nearly along a line at every place; it is none the less no rack.
    [Theory]
    [InlineData("12")]
    [InlineData("200")]
    [InlineData("600")]
    public void A_gear_is_no_rack(string teeth)
    {
        Assert.True(Ran.Of("gear", "--module", "1", "--teeth", teeth, "--bore", "5", "--out", _desk["gear.dxf"]).Exit < 2);
        Assert.Null(Drawn.Read(File.ReadAllText(_desk["gear.dxf"])).Rack);
    }

    public void Dispose() => _desk.Dispose();

    // Straight flanks of 20 degrees, module 1; beyond the outer flanks a land at root level, or an end that cuts them off above it.
    private static (double X, double Y)[] Rack(double land, double cutOff, int teeth = Teeth)
    {
        const double Tip = 1;
        const double Root = -1.25;
        const double Back = -9;
        List<(double X, double Y)> points = [];
        for (int i = teeth - 1; i >= 0; i--)
        {
            double middle = (i - ((teeth - 1) / 2.0)) * Pitch;
            (double low, double high) = ((Pitch / 4) - (Root * Tangent), (Pitch / 4) - (Tip * Tangent));
            points.AddRange([(middle + low, Root), (middle + high, Tip), (middle - high, Tip), (middle - low, Root)]);
        }

        double end = points[0].X + land - cutOff;
        double height = cutOff > 0 ? Root + (cutOff / Tangent) : Root;
        (points[0], points[^1]) = ((end, height), (-end, height));
        if (land > 0)
        {
            points.Insert(1, (end - land, Root));
            points.Insert(points.Count - 1, (land - end, Root));
        }

        return [(-end, Back), (end, Back), .. points];
    }

    private static JsonElement Roll(string first, string second, string distance, params string[] more)
    {
        Ran ran = Ran.Of(["roll", first, second, "--distance", distance, "--json", .. more]);
        Assert.True(ran.Exit < 2, ran.Told);
        return ran.Json;
    }

    private static void AssertSame(JsonElement one, JsonElement other)
    {
        Assert.Equal(one.GetProperty("gears")[1].GetProperty("teeth").GetInt32(), other.GetProperty("gears")[1].GetProperty("teeth").GetInt32());
        Assert.All((string[])["least", "mean", "greatest"], field => Assert.Equal(
            one.GetProperty("backlash").GetProperty(field).GetDouble(), other.GetProperty("backlash").GetProperty(field).GetDouble(), Bound));
        Assert.All((string[])["left", "right"], side =>
        {
            double total = other.GetProperty("singleFlank").GetProperty(side).GetProperty("totalMicrometres").GetDouble();
            Assert.True(total < 1000 * Bound, total.ToString(CultureInfo.InvariantCulture));
        });
    }
}
