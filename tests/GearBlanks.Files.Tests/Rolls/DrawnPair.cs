using System.Text.Json;
using GearBlanks.Files.Tests.Cli;

namespace GearBlanks.Files.Tests.Rolls;

/// <summary>Two gears of 20 and 40 teeth, module 1, written by the program itself, to be rolled 30 mm apart with 0.04 mm of backlash.</summary>
internal sealed class DrawnPair : IDisposable
{
    public const double Backlash = 0.04;

    private static readonly double Cosine = Math.Cos(20 * Math.PI / 180);

    private readonly Desk _desk = Desk.WithJob();

    public DrawnPair(string ending = "dxf", string version = "r2000", string tolerance = "0.001")
    {
        (First, Second) = (_desk["first." + ending], _desk["second." + ending]);
        Draw("20", First, version, tolerance);
        Draw("40", Second, version, tolerance);
    }

    public string First { get; }

    public string Second { get; }

    public string this[string name] => _desk[name];

    /// <summary>How far from peak to peak drawings within these tolerances may move the driven gear, mm at the reference circle.</summary>
    public static double Bound(double first, double second) => 2 * (first + second) / Cosine;

    public static JsonElement Roll(string first, string second, params string[] more)
    {
        Ran ran = Ran.Of(["roll", first, second, "--distance", "30", "--json", .. more]);
        Assert.True(ran.Exit == 0, ran.Told);
        return ran.Json;
    }

    /// <summary>The roll is as even, and has as much backlash, as the tolerances let it be.</summary>
    public static void Holds(JsonElement roll, double bound)
    {
        foreach (string side in (string[])["left", "right"])
        {
            JsonElement flank = roll.GetProperty("singleFlank").GetProperty(side);
            Assert.InRange(flank.GetProperty("totalMicrometres").GetDouble(), 0, 1000 * bound);
            Assert.InRange(flank.GetProperty("toothToToothMicrometres").GetDouble(), 0, flank.GetProperty("totalMicrometres").GetDouble());
        }

        Assert.Equal(Backlash, roll.GetProperty("backlash").GetProperty("least").GetDouble(), bound);
        Assert.Equal(Backlash, roll.GetProperty("backlash").GetProperty("greatest").GetDouble(), bound);
        Assert.Equal(JsonValueKind.Null, roll.GetProperty("interference").ValueKind);
        Assert.Equal([20, 40], roll.GetProperty("gears").EnumerateArray().Select(gear => gear.GetProperty("teeth").GetInt32()));
    }

    public void Dispose() => _desk.Dispose();

    private static void Draw(string teeth, string file, string version, string tolerance)
    {
        Ran ran = Ran.Of("gear", "--module", "1", "--teeth", teeth, "--thinning", "0.02", "--bore", "5", "--tolerance", tolerance, "--dxf-version", version, "--out", file);
        Assert.True(ran.Exit < 2, ran.Told);
    }
}
