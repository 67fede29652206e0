using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Where flanks end and fillets begin, and what base circle the flanks have, read off the sides themselves.</summary>
internal static class FlankEnd
{
    // rad: a straight flank turns by no more than its pieces' ripple.
    private const double Straight = 0.01;

    // Of the flank's height: away from both ends.
    private const double InnerShare = 0.2;
    private const double OuterShare = 0.85;

    private const int Halvings = 60;

    // Where the inner end comes down to the base circle, its angle tells nothing.
    private const double BaseShare = 0.9999;

    // Along each curve: enough to find the turn of a single arc.
    private const int Samples = 6;

    /// <summary>What was found.</summary>
    /// <param name="Radius">Radius of the form circle, mm: the root's where the sides do not tell.</param>
    /// <param name="BaseRadius">Radius of the base circle, mm.</param>
    public readonly record struct Measure(double Radius, double BaseRadius);

    /// <summary>
    /// The middle one over all sides. A fillet is hollow and an external gear's flank is round, so between them the direction of the side turns back. A ring's
    /// flank is hollow as well, but bends far less.
    /// </summary>
    public static Measure Of(RollSide[] sides, RollKind kind)
    {
        double[] radii = new double[sides.Length];
        double[] bases = new double[sides.Length];
        for (int i = 0; i < sides.Length; i++)
        {
            radii[i] = kind == RollKind.Ring ? BentEnd(sides[i], Math.Abs(sides[i].Tip - sides[i].Root)) : Deepest(sides[i], i % 2 == 0 ? 1 : -1, kind == RollKind.Rack);
            bases[i] = kind == RollKind.Rack ? double.NaN : Base(sides[i], radii[i]);
        }

        return new Measure(Middle(radii), Middle(bases));
    }

    // The circle whose involute turns by as much as the side does between two radii: what a written flank ripples matters less than in its direction.
    private static double Base(RollSide side, double form)
    {
        (double inner, double outer) = (form + (InnerShare * (side.Tip - form)), form + (OuterShare * (side.Tip - form)));
        double turned = Math.Abs(side.AngleAt(outer) - side.AngleAt(inner));
        double middle = (inner + outer) / 2;
        (double low, double high) = (0, Math.Min(inner, outer));
        for (int i = 0; i < Halvings; i++)
        {
            double tried = (low + high) / 2;
            double turns = Math.Abs(Turned(tried, outer) - Turned(tried, inner));
            (low, high) = turns < turned ? (low, tried) : (tried, high);
        }

        return (low + high) / 2 is var found && found < BaseShare * Math.Min(inner, outer) ? found : middle * side.SlopeAt(middle).X;
    }

    private static double Turned(double baseRadius, double radius) =>
        Curves.Involute.RollAt(baseRadius, radius) is var roll ? roll - Math.Atan(roll) : double.NaN;

    private static double Deepest(RollSide side, int sense, bool isRack)
    {
        double turned = 0;
        var best = (Turned: double.PositiveInfinity, Radius: side.Root);
        Vector before = side.Curves[0].TangentAt(side.Curves[0].Start);
        foreach (Curve curve in side.Curves)
        {
            for (int i = 0; i <= Samples; i++)
            {
                double parameter = curve.Start + ((curve.End - curve.Start) * i / Samples);
                Vector tangent = curve.TangentAt(parameter);
                turned += before.AngleTo(tangent) * sense;
                before = tangent;
                if (turned < best.Turned - Straight)
                {
                    Point point = curve.PointAt(parameter);
                    best = (turned, isRack ? point.Y : point.Radius);
                }
            }
        }

        return best.Radius;
    }

    // From the root on, as long as the side bends within half a tooth's depth.
    private static double BentEnd(RollSide side, double depth)
    {
        foreach (Curve curve in side.Curves)
        {
            for (int i = 0; i < Samples; i++)
            {
                double from = curve.Start + ((curve.End - curve.Start) * i / Samples);
                double to = curve.Start + ((curve.End - curve.Start) * (i + 1) / Samples);
                double bend = Math.Abs(curve.TangentAt(from).AngleTo(curve.TangentAt(to)));
                if (bend * depth / 2 < (curve.PointAt(to) - curve.PointAt(from)).Length)
                {
                    return curve.PointAt(from).Radius;
                }
            }
        }

        return side.Tip;
    }

    private static double Middle(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }
}
