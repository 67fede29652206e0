using GearBlanks.Curves.Fitting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Verbs;

/// <summary>How outlines are written.</summary>
/// <param name="DxfVersion">Version of DXF files.</param>
/// <param name="Tolerance">Greatest distance between the written pieces and the exact outline, mm.</param>
/// <param name="Pieces">Arcs or chords.</param>
public sealed record OutputOptions(DxfVersion DxfVersion, double Tolerance, Pieces Pieces)
{
    /// <summary>The tolerance where none is given, mm.</summary>
    public const double DefaultTolerance = 0.001;
}
