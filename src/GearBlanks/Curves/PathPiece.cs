namespace GearBlanks.Curves;

/// <summary>One line or arc of a path.</summary>
/// <param name="From">Where it begins, mm.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="Bulge">Tangent of a quarter of the angle swept, counter-clockwise positive; 0 for a line.</param>
public readonly record struct PathPiece(Point From, Point To, double Bulge)
{
    /// <summary>True for a straight piece.</summary>
    public bool IsLine => Bulge == 0;

    /// <summary>Radius, mm; infinite for a line.</summary>
    public double Radius => From.DistanceTo(To) * (1 + (Bulge * Bulge)) / (4 * Math.Abs(Bulge));

    /// <summary>Centre of an arc, mm; meaningless for a line.</summary>
    public Point Centre => From + ((To - From) * 0.5) + ((To - From).TurnedLeft * ((1 - (Bulge * Bulge)) / (4 * Bulge)));

    /// <summary>Its length, mm.</summary>
    internal double Length => IsLine ? From.DistanceTo(To) : Radius * 4 * Math.Abs(Math.Atan(Bulge));

    /// <summary>A point on it, by its share of the length from 0 to 1; its ends exactly.</summary>
    internal Point PointAt(double share) => share switch
    {
        0 => From,
        1 => To,
        _ when IsLine => From + ((To - From) * share),
        _ => Centre + Motion.Turn(share * 4 * Math.Atan(Bulge)).Apply(From - Centre),
    };

    /// <summary>The part of it between two shares of its length; all of it exactly.</summary>
    internal PathPiece Part(double from, double to) =>
        new(PointAt(from), PointAt(to), IsLine || (from == 0 && to == 1) ? Bulge : Math.Tan((to - from) * Math.Atan(Bulge)));

    /// <summary>Bulge of a quarter of a circle: tan(90 degrees / 4).</summary>
    internal static double QuarterBulge { get; } = Math.Tan(Math.PI / 8);

    // mm: an arc that rises less over its chord is a line; its centre would be too far away to compute with.
    private const double Flat = 1e-10;

    /// <summary>The line or arc that it is.</summary>
    public Curve AsCurve()
    {
        if (Math.Abs(Bulge) * From.DistanceTo(To) < Flat)
        {
            return new Line(From, To);
        }

        Point centre = Centre;
        return new Arc(centre, Radius, (From - centre).Angle, 4 * Math.Atan(Bulge));
    }

    /// <summary>How many pieces a path has: one a vertex, or one less where the path is open.</summary>
    public static int CountIn(ArcPath path) => path.Closed ? path.Vertices.Length : path.Vertices.Length - 1;

    /// <summary>A path's piece, by the number of the vertex at which it begins.</summary>
    public static PathPiece At(ArcPath path, int index)
    {
        PathVertex from = path.Vertices[index];
        PathVertex to = path.Vertices[index + 1 < path.Vertices.Length ? index + 1 : 0];
        return new PathPiece(from.Point, to.Point, from.Bulge);
    }
}
