using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>Bounds and spreads of one mesh.</summary>
public sealed class MeshBuildTests
{
    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void NoBuildPassesTheBounds(string kind)
    {
        MeshBuild build = BuildPairs.Build(kind);
        GearPair pair = BuildPairs.Of(kind);
        (double least, double most) = build.Bounds();
        var random = new Random(11);
        for (int i = 0; i < 100_000; i++)
        {
            // Half of the builds stand on limits, where the worst are.
            double backlash = Drawn(build, pair, () => i % 2 == 0 ? random.NextDouble() : random.Next(2), random.NextDouble() * 2 * Math.PI);
            Assert.InRange(backlash, least, most);
        }
    }

    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void TheBoundsAreReached(string kind)
    {
        MeshBuild build = BuildPairs.Build(kind);
        GearPair pair = BuildPairs.Of(kind);
        (double least, double most) = build.Bounds();
        (double lowest, double highest) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int corner = 0; corner < 1 << build.Quantities.Length; corner++)
        {
            foreach (double direction in (double[])[0, Math.PI])
            {
                int bit = 0;
                double backlash = Drawn(build, pair, () => (corner >> bit++) & 1, direction);
                (lowest, highest) = (Math.Min(lowest, backlash), Math.Max(highest, backlash));
            }
        }

        Assert.InRange(lowest - least, 0, 1e-9);
        Assert.InRange(most - highest, 0, 1e-9);
    }

    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void EachQuantityAloneTakesAndGivesNoMoreThanAllTogether(string kind)
    {
        MeshBuild build = BuildPairs.Build(kind);
        (double least, double most) = build.Bounds();
        var parts = build.Contributions(Spread.Uniform);
        Assert.Equal(build.Quantities.Length, parts.Length);
        Assert.All(parts, part => Assert.True(part.Takes > 0 || part.Gives > 0));
        Assert.All(parts, part => Assert.True(part.Deviation > 0));

        // All but linear: together they make what they make one by one, to some parts in a hundred.
        Assert.Equal(build.AsDrawn - least, parts.Sum(part => part.Takes), 0.05 * (build.AsDrawn - least));
        Assert.Equal(most - build.AsDrawn, parts.Sum(part => part.Gives), 0.05 * (most - build.AsDrawn));
    }

    [Fact]
    public void WithNothingThatDiffersThereIsNothingBetweenTheBounds()
    {
        MeshBuild build = BuildPairs.Build("external") with { Quantities = [] };
        (double least, double most) = build.Bounds();
        Assert.Equal(build.AsDrawn, least, 1e-9);
        Assert.Equal(build.AsDrawn, most, 1e-9);
        Assert.True(least <= build.AsDrawn && build.AsDrawn <= most);
    }

    [Fact]
    public void OneMaterialThroughoutKeepsItsBacklashInAnyClimate()
    {
        var brass = new Growth(20.5e-6, 0);
        MeshBuild build = BuildPairs.Build("external") with
        {
            Frame = brass,
            First = brass,
            Second = brass,
            Quantities = [new Quantity("temperature", "", Influence.Temperature, -30, 30)],
        };
        (double least, double most) = build.Bounds();
        Assert.InRange(most - least, 0, 1e-4);
    }

    // A build as its definition has it, distance and thickness by hand.
    private static double Drawn(MeshBuild build, GearPair pair, Func<double> share, double direction)
    {
        (double x, double y, double one, double two, double kelvin, double percent) = (0, 0, 0, 0, 0, 0);
        foreach (Quantity quantity in build.Quantities)
        {
            double value = quantity.Least + (share() * (quantity.Most - quantity.Least));
            switch (quantity.On)
            {
                case Influence.Distance: x += value; break;
                case Influence.Place: x += value * Math.Cos(direction); y += value * Math.Sin(direction); break;
                case Influence.FirstThickness or Influence.Crossing: one += value; break;
                case Influence.SecondThickness: two += value; break;
                case Influence.Temperature: kelvin = value; break;
                default: percent = value; break;
            }
        }

        double along = (build.Distance * (1 + build.Frame.At(kelvin, percent))) + x;
        double distance = pair is RackPair ? along : Math.Sqrt((along * along) + (y * y));
        return MeasuredBacklash.Of(pair, distance, build.First.At(kelvin, percent), build.Second.At(kelvin, percent), one, two);
    }
}
