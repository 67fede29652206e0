namespace GearBlanks.Curves.Fitting;

/// <summary>What an exact curve becomes in a file.</summary>
public enum Pieces
{
    /// <summary>Circular arcs, tangent to one another.</summary>
    Arcs,

    /// <summary>Straight chords between points of the curve.</summary>
    Chords,
}
