using GearBlanks.Curves;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>The mate's tip corner as points of the tooth that it passes: at the end of contact it touches the flank there.</summary>
public sealed class MateCornerTests
{
    private static readonly ExternalGear Gear = ExternalGear.Create(new GearData(23, 1.5, TestRacks.A, 0.2, 0.03));
    private static readonly ExternalGear Mate = ExternalGear.Create(new GearData(41, 1.5, TestRacks.A, 0.1, 0.05));
    private static readonly RingGear Ring = RingGear.Create(new RingData(60, 1.5, TestRacks.A, 110, 0.4, -0.2, 0.04));
    private static readonly RackBar Rack = RackBar.Create(new RackBarData(1.5, TestRacks.A, 60, 8, -0.1, 0.04));

    public static TheoryData<Toothing, Toothing, double> Pairs => new()
    {
        { Gear, Mate, 48.5 }, { Mate, Gear, 48.6 }, { Gear, Ring, 27.1 }, { Ring, Gear, 27.0 }, { Gear, Rack, 17.5 }, { Rack, Gear, 17.4 },
    };

    [Theory]
    [MemberData(nameof(Pairs), DisableDiscoveryEnumeration = true)]
    public void Where_contact_ends_the_corner_is_on_the_flank(Toothing first, Toothing second, double distance)
    {
        GearPair pair = GearPair.At(first, second, distance);
        (ContactEnd one, ContactEnd other) = pair.ContactEnds!.Value;
        foreach ((Toothing passed, double[] ends, bool isFirst) in (IEnumerable<(Toothing, double[], bool)>)
            [(first, [one.FirstRadius, other.FirstRadius], true), (second, [one.SecondRadius, other.SecondRadius], false)])
        {
            double deepest = passed is RingGear ? ends.Max() : ends.Min();
            MateCorner corner = Assert.Single(MateCorner.Past(pair, isFirst));
            double reach = corner.Reach(deepest);
            Assert.Equal(0, corner.Round);
            Point flank = passed is RackBar rack
                ? new Point((rack.ToothThickness / 2) - (deepest * Math.Tan(rack.PressureAngle)), deepest)
                : Point.Polar(deepest, -((Gear)passed).HalfAngleAt(deepest));

            // Of the two times at which it stands so deep it touches at one.
            Assert.Equal(0, Math.Min(corner.At(reach).DistanceTo(flank), corner.At(-reach).DistanceTo(flank)), 1e-9);
        }
    }
}
