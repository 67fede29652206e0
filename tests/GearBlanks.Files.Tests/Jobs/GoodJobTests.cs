using Fractions;
using GearBlanks.Curves;
using GearBlanks.Files.Jobs;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Jobs;

public class GoodJobTests
{
    [Fact]
    public void Every_key_arrives_in_millimetres_radians_and_exact_seconds()
    {
        var job = Parse(JobTexts.Full);

        Assert.Equal("Tide and moon dial", job.Title);
        var d = job.Defaults;
        Assert.Equal((0.79375, "iso-53-b", "brass", "drawing", "hand-assembled"), (d.Module, d.Rack, d.Material, d.Machine, d.Limits));
        Assert.Equal((1.5875, 3, 0.0127, 0.032, true, false), (d.Thickness, d.Bore, d.Thinning, d.Backlash, d.Lettering, d.Mark));

        Assert.Equal(new Point(1, 12.7), job.Axes[0].Position);
        Assert.Null(job.Axes[1].Position);
        Assert.Equal(("column", 32.8, 2 * Math.PI / 3), (job.Axes[1].From, job.Axes[1].Distance, job.Axes[1].Direction));

        Assert.Equal(("day", "column", 4), (job.Sandwiches[0].Name, job.Sandwiches[0].Axis, job.Sandwiches[0].Height));
        Assert.Equal(0.5, Assert.IsType<JobWasher>(job.Sandwiches[0].Layers[1]).Thickness);
        Assert.Null(job.Sandwiches[1].Height);

        var gear = Assert.IsType<JobGear>(job.Sandwiches[0].Layers[0]);
        Assert.Equal(("day wheel", 24, 0.8, "iso-53-a", -0.1, 20.5), (gear.Name, gear.Teeth, gear.Module, gear.Rack, gear.ProfileShift, gear.TipDiameter));
        Assert.Equal((0.016, 2, "steel", 0, -Math.PI / 4), (gear.Thinning, gear.Thickness, gear.Material, gear.Bore, gear.Turned));
        Assert.Equal((true, false, true), (gear.IsDisc, gear.Lettering, gear.Mark));
        Assert.Equal((3, 12, 1.8, 3, Math.PI / 3), (gear.Screws!.Count, gear.Screws.CircleDiameter, gear.Screws.HoleDiameter, gear.Screws.HeadDiameter, gear.Screws.StartAngle));
        Assert.Equal(new Circle(new Point(4, 1), 0.5), gear.Holes[0]);
        Assert.Equal(5, gear.Holes[1].Centre.Y, 12);
        Assert.Equal(0, gear.Holes[1].Centre.X, 12);

        Assert.Equal(new JobBoreShape(d.BoreShape!.Place, BoreForm.D, 2.5, null, null, 0, 0), d.BoreShape);
        Assert.Null(gear.BoreShape);
        Assert.Null(gear.MarkTeeth);
        var (lay, upper) = (Assert.IsType<JobGear>(job.Sandwiches[1].Layers[0]), Assert.IsType<JobGear>(job.Sandwiches[1].Layers[1]));
        Assert.Equal(new JobBoreShape(lay.BoreShape!.Place, BoreForm.Keyway, null, 2, 1, 0.2, Math.PI / 2), lay.BoreShape);
        Assert.Equal(new JobCrossings(lay.Crossings!.Place, 5, 16, null, 3, 4, 3, 1, Math.PI / 5), lay.Crossings);
        Assert.Equal([1, 30], lay.MarkTeeth!.Value);
        Assert.Equal("TD-12", lay.PartNumber);
        Assert.Equal(new JobBoreShape(upper.BoreShape!.Place, BoreForm.Hexagon, 5, null, null, 0, 0), upper.BoreShape);
        Assert.Equal(new JobCrossings(upper.Crossings!.Place, 3, null, 3, 3, 4, null, 0, 0), upper.Crossings);
        Assert.Equal([5], upper.MarkTeeth!.Value);
        Assert.Null(upper.PartNumber);

        var mesh = Assert.Single(job.Meshes);
        Assert.Equal(("first mesh", "day wheel", "first lay wheel", 32.85, 0.04, 0.3), (mesh.Name, mesh.First, mesh.Second, mesh.MeasuredDistance, mesh.Backlash, mesh.ShareOfFirst));
        Assert.Equal(("day", new Fraction(86400)), (job.Drive!.Sandwich, job.Drive.Turn));
        var hand = Assert.Single(job.Hands);
        Assert.Equal(("tide hand", "lay", new Fraction(2235708, 25)), (hand.Name, hand.Sandwich, hand.Turn));
    }

    [Fact]
    public void Both_styles_say_the_same()
    {
        var (longer, compact) = (Parse(JobTexts.Pair), Parse(JobTexts.Compact));
        Assert.True(JobTexts.Compact.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length < 15);
        Assert.Equal(longer.Axes.Select(a => a with { Place = default }), compact.Axes.Select(a => a with { Place = default }));
        Assert.Equal(longer.Meshes.Select(m => m with { Place = default }), compact.Meshes.Select(m => m with { Place = default }));
        Assert.Equal(longer.Defaults with { Place = default }, compact.Defaults with { Place = default });
        Assert.Equal(Gears(longer), Gears(compact));
        Assert.Equal([("pinion", 20), ("wheel", 40)], Gears(compact));
    }

    [Fact]
    public void What_is_not_written_is_not_filled_in()
    {
        var job = Parse(JobTexts.Compact);
        Assert.Equal("pair", job.Title);
        Assert.Null(job.Drive);
        Assert.Empty(job.Hands);
        Assert.Null(job.Defaults.Rack);
        var gear = (JobGear)job.Sandwiches[0].Layers[0];
        Assert.Null(gear.Module);
        Assert.Null(gear.Bore);
        Assert.Null(gear.Screws);
        Assert.Empty(gear.Holes);
        Assert.Equal((0, 0, false), (gear.ProfileShift, gear.Turned, gear.IsDisc));
        Assert.Equal("pinion - wheel", job.Meshes[0].Name);
        Assert.Null(job.Meshes[0].ShareOfFirst);
    }

    [Fact]
    public void Places_are_those_of_the_tables()
    {
        var job = Parse(JobTexts.Pair);
        Assert.Equal(new Place("pair.toml", 8, 1), job.Axes[1].Place);
        Assert.Equal(new Place("pair.toml", 21, 1), job.Sandwiches[1].Layers[0].Place);
        Assert.Equal(new Place("pair.toml", 3, 3), Parse(JobTexts.Compact).Axes[0].Place);
        Assert.Equal(new Place("pair.toml", 0, 0), job.Place);
    }

    [Theory]
    [InlineData("24 h", 86400, 1)]
    [InlineData("29.530589 d", 2551442.8896 * 10000, 10000)]
    [InlineData("90 min", 5400, 1)]
    [InlineData("60 s", 60, 1)]
    [InlineData("1/2 h", 1800, 1)]
    [InlineData("1/3 s", 1, 3)]
    [InlineData("24h", 86400, 1)]
    [InlineData("0.1 s", 1, 10)]
    [InlineData("  1.5/2.5   min ", 36, 1)]
    public void Times_are_exact(string written, double numerator, int denominator) =>
        Assert.Equal(
            new Fraction((long)numerator, denominator).Reduce(),
            Parse(JobTexts.Pair.Replace("\"1 h\"", $"\"{written}\"", StringComparison.Ordinal)).Drive!.Turn);

    [Theory]
    [InlineData("30", 30)]
    [InlineData("+3.0e1", 30)]
    [InlineData("\"1 in\"", 25.4)]
    [InlineData("\"1/4 in\"", 6.35)]
    [InlineData("\"0.25in\"", 6.35)]
    [InlineData("\"3 mm\"", 3)]
    [InlineData("\"2 thou\"", 0.0508)]
    public void Lengths_take_units(string written, double millimetres) =>
        Assert.Equal(millimetres, Parse(JobTexts.Pair.Replace("distance = 30", $"distance = {written}", StringComparison.Ordinal)).Axes[1].Distance);

    [Theory]
    [InlineData("0.508", 50)]
    [InlineData("25.4", 1)]
    [InlineData("508", 0.05)]
    public void Diametral_pitch_becomes_a_module_within_its_range(string pitch, double module) =>
        Assert.Equal(module, Parse(JobTexts.Pair.Replace("module = 1", $"diametral-pitch = {pitch}", StringComparison.Ordinal)).Defaults.Module);

    [Fact]
    public void Windows_line_ends_and_a_byte_order_mark_change_nothing()
    {
        var job = Parse("\uFEFF" + JobTexts.Pair.Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.Equal(new Place("pair.toml", 8, 1), job.Axes[1].Place);
        Assert.Equal("Bell pull", job.Title);
    }

    [Fact]
    public void A_sandwich_may_stand_as_dotted_and_quoted_keys()
    {
        var job = Parse(JobTexts.Pair.Replace("[defaults]\nmodule = 1\nthickness = 3", "defaults.module = 1\n\"defaults\".'thickness' = 3", StringComparison.Ordinal));
        Assert.Equal((1, 3), (job.Defaults.Module, job.Defaults.Thickness));
    }

    private static IEnumerable<(string, int)> Gears(Job job) =>
        job.Sandwiches.SelectMany(s => s.Layers).Cast<JobGear>().Select(g => (g.Name, g.Teeth));

    private static Job Parse(string text)
    {
        var outcome = JobReader.Parse(text, "pair.toml");
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }
}
