using GearBlanks.Curves;

namespace GearBlanks.Tests.Properties;

/// <summary>A line or arc of a written path, rebuilt from its vertices and its bulge as DXF defines it.</summary>
internal readonly struct PathArc
{
    private readonly Point _centre;
    private readonly double _radius;

    public PathArc(Point from, Point to, double bulge)
    {
        (From, To, Bulge) = (from, to, bulge);
        Vector along = to - from;
        Sweep = 4 * Math.Atan(bulge);
        _radius = along.Length * (1 + (bulge * bulge)) / (4 * Math.Abs(bulge));

        // The centre lies on the chord's bisector, to the left of a counter-clockwise arc.
        _centre = from + (along * 0.5) + (along.TurnedLeft * ((1 - (bulge * bulge)) / (4 * bulge)));
    }

    public Point From { get; }

    public Point To { get; }

    public double Bulge { get; }

    /// <summary>Angle swept, rad, counter-clockwise positive; 0 for a line.</summary>
    public double Sweep { get; }

    public Vector StartTangent => Turned((To - From).Unit, -Sweep / 2);

    public Vector EndTangent => Turned((To - From).Unit, Sweep / 2);

    public static PathArc[] AllOf(IReadOnlyList<PathVertex> vertices, int first, int count) =>
        [.. Enumerable.Range(first, count).Select(i => new PathArc(vertices[i].Point, vertices[(i + 1) % vertices.Count].Point, vertices[i].Bulge))];

    // Exact for any curvature: the chord to the share's point has the bulge tan(s theta / 4), its length in proportion to the sines.
    public Point PointAt(double share)
    {
        double half = Sweep / 2;
        double stretch = Math.Abs(half) < 1e-8 ? share : Math.Sin(half * share) / Math.Sin(half);
        return From + (Turned(To - From, -half * (1 - share)) * stretch);
    }

    public (PathArc First, PathArc Second) Halves()
    {
        Point middle = PointAt(0.5);
        double bulge = Math.Tan(Sweep / 8);
        return (new PathArc(From, middle, bulge), new PathArc(middle, To, bulge));
    }

    /// <summary>How far the piece reaches in a direction: the greatest p . n.</summary>
    public double Reach(Vector n)
    {
        double ends = Math.Max(Along(From, n), Along(To, n));
        return Sweep != 0 && IsBeside(n) ? Along(_centre, n) + _radius : ends;
    }

    public double DistanceTo(Point p)
    {
        double ends = Math.Min(p.DistanceTo(From), p.DistanceTo(To));
        if (Sweep == 0)
        {
            Vector along = (To - From).Unit;
            double at = (p - From).Dot(along);
            return at > 0 && at < From.DistanceTo(To) ? Math.Abs((p - From).Cross(along)) : ends;
        }

        return IsBeside(p - _centre) ? Math.Abs(p.DistanceTo(_centre) - _radius) : ends;
    }

    // True where the direction from the centre lies within the sweep.
    private bool IsBeside(Vector direction)
    {
        double turn = (From - _centre).AngleTo(direction);
        return turn * Math.Sign(Sweep) >= 0 && Math.Abs(turn) <= Math.Abs(Sweep);
    }

    private static double Along(Point p, Vector n) => (p.X * n.X) + (p.Y * n.Y);

    private static Vector Turned(Vector v, double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new Vector((v.X * cosine) - (v.Y * sine), (v.X * sine) + (v.Y * cosine));
    }
}
