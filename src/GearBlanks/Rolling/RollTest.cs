using System.Collections.Immutable;
using GearBlanks.Teeth;

namespace GearBlanks.Rolling;

/// <summary>
/// Rolls two gears against each other: the single-flank test at a fixed distance, and the double-flank test without play. The terms are those of
/// ISO 1328-1:2013 (single-flank composite) and ISO 1328-2:2020 (radial composite), from memory; here both gears deviate, none is a master.
/// </summary>
public static class RollTest
{
    /// <summary>Rolls the pair.</summary>
    /// <exception cref="GearGeometryException">The two cannot be rolled: two rings, a rack that drives, or tips that do not reach one another.</exception>
    public static RollReport Of(RollRequest request)
    {
        Require(request);
        var solver = new ContactSolver(new RollPlacing(request.First, request.Second), request.FirstEccentricity, request.SecondEccentricity);
        var span = RollSpan.Of(request.First, request.Second, request.Length);
        double[] leading = new double[span.Count];
        double[] trailing = new double[span.Count];
        double[] play = new double[span.Count];
        (RollInterference? worst, double? lostAt) = Roll(request, solver, span, leading, trailing, play);
        double[]? distances = request.WithDoubleFlank ? Distances(request, solver, span) : null;
        return new RollReport(
            request, span.Count, Deviation.Of(leading, span.PerPitch), Deviation.Of(trailing, span.PerPitch), new RollRange(play.Min(), play.Average(), play.Max()),
            WorkingRadius(request), lostAt, worst,
            distances is null ? null : new DoubleFlank(Deviation.Of(distances, span.PerPitch), solver.Placing.IsInternal ? distances.Min() : distances.Max()),
            ContactView.Of(solver, request, worst, TurnOfWorst(request, span, leading)), Track(request, span, leading, trailing, play, distances));
    }

    private static (RollInterference? Worst, double? LostAt) Roll(
        RollRequest request, ContactSolver solver, RollSpan span, double[] leading, double[] trailing, double[] play)
    {
        RollInterference? worst = null;
        double? lostAt = null;
        (double ahead, double behind) = (0, 0);
        for (int i = 0; i < span.Count; i++)
        {
            double turn = span.TurnAt(i, request.First.Teeth);
            double even = solver.Placing.TurnFor(turn);
            Contact lead = solver.At(turn, request.Distance, true, even + ahead);
            Contact trail = solver.At(turn, request.Distance, false, even + behind);
            (leading[i], trailing[i]) = (lead.Limit - even, trail.Limit - even);
            var stops = new BothStops(lead, trail, turn);
            play[i] = stops.Play;
            if (double.IsInfinity(lead.Limit) || double.IsInfinity(trail.Limit))
            {
                lostAt ??= turn;
                continue;
            }

            (ahead, behind) = (leading[i], trailing[i]);
            worst = stops.Deepest(solver, request.Distance, worst?.Depth ?? 0) ?? worst;
        }

        return (worst, lostAt);
    }

    private static double[] Distances(RollRequest request, ContactSolver solver, RollSpan span)
    {
        var test = new DoubleFlankTest(solver);
        double[] distances = new double[span.Count];
        double guess = request.Distance;
        for (int i = 0; i < span.Count; i++)
        {
            distances[i] = test.DistanceAt(span.TurnAt(i, request.First.Teeth), guess);
            guess = double.IsNaN(distances[i]) ? request.Distance : distances[i];
        }

        return distances;
    }

    // Where nothing is in the way: the position farthest from the mean.
    private static double TurnOfWorst(RollRequest request, RollSpan span, double[] leading)
    {
        double mean = leading.Where(double.IsFinite).DefaultIfEmpty().Average();
        int worst = 0;
        for (int i = 1; i < leading.Length; i++)
        {
            worst = double.IsFinite(leading[i]) && !(Math.Abs(leading[i] - mean) <= Math.Abs(leading[worst] - mean)) ? i : worst;
        }

        return span.TurnAt(worst, request.First.Teeth);
    }

    private static ImmutableArray<RollPoint> Track(
        RollRequest request, RollSpan span, double[] leading, double[] trailing, double[] play, double[]? distances)
    {
        var track = ImmutableArray.CreateBuilder<RollPoint>(span.Count);
        for (int i = 0; i < span.Count; i++)
        {
            track.Add(new RollPoint(span.TurnAt(i, request.First.Teeth), leading[i], trailing[i], play[i], distances?[i]));
        }

        return track.MoveToImmutable();
    }

    private static double WorkingRadius(RollRequest request)
    {
        (double first, double second) = (request.First.Teeth, request.Second.Teeth);
        return request.Second.Kind == RollKind.Rack ? 1
            : request.First.Kind == RollKind.Ring || request.Second.Kind == RollKind.Ring ? request.Distance * second / Math.Abs(first - second)
            : request.Distance * second / (first + second);
    }

    private static void Require(RollRequest request)
    {
        (RollGear first, RollGear second) = (request.First, request.Second);
        if (first.Kind == RollKind.Rack)
        {
            throw new GearGeometryException("rack-drives", "A rack is rolled as the driven one; racks that drive", 1, 0, "name the gear first and the rack second");
        }

        if (first.Kind == RollKind.Ring && second.Kind != RollKind.External)
        {
            throw new GearGeometryException("two-rings", "A ring rolls with an external gear in it; rings and racks in the pair", 2, 1, "make one of them an external gear");
        }

        if (!(request.Distance > 0) || new RollPlacing(first, second).Reach(request.Distance) is null)
        {
            throw new GearGeometryException(
                "out-of-reach", "The tips do not reach one another, so nothing would turn; distance, mm", request.Distance, ReachingDistance(first, second),
                "bring the axes nearer (in a ring: farther apart), and see that the drawings' units are right");
        }
    }

    private static double ReachingDistance(RollGear first, RollGear second) => first.Kind == RollKind.Ring || second.Kind == RollKind.Ring
        ? Math.Abs(first.TipRadius - second.TipRadius)
        : first.TipRadius + second.TipRadius;
}
