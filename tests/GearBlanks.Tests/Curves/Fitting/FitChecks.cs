using GearBlanks.Curves;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>Checks a path against the exact outline by dense points, from vertices and bulges alone.</summary>
internal static class FitChecks
{
    /// <summary>The pieces of one step of the pattern, the last up to the first vertex of the next step.</summary>
    public static List<Rebuilt> PatternOf(Outline outline, ArcPath path) =>
        [.. Enumerable.Range(0, path.Vertices.Length / outline.Repeats)
            .Select(i => new Rebuilt(path.Vertices[i], path.Vertices[(i + 1) % path.Vertices.Length].Point))];

    /// <summary>Requires the curves near the pieces and the pieces near the curves.</summary>
    public static void RequireWithin(Outline outline, ArcPath path, double within)
    {
        List<Rebuilt> pieces = PatternOf(outline, path);
        RequireCurvesNearPieces(outline, pieces, within);
        RequirePiecesNearCurves(outline, pieces, within);
    }

    // Both run the same way from the same point: each sample's nearest piece is sought from the last one's on.
    private static void RequireCurvesNearPieces(Outline outline, List<Rebuilt> pieces, double within)
    {
        int at = 0;

        // Where the last piece ends at the first one's beginning, the sought piece must not skip to it.
        bool isShort = pieces.Count <= 12;
        foreach (Point p in outline.Pattern.SelectMany(curve => Dense(curve, Math.Max(200, pieces.Count))))
        {
            (double least, int best) = isShort ? Nearest(0, pieces.Count) : Nearest(Math.Max(0, at - 1), Math.Min(pieces.Count, at + 6));

            // Where a curve turns sharply, a step of its parameter passes many pieces.
            (least, best) = least > within ? Nearest(at, pieces.Count) : (least, best);
            Assert.True(least <= within, $"{least:R} from the path, allowed {within:R}");
            at = best;

            (double Least, int Best) Nearest(int from, int to)
            {
                (double Least, int Best) nearest = (double.PositiveInfinity, from);
                for (int i = from; i < to; i++)
                {
                    double distance = pieces[i].DistanceTo(p);
                    nearest = distance < nearest.Least ? (distance, i) : nearest;
                }

                return nearest;
            }
        }
    }

    private static void RequirePiecesNearCurves(Outline outline, List<Rebuilt> pieces, double within) =>
        RequirePointsNearCurves(outline, pieces.SelectMany(piece => Enumerable.Range(0, 8).Select(i => piece.PointAt(i / 8.0))), within);

    // By the foot of the perpendicular, found on the curve itself.
    public static void RequirePointsNearCurves(Outline outline, IEnumerable<Point> points, double within)
    {
        (Curve Curve, double[] Parameters, Point[] Points)[] samples = [.. outline.Pattern.Select(curve =>
            (curve, Enumerable.Range(0, 201).Select(i => curve.Start + ((curve.End - curve.Start) * i / 200)).ToArray(), Dense(curve, 200).ToArray()))];
        foreach (Point p in points)
        {
            double least = samples.Min(s => FromCurve(s.Curve, s.Parameters, s.Points, p, within));
            Assert.True(least <= within, $"{least:R} from the exact outline, allowed {within:R}");
        }
    }

    private static double FromCurve(Curve curve, double[] parameters, Point[] points, Point p, double enough)
    {
        int best = 0;
        for (int i = 1; i < points.Length; i++)
        {
            best = points[i].DistanceTo(p) < points[best].DistanceTo(p) ? i : best;
        }

        (double low, double high) = (parameters[Math.Max(0, best - 1)], parameters[Math.Min(points.Length - 1, best + 1)]);
        for (int i = 0; i < 60 && points[best].DistanceTo(p) > 0; i++)
        {
            double middle = (low + high) / 2;
            double distance = curve.PointAt(middle).DistanceTo(p);
            if (distance <= enough / 2)
            {
                return distance;
            }

            (low, high) = (curve.PointAt(middle) - p).Dot(curve.TangentAt(middle)) < 0 ? (middle, high) : (low, middle);
        }

        return Math.Min(points[best].DistanceTo(p), curve.PointAt(low).DistanceTo(p));
    }

    // Where the exact outline is smooth the arcs are; the corners at the tip and at an undercut crossing are theirs.
    public static void RequireSmooth(Outline outline, ArcPath path, double radius)
    {
        List<Rebuilt> pieces = PatternOf(outline, path);
        List<Point> corners = [.. outline.Pattern.Where((curve, i) => IsCorner(curve, outline.Pattern[(i + 1) % outline.Pattern.Length], outline.Repeats, i == outline.Pattern.Length - 1)).Select(curve => curve.EndPoint)];
        for (int i = 0; i + 1 < pieces.Count; i++)
        {
            if (!corners.Any(corner => corner.DistanceTo(pieces[i].To) < 1e-9 * (1 + radius)))
            {
                double kink = Math.Atan2(pieces[i].EndTangent.Cross(pieces[i + 1].StartTangent), pieces[i].EndTangent.Dot(pieces[i + 1].StartTangent));
                double noise = 1e-14 * radius / Math.Min(pieces[i].Chord, pieces[i + 1].Chord);
                Assert.True(Math.Abs(kink) < 1e-6 + noise, $"a kink of {kink:R} rad at {pieces[i].To} (chords {pieces[i].Chord}, {pieces[i + 1].Chord})");
            }
        }
    }

    private static bool IsCorner(Curve curve, Curve next, int teeth, bool isLast)
    {
        Vector leaving = next.TangentAt(next.Start);
        leaving = isLast ? Motion.TurnStep(1, teeth).Apply(leaving) : leaving;
        return Math.Abs(curve.TangentAt(curve.End).Cross(leaving)) > 1e-7;
    }

    private static IEnumerable<Point> Dense(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
