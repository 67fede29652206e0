using GearBlanks.Teeth;
using GearBlanks.Tests.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;

namespace GearBlanks.Benchmarks;

/// <summary>A gear cut out of a polygon by the polygons of a rolling rack, by a general library for such things.</summary>
internal static class PolygonGear
{
    public const int Teeth = 60;

    // Chords and steps each leave less than this, mm; together with the rounds' chords about the 0.001 mm that the arcs are fitted to.
    private const double Fineness = 0.0005;

    private static readonly GeneratingSimulation Simulation = new(
        Teeth, 1, Gears.Rack.PressureAngle, Gears.Rack.Addendum, Gears.Rack.Dedendum, Gears.Rack.FilletRadius, 0)
    { Fineness = Fineness };

    /// <summary>How many positions of the rack tooth cut one gap.</summary>
    public static int Positions => Simulation.Cutters().Count();

    public static Geometry Whole() => Less(Blank(), [.. Enumerable.Range(0, Teeth).Select(i => UnaryUnionOp.Union(Simulation.Cutters().Select(cutter => Turned(cutter, i))))]);

    public static Geometry OneGapRepeated()
    {
        Geometry gap = UnaryUnionOp.Union(Simulation.Cutters());
        return Less(Blank(), [.. Enumerable.Range(0, Teeth).Select(i => Turned(gap, i))]);
    }

    /// <summary>The exact gear, turned so that a gap's middle lies on +X as it does here.</summary>
    public static ExternalGear Exact => ExternalGear.Create(Gears.Of(Teeth));

    private static Geometry Less(Geometry blank, Geometry[] gaps) => OverlayNGRobust.Overlay(blank, UnaryUnionOp.Union(gaps), SpatialFunction.Difference);

    private static Geometry Turned(Geometry geometry, int gaps) => AffineTransformation.RotationInstance(2 * Math.PI * gaps / Teeth).Transform(geometry);

    private static Polygon Blank()
    {
        int chords = (int)Math.Ceiling(2 * Math.PI / Math.Sqrt(8 * Fineness / Simulation.TipRadius));
        IEnumerable<Coordinate> ring = Enumerable.Range(0, chords + 1).Select(i => (i % chords) * 2 * Math.PI / chords)
            .Select(angle => new Coordinate(Simulation.TipRadius * Math.Cos(angle), Simulation.TipRadius * Math.Sin(angle)));
        return new GeometryFactory().CreatePolygon([.. ring]);
    }
}
