namespace GearBlanks.Curves;

/// <summary>
/// Least and greatest distances of lines and arcs in closed form: the extreme is taken on at ends, crossings, or where both share a normal,
/// and each of these is looked at.
/// </summary>
internal static class LineArcDistance
{
    // In rad: an arc's own end is not missed by rounding.
    private const double Rounding = 1e-12;

    /// <summary>The least distance between two curves, mm; 0 where they cross.</summary>
    /// <exception cref="ArgumentException">A curve is neither a line nor an arc.</exception>
    public static double Between(Curve one, Curve other)
    {
        double ends = Math.Min(
            Math.Min(From(one.StartPoint, other), From(one.EndPoint, other)),
            Math.Min(From(other.StartPoint, one), From(other.EndPoint, one)));
        return Math.Min(ends, (one, other) switch
        {
            (Line first, Line second) => Cross(first, second) ? 0 : ends,
            (Line line, Arc arc) => Between(line, arc),
            (Arc arc, Line line) => Between(line, arc),
            (Arc first, Arc second) => Between(first, second),
            _ => throw Unknown(one, other),
        });
    }

    /// <summary>The least distance of a curve from a point, mm.</summary>
    /// <exception cref="ArgumentException">The curve is neither a line nor an arc.</exception>
    public static double From(Point point, Curve curve) => curve switch
    {
        Line line => point.DistanceTo(line.From + ((line.To - line.From) * Math.Clamp(Share(point, line), 0, 1))),
        Arc arc => Math.Min(FromEnds(point, arc, Math.Min), Holds(arc, point) ? Math.Abs(point.DistanceTo(arc.Centre) - arc.Radius) : double.PositiveInfinity),
        _ => throw Unknown(curve, curve),
    };

    /// <summary>The greatest distance of a curve from a point, mm.</summary>
    /// <exception cref="ArgumentException">The curve is neither a line nor an arc.</exception>
    public static double Farthest(Point point, Curve curve)
    {
        double ends = FromEnds(point, curve, Math.Max);
        return curve switch
        {
            Line => ends,
            Arc arc when Holds(arc, arc.Centre + (arc.Centre - point)) => Math.Max(ends, point.DistanceTo(arc.Centre) + arc.Radius),
            Arc => ends,
            _ => throw Unknown(curve, curve),
        };
    }

    /// <summary>How far a curve reaches from the origin in a direction of length 1, mm.</summary>
    /// <exception cref="ArgumentException">The curve is neither a line nor an arc.</exception>
    public static double Reach(Vector direction, Curve curve)
    {
        Point origin = default;
        double ends = Math.Max((curve.StartPoint - origin).Dot(direction), (curve.EndPoint - origin).Dot(direction));
        return curve switch
        {
            Line => ends,
            Arc arc when Holds(arc, arc.Centre + direction) => Math.Max(ends, (arc.Centre - origin).Dot(direction) + arc.Radius),
            Arc => ends,
            _ => throw Unknown(curve, curve),
        };
    }

    private static double FromEnds(Point point, Curve curve, Func<double, double, double> choose) =>
        choose(point.DistanceTo(curve.StartPoint), point.DistanceTo(curve.EndPoint));

    private static double Between(Line line, Arc arc)
    {
        Vector along = (line.To - line.From).Unit;
        double reach = line.From.DistanceTo(line.To);
        double middle = (arc.Centre - line.From).Dot(along);
        Point foot = line.From + (along * middle);
        double aside = foot.DistanceTo(arc.Centre);
        if (aside >= arc.Radius)
        {
            return middle >= 0 && middle <= reach && Holds(arc, foot) ? aside - arc.Radius : double.PositiveInfinity;
        }

        double half = Math.Sqrt((arc.Radius * arc.Radius) - (aside * aside));
        bool crosses = new[] { middle - half, middle + half }.Any(at => at >= 0 && at <= reach && Holds(arc, line.From + (along * at)));
        return crosses ? 0 : double.PositiveInfinity;
    }

    private static double Between(Arc first, Arc second)
    {
        Vector between = second.Centre - first.Centre;
        double distance = between.Length;
        if (distance == 0)
        {
            return double.PositiveInfinity;
        }

        Vector towards = between.Unit;
        double least = double.PositiveInfinity;
        foreach (Point one in (Point[])[first.Centre + (towards * first.Radius), first.Centre - (towards * first.Radius)])
        {
            foreach (Point other in (Point[])[second.Centre + (towards * second.Radius), second.Centre - (towards * second.Radius)])
            {
                least = Holds(first, one) && Holds(second, other) ? Math.Min(least, one.DistanceTo(other)) : least;
            }
        }

        return Meet(first, second, towards, distance) ? 0 : least;
    }

    private static bool Meet(Arc first, Arc second, Vector towards, double distance)
    {
        double along = ((distance * distance) + (first.Radius * first.Radius) - (second.Radius * second.Radius)) / (2 * distance);
        double square = (first.Radius * first.Radius) - (along * along);
        if (square < 0)
        {
            return false;
        }

        Point middle = first.Centre + (towards * along);
        Vector aside = towards.TurnedLeft * Math.Sqrt(square);
        return new[] { middle + aside, middle - aside }.Any(point => Holds(first, point) && Holds(second, point));
    }

    private static bool Cross(Line first, Line second)
    {
        (Vector a, Vector b) = (first.To - first.From, second.To - second.From);
        double area = a.Cross(b);
        if (area == 0)
        {
            return false;
        }

        Vector between = second.From - first.From;
        (double onFirst, double onSecond) = (between.Cross(b) / area, between.Cross(a) / area);
        return onFirst is >= 0 and <= 1 && onSecond is >= 0 and <= 1;
    }

    // 0 at the line's start, 1 at its end.
    private static double Share(Point point, Line line)
    {
        Vector along = line.To - line.From;
        return (point - line.From).Dot(along) / along.Dot(along);
    }

    // True where the direction of a point from the centre lies within the arc; any direction does from the centre itself.
    private static bool Holds(Arc arc, Point point)
    {
        if (arc.IsFullCircle || point == arc.Centre)
        {
            return true;
        }

        double turned = ((point - arc.Centre).Angle - arc.StartAngle) * Math.Sign(arc.Sweep);
        double within = turned - (2 * Math.PI * Math.Floor(turned / (2 * Math.PI)));
        return within <= Math.Abs(arc.Sweep) + Rounding || within >= (2 * Math.PI) - Rounding;
    }

    private static ArgumentException Unknown(Curve one, Curve other) =>
        new($"Distances are known between lines and arcs, not between {one.GetType().Name} and {other.GetType().Name}.");
}
