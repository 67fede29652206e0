using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>How many pieces the fit takes, over a grid of gears, beside the fewest that exist with their joints on the curve.</summary>
public sealed class FewestPiecesTests
{
    private static readonly int[] ToothCounts = [4, 6, 8, 10, 12, 14, 17, 20, 25, 30, 40, 60, 80, 100, 150, 200, 400, 700, 1000];
    private static readonly double[] Angles = [14.5, 20, 25];
    private static readonly double[] Shifts = [-0.5, -0.25, 0, 0.25, 0.5, 1];

    private static readonly Lazy<List<ExternalGear>> Grid = new(() => [.. Gears()]);

    /// <summary>Figures worked out apart: the integrals of the densities by hand for m 1, z 20, type A, 0.001 mm.</summary>
    [Theory]
    [InlineData(Pieces.Arcs, 2.1, 2.35)]
    [InlineData(Pieces.Chords, 12.8, 10.6)]
    public void The_least_is_the_integral_of_the_density(Pieces kind, double fillet, double flank)
    {
        Outline outline = ExternalGear.Create(new GearData(20, 1, TestRacks.A)).Outline();
        PieceCounts[] counts = [.. PieceCounts.Of(outline, 0.001, kind)];
        Assert.Equal(4, counts.Length);
        foreach (PieceCounts count in counts)
        {
            Assert.Equal(count.Curve is Trochoid ? fillet : flank, count.Least, 0.05);
            Assert.Equal(IntegratedLeast(count.Curve, 0.001, kind), count.Least, 0.01);
        }
    }

    [Fact]
    public void The_grid_holds_every_sort_of_gear()
    {
        Assert.True(Grid.Value.Count >= 500);
        Assert.Contains(Grid.Value, gear => gear.Undercut is not null);
        Assert.Contains(Grid.Value, gear => gear.IsPointed);
        Assert.Contains(Grid.Value, gear => gear.Fillet.CentreHeight > 0);
    }

    /// <summary>The bound on the mean is 1.2 at the accuracy that gears of this size are cut to; the fewer the least, the more one arc above it weighs.</summary>
    [Theory]
    [InlineData(1, 0.001, Pieces.Arcs, 1.2)]
    [InlineData(5, 0.001, Pieces.Arcs, 1.15)]
    [InlineData(1, 0.01, Pieces.Arcs, 1.3)]
    [InlineData(1, 0.001, Pieces.Chords, 1.01)]
    [InlineData(1, 0.01, Pieces.Chords, 1.01)]
    public void No_curve_takes_more_than_one_piece_above_the_least(double module, double tolerance, Pieces kind, double mostMean)
    {
        (int pieces, int least, int fallbacks) = (0, 0, 0);
        foreach (ExternalGear unit in Grid.Value)
        {
            foreach (PieceCounts count in PieceCounts.Of(ExternalGear.Create(unit.Data with { Module = module }).Outline(), tolerance, kind))
            {
                Assert.True(
                    count.Pieces <= count.WholeLeast + 1,
                    $"{count.Curve} takes {count.Pieces}, at the least {count.Least:0.###}: {unit.Data}");
                pieces += count.Pieces;
                least += count.WholeLeast;
                fallbacks += count.IsFallback ? 1 : 0;
            }
        }

        Assert.Equal(0, fallbacks);
        Assert.True(pieces <= mostMean * least, $"{pieces} pieces, at the least {least}: {(double)pieces / least:0.###}");
    }

    [Fact]
    public void Arcs_of_the_grid_are_tangent_where_the_outline_is_smooth()
    {
        foreach (ExternalGear gear in Grid.Value)
        {
            FitChecks.RequireSmooth(gear.Outline(), OutlineFit.Fit(gear.Outline(), 0.001), gear.TipRadius);
        }
    }

    [Theory]
    [InlineData(Pieces.Arcs)]
    [InlineData(Pieces.Chords)]
    public void The_grid_keeps_to_the_exact_outline_both_ways(Pieces kind)
    {
        foreach (ExternalGear gear in Grid.Value)
        {
            FitChecks.RequireWithin(gear.Outline(), OutlineFit.Fit(gear.Outline(), 0.001, kind), 0.001 + (1e-12 * gear.TipRadius));
        }
    }

    private static IEnumerable<ExternalGear> Gears() =>
        from type in TestRacks.Types
        from angle in Angles
        from teeth in ToothCounts
        from shift in Shifts
        let gear = RandomGears.TryCreate(new GearData(teeth, 1, TestRacks.Iso(type, angle), shift))
        where gear is not null
        select gear;

    // By differences of the curve's own curvature and length, in steps so fine that the sum is the integral.
    private static double IntegratedLeast(Curve curve, double tolerance, Pieces kind)
    {
        const int Steps = 20_000;
        double sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double from = curve.Start + ((curve.End - curve.Start) * i / Steps);
            double to = curve.Start + ((curve.End - curve.Start) * (i + 1) / Steps);
            (double k0, double k1) = (curve.CurvatureAt(from), curve.CurvatureAt(to));
            double length = curve.LengthBetween(from, to);
            sum += kind == Pieces.Arcs
                ? Math.Cbrt(Math.Abs(k1 - k0) / length / (72 * Math.Sqrt(3) * tolerance)) * length
                : Math.Sqrt(Math.Abs(k0 + k1) / 2 / (8 * tolerance)) * length;
        }

        return sum;
    }
}
