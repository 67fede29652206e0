using GearBlanks.Curves;

namespace GearBlanks.Tests.Properties;

/// <summary>
/// Proves, rather than samples, that a measure stays positive along a curve. The measure changes at most as fast as the way travelled, as distances
/// do; so over a stretch it stays above half of what its values at both ends exceed the stretch's length by. Stretches are halved until that suffices.
/// </summary>
internal static class Certified
{
    private const int Deepest = 60;

    public static bool IsPositive(Curve curve, Func<Point, double> measure, double slack) =>
        IsPositive(curve, curve.Start, measure(curve.StartPoint) + slack, curve.End, measure(curve.EndPoint) + slack, measure, slack, Deepest);

    private static bool IsPositive(
        Curve curve, double start, double atStart, double end, double atEnd, Func<Point, double> measure, double slack, int halvings)
    {
        if (Math.Min(atStart, atEnd) <= 0 || halvings == 0)
        {
            return false;
        }

        if (atStart + atEnd > curve.LengthBetween(start, end))
        {
            return true;
        }

        double middle = (start + end) / 2;
        double there = measure(curve.PointAt(middle)) + slack;
        return IsPositive(curve, start, atStart, middle, there, measure, slack, halvings - 1)
            && IsPositive(curve, middle, there, end, atEnd, measure, slack, halvings - 1);
    }
}
