using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Base tangent lengths as they are printed, and back again to the thickness.</summary>
public sealed class SpanTests
{
    // First row: Kohara Gear Industry Co. (KHK), Gear Technical Reference, table 5.10; from memory. The others: base tangent lengths for m = 1 and 20 degrees
    // as handbooks after DIN 3960 print them; from memory.
    [Theory]
    [InlineData(3, 24, 0.4, 4, "32.8266")]
    [InlineData(1, 17, 0, 2, "4.6663")]
    [InlineData(1, 18, 0, 3, "7.6324")]
    [InlineData(1, 27, 0, 4, "10.7106")]
    [InlineData(1, 36, 0, 5, "13.7888")]
    public void Over_teeth(double module, int teeth, double shift, int over, string printed)
    {
        var gear = new GearData(teeth, module, TestRacks.A, shift);
        double span = Span.Over(gear, over);
        Printed.Shows(printed, span);
        Assert.Equal(gear.ToothThickness, Span.ThicknessOf(gear with { Thinning = 0.1 }, span, over), 1e-12);
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, table 5.10, kth = 3.78787 for z = 24, x = 0.4, taken to the nearest whole number; from memory.
    [Fact]
    public void The_count_that_touches_the_middle_of_the_flanks() => Assert.Equal(4, Span.BestCount(new GearData(24, 3, TestRacks.A, 0.4)));

    // W = m (2.9521 (k - 0.5) + 0.014 z + 0.684 x) as handbooks print it, with coefficients rounded to four digits; from memory.
    [Fact]
    public void The_formula_with_rounded_coefficients()
    {
        foreach ((int teeth, double shift, int over) in ((int, double, int)[])[(20, 0, 3), (45, 0.25, 6), (80, -0.1, 9)])
        {
            double rounded = (2.9521 * (over - 0.5)) + (0.014 * teeth) + (0.684 * shift);
            Assert.Equal(rounded, Span.Over(new GearData(teeth, 1, TestRacks.A, shift), over), 2e-3);
        }
    }
}
