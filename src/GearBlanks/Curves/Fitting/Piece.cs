namespace GearBlanks.Curves.Fitting;

/// <summary>One line or arc, as the vertex it begins at and the point it ends at.</summary>
internal readonly record struct Piece(Point From, double Bulge, Point To)
{
    /// <summary>The piece that leaves in a direction and ends at a point.</summary>
    public static Piece Leaving(Point from, Vector direction, Point to) => new(from, BulgeOf(direction, to - from), to);

    /// <summary>The piece that starts at a point and arrives in a direction.</summary>
    public static Piece Arriving(Point from, Point to, Vector direction) => new(from, BulgeOf(to - from, direction), to);

    public Piece Reversed() => new(To, -Bulge, From);

    public Piece Moved(Motion motion) => new(motion.Apply(From), motion.IsMirrored ? -Bulge : Bulge, motion.Apply(To));

    /// <summary>Distance of a point from the whole circle (or line) of the piece, mm: positive to its right.</summary>
    public double DistanceTo(Point point)
    {
        // With k the curvature, n the left normal and w from the start: (sqrt(1 + k q) - 1) / k with q = k w^2 - 2 n w, written so that it holds for k = 0.
        double curvature = Curvature;
        Vector w = point - From;
        double q = (curvature * w.Dot(w)) - (2 * StartNormal.Dot(w));
        return q / (1 + Math.Sqrt(Math.Max(0, 1 + (curvature * q))));
    }

    /// <summary>How fast that distance changes on the way in a direction (length 1).</summary>
    public double SlopeAt(Point point, Vector direction) =>
        direction.Dot((((point - From) * Curvature) - StartNormal).Unit);

    /// <summary>Signed curvature, 1/mm.</summary>
    public double Curvature => 2 * Math.Sin(2 * Math.Atan(Bulge)) / From.DistanceTo(To);

    /// <summary>The left normal where the piece begins.</summary>
    public Vector StartNormal
    {
        get
        {
            double half = 2 * Math.Atan(Bulge);
            Vector along = (To - From).Unit;
            return (along.TurnedLeft * Math.Cos(half)) + (along * Math.Sin(half));
        }
    }

    // An arc turns by the same angle from its first tangent to the chord as from the chord to its last tangent: half its sweep.
    private static double BulgeOf(Vector first, Vector second) => Math.Tan(first.AngleTo(second) / 2);
}
