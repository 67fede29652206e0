namespace GearBlanks.Curves.Fitting;

/// <summary>
/// Proves that a stretch of an exact curve stays within a tolerance of a line or arc. Along the curve the distance to a circle of curvature c
/// has a second derivative of at most |k - c| + slope^2 / radius, so between two measured points it exceeds the greater by at most that
/// times h^2 / 8, and never by more than h / 2. Stretches where this does not yet prove the tolerance are halved.
/// </summary>
internal static class Deviation
{
    // Halving so often reaches stretches far below rounding: the curve is then at the tolerance itself.
    private const int DeepestHalving = 24;

    /// <summary>True where the curve, between parameters where its curvature is monotone, is proved to lie within the tolerance (mm).</summary>
    public static bool IsProved(Curve curve, double start, double end, Piece piece, double tolerance) =>
        IsWithinReach(curve, start, end, piece, tolerance) || IsProved(curve, start, end, piece, tolerance, DeepestHalving);

    // So short that its ends prove it, as with a fillet smaller than the tolerance. An arc of at most a quarter turn strays from its ends by 0.55 of its chord.
    private static bool IsWithinReach(Curve curve, double start, double end, Piece piece, double tolerance)
    {
        double ends = Math.Max(curve.PointAt(start).DistanceTo(piece.From), curve.PointAt(end).DistanceTo(piece.To));
        return ends + (0.55 * curve.LengthBetween(start, end)) <= tolerance;
    }

    private static bool IsProved(Curve curve, double start, double end, Piece piece, double tolerance, int halvings)
    {
        (Point first, Point last) = (curve.PointAt(start), curve.PointAt(end));
        double atEnds = Math.Max(Math.Abs(piece.DistanceTo(first)), Math.Abs(piece.DistanceTo(last)));
        double around = Math.Abs(piece.Curvature);
        if (atEnds > tolerance || around * tolerance > 0.5 || halvings == 0)
        {
            return false;
        }

        double length = curve.LengthBetween(start, end);
        double bend = Math.Max(
            Math.Abs(curve.CurvatureAt(start) - piece.Curvature), Math.Abs(curve.CurvatureAt(end) - piece.Curvature));
        double slope = (bend * length) + Math.Max(
            Math.Abs(piece.SlopeAt(first, curve.TangentAt(start))), Math.Abs(piece.SlopeAt(last, curve.TangentAt(end))));

        // Within half a radius of the circle, which the test above sees to, 1 / distance from the centre is at most 2 / radius.
        double excess = Math.Min((bend + (2 * around * slope * slope)) * length * length / 8, length / 2);
        if (atEnds + excess <= tolerance)
        {
            return true;
        }

        double middle = (start + end) / 2;
        return IsProved(curve, start, middle, piece, tolerance, halvings - 1)
            && IsProved(curve, middle, end, piece, tolerance, halvings - 1);
    }
}
