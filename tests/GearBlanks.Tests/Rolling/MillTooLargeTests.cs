using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Meshing;
using GearBlanks.Rolling;
using GearBlanks.Teeth;
using GearBlanks.Tests.Meshing;
using NetTopologySuite.Geometries;

namespace GearBlanks.Tests.Rolling;

/// <summary>
/// A mill too large leaves material in the way of the mate's tips: as deep, and at such an angle, as dense polygons find that know nothing of contact. The mate stands, by symmetry, half
/// its angular backlash off the middle of the gap; how deep its tip corners lie in the cut gear is measured by NetTopologySuite.
/// </summary>
public sealed class MillTooLargeTests
{
    private const int Steps = 400;
    private static readonly GeometryFactory Factory = new();

    [Theory]
    [InlineData(20, 40, 1.25)]
    [InlineData(20, 40, 1.4)]
    [InlineData(24, 60, 1.3)]
    public void Depth_and_angle_are_those_of_polygons(int first, int second, double tool)
    {
        Toothing cut = Toothing.Of(new GearData(first, 1, TestRacks.A, 0, 0.03));
        Toothing mate = Toothing.Of(new GearData(second, 1, TestRacks.A, 0, 0.03));
        GearPair pair = GearPair.At(cut, mate, (first + second) / 2.0);
        Outline outline = CutterReach.Outline(cut, tool / 2);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("cut", cut, outline), RollGear.Of("mate", mate), pair.CentreDistance));
        RollInterference found = Assert.IsType<RollInterference>(report.Interference);
        (double depth, double turn, double radius) = ByPolygons(outline, pair, (ExternalGear)mate);
        Assert.True(depth > 0.005, $"{depth}");
        Assert.Equal(depth, found.Depth, 0.002 + (0.1 * depth));
        Assert.Equal(radius, found.FirstRadius, 0.05);

        // Both sides of a tooth are alike, so the place may be its mirror image.
        double pitch = 2 * Math.PI / first;
        double place = Math.IEEERemainder(found.Turn - (pitch / 2), pitch);
        Assert.Equal(Math.Abs(turn), Math.Abs(place), 0.01);

        // All teeth are alike: the first that comes is told.
        Assert.InRange(found.Turn, 0, 1.01 * pitch);
    }

    [Theory]
    [InlineData(20, 60, 1.3)]
    [InlineData(17, 48, 1.1)]
    public void In_a_ring_too(int teeth, int ringTeeth, double tool)
    {
        Toothing pinion = Toothing.Of(new GearData(teeth, 1, TestRacks.A, 0, 0.05));
        Toothing ring = Toothing.Of(new RingData(ringTeeth, 1, TestRacks.A, ringTeeth + 12, 0.3, 0, 0.05, ringTeeth - 1.4));
        GearPair pair = GearPair.At(pinion, ring, (ringTeeth - teeth) / 2.0);
        Outline outline = CutterReach.Outline(ring, tool / 2);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("pinion", pinion), RollGear.Of("ring", ring, outline), pair.CentreDistance));
        RollInterference found = Assert.IsType<RollInterference>(report.Interference);
        (double depth, double radius) = RingByPolygons(outline, pair, (ExternalGear)pinion);
        Assert.True(depth > 0.005, $"{depth}");
        Assert.NotEqual(RollObstacle.Flanks, found.Kind);
        Assert.Equal(depth, found.Depth, 0.002 + (0.1 * depth));
        Assert.Equal(radius, found.SecondRadius, 0.05);
    }

    [Fact]
    public void A_mill_that_follows_the_fillet_is_not_in_the_way()
    {
        Toothing cut = Toothing.Of(new GearData(20, 1, TestRacks.A, 0, 0.03));
        Toothing mate = Toothing.Of(new GearData(40, 1, TestRacks.A, 0, 0.03));
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("cut", cut, CutterReach.Outline(cut, 0.45)), RollGear.Of("mate", mate), 30));
        Assert.Null(report.Interference);
        Assert.InRange(report.Left.Total * 3600 * 180 / Math.PI, 0, 0.5);
    }

    // A gap of the ring and a tooth of the pinion face +X at the start; the ring stands half the play off.
    private static (double Depth, double Radius) RingByPolygons(Outline outline, GearPair pair, ExternalGear pinion)
    {
        int teeth = pair.Second.Teeth;
        double pitch = 2 * Math.PI / teeth;
        double play = pair.CircumferentialBacklash / pair.SecondWorkingRadius;
        Coordinate[] hole = Points(outline, pitch / 2);
        Func<Coordinate, double> room = PolygonGear.SignedDistance(Factory.CreatePolygon([.. hole, hole[0]]));
        (double depth, double radius) = (0, 0);
        for (int i = 0; i < Steps; i++)
        {
            double turn = ((double)i / Steps * 2 * pitch) - pitch;
            foreach (Coordinate corner in new PolygonGear(pinion).Corners)
            {
                Coordinate world = PolygonGear.Turned(corner, turn * teeth / pinion.Teeth, pair.CentreDistance);
                Coordinate seen = PolygonGear.Turned(world, -turn - (play / 2), 0);
                (depth, radius) = room(seen) > depth ? (room(seen), Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y))) : (depth, radius);
            }
        }

        return (depth, radius);
    }

    private static Coordinate[] Points(Outline outline, double turn) =>
        [.. outline.Curves().SelectMany(curve => Enumerable.Range(0, 60).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 60))))
            .Select(point => PolygonGear.Turned(new Coordinate(point.X, point.Y), turn, 0))];

    // The cut gear's gap faces +X at turn 0 of its own; the deepest of the mate's tip corners over one pitch.
    private static (double Depth, double Turn, double Radius) ByPolygons(Outline outline, GearPair pair, ExternalGear mate)
    {
        int teeth = pair.First.Teeth;
        double pitch = 2 * Math.PI / teeth;
        Coordinate[] ring = Points(outline, pitch / 2);
        Func<Coordinate, double> room = PolygonGear.SignedDistance(Factory.CreatePolygon([.. ring, ring[0]]));
        Coordinate[] corners = new PolygonGear(mate).Corners;
        double play = pair.CircumferentialBacklash / pair.SecondWorkingRadius;
        (double depth, double at, double radius) = (0, 0, 0);
        for (int i = 0; i < Steps; i++)
        {
            double turn = ((double)i / Steps * 2 * pitch) - pitch;
            double mateTurn = Math.PI - (turn * teeth / mate.Teeth) + (play / 2);
            foreach (Coordinate corner in corners)
            {
                Coordinate world = PolygonGear.Turned(corner, mateTurn, pair.CentreDistance);
                Coordinate seen = PolygonGear.Turned(world, -turn, 0);
                double inside = Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y)) < ((ExternalGear)pair.First).TipRadius ? -room(seen) : 0;
                (depth, at, radius) = inside > depth ? (inside, turn, Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y))) : (depth, at, radius);
            }
        }

        return (depth, Math.IEEERemainder(at, pitch), radius);
    }
}
