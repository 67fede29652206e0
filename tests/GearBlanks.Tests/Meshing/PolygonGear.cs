using GearBlanks.Teeth;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Tests.Meshing;

/// <summary>
/// The teeth of a gear near the line of centres as a dense polygon: knows the outline's points, nothing of meshing.
/// Chords stray from the outline by less than 1e-4 mm up to module 3.
/// </summary>
internal sealed class PolygonGear
{
    private const int TeethBesides = 2;
    private static readonly GeometryFactory Factory = new();
    private readonly Coordinate[] _points;

    public PolygonGear(ExternalGear gear, int steps = 200)
    {
        Teeth = gear.Teeth;
        Coordinate[] tooth = [.. gear.Outline().Pattern.SelectMany(curve => Enumerable.Range(0, steps)
            .Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)))).Select(p => new Coordinate(p.X, p.Y))];
        int besides = Math.Min(TeethBesides, (gear.Teeth - 1) / 2);
        var points = new List<Coordinate> { new(0, 0) };
        for (int k = -besides; k <= besides; k++)
        {
            points.AddRange(tooth.Select(p => Turned(p, 2 * Math.PI * k / gear.Teeth, 0)));
        }

        points.Add(new Coordinate(0, 0));
        _points = [.. points];
        GearBlanks.Curves.Point corner = gear.Flank.EndPoint;
        Corners = [.. Enumerable.Range(-besides, (2 * besides) + 1).SelectMany(k => (Coordinate[])[
            Turned(new Coordinate(corner.X, corner.Y), 2 * Math.PI * k / gear.Teeth, 0),
            Turned(new Coordinate(corner.X, -corner.Y), 2 * Math.PI * k / gear.Teeth, 0)])];
    }

    public int Teeth { get; }

    /// <summary>The tip corners of the teeth.</summary>
    public Coordinate[] Corners { get; }

    /// <summary>The polygon turned by an angle and set at a centre on the X axis.</summary>
    public Polygon Placed(double angle, double x = 0) => Factory.CreatePolygon([.. _points.Select(p => Turned(p, angle, x))]);

    public static Coordinate Turned(Coordinate p, double angle, double x)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new Coordinate((cosine * p.X) - (sine * p.Y) + x, (sine * p.X) + (cosine * p.Y));
    }

    /// <summary>
    /// The angle by which the second gear, a gap of it facing the first gear's tooth at the start, can turn until it touches; in the sense asked for.
    /// </summary>
    public static double FreeTurn(PolygonGear first, double firstAngle, PolygonGear second, double distance, double start, int sense)
    {
        var prepared = NetTopologySuite.Geometries.Prepared.PreparedGeometryFactory.Prepare(first.Placed(firstAngle));
        bool Touches(double turn) => prepared.Intersects(second.Placed(start + (sense * turn), distance));
        Assert.False(Touches(0), "the teeth overlap in the middle");
        (double free, double touching) = (0, Math.PI / second.Teeth);
        Assert.True(Touches(touching), "half a pitch on nothing touches");
        while (touching - free > 1e-9)
        {
            double middle = (free + touching) / 2;
            (free, touching) = Touches(middle) ? (free, middle) : (middle, touching);
        }

        return free;
    }

    /// <summary>The angle at which a gap of the second gear faces the first: half a pitch where a tooth would.</summary>
    public double GapToTheLeft => Math.PI + (Math.PI / Teeth);

    /// <summary>Distance of points from a polygon's edge, negative inside.</summary>
    public static Func<Coordinate, double> SignedDistance(Polygon polygon)
    {
        var distance = new IndexedFacetDistance(polygon.Boundary);
        var inside = new IndexedPointInAreaLocator(polygon);
        return p => distance.Distance(Factory.CreatePoint(p)) * (inside.Locate(p) == Location.Interior ? -1 : 1);
    }
}
