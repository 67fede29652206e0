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
        Holds(one, other, GearPair.At(one, other, distance));
    }

    [Theory]
    [InlineData(18, 54, 0.02, 18.0)]
    [InlineData(20, 90, 0.03, 35.02)]
    public void A_pinion_in_a_ring_either_driving(int first, int second, double thinning, double distance)
    {
        Toothing pinion = Toothing.Of(new GearData(first, 1, TestRacks.A, 0, thinning, first + 1.6));
        Toothing ring = Toothing.Of(new RingData(second, 1, TestRacks.A, second + 12, null, 0, thinning, second - 1.6));
        GearPair pair = GearPair.At(pinion, ring, distance);
        Holds(pinion, ring, pair, 1e-4);
        Holds(ring, pinion, pair, 1e-4);
    }

    [Theory]
    [InlineData(18, 0, 9.1)]
    [InlineData(30, 0.2, 15.3)]
    public void A_gear_over_a_rack(int teeth, double shift, double height)
    {
        Toothing gear = Toothing.Of(new GearData(teeth, 1, TestRacks.A, shift, 0.02));
        Toothing rack = Toothing.Of(new RackBarData(1, TestRacks.A, 80, 5));
        Holds(gear, rack, GearPair.At(gear, rack, height), 1e-3);
    }

    // Where all that is known are curves, the sizes that are not told are read off them.
    [Fact]
    public void Sizes_are_read_off_the_outline()
    {
        var gear = (ExternalGear)Toothing.Of(new GearData(23, 1.25, TestRacks.A, 0.1, 0.02));
        RollGear read = RollGear.OfOutline("read", gear.Outline());
        Assert.Equal(23, read.Teeth);
        Assert.Equal(gear.TipRadius, read.TipRadius, 1e-9);
        Assert.Equal(gear.RootRadius, read.RootRadius, 1e-9);
        Assert.Equal(2 * Math.PI * gear.BaseRadius / 23, read.BasePitch, 1e-9);
        Assert.Equal(gear.FormRadius, read.FormRadius, 0.02);
        Assert.Null(read.ReferenceRadius);
    }

    private static void Holds(Toothing one, Toothing other, GearPair pair, double closing = 1e-5)
    {
        Assert.True(pair.ContactRatio > 1);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), pair.CentreDistance) { WithDoubleFlank = true });
        Assert.Null(report.LostAt);
        Assert.Null(report.Interference);
        Assert.InRange(report.Leading.Total, 0, HalfAnArcsecond);
        Assert.InRange(report.Trailing.Total, 0, HalfAnArcsecond);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Least * report.WorkingRadius, 1e-6);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Greatest * report.WorkingRadius, 1e-6);
        Assert.Equal(GearPair.ZeroBacklashDistance(one, other)!.Value, report.DoubleFlank!.Least, closing);
        Assert.InRange(report.DoubleFlank.Distance.Total, 0, closing);
    }
}
