namespace GearBlanks.Curves.Offsets;

/// <summary>How far a curve's tangent turns.</summary>
internal static class Turning
{
    // Of curves without a formula here, none turns by half a turn in such a share of its way.
    private const int Steps = 8;

    /// <summary>Angle by which the tangent turns between two parameters of a curve, rad, counter-clockwise positive.</summary>
    public static double Between(Curve curve, double from, double to) => curve switch
    {
        Line => 0,
        Arc => to - from,
        EllipseOffset offset => Between(offset.Base, from, to) * (offset.Placement.IsMirrored ? -1 : 1),
        _ => Summed(curve, from, to),
    };

    private static double Summed(Curve curve, double from, double to)
    {
        double sum = 0;
        Vector last = curve.TangentAt(from);
        for (int i = 1; i <= Steps; i++)
        {
            Vector next = curve.TangentAt(from + ((to - from) * i / Steps));
            sum += last.AngleTo(next);
            last = next;
        }

        return sum;
    }
}
