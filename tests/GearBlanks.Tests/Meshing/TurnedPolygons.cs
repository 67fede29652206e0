using GearBlanks.Curves;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;

namespace GearBlanks.Tests.Meshing;

/// <summary>
/// The outlines of a pair as polygons whose chords stray by less than 0.0001 mm, a tooth of the one in the middle of a gap of the other: how far one can be turned
/// until they touch. Knows the outlines' points, nothing of meshing.
/// </summary>
internal static class TurnedPolygons
{
    private const double Sag = 0.0001;
    private const double Accuracy = 1e-6;
    private const int TeethBeside = 4;
    private static readonly GeometryFactory Factory = new();

    /// <summary>The way along the working circle of what is turned (a rack is slid), both senses together, mm.</summary>
    public static double Play(GearPair pair) => pair switch
    {
        RackPair rack => Free(Bar(rack.Rack), Gear(rack.Gear, -Math.PI / 2, 0, rack.CentreDistance), 1, Math.PI * rack.Rack.Module / 2, (points, way) => [.. points.Select(p => new Coordinate(p.X + way, p.Y))]),
        RingPair ring => Free(
            Round(ring.Pinion, 0, 0, 0), Around(ring.Ring, Math.PI / ring.Ring.Teeth, -ring.CentreDistance), ring.CentreDistance * ring.Pinion.Teeth / (ring.Ring.Teeth - ring.Pinion.Teeth),
            Math.PI / ring.Pinion.Teeth, (points, way) => [.. points.Select(p => Placed(p, way, 0, 0))]),
        _ => Free(
            Sector((Gear)pair.Second, Math.PI + (Math.PI / pair.Second.Teeth), 0, 0), Gear((ExternalGear)pair.First, 0, -pair.CentreDistance, 0), pair.SecondWorkingRadius,
            Math.PI / pair.Second.Teeth, (points, way) => [.. points.Select(p => Placed(p, way, 0, 0))]),
    };

    private static double Free(Coordinate[] moved, Polygon still, double radius, double most, Func<Coordinate[], double, Coordinate[]> move)
    {
        IPreparedGeometry prepared = PreparedGeometryFactory.Prepare(still);
        bool Touches(double way) => prepared.Intersects(Factory.CreatePolygon(move(moved, way)));
        Assert.False(Touches(0), "the teeth overlap in the middle");
        return radius * (Sense(1) + Sense(-1));

        double Sense(int sense)
        {
            (double free, double touching) = (0, most);
            Assert.True(Touches(sense * touching), "half a pitch on nothing touches");
            while ((touching - free) * radius > Accuracy)
            {
                double middle = (free + touching) / 2;
                (free, touching) = Touches(sense * middle) ? (free, middle) : (middle, touching);
            }

            return free;
        }
    }

    private static Coordinate[] Round(Gear gear, double angle, double x, double y) => Closed(Points(gear.Outline(), 0, gear.Teeth).Select(p => Placed(p, angle, x, y)));

    // Outside one another only the teeth beside the line of centres can meet: a sector of them, to the gear's centre.
    private static Coordinate[] Sector(Gear gear, double angle, double x, double y) => gear.Teeth <= 2 * TeethBeside
        ? Round(gear, angle, x, y)
        : Closed(Points(gear.Outline(), -TeethBeside, TeethBeside).Append(new Coordinate(0, 0)).Select(p => Placed(p, angle, x, y)));

    private static Polygon Gear(ExternalGear gear, double angle, double x, double y) => Factory.CreatePolygon(Sector(gear, angle, x, y));

    private static Polygon Around(RingGear ring, double angle, double x)
    {
        double far = 2 * ring.RootRadius;
        Coordinate[] square = [new(x - far, -far), new(x + far, -far), new(x + far, far), new(x - far, far), new(x - far, -far)];
        return Factory.CreatePolygon(Factory.CreateLinearRing(square), [Factory.CreateLinearRing(Closed(Points(ring.Outline(), 0, ring.Teeth).Select(p => Placed(p, angle, x, 0))))]);
    }

    // A gap in the middle of the bar is set at x = 0.
    private static Coordinate[] Bar(RackBar rack)
    {
        double gap = rack.FirstTooth + (((rack.Teeth / 2) - 0.5) * rack.Pitch);
        return Closed(Points(rack.Outline(), 0, 1).Select(p => new Coordinate(p.X - gap, p.Y)));
    }

    private static Coordinate[] Closed(IEnumerable<Coordinate> points)
    {
        Coordinate[] all = [.. points];
        return [.. all, all[0].Copy()];
    }

    // The pieces of the outline from one repeat to before another.
    private static IEnumerable<Coordinate> Points(Outline outline, int from, int to)
    {
        Coordinate[] pattern = [.. outline.Pattern.SelectMany(Points)];
        return Enumerable.Range(from, to - from).SelectMany(k => pattern.Select(p => Placed(p, 2 * Math.PI * k / outline.Repeats, 0, 0)));
    }

    // As many equal steps as keep every chord near enough, seen from the middle between its ends.
    private static IEnumerable<Coordinate> Points(Curve curve)
    {
        int steps = 2;
        while (curve is not Line && Worst(curve, steps) > Sag)
        {
            steps += 1 + (steps / 4);
        }

        return Enumerable.Range(0, curve is Line ? 1 : steps).Select(i => At(curve, (double)i / steps)).Select(p => new Coordinate(p.X, p.Y));
    }

    private static double Worst(Curve curve, int steps) => Enumerable.Range(0, steps).Max(i =>
    {
        (var from, var middle, var to) = (At(curve, (double)i / steps), At(curve, (i + 0.5) / steps), At(curve, (i + 1.0) / steps));
        return (from + ((to - from) * 0.5)).DistanceTo(middle);
    });

    private static GearBlanks.Curves.Point At(Curve curve, double share) => curve.PointAt(curve.Start + ((curve.End - curve.Start) * share));

    private static Coordinate Placed(Coordinate p, double angle, double x, double y)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new Coordinate((cosine * p.X) - (sine * p.Y) + x, (sine * p.X) + (cosine * p.Y) + y);
    }
}
