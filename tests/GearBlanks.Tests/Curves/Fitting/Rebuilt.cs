using GearBlanks.Curves;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>A line or arc from its vertex, its bulge and the next vertex, as DXF defines the bulge.</summary>
internal sealed class Rebuilt
{
    private readonly double _half;
    private readonly Point _centre;
    private readonly double _radius;

    public Rebuilt(PathVertex vertex, Point to)
    {
        (From, To, Bulge) = (vertex.Point, to, vertex.Bulge);
        Vector along = to - From;
        Chord = along.Length;
        _half = 2 * Math.Atan(Bulge);
        _radius = Bulge == 0 ? double.PositiveInfinity : Chord / (2 * Math.Abs(Math.Sin(_half)));

        // The centre lies on the chord's bisector, to the left of a counter-clockwise arc.
        Point middle = From + (along * 0.5);
        _centre = Bulge == 0 ? middle : middle + (along.Unit.TurnedLeft * (Chord / (2 * Math.Tan(_half))));
    }

    public Point From { get; }

    public Point To { get; }

    public double Bulge { get; }

    public double Chord { get; }

    public Vector StartTangent => Turned((To - From).Unit, -_half);

    public Vector EndTangent => Turned((To - From).Unit, _half);

    public Point PointAt(double share)
    {
        if (Bulge == 0)
        {
            return From + ((To - From) * share);
        }

        return _centre + Turned(From - _centre, 2 * _half * share);
    }

    public double DistanceTo(Point p)
    {
        double ends = Math.Min(p.DistanceTo(From), p.DistanceTo(To));
        if (Bulge == 0)
        {
            double along = (p - From).Dot((To - From).Unit);
            return along > 0 && along < Chord ? Math.Abs((p - From).Cross((To - From).Unit)) : ends;
        }

        double turn = Math.Atan2((From - _centre).Cross(p - _centre), (From - _centre).Dot(p - _centre));
        return turn * Math.Sign(_half) >= 0 && Math.Abs(turn) <= Math.Abs(2 * _half) ? Math.Abs(p.DistanceTo(_centre) - _radius) : ends;
    }

    private static Vector Turned(Vector v, double angle) =>
        new((v.X * Math.Cos(angle)) - (v.Y * Math.Sin(angle)), (v.X * Math.Sin(angle)) + (v.Y * Math.Cos(angle)));
}
