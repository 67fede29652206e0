using GearBlanks.Mechanisms.Stacks;
using NetTopologySuite.Geometries;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Shapes in plan as polygons, by an independent library.</summary>
internal static class PlanPolygons
{
    // Chords of a circle of 13 mm then stay within 0.001 mm.
    private const int SegmentsInAQuarter = 64;

    private static readonly GeometryFactory Factory = new();

    public static Geometry Of(PlanShape shape)
    {
        Geometry core = shape.Core.Length switch
        {
            1 => At(shape.Core[0]),
            2 => Factory.CreateLineString([To(shape.Core[0]), To(shape.Core[1])]),
            _ => Factory.CreatePolygon([.. shape.Core.Append(shape.Core[0]).Select(To)]),
        };
        Geometry outside = shape.Radius > 0 ? core.Buffer(shape.Radius, SegmentsInAQuarter) : core;
        return shape.Holes.Aggregate(outside, (rest, hole) => rest.Difference(At(hole.Centre).Buffer(hole.Radius, SegmentsInAQuarter)));
    }

    private static NetTopologySuite.Geometries.Point At(GearBlanks.Curves.Point point) => Factory.CreatePoint(To(point));

    private static Coordinate To(GearBlanks.Curves.Point point) => new(point.X, point.Y);
}
