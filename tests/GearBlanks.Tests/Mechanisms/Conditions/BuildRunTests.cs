using System.Globalization;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Tests.Mechanisms.Conditions;

/// <summary>Random builds of whole trains. GEARBLANKS_BUILDS asks for more of them than a quick run draws.</summary>
public sealed class BuildRunTests
{
    private static readonly int Builds = int.Parse(Environment.GetEnvironmentVariable("GEARBLANKS_BUILDS") ?? "60000", CultureInfo.InvariantCulture);

    public static TheoryData<string, bool> Trains => new()
    {
        { "pair", false }, { "pair", true }, { "row", false }, { "row", true }, { "sled", false }, { "sled", true },
    };

    [Theory]
    [MemberData(nameof(Trains))]
    public void NoBuildPassesTheBoundsAndTheRootOfSquaresIsTheSamplesSpread(string name, bool isNormal)
    {
        ConditionsPlan plan = ConditionsJobs.Named(name).Resolved().Conditions!;
        Spread spread = isNormal ? Spread.Normal : Spread.Uniform;
        BuildTally tally = BuildRun.Of(plan.Train, spread, 3, Builds);
        Assert.Equal(Builds, tally.Builds);
        foreach ((MeshDraw mesh, MeshTally drawn) in plan.Train.Meshes.Zip(tally.Meshes))
        {
            (double least, double most) = mesh.Build.Bounds();
            Assert.True(least <= drawn.Least && drawn.Most <= most, $"{least} {drawn.Least} {drawn.Most} {most}");
            double deviation = Math.Sqrt(mesh.Build.Contributions(spread).Sum(part => part.Deviation * part.Deviation));
            Assert.Equal(deviation, drawn.Deviation(Builds), 0.05 * deviation);
            Assert.Equal(mesh.Build.Mean(spread), drawn.Sum / Builds, 0.1 * deviation);
        }
    }

    [Fact]
    public void TheSameSeedGivesTheSameBuildsOnAnyNumberOfThreads()
    {
        TrainBuild train = ConditionsJobs.Named("row").Resolved().Conditions!.Train;
        BuildTally one = BuildRun.Of(train, Spread.Normal, 12, 50_001, 1);
        foreach (int threads in (int[])[2, 3, 16, -1])
        {
            BuildTally other = BuildRun.Of(train, Spread.Normal, 12, 50_001, threads);
            Assert.Equal((one.Builds, one.Binding, one.Rattling), (other.Builds, other.Binding, other.Rattling));
            Assert.Equal(one.Meshes, other.Meshes);
        }

        Assert.NotEqual(one.Meshes, BuildRun.Of(train, Spread.Normal, 13, 50_001, 1).Meshes);
    }

    [Fact]
    public void SharesAreCountsOfBuilds()
    {
        // A gap of which the half is below 0 by symmetry: as drawn there is no backlash, and only the distance differs.
        Job job = TestJobs.Pair(TestJobs.Gear("one", 24, thinning: 0), TestJobs.Gear("two", 36, thinning: 0), 30) with
        {
            Conditions = new JobConditions(TestJobs.At(9)) { CentreDistanceTolerance = 0.05, Builds = new JobBuilds { Count = 40_000, Seed = 2 } },
        };
        ConditionsReport report = job.Report().Conditions!;
        Assert.Equal(0.5, report.BindingShare, 0.0125);
        Assert.Equal(report.BindingShare, report.Meshes[0].BindingShare);
        Assert.Equal(0, report.RattlingShare);
        Assert.Equal(2 * 0.05 * Math.Tan(TestRacks.Radians(20)), report.Meshes[0].Greatest, 5e-4);
    }

    // The same model drawn again with another generator and with backlash by its definition.
    [Fact]
    public void AnotherHandsBuildsAreSpreadAlike()
    {
        const int count = 60_000;
        MeshDraw mesh = ConditionsJobs.Named("pair").Resolved().Conditions!.Train.Meshes[0];
        MeshTally drawn = BuildRun.Of(ConditionsJobs.Named("pair").Resolved().Conditions!.Train, Spread.Uniform, 5, count).Meshes[0];
        var pair = ConditionsJobs.Named("pair").Resolved().Meshes[0].Pair;
        var random = new Random(99);
        (double sum, double squares, int binding) = (0, 0, 0);
        for (int i = 0; i < count; i++)
        {
            double backlash = Drawn(mesh.Build, pair, random);
            sum += backlash;
            squares += backlash * backlash;
            binding += backlash < 0 ? 1 : 0;
        }

        double deviation = Math.Sqrt((squares / count) - (sum / count * (sum / count)));
        Assert.Equal(deviation, drawn.Deviation(count), 0.02 * deviation);
        Assert.Equal(sum / count, drawn.Sum / count, 0.03 * deviation);
        Assert.Equal(binding, drawn.Binding, 5 * Math.Sqrt(2 * Math.Max(binding, 30)));
    }

    private static double Drawn(MeshBuild build, GearBlanks.Meshing.GearPair pair, Random random)
    {
        (double x, double y, double one, double two, double kelvin, double percent) = (0, 0, 0, 0, 0, 0);
        double crossing = 0;
        foreach (Quantity quantity in build.Quantities)
        {
            double value = quantity.Least + (random.NextDouble() * (quantity.Most - quantity.Least));
            double angle = 2 * Math.PI * random.NextDouble();
            switch (quantity.On)
            {
                case Influence.Distance: x += value; break;
                case Influence.Place: x += value * Math.Cos(angle); y += value * Math.Sin(angle); break;
                case Influence.Crossing: crossing += value * Math.Sin(angle); break;
                case Influence.FirstThickness: one += value; break;
                case Influence.SecondThickness: two += value; break;
                case Influence.Temperature: kelvin = value; break;
                default: percent = value; break;
            }
        }

        double along = (build.Distance * (1 + build.Frame.At(kelvin, percent))) + x;
        return Meshing.Builds.MeasuredBacklash.Of(
            pair, Math.Sqrt((along * along) + (y * y)), build.First.At(kelvin, percent), build.Second.At(kelvin, percent), one + Math.Abs(crossing), two);
    }
}
