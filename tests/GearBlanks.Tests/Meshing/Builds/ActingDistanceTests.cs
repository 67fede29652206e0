using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>The distances that act on gears that have not grown: the frame's growth less what each gear grows towards the pitch point.</summary>
public sealed class ActingDistanceTests
{
    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void They_are_the_extremes_over_the_corners_of_the_climate(string kind)
    {
        GearPair pair = BuildPairs.Of(kind);
        MeshBuild build = BuildPairs.Build(kind);
        var grown = new List<double>();
        foreach (double kelvin in (double[])[-15, 25])
        {
            foreach (double percent in (double[])[-20, 40])
            {
                double frame = pair.CentreDistance * (1 + (11.7e-6 * kelvin));
                double first = (77e-6 * kelvin) + (4e-5 * percent);
                double second = 20.5e-6 * kelvin;
                grown.Add(frame - (Outward(pair.First, pair.FirstWorkingRadius) * first) - (Outward(pair.Second, pair.SecondWorkingRadius) * second));
            }
        }

        // Half the play and both eccentricities in any direction, the tolerance along the line of centres.
        const double reach = 0.02 + 0.015 + 0.01 + 0.02;
        (double least, double most) = build.ActingDistances(pair);
        Assert.Equal(grown.Min() - reach, least, 1e-12);
        Assert.Equal(grown.Max() + reach, most, 1e-12);

        // The pitch point of a pinion in a ring lies beyond the pinion's centre, seen from the ring's.
        double Outward(Toothing one, double radius) => one is RackBar ? 0 : one is ExternalGear && pair is RingPair ? -radius : radius;
    }

    /// <summary>Crossed teeth lose backlash whichever way they cross: a mean and a spread of the length of a normal part, by drawing them.</summary>
    [Fact]
    public void Crossing_has_the_mean_and_the_spread_of_a_normal_part_without_its_sign()
    {
        GearPair pair = BuildPairs.Of("external");
        var build = new MeshBuild(
            new BacklashEquation(pair), pair.CentreDistance, default, default, default,
            [new Quantity("a", "one", Influence.Crossing, 0, 0.02), new Quantity("b", "two", Influence.Crossing, 0, 0.03)]);
        double slope = (build.At(default(BuildState).Moved(Influence.Crossing, 1e-3)) - build.At(default)) / 1e-3;
        double Part(double most) => most / 2 * Math.Sqrt((1 + (1.0 / 3)) / 2);
        double both = double.Hypot(Part(0.02), Part(0.03));
        Assert.Equal(build.AsDrawn + (slope * both * Math.Sqrt(2 / Math.PI)), build.Mean(Spread.Uniform), 1e-7);
        Assert.Equal(
            Math.Abs(slope) * Part(0.02) * Math.Sqrt(1 - (2 / Math.PI)), build.Contributions(Spread.Uniform).Single(one => one.Name == "a").Deviation, 1e-7);
        Assert.Equal(build.At(default(BuildState).Moved(Influence.Crossing, 0.05)), build.Bounds().Least, 1e-9);
        Assert.Equal(build.AsDrawn, build.Bounds().Most, 1e-9);
    }

    [Fact]
    public void What_a_remedy_leaves_is_the_bound_of_a_mesh_so_changed()
    {
        MeshBuild build = BuildPairs.Build("external", withClimate: false);
        Assert.Equal((build with { Distance = build.Distance + 0.07 }).Bounds().Least, build.LeastWith(0.07, 0), 1e-12);
        Assert.True(build.LeastWith(0.07, 0) > build.LeastWith(0, 0));
        Assert.True(build.LeastWith(0, 0.01) < build.LeastWith(0, 0));
        Assert.Equal(0.01, build.LeastWith(0, 0) - build.LeastWith(0, 0.01), 2e-4);
    }

    [Theory]
    [InlineData(-1, 0.02)]
    [InlineData(1, -0.02)]
    public void The_thickest_teeth_go_with_the_least_play(int side, double first)
    {
        (double one, double two) = BuildPairs.Build("external").Thicker(side);
        Assert.Equal((first / 2, side < 0 ? 0.012 : 0), (one, two));
    }
}
