using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using NetTopologySuite.Operation.Union;

namespace GearBlanks.Tests.Teeth;

/// <summary>
/// Cuts half a gap of a blank by one rack tooth at many positions, polygon by polygon. It knows the rack's shape and that its pitch line
/// rolls on the reference circle, nothing else. The gap's centre line is +X, the tooth's stands at pi / z.
/// </summary>
internal sealed record GeneratingSimulation(
    int Teeth, double Module, double PressureAngle, double Addendum, double Dedendum, double Round, double Shift)
{
    private readonly GeometryFactory _factory = new();

    /// <summary>Chords and steps are chosen so that each leaves less than this, mm.</summary>
    public double Fineness { get; init; } = 0.00014;

    public double ReferenceRadius => Module * Teeth / 2;

    public double TipRadius => ReferenceRadius + ((Addendum + Shift) * Module);

    /// <summary>Width of the flat of the rack tooth's tip, mm: a rack with a negative one does not exist.</summary>
    public double RackLand =>
        2 * ((Math.PI / 4 * Module) - (Dedendum * Module * Math.Tan(PressureAngle)) - (Round * Module * Math.Tan((Math.PI / 4) - (PressureAngle / 2))));

    /// <summary>What is left of half the gap's sector of the blank.</summary>
    public Geometry Cut()
    {
        Geometry remaining = Sector();
        Envelope around = remaining.EnvelopeInternal;
        foreach (Polygon[] some in Cutters().Where(cutter => cutter.EnvelopeInternal.Intersects(around)).Chunk(32))
        {
            remaining = OverlayNGRobust.Overlay(remaining, UnaryUnionOp.Union(some), NetTopologySuite.Operation.Overlay.SpatialFunction.Difference);
        }

        return remaining;
    }

    /// <summary>The rack tooth in every position that leaves its mark in the gap.</summary>
    public IEnumerable<Polygon> Cutters()
    {
        Coordinate[] rack = RackTooth();
        return Rolls().Select(roll => _factory.CreatePolygon([.. rack.Select(p => Rolled(p, roll))]));
    }

    // While the gear turns by phi the rack moves by r phi; seen from the gear it is turned back.
    private Coordinate Rolled(Coordinate p, double phi)
    {
        (double sine, double cosine) = Math.SinCos(-phi);
        double y = p.Y + (ReferenceRadius * phi);
        return new Coordinate((cosine * p.X) - (sine * y), (sine * p.X) + (cosine * y));
    }

    // The rack turns, seen from the gear, about the pitch point: a far tip moves faster and takes smaller steps.
    private IEnumerable<double> Rolls()
    {
        double root = ReferenceRadius + ((Shift - Dedendum) * Module);
        double reach = Math.Sqrt((TipRadius * TipRadius) - (root * root)) + (Math.PI / 2 * Module);
        double flankStep = Math.Sqrt(8 * Fineness / TipRadius);
        double filletStep = Math.Sqrt(8 * Fineness * Round * Module);
        double depth = ((Dedendum - Round - Shift) * Module) - (Round * Module);
        for (double phi = -reach / ReferenceRadius; phi < reach / ReferenceRadius;)
        {
            yield return phi;
            double away = Math.Abs(ReferenceRadius * phi) + (Module / 2);
            phi += Math.Min(flankStep, filletStep / Math.Sqrt((depth * depth) + (away * away)));
        }
    }

    private Coordinate[] RackTooth()
    {
        double line = ReferenceRadius + (Shift * Module);
        double tan = Math.Tan(PressureAngle);
        double round = Round * Module;
        double top = 1.1 * Addendum * Module;
        double middle = RackLand / 2;
        double height = (-Dedendum * Module) + round;
        int chords = (int)Math.Ceiling(((Math.PI / 2) - PressureAngle) / Math.Sqrt(8 * Fineness / round));
        var side = new List<Coordinate>();
        for (int i = 0; i <= chords; i++)
        {
            double t = ((Math.PI / 2) - PressureAngle) * i / chords;
            side.Add(new Coordinate(line + height - (round * Math.Cos(t)), middle + (round * Math.Sin(t))));
        }

        side.Add(new Coordinate(line + top, (Math.PI / 4 * Module) + (top * tan)));
        var other = side.Select(p => new Coordinate(p.X, -p.Y)).Reverse().ToList();
        return [.. side, .. other, side[0]];
    }

    private Polygon Sector()
    {
        double inner = 0.8 * (ReferenceRadius + ((Shift - Dedendum) * Module));
        double width = Math.PI / Teeth;
        int chords = (int)Math.Ceiling(width / Math.Sqrt(8 * Fineness / TipRadius));
        var ring = new List<Coordinate> { new(inner, 0) };
        for (int i = 0; i <= chords; i++)
        {
            double angle = width * i / chords;
            ring.Add(new Coordinate(TipRadius * Math.Cos(angle), TipRadius * Math.Sin(angle)));
        }

        ring.Add(new Coordinate(inner * Math.Cos(width), inner * Math.Sin(width)));
        return _factory.CreatePolygon([.. ring, ring[0]]);
    }
}
