using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>The backlash of a build against its definition, and against gears that are really bigger.</summary>
public sealed class BacklashEquationTests
{
    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void AsDrawnItIsThePairsOwn(string kind)
    {
        GearPair pair = BuildPairs.Of(kind);
        Assert.Equal(pair.CircumferentialBacklash, new BacklashEquation(pair).At(pair.CentreDistance, 0, 0, 0, 0), 1e-13);
    }

    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void ItIsThePitchLessBothThicknesses(string kind)
    {
        GearPair pair = BuildPairs.Of(kind);
        var equation = new BacklashEquation(pair);
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.01, 0.01], Gen.Double[-0.01, 0.01], Gen.Double[-0.05, 0.05], Gen.Double[-0.05, 0.05]).Sample(
            (apart, one, two, thick, other) =>
            {
                double distance = pair.CentreDistance + apart;
                Assert.Equal(MeasuredBacklash.Of(pair, distance, one, two, thick, other), equation.At(distance, one, two, thick, other), 1e-11);
            },
            iter: 2000);
    }

    // A gear of module m (1 + e) is the gear of module m grown by e.
    [Theory]
    [InlineData("external")]
    [InlineData("ring")]
    [InlineData("rack")]
    public void GrownGearsAreGearsOfAGreaterModule(string kind)
    {
        GearPair pair = BuildPairs.Of(kind);
        const double growth = 0.003;
        const double distance = 1.003;
        Toothing first = Toothing.Of(Grown(pair.First.Data, growth));
        Toothing second = Toothing.Of(Grown(pair.Second.Data, growth));
        double grown = GearPair.At(first, second, (pair.CentreDistance * distance) + 0.01).CircumferentialBacklash;
        Assert.Equal(grown, new BacklashEquation(pair).At((pair.CentreDistance * distance) + 0.01, growth, growth, 0, 0), 1e-11);
    }

    // By hand, with the slope 2 tan alpha: acrylic (72e-6 /K) on a brass frame (20.5e-6 /K) at 60 mm in 15 K.
    [Fact]
    public void AcrylicInABrassFrameLosesBacklashInWarmth()
    {
        Toothing gear = Toothing.Of(new GearData(60, 1, TestRacks.A, 0, 0.02));
        GearPair pair = GearPair.At(gear, gear, 60);
        var build = new MeshBuild(
            new BacklashEquation(pair), 60, new Growth(20.5e-6, 0), new Growth(72e-6, 0), new Growth(72e-6, 0), [new Quantity("temperature", "", Influence.Temperature, 0, 15)]);
        double lost = build.AsDrawn - build.At(new BuildState(0, 0, 0, 15, 0));
        Assert.Equal(2 * 60 * (72e-6 - 20.5e-6) * 15 * Math.Tan(TestRacks.Radians(20)), lost, 3e-4);
    }

    // Carville Ltd, How thermally stable is acrylic: a change of 15 K takes a part of 100 mm out of plus or minus 0.1 mm.
    [Fact]
    public void AHundredMillimetresOfAcrylicGrowByMoreThanATenthInFifteenKelvin() => Assert.InRange(100 * new Growth(77e-6, 0).At(15, 0), 0.1, 0.12);

    [Theory]
    [MemberData(nameof(BuildPairs.Kinds), MemberType = typeof(BuildPairs))]
    public void ItRisesOrFallsThroughoutWithEachQuantity(string kind)
    {
        GearPair pair = BuildPairs.Of(kind);
        var equation = new BacklashEquation(pair);
        double last = double.NegativeInfinity;
        for (int i = -400; i <= 400; i++)
        {
            double now = equation.At(pair.CentreDistance + (equation.Sense * i * 0.001), 0.001, -0.001, 0, 0);
            Assert.True(now > last);
            last = now;
        }

        Assert.True(equation.At(pair.CentreDistance, 0, 0, 0.01, 0) < equation.At(pair.CentreDistance, 0, 0, 0, 0));
        Assert.True(equation.At(pair.CentreDistance, 0, 0, 0, 0.01) < equation.At(pair.CentreDistance, 0, 0, 0, 0));
    }

    private static ToothData Grown(ToothData data, double by) => data switch
    {
        RingData ring => ring with { Module = ring.Module * (1 + by), RimDiameter = ring.RimDiameter * 1.1, Thinning = ring.Thinning * (1 + by) },
        RackBarData rack => rack with { Module = rack.Module * (1 + by), Thinning = rack.Thinning * (1 + by) },
        _ => data with { Module = data.Module * (1 + by), Thinning = data.Thinning * (1 + by) },
    };
}
