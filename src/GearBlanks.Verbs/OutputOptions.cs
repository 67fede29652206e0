using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Curves.Fitting;
using GearBlanks.Files.Dxf;
using GearBlanks.Findings;
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

    /// <summary>The least tolerance, mm: what a file's decimals can carry.</summary>
    public const double LeastTolerance = OutlineFit.LeastTolerance;

    /// <summary>The greatest tolerance, mm: no cutter for which these files are made is coarser.</summary>
    public const double GreatestTolerance = 0.1;

    // Coarser pieces would no longer show the shape of a tooth.
    private const double GreatestShareOfModule = 0.05;

    /// <summary>What is wrong with the tolerance for gears of a module; nothing where it is fine enough.</summary>
    /// <param name="module">The least module that is drawn, mm.</param>
    internal ImmutableArray<Problem> ProblemsAt(double module)
    {
        double greatest = GreatestShareOfModule * module;
        string text = greatest.ToString("0.######", CultureInfo.InvariantCulture);
        return Tolerance <= greatest ? [] : CommandLine.Problem(
            "--tolerance", Tolerance.ToString("0.######", CultureInfo.InvariantCulture), Words.Figure(module, "mm") + " is too small a module for this tolerance",
            "at most a twentieth of the module", text);
    }
}
