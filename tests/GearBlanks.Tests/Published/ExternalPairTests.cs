using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Worked pairs with all their diameters. The exact values come from an independent calculation with 40 digits.</summary>
public sealed class ExternalPairTests
{
    private static readonly BasicRack Rack = TestRacks.A;

    private static ExternalGear Gear(int teeth, double module, double x = 0, double? tip = null) =>
        ExternalGear.Create(new GearData(teeth, module, Rack, x, 0, tip));

    private static void Check(string printed, double exact, double value)
    {
        Printed.Shows(printed, value);
        Printed.Agrees(exact, value, 1e-14);
    }

    [Fact]
    public void Standard_pair()
    {
        // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, Table 4.1 standard spur gears; from memory.
        (ExternalGear one, ExternalGear two) = (Gear(12, 3), Gear(24, 3));
        double distance = GearPair.ZeroBacklashDistance(one, two)!.Value;
        var pair = GearPair.At(one, two, distance);
        Check("54.000", 54, distance);
        Check("36.000", 36, 2 * one.ReferenceRadius);
        Check("72.000", 72, 2 * two.ReferenceRadius);
        Check("33.829", 33.82893434829270182595, 2 * one.BaseRadius);
        Check("67.658", 67.65786869658540365190, 2 * two.BaseRadius);
        Check("3.000", 3, one.TipRadius - one.ReferenceRadius);
        Check("3.000", 3, two.TipRadius - two.ReferenceRadius);
        Check("6.750", 6.75, one.TipRadius - one.RootRadius);
        Check("42.000", 42, 2 * one.TipRadius);
        Check("78.000", 78, 2 * two.TipRadius);
        Check("28.500", 28.5, 2 * one.RootRadius);
        Check("64.500", 64.5, 2 * two.RootRadius);
        Assert.Equal(20, TestRacks.Degrees(pair.WorkingPressureAngle), 1e-12);
    }

    [Fact]
    public void Shifted_pair_by_the_tip_clearance_rule()
    {
        // KHK, Gear Technical Reference, 3010 and later, Table 4.3 profile shifted spur gears; from memory. Tips by ha1 = (1 + y - x2) m.
        (double x1, double x2) = (0.6, 0.36);
        double distance = GearPair.ZeroBacklashDistance(Gear(12, 3, x1), Gear(24, 3, x2))!.Value;
        double y = (distance - 54) / 3;
        (double tip1, double tip2) = (36 + (6 * (1 + y - x2)), 72 + (6 * (1 + y - x1)));
        (ExternalGear one, ExternalGear two) = (Gear(12, 3, x1, tip1), Gear(24, 3, x2, tip2));
        var pair = GearPair.At(one, two, distance);
        Check("0.034316", 0.03431612969486723857170, InvoluteFunction.Inv(pair.WorkingPressureAngle));
        Check("26.0886", 26.08856344206988449398, TestRacks.Degrees(pair.WorkingPressureAngle));
        Printed.Shows("0.83329", y);
        Assert.Equal(0.8332899067683940741977, y, 1e-14);
        Check("56.4999", 56.49986972030518222259, distance);
        Check("33.8289", 33.82893434829270182595, 2 * one.BaseRadius);
        Check("67.6579", 67.65786869658540365190, 2 * two.BaseRadius);
        Check("37.667", 37.66657981353678814840, 2 * pair.FirstWorkingRadius);
        Check("75.333", 75.33315962707357629679, 2 * pair.SecondWorkingRadius);
        Check("4.420", 4.419869720305182222593, one.TipRadius - one.ReferenceRadius);
        Check("3.700", 3.699869720305182222593, two.TipRadius - two.ReferenceRadius);
        Check("6.370", 6.369869720305182222593, one.TipRadius - one.RootRadius);
        Check("6.370", 6.369869720305182222593, two.TipRadius - two.RootRadius);
        Check("44.840", 44.83973944061036444519, 2 * one.TipRadius);
        Check("79.400", 79.39973944061036444519, 2 * two.TipRadius);
        Check("32.100", 32.1, 2 * one.RootRadius);
        Check("66.660", 66.66, 2 * two.RootRadius);
        Assert.Equal(1.20210157005150343739, pair.ContactRatio, 1e-13);
        Assert.Equal(0.75, pair.FirstTipClearance, 1e-12);
        Assert.Equal(0.75, pair.SecondTipClearance, 1e-12);
    }

    [Fact]
    public void Sum_of_shifts_from_a_distance()
    {
        // KHK, Gear Technical Reference, 3010 and later, Table 4.4 from centre distance to the sum of shifts; from memory.
        var pair = GearPair.At(Gear(12, 3, 0.48), Gear(24, 3, 0.48), 56.4999);
        Check("26.0886", 26.08862615288655886278, TestRacks.Degrees(pair.WorkingPressureAngle));
        Printed.Shows("0.8333", (pair.CentreDistance - 54) / 3);

        // The gears whose shifts sum to 0.96001297... have no backlash at that distance.
        const double exact = 0.9600129776086809906506;
        Printed.Shows("0.9600", exact);
        Assert.Equal(56.4999, GearPair.ZeroBacklashDistance(Gear(12, 3, 0.6), Gear(24, 3, exact - 0.6))!.Value, 1e-12);
        Assert.Equal(0, GearPair.At(Gear(12, 3, 0.6), Gear(24, 3, exact - 0.6), 56.4999).CircumferentialBacklash, 1e-12);
    }

    // ISO 14635-1:2000 (also DIN 51354), test gears A and C, table of gear data; from memory.
    [Theory]
    [InlineData("A", 0.8532, -0.5, 88.77, 112.5, 1.361081761758922374791)]
    [InlineData("C", 0.1817, 0.1715, 82.46, 118.36, 1.437536953666709273217)]
    public void Test_gears(string type, double x1, double x2, double tip1, double tip2, double contactRatio)
    {
        Assert.NotEmpty(type);
        (ExternalGear one, ExternalGear two) = (Gear(16, 4.5, x1, tip1), Gear(24, 4.5, x2, tip2));
        var pair = GearPair.At(one, two, 91.5);
        Check("22.44", 22.43879125272060223713, TestRacks.Degrees(pair.WorkingPressureAngle));
        Check("73.2", 73.2, 2 * pair.FirstWorkingRadius);
        Check("109.8", 109.8, 2 * pair.SecondWorkingRadius);
        Assert.Equal(contactRatio, pair.ContactRatio, 1e-12);

        const double sum = 0.3531805080343532140213;
        Printed.Shows("0.3532", sum);
        Assert.Equal(91.5, GearPair.ZeroBacklashDistance(Gear(16, 4.5, 0.2), Gear(24, 4.5, sum - 0.2))!.Value, 1e-12);
        Assert.Equal(91.5, GearPair.ZeroBacklashDistance(one, two)!.Value, 1e-4);
    }

    [Fact]
    public void Inch_pair()
    {
        // Pearson Prentice Hall (R. L. Mott), Machine Elements in Mechanical Design, 4th ed. 2004, p. 320, example problem; 12 diametral pitch.
        const double inch = 25.4;
        (ExternalGear one, ExternalGear two) = (Gear(11, inch / 12), Gear(18, inch / 12));
        Check("0.1309", 0.1308996938995747182693, one.ToothThickness / inch);
        Check("1.2083", 1.208333333333333333333, GearPair.ZeroBacklashDistance(one, two)!.Value / inch);
        Check("0.9167", 0.9166666666666666666667, 2 * one.ReferenceRadius / inch);
        Check("1.500", 1.5, 2 * two.ReferenceRadius / inch);
        Check("0.8614", 0.8613849023870826853829, 2 * one.BaseRadius / inch);
        Check("1.4095", 1.409538931178862576081, 2 * two.BaseRadius / inch);
    }
}
