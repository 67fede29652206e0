using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Meshing.Builds;
using Range = GearBlanks.Meshing.Builds.Range;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>Builds worked out four at a time are those that plain arithmetic gives one at a time, from the same bits.</summary>
public sealed class BuildBlockTests
{
    // Directions, arms, leans and growth all differ, and a rack is among the pairs: no two terms can stand for one another.
    private static readonly TrainBuild Train = new(
        [0.03, 0.02, 0.05, 0.011, 0.004],
        [
            new GearDraw([new Range(-0.01, 0.02), new Range(0, 0.006)], [new Share(0, 1), new Share(4, 2.5)], new Growth(2e-5, 1e-6)),
            new GearDraw([new Range(-0.004, 0.004)], [new Share(1, 0.7)], new Growth(7e-5, 4e-5)),
            new GearDraw([], [new Share(2, 1.5), new Share(4, -1)], new Growth(1e-5, 0)),
        ],
        [0.02, 0.035], new Growth(1.2e-5, 3e-6), new Range(-15, 25), new Range(-20, 40),
        [
            new MeshDraw(BuildPairs.Build("external"), 0, 1, 0, new Vector(0.6, 0.8), [new Share(3, 1.3)], [new Share(3, 0.4), new Share(0, -0.2)], true, 0.06),
            new MeshDraw(BuildPairs.Build("rack"), 1, 2, 1, new Vector(-0.8, 0.6), [new Share(2, -0.5)], [new Share(1, 0.3)], false, 0.09),
        ]);

    public static TheoryData<bool, int> Cases => new() { { false, 1 }, { false, 4 }, { true, 7 }, { true, 64 }, { false, 65 } };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Counts_are_those_of_one_build_after_another(bool isNormal, int builds)
    {
        Spread spread = isNormal ? Spread.MakeNormal() : Spread.MakeUniform();
        BuildTally tally = new BuildBlock(new BuildRows(Train, spread), RandomStream.Of(5, 2)).Run(builds);
        double[][] all = [.. Plain(spread, RandomStream.Of(5, 2), builds)];
        Assert.Equal(builds, tally.Builds);
        Assert.Equal(all.Count(build => build.Any(backlash => backlash < 0)), tally.Binding);
        Assert.Equal(all.Count(build => build[0] > 0.06 || build[1] > 0.09), tally.Rattling);
        for (int i = 0; i < 2; i++)
        {
            double[] backlash = [.. all.Select(build => build[i])];
            MeshTally mesh = tally.Meshes[i];
            Assert.Equal(backlash.Min(), mesh.Least, 1e-12);
            Assert.Equal(backlash.Max(), mesh.Most, 1e-12);
            Assert.Equal(backlash.Sum(), mesh.Sum, 1e-10);
            Assert.Equal(backlash.Sum(one => one * one), mesh.Squares, 1e-10);
            Assert.Equal(backlash.Count(one => one < 0), mesh.Binding);
            Assert.Equal(backlash.Count(one => one > (i == 0 ? 0.06 : 0.09)), mesh.Rattling);
            double mean = backlash.Average();
            Assert.Equal(Math.Sqrt(backlash.Average(one => (one - mean) * (one - mean))), mesh.Deviation(builds), 1e-9);
        }
    }

    [Fact]
    public void Some_bind_and_some_rattle()
    {
        BuildTally tally = BuildRun.Of(Train, Spread.Uniform, 3, 5000);
        Assert.InRange(tally.Binding, 50, 4900);
        Assert.InRange(tally.Rattling, 50, 4900);
        BuildTally first = BuildRun.Of(Train, Spread.Uniform, 3, 2048);
        BuildTally second = new BuildBlock(new BuildRows(Train, Spread.Uniform), RandomStream.Of(3, 1)).Run(2048);
        BuildTally third = new BuildBlock(new BuildRows(Train, Spread.Uniform), RandomStream.Of(3, 2)).Run(5000 - (2 * 2048));
        Assert.Equal((first.Binding + second.Binding + third.Binding, first.Rattling + second.Rattling + third.Rattling, 5000), (tally.Binding, tally.Rattling, tally.Builds));
        Assert.Equal(Math.Max(first.Meshes[0].Most, Math.Max(second.Meshes[0].Most, third.Meshes[0].Most)), tally.Meshes[0].Most);
        Assert.Equal(first.Meshes[1].Sum + second.Meshes[1].Sum + third.Meshes[1].Sum, tally.Meshes[1].Sum, 1e-9);
    }

    private static IEnumerable<double[]> Plain(Spread spread, RandomStream random, int builds)
    {
        // A word each displacement, half a one each other quantity: two of the climate, three thicknesses, two distances.
        int words = Train.Places.Length + ((2 + 3 + 2 + 1) / 2);
        for (int build = 0; build < builds; build++)
        {
            ulong[] bits = new ulong[words];
            for (int i = 0; i < words; i++)
            {
                bits[i] = random.Next();
            }

            Vector[] places = [.. Train.Places.Select((most, i) =>
            {
                (double x, double y) = Directions.Of(bits[i]);
                double length = most / 2 * (1 + spread.At((uint)bits[i]));
                return new Vector(length * x, length * y);
            })];
            int half = 2 * places.Length;
            double Draw(Range range)
            {
                double drawn = spread.At((uint)(bits[half / 2] >> (half % 2 == 0 ? 0 : 32)));
                half++;
                return ((range.Least + range.Most) / 2) + ((range.Most - range.Least) / 2 * drawn);
            }

            double kelvin = Draw(Train.Temperature);
            double percent = Draw(Train.Humidity);
            double[] thicker = [.. Train.Gears.Select(gear => gear.Thicker.Sum(Draw))];
            double[] further = [.. Train.Distances.Select(most => Draw(new Range(-most, most)))];
            Vector Sum(ImmutableArray<Share> shares) => shares.Aggregate(new Vector(0, 0), (sum, share) => sum + (places[share.Place] * share.Arm));
            yield return [.. Train.Meshes.Select(mesh =>
            {
                Vector apart = Sum(mesh.Shares) + Sum(Train.Gears[mesh.Second].Shares) - Sum(Train.Gears[mesh.First].Shares);
                double along = (mesh.Build.Distance * (1 + (1.2e-5 * kelvin) + (3e-6 * percent))) + further[mesh.Distance] + apart.Dot(mesh.Towards);
                double distance = mesh.IsAcross ? double.Hypot(along, apart.Dot(mesh.Towards.TurnedLeft)) : along;
                double crossed = Math.Abs(Sum(mesh.Leans).Dot(mesh.Towards.TurnedLeft));
                return mesh.Build.Equation.At(
                    distance, Train.Gears[mesh.First].Growth.At(kelvin, percent), Train.Gears[mesh.Second].Growth.At(kelvin, percent),
                    thicker[mesh.First] + crossed, thicker[mesh.Second]);
            })];
        }
    }
}
