using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Where flanks end and fillets begin, and what base circle the flanks have, read off the sides themselves.</summary>
internal static class FlankEnd
{
    // rad: a straight flank turns by no more than its pieces' ripple.
    private const double Straight = 0.01;

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
            double middle = radii[i] + ((sides[i].Tip - radii[i]) / 2);
            bases[i] = kind == RollKind.Rack ? double.NaN : middle * sides[i].SlopeAt(middle).X;
        }

        return new Measure(Middle(radii), Middle(bases));
    }

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
