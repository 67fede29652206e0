using System.Text.Json;
using GearBlanks.Files.Drawings;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests.Rolls;

/// <summary>A perfect pair, written and read again: by this program, and by others that draw the same another way.</summary>
public sealed class DrawnPairTests
{
    // mm: what is written is rounded to at least six decimals, and ends are joined.
    private const double Rounding = 2e-5;

    [Theory]
    [InlineData("dxf", "r2000", "0.001")]
    [InlineData("dxf", "r12", "0.001")]
    [InlineData("svg", "r2000", "0.001")]
    [InlineData("dxf", "r2000", "0.0002")]
    [InlineData("svg", "r2000", "0.0002")]
    public void Written_by_this_program(string ending, string version, string tolerance)
    {
        using var pair = new DrawnPair(ending, version, tolerance);
        double t = double.Parse(tolerance, System.Globalization.CultureInfo.InvariantCulture);
        double bound = DrawnPair.Bound(t, t) + Rounding;
        Assert.True(t > 0.0005 || bound < 0.001);
        DrawnPair.Holds(DrawnPair.Roll(pair.First, pair.Second), bound);
    }

    // Cubics that stand for short arcs stray from them by far less than the arcs that stand for cubics here.
    [Theory]
    [InlineData("splines", StrokeBuilder.Tolerance)]
    [InlineData("ellipses", StrokeBuilder.Tolerance)]
    [InlineData("pieces", 0)]
    [InlineData("inch-block", 0)]
    [InlineData("r12", 0)]
    public void Drawn_another_way_by_ezdxf(string way, double stray)
    {
        using var pair = new DrawnPair();
        string drawn = pair[way + ".dxf"];
        ReaderProcess.Output output = ReaderProcess.Run("/usr/bin/python3", Path.Combine(AppContext.BaseDirectory, "readers", "write_ezdxf.py"), way, pair.First, drawn);
        Assert.True(output.ExitCode == 0, output.Errors);
        double bound = DrawnPair.Bound(0.001 + stray, 0.001) + Rounding;
        DrawnPair.Holds(DrawnPair.Roll(drawn, pair.Second), bound);
        Assert.Equal(11, DrawnPair.Roll(drawn, pair.Second).GetProperty("gears")[0].GetProperty("tipRadius").GetDouble(), 0.002);
    }

    [Fact]
    public void Written_again_by_Inkscape()
    {
        using var pair = new DrawnPair("svg");
        string drawn = pair["inkscape.svg"];
        ReaderProcess.Run("inkscape", "--export-plain-svg", "--export-filename=" + drawn, pair.First);
        Assert.True(File.Exists(drawn));
        DrawnPair.Holds(DrawnPair.Roll(drawn, pair.Second), DrawnPair.Bound(0.001 + 0.0005, 0.001) + Rounding);
    }

    // Cairo writes cubics in pixels of 1/96 inch whose ends are rounded to 1/256 of a pixel, 0.001 mm.
    [Fact]
    public void Written_again_by_Cairo()
    {
        using var pair = new DrawnPair("svg");
        string drawn = pair["cairo.svg"];
        ReaderProcess.Output output = ReaderProcess.Run("rsvg-convert", "-f", "svg", "-o", drawn, pair.First);
        Assert.True(output.ExitCode == 0, output.Errors);
        DrawnPair.Holds(DrawnPair.Roll(drawn, pair.Second), DrawnPair.Bound(0.001 + 0.002, 0.001) + Rounding);
    }

    [Fact]
    public void Files_of_unlike_kinds_roll_together_and_both_ways()
    {
        using var dxf = new DrawnPair();
        using var svg = new DrawnPair("svg");
        JsonElement there = DrawnPair.Roll(dxf.First, svg.Second);
        JsonElement back = Ran(svg.Second, dxf.First);
        Assert.Equal(there.GetProperty("backlash").GetProperty("least").GetDouble(), back.GetProperty("backlash").GetProperty("least").GetDouble(), 1e-4);
        Assert.Equal(
            2 * there.GetProperty("backlash").GetProperty("angular")[0].GetDouble(), back.GetProperty("backlash").GetProperty("angular")[0].GetDouble(), 1e-3);

        static JsonElement Ran(string first, string second) => Cli.Ran.Of("roll", first, second, "--distance", "30", "--json").Json;
    }
}
