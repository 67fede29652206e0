using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Reach;

/// <summary>
/// Half a gap with half the tooth beside it: all there is to a gap that is its own mirror image. A disc that stands on the near side of the middle line has
/// its nearest material there too, so that the other half never stops it.
/// </summary>
/// <param name="Curves">From the gap's middle to the tooth's middle.</param>
/// <param name="Side">1 where the cutter runs to the right of travel, -1 to the left: in a ring.</param>
/// <param name="Out">Direction of the gap's middle line, from the root to the open.</param>
internal sealed record HalfGap(ImmutableArray<Curve> Curves, int Side, Vector Out)
{
    /// <summary>The root at the gap's middle.</summary>
    public Point Root { get; } = Curves[0].StartPoint;

    /// <summary>Mirrors the half in the middle line of its gap.</summary>
    public Motion AcrossGap { get; private init; } = Motion.None;

    /// <summary>Mirrors the half in the middle line of its tooth.</summary>
    public Motion AcrossTooth { get; private init; } = Motion.None;

    /// <summary>The half gap clockwise of a gear's tooth on +X, at the right of a rack's tooth on the Y axis.</summary>
    public static HalfGap Of(Toothing teeth)
    {
        ImmutableArray<Curve> curves = [.. teeth.GapToTip()];
        if (teeth is RackBar rack)
        {
            return new HalfGap(curves, 1, new Vector(0, 1))
            {
                AcrossTooth = AcrossY,
                AcrossGap = AcrossY.Then(Motion.Shift(new Vector(rack.Pitch, 0))),
            };
        }

        int side = teeth is RingGear ? -1 : 1;
        double middle = -Math.PI / teeth.Teeth;
        return new HalfGap(curves, side, Vector.AtAngle(middle) * side)
        {
            AcrossTooth = Motion.MirrorInX,
            AcrossGap = Motion.MirrorInX.Then(Motion.Turn(2 * middle)),
        };
    }

    /// <summary>What follows the half: its first curve mirrored, beyond the middle of the tooth.</summary>
    public Curve Beyond => Curves[^1].Moved(AcrossTooth).Reversed();

    /// <summary>Distance of a point from the middle line, mm.</summary>
    public double AsideOf(Point point) => Math.Abs(Out.Cross(point - Root));

    /// <summary>Height of a point over the root along the middle line, mm.</summary>
    public double HeightOf(Point point) => Out.Dot(point - Root);

    /// <summary>True for a point in the other half of the gap.</summary>
    public bool IsBeyondMiddle(Point point) => Side * Out.Cross(point - Root) < 0;

    private static Motion AcrossY { get; } = Motion.MirrorInX.Then(Motion.Turn(Math.PI));
}
