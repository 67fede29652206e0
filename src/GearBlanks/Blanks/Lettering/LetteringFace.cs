using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Where a gear's face may be engraved: the ring about the origin between bore and teeth, without its holes.</summary>
/// <param name="InnerRadius">Radius of the bore's edge, mm; 0 where there is no bore.</param>
/// <param name="OuterRadius">Radius of the root circle, or of a disc's rim, mm.</param>
/// <param name="Holes">Holes to stay away from.</param>
/// <param name="Clearance">Least distance from a stroke's middle line to bore, teeth and holes, mm; not negative.</param>
public sealed record LetteringFace(double InnerRadius, double OuterRadius, ImmutableArray<Circle> Holes, double Clearance)
{
    /// <summary>Radius outside of which strokes are clear of the bore, mm; 0 where there is none.</summary>
    internal double InnerEdge => InnerRadius > 0 ? InnerRadius + Clearance : 0;

    /// <summary>Radius inside of which strokes are clear of the teeth, mm.</summary>
    internal double OuterEdge => OuterRadius - Clearance;

    /// <summary>True where every stroke keeps the clearance from bore and teeth; a turn about the origin makes no difference.</summary>
    internal bool HoldsInRing(StrokeSet strokes) =>
        strokes.IsWithin(OuterEdge) && (InnerRadius <= 0 || strokes.IsClearOf(default, InnerEdge));

    /// <summary>True where every stroke keeps the clearance from the holes once turned about the origin by an angle, rad.</summary>
    internal bool IsClearOfHoles(StrokeSet strokes, double turn)
    {
        // Turning the few holes back is cheaper than turning the many strokes.
        Motion back = Motion.Turn(-turn);
        return Holes.All(hole => strokes.IsClearOf(back.Apply(hole.Centre), hole.Radius + Clearance));
    }
}
