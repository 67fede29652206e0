using GearBlanks.Curves;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Meshing;

/// <summary>The room at fillets, by stepping the mate's tip corner past points of the outline: a few pairs, so that it takes no time.</summary>
public sealed class FilletRoomTests
{
    private const int Steps = 12_000;

    [Theory]
    [InlineData(20, 40, 1, 0, 0, 0.05, 0)]
    [InlineData(20, 40, 2.5, 0, 0, 0.05, 0.2)]
    [InlineData(17, 80, 0.8, 0, 0, 0.03, 0.1)]
    [InlineData(12, 40, 1, 0.3, -0.1, 0.1, 0.05)]
    [InlineData(30, 31, 3, -0.2, 0.1, 0.02, 0.15)]
    [InlineData(10, 60, 1, 0, 0, 0.04, 0)]
    [InlineData(40, 20, 1, 0, 0.2, 0.04, 0.12)]
    [InlineData(24, 24, 1, 0, 0, 0.04, -0.1)]
    public void At_the_fillet_of_an_external_gear(int z1, int z2, double m, double x1, double x2, double apart, double longer)
    {
        var gear = ExternalGear.Create(new GearData(z1, m, TestRacks.A, x1));
        var mate = ExternalGear.Create(new GearData(z2, m, TestRacks.A, x2, 0, m * (z2 + (2 * (1 + x2 + longer)))));
        var pair = (ExternalPair)GearPair.At(gear, mate, GearPair.ZeroBacklashDistance(gear, mate)!.Value + (apart * m));

        // The clockwise side of the gear's tooth touches the mate's flank at the pitch point; then the gear turns clockwise by each step.
        double tooth = gear.HalfAngleAt(pair.FirstWorkingRadius);
        double corner = Math.PI + mate.HalfAngleAt(pair.SecondWorkingRadius) - mate.HalfAngleAt(mate.TipRadius);
        double? seen = Least(gear, turn =>
        {
            double angle = corner + (turn * z1 / z2);
            return (new Point(pair.CentreDistance + (mate.TipRadius * Math.Cos(angle)), mate.TipRadius * Math.Sin(angle)), tooth - turn);
        });
        Same(seen, pair.FirstFilletClearance, m);
        Same(seen, GearPair.At(mate, gear, pair.CentreDistance).SecondFilletClearance, m);
    }

    [Theory]
    [InlineData(20, 1, 0, 0.05, 0)]
    [InlineData(20, 2.5, 0, 0.05, 0.2)]
    [InlineData(14, 0.8, 0.1, 0.03, 0.1)]
    [InlineData(40, 1, -0.2, 0.1, 0.15)]
    [InlineData(10, 1, 0, 0.04, 0)]
    public void At_the_fillet_of_a_gear_over_a_rack(int z, double m, double x, double apart, double longer)
    {
        var gear = ExternalGear.Create(new GearData(z, m, TestRacks.A, x));
        RackBar rack = RackBar.Create(new RackBarData(m, TestRacks.A, 30 * m, 5 * m, 0, 0, m * (1 + longer)));
        GearPair pair = GearPair.At(gear, rack, GearPair.ZeroBacklashDistance(gear, rack)!.Value + (apart * m));
        double tip = pair.CentreDistance - rack.TipHeight;
        double atPitchPoint = (tip - gear.ReferenceRadius) * Math.Tan(gear.PressureAngle);
        double tooth = gear.HalfAngleAt(gear.ReferenceRadius);
        Same(Least(gear, turn => (new Point(tip, atPitchPoint - (gear.ReferenceRadius * turn)), tooth - turn)), pair.FirstFilletClearance, m);
    }

    [Theory]
    [InlineData(20, 1, 0, 0.05, 0.1)]
    [InlineData(20, 2.5, 0, 0.05, 0.22)]
    [InlineData(60, 0.8, 0.1, 0.03, 0.2)]
    [InlineData(12, 1, 0.3, 0.02, 0.15)]
    public void At_the_root_round_of_a_rack(int z, double m, double x, double apart, double longer)
    {
        var gear = ExternalGear.Create(new GearData(z, m, TestRacks.A, x, 0, m * (z + (2 * (1 + x + longer)))));
        RackBar rack = RackBar.Create(new RackBarData(m, TestRacks.A, 30 * m, 5 * m));
        GearPair pair = GearPair.At(gear, rack, GearPair.ZeroBacklashDistance(gear, rack)!.Value + (apart * m));
        double rolling = pair.CentreDistance - gear.ReferenceRadius;
        Polygon bar = Shapes.Polygon(rack.Outline());

        // The tooth nearest to the middle; its right flank crosses the rolling line at its half thickness there.
        double middle = Enumerable.Range(-20, 41).Select(i => i * rack.Pitch / 2)
            .Where(at => bar.Contains(bar.Factory.CreatePoint(new Coordinate(at, rack.TipHeight - (0.01 * m))))).MinBy(Math.Abs);
        double flank = middle + (rack.ToothThickness / 2) - (rolling * Math.Tan(rack.PressureAngle));
        var edge = new IndexedFacetDistance(bar.Boundary);
        double corner = (-Math.PI / 2) + gear.HalfAngleAt(gear.ReferenceRadius) - gear.HalfAngleAt(gear.TipRadius);
        double? least = null;
        for (int i = -Steps; i <= Steps; i++)
        {
            double turn = i * 1.2 / Steps;
            var place = new Coordinate(
                flank - (gear.ReferenceRadius * turn) + (gear.TipRadius * Math.Cos(corner + turn)), pair.CentreDistance + (gear.TipRadius * Math.Sin(corner + turn)));
            if (place.Y <= rack.FormHeight)
            {
                var at = bar.Factory.CreatePoint(place);
                double room = edge.Distance(at) * (bar.Contains(at) ? -1 : 1);
                least = Math.Min(least ?? room, room);
            }
        }

        Same(least, pair.SecondFilletClearance, m);
    }

    private static void Same(double? seen, double? told, double module)
    {
        Assert.Equal(seen is null, told is null);
        if (seen is not null)
        {
            Assert.Equal(seen.Value / module, told!.Value / module, 2e-4);
        }
    }

    // The corner in the plane and the angle of the gear's tooth, by the turn; only below the form circle does the fillet matter.
    private static double? Least(ExternalGear gear, Func<double, (Point Corner, double Tooth)> at)
    {
        Point[] side = [.. Side(gear)];
        double? least = null;
        for (int i = -Steps; i <= Steps; i++)
        {
            (Point corner, double tooth) = at(i * 1.2 / Steps);
            double radius = double.Hypot(corner.X, corner.Y);
            if (radius <= gear.FormRadius)
            {
                double angle = Math.IEEERemainder(Math.Atan2(corner.Y, corner.X) - tooth, 2 * Math.PI);
                var place = new Point(radius * Math.Cos(angle), radius * Math.Sin(angle));
                bool isInside = radius < gear.RootRadius || angle > gear.SideAngleAt(radius);
                double room = side.Zip(side.Skip(1), (a, b) => DistanceToSegment(place, a, b)).Min() * (isInside ? -1 : 1);
                least = Math.Min(least ?? room, room);
            }
        }

        return least;
    }

    // The clockwise side of the tooth on +X, from the middle of the gap up the flank.
    private static IEnumerable<Point> Side(ExternalGear gear)
    {
        Outline outline = gear.Outline();
        Curve root = outline.Pattern[^1];
        var back = Motion.TurnStep(-1, outline.Repeats);
        return Along(root, 20).Select(back.Apply).Concat(Along(outline.Pattern[0], 400)).Concat(Along(outline.Pattern[1], 60));
    }

    private static IEnumerable<Point> Along(Curve curve, int pieces) =>
        Enumerable.Range(0, pieces + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / pieces)));

    private static double DistanceToSegment(Point p, Point a, Point b)
    {
        Vector along = b - a;
        double length = along.Dot(along);
        double share = length > 0 ? Math.Clamp((p - a).Dot(along) / length, 0, 1) : 0;
        return p.DistanceTo(a + (along * share));
    }
}
