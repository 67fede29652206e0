using GearBlanks.Curves;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>How hard leaders are to follow, as a length, mm: their own, and more for each crossing and for each mark they run over.</summary>
internal sealed class LeaderCost(Circle[] obstacles)
{
    private const double Crossing = 200;
    private const double Hit = 100;

    // The same leaders come up again and again while callouts are swapped.
    private readonly Dictionary<(Point From, Point To), double> _alone = [];

    public double Of(PlacedCallout[] callouts)
    {
        (Point From, Point To)[] leaders = [.. callouts.Select(callout => (callout.Callout.Axis.Position, callout.Anchor))];
        double cost = 0;
        for (int i = 0; i < leaders.Length; i++)
        {
            (Point from, Point to) = leaders[i];
            cost += Alone(from, to);
            for (int j = 0; j < i; j++)
            {
                cost += DoCross(from, to, leaders[j].From, leaders[j].To) ? Crossing : 0;
            }
        }

        return cost;
    }

    private double Alone(Point from, Point to)
    {
        if (!_alone.TryGetValue((from, to), out double cost))
        {
            // Its own axis is no obstacle, nor is one that stands on the same spot.
            int hits = obstacles.Count(obstacle => from != obstacle.Centre && Distance(from, to, obstacle.Centre) < obstacle.Radius);
            _alone[(from, to)] = cost = from.DistanceTo(to) + (hits * Hit);
        }

        return cost;
    }

    private static bool DoCross(Point a, Point b, Point c, Point d) =>
        (b - a).Cross(c - a) * (b - a).Cross(d - a) < 0 && (d - c).Cross(a - c) * (d - c).Cross(b - c) < 0;

    private static double Distance(Point from, Point to, Point point)
    {
        Vector line = to - from;
        double share = Math.Clamp((point - from).Dot(line) / line.Dot(line), 0, 1);
        return point.DistanceTo(from + (line * share));
    }
}
