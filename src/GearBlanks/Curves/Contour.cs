using System.Collections.Immutable;

namespace GearBlanks.Curves;

/// <summary>A closed chain of lines and arcs to be measured: how far from another, what lies inside.</summary>
public sealed class Contour
{
    private readonly ImmutableArray<Curve> _curves;

    private Contour(ImmutableArray<Curve> curves, Circle? circle)
    {
        _curves = curves;
        AsCircle = circle;
    }

    /// <summary>Measures an outline of lines and arcs.</summary>
    /// <exception cref="ArgumentException">It has other curves.</exception>
    public static Contour Of(Outline outline) => outline.Curves().All(curve => curve is Line or Arc)
        ? new Contour([.. outline.Curves()], outline.AsCircle)
        : throw new ArgumentException("Only contours of lines and arcs can be measured.", nameof(outline));

    /// <summary>Measures a closed path.</summary>
    /// <exception cref="ArgumentException">It is open.</exception>
    public static Contour Of(ArcPath path) => path.Closed
        ? new Contour([.. Enumerable.Range(0, PathPiece.CountIn(path)).Select(i => PathPiece.At(path, i).AsCurve())], null)
        : throw new ArgumentException("Only closed paths can be measured.", nameof(path));

    /// <summary>The circle that it is, where it was measured from an outline; null where it is anything else.</summary>
    public Circle? AsCircle { get; }

    /// <summary>The least distance from the line of another contour, mm; 0 where they cross. One may lie inside the other.</summary>
    public double DistanceTo(Contour other)
    {
        if (AsCircle is { } circle && other.AsCircle is { } second)
        {
            double centres = circle.Centre.DistanceTo(second.Centre);
            return Math.Max(0, Math.Max(centres - circle.Radius - second.Radius, Math.Abs(circle.Radius - second.Radius) - centres));
        }

        double least = double.PositiveInfinity;
        foreach (Curve one in _curves)
        {
            foreach (Curve curve in other._curves)
            {
                least = Math.Min(least, LineArcDistance.Between(one, curve));
            }
        }

        return least;
    }

    /// <summary>True where one of two contours that do not cross lies inside the other.</summary>
    public bool IsNestedWith(Contour other) => Contains(other._curves[0].StartPoint) || other.Contains(_curves[0].StartPoint);

    /// <summary>The least distance of its line from a point, mm.</summary>
    public double NearestTo(Point point) => _curves.Min(curve => LineArcDistance.From(point, curve));

    /// <summary>The greatest distance of its line from a point, mm.</summary>
    public double FarthestFrom(Point point) => _curves.Max(curve => LineArcDistance.Farthest(point, curve));

    /// <summary>How far it reaches from the origin in a direction of length 1, mm.</summary>
    public double Reach(Vector direction) => _curves.Max(curve => LineArcDistance.Reach(direction, curve));

    /// <summary>True where a point that is not on the line lies inside.</summary>
    public bool Contains(Point point)
    {
        if (AsCircle is { } circle)
        {
            return point.DistanceTo(circle.Centre) < circle.Radius;
        }

        return Math.Abs(_curves.Sum(curve => Subtended(point, curve))) > Math.PI;
    }

    // The angle under which a curve is seen from a point, rad, counter-clockwise positive: an arc goes round the point on the far side where that lies
    // between it and its chord.
    private static double Subtended(Point point, Curve curve)
    {
        (Vector start, Vector end) = (curve.StartPoint - point, curve.EndPoint - point);
        double chord = start.AngleTo(end);
        if (curve is not Arc arc || point.DistanceTo(arc.Centre) >= arc.Radius)
        {
            return chord;
        }

        double sense = Math.Sign(arc.Sweep);
        return arc.IsFullCircle || start.Cross(end) * sense < 0 ? chord + (2 * Math.PI * sense) : chord;
    }
}
