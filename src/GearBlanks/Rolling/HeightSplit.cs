using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Cuts curves where their distance from the centre (of a rack: their height) stops growing or falling.</summary>
internal static class HeightSplit
{
    // Turns of direction are looked for between so many samples: more than any one exact curve has.
    private const int Samples = 8;

    // A guard against a hang only: halving comes to the last place before.
    private const int MostSteps = 80;

    /// <summary>The curve's monotone parts, in order of travel.</summary>
    public static IEnumerable<Curve> Monotone(Curve curve, bool isRack)
    {
        double from = curve.Start;
        double step = (curve.End - curve.Start) / Samples;
        (double low, double before) = (curve.Start, Growth(curve, curve.Start, isRack));
        for (int i = 1; i <= Samples; i++)
        {
            double high = i == Samples ? curve.End : curve.Start + (i * step);
            double growth = Growth(curve, high, isRack);
            if (before * growth < 0 && Turn(curve, low, high, isRack) is var turn && turn != from && turn != curve.End)
            {
                yield return curve.Between(from, turn);
                from = turn;
            }

            // A sample may lie on the very turn, as in the middle of a root's arc: then the next one tells.
            (low, before) = growth == 0 ? (low, before) : (high, growth);
        }

        yield return from == curve.Start ? curve : curve.Between(from, curve.End);
    }

    private static double Turn(Curve curve, double low, double high, bool isRack)
    {
        double sign = Growth(curve, low, isRack);
        for (int i = 0; i < MostSteps; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Growth(curve, middle, isRack) * sign > 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double Growth(Curve curve, double parameter, bool isRack)
    {
        Vector tangent = curve.TangentAt(parameter);
        return isRack ? tangent.Y : (curve.PointAt(parameter) - default(Point)).Dot(tangent);
    }
}
