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

    /// <summary>The same face without its holes: a turn about the origin then makes no difference.</summary>
    internal LetteringFace WithoutHoles => this with { Holes = [] };

    /// <summary>True where every stroke keeps the clearance along its whole length.</summary>
    internal bool Admits(IEnumerable<ArcPath> strokes) => strokes.All(Admits);

    private bool Admits(ArcPath stroke) =>
        stroke.Vertices.All(vertex => vertex.Point.Radius <= OuterEdge) // A chord is farthest from the centre at an end.
        && (InnerRadius <= 0 || Distance(stroke, default) >= InnerEdge)
        && Holes.All(hole => Distance(stroke, hole.Centre) >= hole.Radius + Clearance);

    private static double Distance(ArcPath stroke, Point from)
    {
        double least = double.PositiveInfinity;
        for (int i = 1; i < stroke.Vertices.Length; i++)
        {
            least = Math.Min(least, Distance(stroke.Vertices[i - 1].Point, stroke.Vertices[i].Point, from));
        }

        return least;
    }

    private static double Distance(Point start, Point end, Point from)
    {
        Vector along = end - start;
        double nearest = Math.Clamp((from - start).Dot(along) / along.Dot(along), 0, 1);
        return from.DistanceTo(start + (along * nearest));
    }
}
