using GearBlanks.Curves;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>How fast a tip corner passes a tooth, against the way between two places of it in the tooth's own frame.</summary>
public sealed class CornerRateTests
{
    private const double Step = 1e-5;

    private static readonly ExternalGear Gear = ExternalGear.Create(new GearData(17, 1.5, TestRacks.A, 0.2));
    private static readonly ExternalGear Mate = ExternalGear.Create(new GearData(41, 1.5, TestRacks.A));
    private static readonly RingGear Ring = RingGear.Create(new RingData(60, 1.5, TestRacks.A, 110, 0.4));
    private static readonly RackBar Rack = RackBar.Create(new RackBarData(1.5, TestRacks.A, 60, 8));

    [Theory]
    [InlineData(-0.2)]
    [InlineData(0)]
    [InlineData(0.13)]
    public void The_rate_is_the_way_over_the_step(double at)
    {
        GearPair outside = GearPair.At(Gear, Mate, 44);
        GearPair inside = GearPair.At(Gear, Ring, 32.5);
        GearPair over = GearPair.At(Gear, Rack, 13.2);
        foreach (CornerPath path in (CornerPath[])
            [
                RoundCornerPath.Outside(Gear, Mate, outside.CentreDistance, outside.WorkingPressureAngle),
                RoundCornerPath.Outside(Mate, Gear, outside.CentreDistance, outside.WorkingPressureAngle),
                RoundCornerPath.OfRing(Gear, Ring, inside.CentreDistance, inside.WorkingPressureAngle),
                RoundCornerPath.InRing(Ring, Gear, inside.CentreDistance, inside.WorkingPressureAngle),
                new RackCornerPath(Gear, Rack, over.CentreDistance),
                new OverRackCornerPath(Gear, over.CentreDistance, over.WorkingPressureAngle),
            ])
        {
            double way = Seen(path.At(at + Step)).DistanceTo(Seen(path.At(at - Step)));
            Assert.Equal(way / (2 * Step), path.RateAt(at), 1e-6);
        }
    }

    private static Point Seen(Corner corner) => Point.Polar(corner.Radius, Math.Atan2(corner.Y, corner.X) - corner.Turn);
}
