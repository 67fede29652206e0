using System.Collections.Immutable;
using GearBlanks.Blanks.Faces;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Walls;

/// <summary>All walls of a blank.</summary>
internal static class WallList
{
    /// <summary>The contours inside a blank: the bore first, then screws, holes and windows.</summary>
    public static ImmutableArray<Hole> Holes(Cutouts cutouts, ImmutableArray<Outline> windows) =>
    [
        .. cutouts.Bore is { } bore ? [new Hole(HoleKind.Bore, bore.Outline())] : (Hole[])[],
        .. (cutouts.Screws?.Holes() ?? []).Select(circle => new Hole(HoleKind.ScrewHole, Outline.Of(circle))),
        .. cutouts.Holes.Select(circle => new Hole(HoleKind.Hole, Outline.Of(circle))),
        .. windows.Select(window => new Hole(HoleKind.Window, window)),
    ];

    /// <summary>The walls between contours, and between each and the edges of the face.</summary>
    public static IEnumerable<Wall> Of(Face face, ImmutableArray<Hole> holes)
    {
        for (int i = 0; i < holes.Length; i++)
        {
            foreach (FaceEdge edge in face.Edges)
            {
                yield return Wall.To(edge, holes[i]);
            }

            // Windows are all alike, so the arm between the first two speaks for every arm.
            bool isLaterWindow = i > 0 && holes[i - 1].Kind == HoleKind.Window;
            foreach (Hole other in holes.Skip(i + 1).Take(holes[i].Kind != HoleKind.Window ? int.MaxValue : isLaterWindow ? 0 : 1))
            {
                yield return Wall.Of(holes[i], other);
            }
        }
    }
}
