using GearBlanks.Meshing;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Rolling;

/// <summary>A perfect pair turns evenly, with the backlash that the equations of its pair give.</summary>
public sealed class PerfectPairTests
{
    private const double HalfAnArcsecond = 0.5 / 3600 * Math.PI / 180;

    [Theory]
    [InlineData(20, 40, 0, 0, 0.02, 30.0)]
    [InlineData(13, 87, 0.3, -0.3, 0.016, 50)]
    [InlineData(12, 12, 0.35, 0.35, 0.03, 12.72)]
    [InlineData(17, 60, 0.2, 0.3, 0.02, 39.0)]
    [InlineData(8, 30, 0.5, 0, 0.02, 19.5)]
    public void External_gears(int first, int second, double firstShift, double secondShift, double thinning, double distance)
    {
        Toothing one = Toothing.Of(new GearData(first, 1, TestRacks.A, firstShift, thinning));
        Toothing other = Toothing.Of(new GearData(second, 1, TestRacks.A, secondShift, thinning));
        Holds(one, other, GearPair.At(one, other, distance), 2 * Math.PI);
    }

    private static void Holds(Toothing one, Toothing other, GearPair pair, double turn)
    {
        Assert.True(pair.ContactRatio > 1);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), pair.CentreDistance) { WithDoubleFlank = true });
        Assert.Null(report.LostAt);
        Assert.Null(report.Interference);
        Assert.InRange(report.Leading.Total, 0, HalfAnArcsecond);
        Assert.InRange(report.Trailing.Total, 0, HalfAnArcsecond);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Least * report.WorkingRadius, 1e-6);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Greatest * report.WorkingRadius, 1e-6);
        Assert.Equal(GearPair.ZeroBacklashDistance(one, other)!.Value, report.DoubleFlank!.Least, 1e-5);
        Assert.InRange(report.DoubleFlank.Distance.Total, 0, 1e-5);
        Assert.True(turn > 0);
    }
}
