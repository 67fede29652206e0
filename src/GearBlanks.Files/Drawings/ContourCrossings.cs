using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds where contours cross themselves or one another, by a sweep along X.</summary>
internal static class ContourCrossings
{
    // mm: neighbours share an end, so what meets within this of an end is no crossing.
    private const double Ends = 1e-6;

    private readonly record struct Part(Curve Curve, double Left, double Right, double Bottom, double Top, DrawnContour Of);

    /// <summary>A place where two pieces cross, and whose they are; null where none do.</summary>
    public static (Point At, DrawnContour One, DrawnContour Other)? First(IEnumerable<DrawnContour> contours)
    {
        Part[] parts = [.. contours.SelectMany(contour => contour.Pieces.Select(piece => PartOf(piece, contour))).OrderBy(part => part.Left)];
        var open = new List<Part>();
        foreach (Part part in parts)
        {
            open.RemoveAll(other => other.Right < part.Left);
            foreach (Part other in open)
            {
                if (other.Bottom <= part.Top && part.Bottom <= other.Top && Crossing(part.Curve, other.Curve) is { } at)
                {
                    return (at, part.Of, other.Of);
                }
            }

            open.Add(part);
        }

        return null;
    }

    private static Part PartOf(Curve curve, DrawnContour contour)
    {
        var (left, right) = (new Vector(-1, 0), new Vector(1, 0));
        var (down, up) = (new Vector(0, -1), new Vector(0, 1));
        return new Part(curve, -Reach(left, curve), Reach(right, curve), -Reach(down, curve), Reach(up, curve), contour);
    }

    private static double Reach(Vector direction, Curve curve)
    {
        double ends = Math.Max((curve.StartPoint - default(Point)).Dot(direction), (curve.EndPoint - default(Point)).Dot(direction));
        return curve is Arc arc && On(arc, direction.Angle) ? (arc.Centre - default(Point)).Dot(direction) + arc.Radius : ends;
    }

    private static Point? Crossing(Curve one, Curve other)
    {
        foreach (Point at in Meetings(one, other))
        {
            if (!IsEnd(at, one) || !IsEnd(at, other))
            {
                return at;
            }
        }

        return null;
    }

    private static bool IsEnd(Point at, Curve curve) => at.DistanceTo(curve.StartPoint) < Ends || at.DistanceTo(curve.EndPoint) < Ends;

    private static IEnumerable<Point> Meetings(Curve one, Curve other) => (one, other) switch
    {
        (Line first, Line second) => OfLines(first, second),
        (Line line, Arc arc) => OfLineAndArc(line, arc),
        (Arc arc, Line line) => OfLineAndArc(line, arc),
        (Arc first, Arc second) => OfArcs(first, second),
        _ => [],
    };

    private static IEnumerable<Point> OfLines(Line first, Line second)
    {
        (Vector a, Vector b, Vector between) = (first.To - first.From, second.To - second.From, second.From - first.From);
        double area = a.Cross(b);
        (double onFirst, double onSecond) = (between.Cross(b) / area, between.Cross(a) / area);
        return onFirst is >= 0 and <= 1 && onSecond is >= 0 and <= 1 ? [first.From + (a * onFirst)] : [];
    }

    private static IEnumerable<Point> OfLineAndArc(Line line, Arc arc)
    {
        Vector along = (line.To - line.From).Unit;
        double middle = (arc.Centre - line.From).Dot(along);
        double aside = (arc.Centre - line.From).Cross(along);
        double square = (arc.Radius - aside) * (arc.Radius + aside);
        double half = Math.Sqrt(Math.Max(0, square));
        double length = line.From.DistanceTo(line.To);
        return square < 0 ? [] : new[] { middle - half, middle + half }
            .Where(at => at >= 0 && at <= length)
            .Select(at => line.From + (along * at))
            .Where(point => On(arc, (point - arc.Centre).Angle));
    }

    private static IEnumerable<Point> OfArcs(Arc first, Arc second)
    {
        Vector between = second.Centre - first.Centre;
        double distance = between.Length;
        double along = ((distance * distance) + (first.Radius * first.Radius) - (second.Radius * second.Radius)) / (2 * distance);
        double square = (first.Radius - along) * (first.Radius + along);
        if (!(distance > Ends) || !(square >= 0))
        {
            return [];
        }

        Point middle = first.Centre + (between.Unit * along);
        Vector aside = between.Unit.TurnedLeft * Math.Sqrt(square);
        return new[] { middle + aside, middle - aside }
            .Where(point => On(first, (point - first.Centre).Angle) && On(second, (point - second.Centre).Angle));
    }

    private static bool On(Arc arc, double angle)
    {
        double turned = (angle - arc.StartAngle) * Math.Sign(arc.Sweep);
        return turned - (2 * Math.PI * Math.Floor(turned / (2 * Math.PI))) <= Math.Abs(arc.Sweep);
    }
}
