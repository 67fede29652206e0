using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>A gear over a rack.</summary>
public sealed class RackPairTests
{
    [Fact]
    public void Shifted_gear_on_a_rack()
    {
        // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, Table 4.5; from memory. The exact values come from an independent calculation.
        const double pitchLineOverBack = 32;
        var gear = ExternalGear.Create(new GearData(12, 3, TestRacks.A, 0.6));
        var rack = RackBar.Create(new RackBarData(3, TestRacks.A, 100, pitchLineOverBack));
        double height = GearPair.ZeroBacklashDistance(gear, rack)!.Value;
        Shows("51.800", 51.8, height + pitchLineOverBack);
        Shows("36.000", 36, 2 * gear.ReferenceRadius);
        Shows("33.829", 33.82893434829270182595, 2 * gear.BaseRadius);
        Shows("4.800", 4.8, gear.TipRadius - gear.ReferenceRadius);
        Shows("3.000", 3, rack.TipHeight);
        Shows("6.750", 6.75, gear.TipRadius - gear.RootRadius);
        Shows("45.600", 45.6, 2 * gear.TipRadius);
        Shows("32.100", 32.1, 2 * gear.RootRadius);
        GearPair pair = GearPair.At(gear, rack, height);
        Assert.Equal(0, pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(TestRacks.Radians(20), pair.WorkingPressureAngle);
        Assert.Equal(0.75, pair.FirstTipClearance, 1e-12);
        Assert.Equal(0.75, pair.SecondTipClearance, 1e-12);
    }

    private static void Shows(string printed, double exact, double value)
    {
        Printed.Shows(printed, value);
        Printed.Agrees(exact, value, 1e-14);
    }
}
