using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>Makes one curve of two that are halves of it: arcs of one circle, lines in one direction.</summary>
internal static class ChainJoint
{
    // Of a size: halves are mirror images of one another but for rounding.
    private const double Rounding = 1e-12;

    /// <summary>The chain with the halves made one.</summary>
    public static List<Curve> Joined(IEnumerable<Curve> chain)
    {
        var joined = new List<Curve>();
        foreach (Curve curve in chain)
        {
            if (joined.Count > 0 && OneOf(joined[^1], curve) is { } one)
            {
                joined[^1] = one;
            }
            else
            {
                joined.Add(curve);
            }
        }

        return joined;
    }

    /// <summary>The curve of which two neighbours are the halves; null where they are not.</summary>
    public static Curve? OneOf(Curve first, Curve second) => (first, second) switch
    {
        (Arc one, Arc other) when one.Centre.DistanceTo(other.Centre) <= Rounding * (1 + one.Centre.Radius) && Math.Abs(one.Radius - other.Radius) <= Rounding * one.Radius =>
            one with { Sweep = one.Sweep + other.Sweep },
        (Line one, Line other) when Math.Abs((one.To - one.From).AngleTo(other.To - other.From)) <= Rounding => new Line(one.From, other.To),
        _ => null,
    };
}
