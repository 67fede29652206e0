using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Transverse contact ratios. The exact values come from an independent calculation with 40 digits.</summary>
public sealed class ContactRatioTests
{
    // Straight to below the active flank, so that the tip circles alone bound the contact, as the tables suppose.
    private static readonly BasicRack Deep = new("deep", TestRacks.Radians(20), 1, 1.25, 0.25 / (1 - Math.Sin(TestRacks.Radians(20))));

    private static GearPair Pair(BasicRack rack, double module, int z1, int z2, double? tip1 = null, double? tip2 = null)
    {
        var one = ExternalGear.Create(new GearData(z1, module, rack, 0, 0, tip1));
        var two = ExternalGear.Create(new GearData(z2, module, rack, 0, 0, tip2));
        return GearPair.At(one, two, module * (z1 + z2) / 2);
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, table of transverse contact ratios of standard spur gears, 20 degrees; from memory.
    [Theory]
    [InlineData(20, "1.557", 1.556838303375158682025)]
    [InlineData(30, "1.654", 1.653513880902961502112)]
    [InlineData(35, "1.687", 1.686630768157495570009)]
    [InlineData(40, "1.714", 1.713533623767762142500)]
    [InlineData(50, "1.755", 1.754673284698101950497)]
    [InlineData(55, "1.771", 1.770776410730707126060)]
    public void Equal_standard_gears(int teeth, string printed, double exact)
    {
        double ratio = Pair(TestRacks.A, 1, teeth, teeth).ContactRatio;
        Printed.Shows(printed, ratio);
        Assert.Equal(exact, ratio, 1e-13);
    }

    [Fact]
    public void Where_the_remembered_digits_are_cut_off_the_calculation_holds()
    {
        // The same table at 17/17 is remembered as 1.514: the exact value rounds to 1.515. These gears are a hair's breadth undercut (17 < 17.097),
        // but their flanks still reach as far as the mate's tips do.
        double ratio = Pair(TestRacks.A, 1, 17, 17).ContactRatio;
        Assert.Equal(1.514800445392307900894, ratio, 1e-13);
        Printed.Shows("1.515", ratio);
    }

    [Fact]
    public void A_pair_of_given_diameters()
    {
        // Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, Table 11-1, page T-109: the transverse section
        // of a helical pair. Module and base diameters are those of the table; the teeth follow from them.
        double angle = TestRacks.Radians(22.79588);
        var rack = new BasicRack("transverse", angle, 1, 1.2, 0.2);
        const double module = 3.4641;
        (double z1, double z2) = (38.322 / module / Math.Cos(angle), 191.611 / module / Math.Cos(angle));
        Assert.Equal((12, 60), ((int)Math.Round(z1), (int)Math.Round(z2)));
        var one = ExternalGear.Create(new GearData(12, module, rack, 0.09809, 0, 48.153));
        var two = ExternalGear.Create(new GearData(60, module, rack, 0, 0, 213.842));
        var pair = GearPair.At(one, two, 125);

        // The exact figure for the printed (rounded) base diameters is 1.29388.
        Assert.Equal(23.1126, TestRacks.Degrees(pair.WorkingPressureAngle), 0.0005);
        Assert.Equal(1.293880711472247867289, pair.ContactRatio, 1e-4);
        Printed.Shows("1.294", pair.ContactRatio);
    }

    [Fact]
    public void Path_of_contact_of_a_coarse_pair()
    {
        // S. Chand (R. S. Khurmi and J. K. Gupta), Theory of Machines, 2005, ch. 12, Example 12.6; from memory: m 12, 20 degrees, 30/80, addendum 10 mm.
        GearPair pair = Pair(Deep, 12, 30, 80, 380, 980);
        double basePitch = 2 * Math.PI * ((ExternalGear)pair.First).BaseRadius / 30;
        double path = pair.ContactRatio * basePitch;
        Assert.Equal(52.25823910353275294582, path, 1e-11);
        Printed.Shows("52.3", path);
        Printed.Shows("1.5", pair.ContactRatio);
        Assert.Equal(1.475155614121525510704, pair.ContactRatio, 1e-13);

        // The printed arc of contact, 55.66, follows from the rounded path 52.3; the exact one is 55.61.
        Printed.Shows("55.61", path / Math.Cos(pair.WorkingPressureAngle));
    }
}
