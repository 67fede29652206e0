using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>
/// A pinion in a ring. The exact values come from an independent calculation with 40 digits. The handbooks count a ring's shift positive where it enlarges the
/// ring, ISO 21771 where it thickens the teeth: x of the ring is here the printed one with the other sign.
/// </summary>
public sealed class InternalPairTests
{
    // Straight to below the active flank, so that the tip circles alone bound the contact, as the tables suppose.
    private static readonly BasicRack Rack = new("deep", TestRacks.Radians(20), 1, 1.25, 0);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Shifted_pair(bool ringFirst)
    {
        // Stock Drive Products / Sterling Instrument (SDP/SI), Elements of Metric Gear Technology, D785/D805, Table 5-1; from memory.
        var ring = RingGear.Create(new RingData(24, 3, Rack, 100, 0.1, -0.5));
        var pinion = ExternalGear.Create(new GearData(16, 3, Rack));
        double distance = (ringFirst ? GearPair.ZeroBacklashDistance(ring, pinion) : GearPair.ZeroBacklashDistance(pinion, ring))!.Value;
        GearPair pair = ringFirst ? GearPair.At(ring, pinion, distance) : GearPair.At(pinion, ring, distance);
        (double first, double second) = (pair.FirstWorkingRadius, pair.SecondWorkingRadius);
        (double ofPinion, double ofRing) = ringFirst ? (second, first) : (first, second);
        Shows("0.060401", 0.06040066315061174113519, InvoluteFunction.Inv(pair.WorkingPressureAngle));
        Shows("13.1683", 13.16826770674235197386, distance);
        Shows("45.105", 45.10524579772360243460, 2 * pinion.BaseRadius);
        Shows("67.658", 67.65786869658540365190, 2 * ring.BaseRadius);
        Shows("52.673", 52.67307082696940789544, 2 * ofPinion);
        Shows("79.010", 79.00960624045411184315, 2 * ofRing);
        Shows("54.000", 54, 2 * pinion.TipRadius);
        Shows("69.000", 69, 2 * ring.TipRadius);
        Shows("40.500", 40.5, 2 * pinion.RootRadius);
        Shows("82.500", 82.5, 2 * ring.RootRadius);

        // The handbook prints 31.0937 for the angle and, from the rounded angle, 0.389426 for y.
        Shows("31.0936", 31.09362066307193058836, TestRacks.Degrees(pair.WorkingPressureAngle));
        Shows("0.389423", 0.3894225689141173246197, (distance / 3) - 4);
        Assert.Equal(0, pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(0, pair.RadialBacklash!.Value, 1e-12);
        Assert.Equal(41.25 - distance - 27, ringFirst ? pair.SecondTipClearance : pair.FirstTipClearance, 1e-12);
        Assert.Equal(34.5 - distance - 20.25, ringFirst ? pair.FirstTipClearance : pair.SecondTipClearance, 1e-12);
    }

    // SDP/SI, Elements of Metric Gear Technology, D785/D805, Table 5-4, page T-46: rings of 50 teeth with pinions of nearly as many. The margins of eqs. (5-4), (5-6) and
    // (5-9) were worked from the formulas; the page says that neither involute nor trochoid interference occurs, and trimming interference in all.
    [Theory]
    [InlineData(49, 1.0, "61.0605", "0.971", "1.105", 1.105485945055135919051, 0.1812494749786911572392, 0.02150294751585623331083, null)]
    [InlineData(47, 0.4, "37.4155", "1.775", "1.726", 1.726338307914697450517, 0.3068768669651793707567, 0.002984608923753116421252, null)]
    [InlineData(46, 0.3, "32.4521", "2.227", "1.835", 1.834855068127641681050, 0.3358986087557860329754, 0.002899053150730606584991, -0.038539)]
    [InlineData(45, 0.2, "28.2019", "2.666", "1.933", 1.933469746947875685274, 0.3611694793220110041674, 0.001613340513847807668141, -0.0299667)]
    [InlineData(44, 0.11, "24.5356", "3.099", "2.014", 2.013768993094512217847, 0.3856525150483059476591, 0.0002131834057614652033383, -0.0261092)]
    [InlineData(42, 0.01, "20.3854", "4.010", "2.088", 2.087788921034232096460, 0.4080419747187773509431, 0.000266042056319396046323, -0.0196529)]
    public void Nearly_equal_tooth_counts(
        int teeth, double shift, string angle, string distance, string contactRatio, double exactRatio, double involute, double trochoid, double? trimming)
    {
        var ring = RingGear.Create(new RingData(50, 1, Rack, 60, 0, -shift));
        var pinion = ExternalGear.Create(new GearData(teeth, 1, Rack));
        var pair = (RingPair)GearPair.At(pinion, ring, GearPair.ZeroBacklashDistance(pinion, ring)!.Value);
        Printed.Shows(angle, TestRacks.Degrees(pair.WorkingPressureAngle));
        Printed.Shows(distance, pair.CentreDistance);
        Printed.Shows(contactRatio, pair.ContactRatio);
        Assert.Equal(exactRatio, pair.ContactRatio, 1e-11);
        Assert.Equal(involute, pair.InvoluteClearance / ring.BaseRadius / Math.Tan(pair.WorkingPressureAngle), 1e-12);
        Assert.Equal(trochoid, pair.TrochoidClearance!.Value / ring.TipRadius, 1e-11);
        if (trimming is { } margin)
        {
            Assert.Equal(margin, pair.TrimmingClearance!.Value / pinion.TipRadius, 1e-6);
        }
        else
        {
            // The pinion's tip circle is no smaller than the ring's: it cannot be brought in sideways at all.
            Assert.Equal(ring.TipRadius - pinion.TipRadius, pair.TrimmingClearance!.Value, 1e-13);
            Assert.True(pair.TrimmingClearance < 0);
        }
    }

    // SDP/SI, Elements of Metric Gear Technology, D785/D805, section 5.2(b), page T-45, asks standard gears for a difference larger than 9; by its own formula 9 is enough
    // for pinions of 25 to 60 teeth, and 8 from 100 on.
    [Theory]
    [InlineData(25, 9)]
    [InlineData(40, 9)]
    [InlineData(60, 9)]
    [InlineData(100, 8)]
    [InlineData(200, 8)]
    public void Smallest_difference_without_trochoid_interference(int teeth, int difference)
    {
        Assert.True(Standard(difference).TrochoidClearance > 0);
        Assert.True(Standard(difference - 1).TrochoidClearance < 0);

        // The standard tip of a ring of 33 teeth lies inside its base circle: its tip is cut there.
        RingPair Standard(int apart) => Pair(new GearData(teeth, 1, Rack), new RingData(teeth + apart, 1, Rack, teeth + 30, 0, 0, 0, teeth + apart == 33 ? 31.02 : null));
    }

    // Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, internal gears: the tip circle must not be smaller than the base circle; from memory.
    [Fact]
    public void Fewest_teeth_of_a_standard_ring()
    {
        const double limit = 33.16343747752635842648;
        Assert.Equal(limit, 2 / (1 - Math.Cos(TestRacks.Radians(20))), 1e-12);
        Assert.Equal(34, RingGear.Create(new RingData(34, 1, Rack, 50)).Teeth);
        Assert.Equal("tip-inside-base", Assert.Throws<GearGeometryException>(() => RingGear.Create(new RingData(33, 1, Rack, 50))).ShapeCase);
    }

    // SDP/SI, Elements of Metric Gear Technology, D785/D805, Table 5-3a, trimming limit against a standard pinion cutter (of addendum 1.25 m); from memory.
    // Table 5-3b, page T-46, the last: a cutter shifted by 0.0075 zc + 0.05.
    [Theory]
    [InlineData(17, 0, 35)]
    [InlineData(20, 0, 38)]
    [InlineData(30, 0, 48)]
    [InlineData(40, 0, 58)]
    [InlineData(50, 0, 68)]
    [InlineData(15, 0.1625, 36)]
    public void Fewest_teeth_of_a_ring_that_a_cutter_moves_into(int cutter, double shift, int ringTeeth)
    {
        Assert.True(Cut(ringTeeth).TrimmingClearance >= 0);
        Assert.True(Cut(ringTeeth - 1).TrimmingClearance < 0);

        RingPair Cut(int teeth) => Pair(new GearData(cutter, 1, Rack, shift, 0, cutter + (2 * (1.25 + shift))), new RingData(teeth, 1, Rack, teeth + 30, 0));
    }

    private static RingPair Pair(GearData pinion, RingData ring)
    {
        (var one, var other) = (ExternalGear.Create(pinion), RingGear.Create(ring));
        return (RingPair)GearPair.At(one, other, GearPair.ZeroBacklashDistance(one, other)!.Value);
    }

    private static void Shows(string printed, double exact, double value)
    {
        Printed.Shows(printed, value);
        Printed.Agrees(exact, value, 1e-13);
    }
}
