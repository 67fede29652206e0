using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Proportions of basic racks, read off generated gears, and the widest round a rack can have.</summary>
public sealed class BasicRackTests
{
    private const string Iso53 = "ISO 53:1998 (JIS B 1701-1 identical), Table 2; from memory";

    [Theory]
    [InlineData('A', "1", "0.25", "1.25", Iso53)]
    [InlineData('B', "1", "0.25", "1.25", Iso53)]
    [InlineData('D', "1", "0.4", "1.4", Iso53)]
    public void Addendum_clearance_and_dedendum_show_in_the_gear(char type, string addendum, string clearance, string dedendum, string source)
    {
        Assert.NotEmpty(source);
        var gear = ExternalGear.Create(new GearData(30, 1, TestRacks.Iso(type)));
        Printed.Shows(addendum, gear.TipRadius - gear.ReferenceRadius);
        Printed.Shows(dedendum, gear.ReferenceRadius - gear.RootRadius);
        Printed.Shows(clearance, gear.ReferenceRadius - gear.RootRadius - (gear.TipRadius - gear.ReferenceRadius));
    }

    // ISO 53:1998, Table 2, and DIN 867:1986, basic rack (rho fP at most 0.38 at c 0.25); from memory.
    [Theory]
    [InlineData('A', "0.38", 0.3799508411451843411899)]
    [InlineData('D', "0.39", 0.3939401111419510452296)]
    public void The_printed_round_is_the_rounded_limit(char type, string printed, double exact)
    {
        BasicRack rack = TestRacks.Iso(type);
        Printed.Shows(printed, rack.FilletRadius);

        // A: the largest round that clears the mating rack's tip, so the straight flank reaches down to the addendum, and undercut begins at x = 1 - z sin^2 / 2.
        // D: the full round.
        double limit = type == 'D' ? WidestRound(20, 1.4) : RoundToAddendum(rack);
        Printed.Shows(printed, limit);
        Assert.Equal(exact, limit, 1e-8);
    }

    // From memory (workshop notes on the same proportions at 25 degrees): .318 for a dedendum of 1.25, .208 for 1.40; no source.
    [Theory]
    [InlineData(25, 1.25, "0.318")]
    [InlineData(25, 1.40, "0.208")]
    public void The_widest_round_at_other_angles(double degrees, double dedendum, string printed)
    {
        double limit = WidestRound(degrees, dedendum);
        Printed.Shows(printed, limit);
        double alpha = TestRacks.Radians(degrees);
        Assert.Equal(((Math.PI / 4) - (dedendum * Math.Tan(alpha))) * Math.Cos(alpha) / (1 - Math.Sin(alpha)), limit, 1e-8);
    }

    [Theory]
    [InlineData('A')]
    [InlineData('D')]
    public void Types_with_wide_rounds_do_not_exist_at_25_degrees(char type)
    {
        var e = Assert.Throws<GearGeometryException>(() => ExternalGear.Create(new GearData(30, 1, TestRacks.Iso(type, 25))));
        Assert.Equal("rack-round-too-wide", e.ShapeCase);
        Assert.Equal(WidestRound(25, type == 'A' ? 1.25 : 1.4), e.Limit, 1e-8);

        // The advice is rounded down, so that it works.
        double advised = type == 'A' ? 0.317 : 0.208;
        Assert.Contains(FormattableString.Invariant($"at most {advised} modules"), e.Message, StringComparison.Ordinal);
        _ = ExternalGear.Create(new GearData(30, 1, TestRacks.Iso(type, 25) with { FilletRadius = advised }));
    }

    // Machinery's Handbook tables and R. L. Mott, Machine Elements in Mechanical Design, 4th ed. 2004, p. 314, Table 8-4:
    // fine pitch (P at least 20) dedendum 1.200/P + 0.002 in; coarse 1.25/P. ANSI B6.7:1977 the same clearance 0.200/P + 0.002; from memory.
    [Theory]
    [InlineData(24, 1.2, 0.002)]
    [InlineData(64, 1.2, 0.002)]
    [InlineData(12, 1.25, 0)]
    public void Inch_dedenda(double pitch, double factor, double allowance)
    {
        const double inch = 25.4;
        var rack = new BasicRack("inch", TestRacks.Radians(20), 1, factor, 0.25, allowance * inch);
        var gear = ExternalGear.Create(new GearData(40, inch / pitch, rack));
        Assert.Equal((factor / pitch) + allowance, (gear.ReferenceRadius - gear.RootRadius) / inch, 1e-14);
        Assert.Equal(1 / pitch, (gear.TipRadius - gear.ReferenceRadius) / inch, 1e-14);
    }

    // The tooth's thickness at the reference circle is 1.5708/P (ANSI B6.7:1977; from memory).
    [Fact]
    public void Tooth_thickness_is_half_the_pitch() =>
        Printed.Shows("1.5708", ExternalGear.Create(new GearData(40, 1, TestRacks.A)).ToothThickness);

    private static double RoundToAddendum(BasicRack rack)
    {
        // Undercut begins where the straight flank ends; at z = 2 / sin^2 alpha and x = 0 that is at the addendum: between whole tooth counts by shift.
        double sine = Math.Sin(rack.PressureAngle);
        double shift = 1 - (17 * sine * sine / 2);
        return Halve(0.2, 0.45, round => ExternalGear.Create(new GearData(17, 1, rack with { FilletRadius = round }, shift)).Undercut is null);
    }

    private static double WidestRound(double degrees, double dedendum) => Halve(0.7, 0.05, round =>
    {
        try
        {
            _ = ExternalGear.Create(new GearData(30, 1, new BasicRack("round", TestRacks.Radians(degrees), 1, dedendum, round)));
            return true;
        }
        catch (GearGeometryException e) when (e.ShapeCase == "rack-round-too-wide")
        {
            return false;
        }
    });

    private static double Halve(double no, double yes, Func<double, bool> holds)
    {
        for (int i = 0; i < 50; i++)
        {
            double middle = (no + yes) / 2;
            (no, yes) = holds(middle) ? (no, middle) : (middle, yes);
        }

        return yes;
    }
}
