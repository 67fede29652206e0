using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>A blank's shape: exact curves, ready to be cut.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Outside">The outer contour, counter-clockwise.</param>
/// <param name="Holes">Contours cut inside it, each counter-clockwise: the bore first.</param>
/// <param name="Engraving">Open strokes on the face.</param>
/// <param name="Remarks">What was left out and why, a sentence an item.</param>
public sealed record Part(
    string Name, Outline Outside, ImmutableArray<Outline> Holes, ImmutableArray<ArcPath> Engraving, ImmutableArray<string> Remarks)
{
    /// <summary>True where the contours are the path of a beam's centre, half a kerf off the part: compensated once, never again.</summary>
    public bool IsCompensated { get; init; }

    /// <summary>Of a compensated part, how far the beam stays off the nominal outline in hollow corners, mm: 0 where it reaches everything.</summary>
    public double Unreached { get; init; }
}
