using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Relations between thinning, distance and backlash.</summary>
public sealed class BacklashTests
{
    // Industrial Press, Machinery's Handbook, 20th to 29th eds., Backlash: excess depth of cut to obtain backlash; from memory.
    [Theory]
    [InlineData(14.5, "1.93", 1.933356547449369078320)]
    [InlineData(20, "1.37", 1.373738709727311139381)]
    [InlineData(25, "1.07", 1.072253460254779308178)]
    public void Excess_depth_of_cut_for_a_thinning(double degrees, string printed, double exact)
    {
        const double thinning = 0.1;
        var data = new GearData(40, 2, TestRacks.Iso('C', degrees));
        var thin = ExternalGear.Create(data with { Thinning = thinning });
        var full = ExternalGear.Create(data);
        double factor = (full.RootRadius - thin.RootRadius) / thinning;
        Printed.Shows(printed, factor);
        Assert.Equal(exact, factor, 1e-12);
        Assert.Equal(full.ToothThickness - thinning, thin.ToothThickness, 1e-14);
        Assert.Equal(full.TipRadius, thin.TipRadius);
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, 6.2, Table 6.1; from memory: jn = jt cos alpha,
    // jr = jt / (2 tan alpha_w), and jt = 2 delta_a tan alpha_w for a small change of distance.
    [Theory]
    [InlineData(17, 40, 0.0, 0.0, 20)]
    [InlineData(12, 24, 0.6, 0.36, 20)]
    [InlineData(30, 31, -0.2, 0.1, 14.5)]
    [InlineData(20, 90, 0.1, 0.2, 25)]
    public void First_order_relations_hold_in_the_limit(int z1, int z2, double x1, double x2, double degrees)
    {
        const double module = 1;
        BasicRack rack = TestRacks.Iso('C', degrees);
        var one = ExternalGear.Create(new GearData(z1, module, rack, x1));
        var two = ExternalGear.Create(new GearData(z2, module, rack, x2));
        double closed = GearPair.ZeroBacklashDistance(one, two)!.Value;
        const double change = 1e-5;
        var pair = GearPair.At(one, two, closed + change);
        double tangent = Math.Tan(pair.WorkingPressureAngle);
        Assert.Equal(pair.CircumferentialBacklash * Math.Cos(pair.WorkingPressureAngle), pair.NormalBacklash, 1e-15);
        Assert.Equal(change, pair.RadialBacklash!.Value, 1e-12);
        Assert.Equal(1, pair.CircumferentialBacklash / (2 * change * tangent), 1e-5);
        Assert.Equal(1, pair.CircumferentialBacklash / (2 * tangent) / pair.RadialBacklash.Value, 1e-5);
        Assert.Equal(pair.CircumferentialBacklash, pair.FirstAngularBacklash!.Value * pair.FirstWorkingRadius, 1e-15);
        Assert.Equal(pair.CircumferentialBacklash, pair.SecondAngularBacklash!.Value * pair.SecondWorkingRadius, 1e-15);
    }

    // Industrial Press, Machinery's Handbook, 20th to 29th eds., AGMA backlash allowance and tolerance for fine-pitch gearing; from memory:
    // the mesh's backlash is twice the thinning of each gear, in.
    [Theory]
    [InlineData("C 121-200", 150, 0.0002, "0.0004")]
    [InlineData("C 121-200", 150, 0.0005, "0.0010")]
    [InlineData("D 20-60", 40, 0.00025, "0.0005")]
    [InlineData("D 20-60", 40, 0.0005, "0.0010")]
    [InlineData("D 121-200", 150, 0.0001, "0.0002")]
    [InlineData("D 121-200", 150, 0.0002, "0.0004")]
    [InlineData("E 61-120", 100, 0.0002, "0.0004")]
    public void Thinning_of_both_gears_adds_up_at_the_standard_distance(string designation, double pitch, double thinning, string printed)
    {
        Assert.NotEmpty(designation);
        const double inch = 25.4;
        double module = inch / pitch;
        var one = ExternalGear.Create(new GearData(20, module, TestRacks.A, 0, thinning * inch));
        var two = ExternalGear.Create(new GearData(48, module, TestRacks.A, 0, thinning * inch));
        double backlash = GearPair.At(one, two, 34 * module).CircumferentialBacklash / inch;
        Printed.Shows(printed, backlash);
        Assert.Equal(2 * thinning, backlash, 1e-12);
    }
}
