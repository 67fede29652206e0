using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>
/// Printed sizes of rings and racks. The sources count x of a ring positive where it enlarges the ring; here, as in ISO 21771, positive thickens its teeth:
/// each x is entered with its sign turned.
/// </summary>
public sealed class RingAndRackTests
{
    [Fact]
    public void Ring_of_a_shifted_pair()
    {
        // Stock Drive Products / Sterling Instrument (SDP/SI), Elements of Metric Gear Technology, catalogue D785/D805, Table 5-1 (x2 = +0.5 there); from memory.
        const double printedShift = 0.5;
        var ring = RingGear.Create(new RingData(24, 3, TestRacks.A, 100, 0.5, -printedShift));
        Printed.Shows("72.000", 2 * ring.ReferenceRadius);
        Printed.Shows("67.658", 2 * ring.BaseRadius);
        Printed.Agrees(67.65786869658540365190, 2 * ring.BaseRadius);
        Printed.Shows("1.500", ring.ReferenceRadius - ring.TipRadius);
        Printed.Shows("69.000", 2 * ring.TipRadius);
        Printed.Shows("82.500", 2 * ring.RootRadius);
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later: the tip circle of an internal gear must not be smaller than its base circle,
    // z2 at least 34 at x = 0; from memory.
    [Theory]
    [InlineData(34, true)]
    [InlineData(33, false)]
    public void Fewest_teeth_of_a_ring(int teeth, bool exists)
    {
        Exception? e = Record.Exception(() => RingGear.Create(new RingData(teeth, 1, TestRacks.A, 60)));
        Assert.Equal(exists ? null : "tip-inside-base", (e as GearGeometryException)?.ShapeCase);
    }

    // SDP/SI, Elements of Metric Gear Technology, Table 10-17, between pins; from memory.
    [Fact]
    public void Between_pins_of_a_ring()
    {
        var ring = RingGear.Create(new RingData(40, 1, TestRacks.A, 60));
        Printed.Shows("0.0089467", PinInvolute(ring, 1.7));
        Printed.Shows("37.5951", BetweenPins(ring, 1.7));
    }

    // Industrial Press, Machinery's Handbook, 20th to 29th eds., checking internal spur gear sizes by measurement between wires of 1.44 in / pitch; from memory.
    [Theory]
    [InlineData(10, 14.5, "8.8337")]
    [InlineData(10, 17.5, "8.7383")]
    [InlineData(10, 20, "8.6617")]
    [InlineData(10, 25, "8.5209")]
    [InlineData(10, 30, "8.3966")]
    [InlineData(12, 17.5, "10.7404")]
    [InlineData(12, 20, "10.6623")]
    [InlineData(12, 25, "10.5210")]
    public void Between_wires_of_a_ring(int teeth, double degrees, string printed)
    {
        // The table is for tooth spaces only; so few teeth stand at full depth inside the base circle, so the tips are short here.
        BasicRack rack = TestRacks.A with { PressureAngle = TestRacks.Radians(degrees), Dedendum = 1 };
        var ring = RingGear.Create(new RingData(teeth, 1, rack, 20, 0, 0, 0, teeth - 0.1));
        Printed.Shows(printed, BetweenPins(ring, 1.44));
    }

    [Fact]
    public void Rack_and_its_pinion()
    {
        // KHK, Gear Technical Reference, 3010 and later, Table 4.5; from memory. H = 32 is the height of the reference line over the back.
        var bar = RackBar.Create(new RackBarData(3, TestRacks.A, 100, 32));
        var gear = ExternalGear.Create(new GearData(12, 3, TestRacks.A, 0.6));
        Printed.Shows("3.000", bar.TipHeight);
        Printed.Shows("6.750", bar.TipHeight - bar.RootHeight);
        Printed.Shows("36.000", 2 * gear.ReferenceRadius);
        Printed.Shows("33.829", 2 * gear.BaseRadius);
        Printed.Shows("4.800", gear.TipRadius - gear.ReferenceRadius);
        Printed.Shows("45.600", 2 * gear.TipRadius);
        Printed.Shows("32.100", 2 * gear.RootRadius);

        // Without backlash the pinion's reference circle rolls on the rack's line x m over the reference line.
        Printed.Shows("51.800", bar.Data.BackHeight + gear.ReferenceRadius + (gear.Data.ProfileShift * gear.Module));
    }

    // SDP/SI, Elements of Metric Gear Technology, Table 10-15, over pin measurement of a rack; from memory.
    [Fact]
    public void Over_a_pin_of_a_rack()
    {
        var bar = RackBar.Create(new RackBarData(1, TestRacks.A, 100, 14));
        Printed.Shows("1.5708", bar.ToothThickness);
        const double pin = 1.7;
        double alpha = bar.PressureAngle;
        double halfGap = (bar.Pitch / 2) - bar.SideAt(0);
        double height = ((pin / 2 / Math.Cos(alpha)) - halfGap) / Math.Tan(alpha);
        Printed.Shows("15.1774", bar.Data.BackHeight + height + (pin / 2));
        Assert.Equal(15.17737002092300310873, bar.Data.BackHeight + height + (pin / 2), 1e-12);
    }

    // The pin's centre lies on the parallel of both flanks: inv phi is half the gap's angle at the base circle less the pin's radius on it.
    private static double PinInvolute(RingGear ring, double pin) =>
        (Math.PI / ring.Teeth) - ring.HalfAngleAt(ring.BaseRadius) - (pin / 2 / ring.BaseRadius);

    private static double BetweenPins(RingGear ring, double pin) =>
        (2 * ring.BaseRadius / Math.Cos(InvoluteFunction.Inverse(PinInvolute(ring, pin)))) - pin;
}
