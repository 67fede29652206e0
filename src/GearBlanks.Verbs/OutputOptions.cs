using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Curves.Fitting;
using GearBlanks.Files.Dxf;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>How outlines are written.</summary>
/// <param name="DxfVersion">Version of DXF files.</param>
/// <param name="Tolerance">Greatest distance between the written pieces and the exact outline, mm.</param>
/// <param name="Pieces">Arcs or chords.</param>
public sealed record OutputOptions(DxfVersion DxfVersion, double Tolerance, Pieces Pieces)
{
    /// <summary>The tolerance where none is given, mm.</summary>
    public const double DefaultTolerance = 0.001;

    /// <summary>What a person has to put right; empty where there is nothing.</summary>
    internal ImmutableArray<Problem> Problems => Tolerance >= OutlineFit.LeastTolerance
        ? []
        : CommandLine.Problem(
            "--tolerance", Tolerance.ToString("R", CultureInfo.InvariantCulture), "The tolerance is below what a file can carry",
            "a length of at least 0.000001 mm", "0.000001");
}
