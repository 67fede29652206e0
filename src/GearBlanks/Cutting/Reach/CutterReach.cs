using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Reach;

/// <summary>What a beam or an end mill leaves of teeth: the outline as it will come out, exact.</summary>
public static class CutterReach
{
    /// <summary>
    /// The contour of the teeth as a round cutter leaves it that runs beside them along one path: the nominal curves where it touches alone, arcs of its radius
    /// where it touches twice, outside corners as they are. A pocket behind a neck narrower than the cutter stays uncut: it would have to plunge there.
    /// </summary>
    /// <param name="teeth">The teeth, nominal.</param>
    /// <param name="radius">Radius of the beam or mill, mm; positive.</param>
    /// <returns>The nominal outline itself where the cutter reaches all of it.</returns>
    /// <exception cref="GearGeometryException">The cutter does not go through the ring: cutter-wider-than-ring, or finds no way along the teeth: cutter-stuck.</exception>
    public static Outline Outline(Toothing teeth, double radius)
    {
        HalfGap gap = HalfGap.Of(teeth);
        return Outline(teeth, gap, Half(teeth, gap, radius), radius);
    }

    internal static Outline Outline(Toothing teeth, HalfGap gap, CutHalf half, double radius) => half.IsWhole ? teeth.Outline()
        : teeth is RackBar rack ? CutBar.Of(rack, gap, half, radius)
        : Around(gap, half, teeth.Teeth);

    internal static CutHalf Half(Toothing teeth, HalfGap gap, double radius)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius);
        if (teeth is RingGear ring && radius >= ring.TipRadius)
        {
            throw new GearGeometryException(
                "cutter-wider-than-ring", "The cutter does not go through the ring between its tips; its diameter, mm", 2 * radius, 2 * ring.TipRadius, "use a smaller cutter");
        }

        return CutterWalk.Of(gap, radius) ?? throw new GearGeometryException(
            "cutter-stuck", "The cutter finds no way along the teeth; its diameter, mm", 2 * radius, 2 * teeth.Module, "use a smaller cutter");
    }

    private static Outline Around(HalfGap gap, CutHalf half, int teeth)
    {
        List<Curve> tooth = ChainJoint.Joined([.. half.Curves, .. half.Curves.Reverse().Select(curve => curve.Moved(gap.AcrossTooth).Reversed())]);
        if (ChainJoint.OneOf(tooth[^1], tooth[0].Moved(Motion.TurnStep(1, teeth))) is { } root)
        {
            tooth[^1] = root;
            tooth.RemoveAt(0);
        }

        return new Outline([.. tooth], teeth);
    }
}
