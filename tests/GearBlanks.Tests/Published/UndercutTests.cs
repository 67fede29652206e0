using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Where generating begins to undercut an external gear.</summary>
public sealed class UndercutTests
{
    private const string Sdp = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, 4.3 Undercutting, eq. (4-1), page T-36";
    private const string Mott = "Pearson Prentice Hall (R. L. Mott), Machine Elements in Mechanical Design, 4th ed. 2004, p. 320, section 8-5";

    [Theory]
    [InlineData(14.5, 32, Sdp)]
    [InlineData(20, 18, Sdp)]
    [InlineData(14.5, 32, Mott)]
    public void The_fewest_teeth_without_undercut_are_the_published_ones(double degrees, int fewest, string source)
    {
        Assert.NotEmpty(source);
        BasicRack rack = StraightToAddendum(degrees);
        Assert.Null(ExternalGear.Create(new GearData(fewest, 1, rack)).Undercut);
        Assert.NotNull(ExternalGear.Create(new GearData(fewest - 1, 1, rack)).Undercut);
    }

    // ISO 21771:2007 and textbooks: x_min = haP - z sin^2 alpha / 2 (formula published, from memory; the values were worked from it).
    [Theory]
    [InlineData(10, "0.415", 0.4151111077974450880060)]
    [InlineData(12, "0.298", 0.2981333293569341056072)]
    public void The_least_shift_without_undercut_is_the_published_one(int teeth, string printed, double exact)
    {
        double limit = LimitOfUndercut(StraightToAddendum(20), teeth);
        Assert.Equal(exact, limit, 1e-9);
        Printed.Shows(printed, limit);
    }

    [Fact]
    public void The_limit_of_teeth_is_two_addenda_over_sine_squared()
    {
        // Various textbooks, limit of undercut 2 ha / sin^2 alpha = 17.097; from memory. From the limits of shift at two tooth counts.
        BasicRack rack = StraightToAddendum(20);
        double atTen = LimitOfUndercut(rack, 10);
        double teeth = 10 + (atTen / (atTen - LimitOfUndercut(rack, 11)));
        Printed.Shows("17.097", teeth);
        Assert.Equal(17.0972643408260609027, teeth, 1e-7);
    }

    // The height of the straight flank's end under the pitch line, hf - rho (1 - sin alpha): ISO 53 racks at 20 degrees (Table 2, from memory).
    [Theory]
    [InlineData('A', "1.000")]
    [InlineData('B', "1.053")]
    [InlineData('C', "1.086")]
    [InlineData('D', "1.143")]
    public void Limits_of_the_iso_racks(char type, string printed)
    {
        foreach (int teeth in (int[])[10, 17, 25])
        {
            double sine = Math.Sin(TestRacks.Radians(20));
            Printed.Shows(printed, LimitOfUndercut(TestRacks.Iso(type), teeth) + (teeth * sine * sine / 2));
        }
    }

    // Straight down to the addendum, as the formula 2 ha / sin^2 alpha supposes: c = rho (1 - sin alpha).
    private static BasicRack StraightToAddendum(double degrees) =>
        new("straight to the addendum", TestRacks.Radians(degrees), 1, 1.25, 0.25 / (1 - Math.Sin(TestRacks.Radians(degrees))));

    // Found from the gears alone, by halving.
    private static double LimitOfUndercut(BasicRack rack, int teeth)
    {
        (double undercut, double free) = (-1, 1.2);
        while (free - undercut > 1e-12)
        {
            double x = (undercut + free) / 2;
            bool isUndercut = IsUndercutOrGone(new GearData(teeth, 2, rack, x));
            (undercut, free) = isUndercut ? (x, free) : (undercut, x);
        }

        return free;
    }

    private static bool IsUndercutOrGone(GearData data)
    {
        try
        {
            return ExternalGear.Create(data).Undercut is not null;
        }
        catch (GearGeometryException)
        {
            return true;
        }
    }
}
