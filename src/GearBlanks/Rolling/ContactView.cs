using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>What is to be seen about one contact: both contours as they stand, the first one's axis at the origin, the second one's on the X axis.</summary>
/// <param name="Turn">Turn of the first gear, rad.</param>
/// <param name="Place">The contact, mm.</param>
/// <param name="Size">How much about it is worth seeing, mm.</param>
/// <param name="First">Points of the first contour, tooth by tooth.</param>
/// <param name="Second">Points of the second contour.</param>
public sealed record ContactView(double Turn, Point Place, double Size, ImmutableArray<Point> First, ImmutableArray<Point> Second)
{
    private const int Steps = 12;

    // Of a curve that is seen magnified: its chords stray too little to be seen.
    private const int FineSteps = 200;

    private const double BackDepths = 10;

    // In tooth depths: enough to know the place by; nearer where something small is to be seen, so many times its depth.
    private const double Seen = 0.6;
    private const double Nearest = 0.12;
    private const double TimesDepth = 10;

    /// <summary>The view of the deepest interference, flanks carrying, or of the contact at a turn.</summary>
    internal static ContactView Of(ContactSolver solver, RollRequest request, RollInterference? worst, double turn)
    {
        double at = worst?.Turn ?? turn;
        double even = solver.Placing.TurnFor(at);
        Contact stop = solver.At(at, request.Distance, true, even);
        Point place = worst?.Place ?? solver.PlaceOf(stop, at);
        double depth = Math.Abs(request.First.TipRadius - request.First.RootRadius);
        double size = worst is null ? Seen * depth : Math.Clamp(TimesDepth * worst.Depth, Nearest * depth, Seen * depth);
        Motion first = RollPlacing.FirstAt(at, request.FirstEccentricity);
        Motion second = solver.Placing.SecondAt(worst?.SecondTurn ?? (double.IsFinite(stop.Limit) ? stop.Limit : even), request.Distance, request.SecondEccentricity);
        return new ContactView(
            at, place, size,
            [.. Contour(request.First, first.Back().Apply(place), size).Select(first.Apply)],
            [.. Contour(request.Second, second.Back().Apply(place), size).Select(second.Apply)]);
    }

    private static IEnumerable<Point> Contour(RollGear gear, Point place, double size)
    {
        Point? before = null;
        for (int i = 0; i < gear.Sides.Length; i++)
        {
            Point[] side = [.. gear.Sides[i].Curves.SelectMany(curve => Drawn(curve, place, size))];
            if (i % 2 == 1)
            {
                Array.Reverse(side);
            }

            // Lands and roots run around the centre.
            foreach (Point point in before is { } from ? Between(from, side[0], gear.Kind) : [])
            {
                yield return point;
            }

            foreach (Point point in side)
            {
                yield return point;
            }

            before = side[^1];
        }

        // A rack's back, far off.
        if (gear.Kind == RollKind.Rack && before is { } end)
        {
            yield return end + new Vector(0, BackDepths * (gear.RootRadius - gear.TipRadius));
            yield return gear.Sides[0].Curves[0].StartPoint + new Vector(0, BackDepths * (gear.RootRadius - gear.TipRadius));
        }
    }

    private static IEnumerable<Point> Drawn(Curve curve, Point place, double size)
    {
        bool isNear = (curve.PointAt((curve.Start + curve.End) / 2) - place).Length < curve.Length + (2 * size);
        int steps = isNear ? FineSteps : Steps;
        return Enumerable.Range(0, steps + 1).Select(step => curve.PointAt(curve.Start + ((curve.End - curve.Start) * step / steps)));
    }

    private static IEnumerable<Point> Between(Point from, Point to, RollKind kind)
    {
        double turn = (from - default(Point)).AngleTo(to - default(Point));
        for (int step = 1; step < Steps && kind != RollKind.Rack; step++)
        {
            double share = (double)step / Steps;
            yield return Point.Polar(from.Radius + ((to.Radius - from.Radius) * share), from.Angle + (turn * share));
        }
    }
}
