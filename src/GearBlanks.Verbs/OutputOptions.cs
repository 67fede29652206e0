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

    /// <summary>What is wrong with the tolerance for gears of a module; nothing where it can be carried and is fine enough.</summary>
    /// <param name="module">The least module that is drawn, mm.</param>
    internal ImmutableArray<Problem> ProblemsAt(double module)
    {
        double greatest = Math.Min(GreatestTolerance, GreatestShareOfModule * module);
        return Tolerance switch
        {
            < LeastTolerance => Refused("The tolerance is below what a file can carry", "0.000001 mm or more", LeastTolerance),
            _ when Tolerance > greatest => Refused(
                $"The tolerance is too coarse for teeth of module {Words.Mm(module)}", "at most a twentieth of the module, and 0.1 mm", greatest),
            _ => [],
        };
    }

    private ImmutableArray<Problem> Refused(string message, string allowed, double nearest) => CommandLine.Problem(
        "--tolerance", Tolerance.ToString("0.#########", CultureInfo.InvariantCulture), message, allowed, nearest.ToString("0.######", CultureInfo.InvariantCulture));
}
