using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>A mesh's mark in the plan: a dot on the pitch point, and a flag beside it so that the teeth stay in sight.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="Letter">Its letter.</param>
/// <param name="Level">Its verdict.</param>
/// <param name="PitchPoint">Where the working circles touch.</param>
/// <param name="Centre">Middle of the flag.</param>
internal sealed record MeshMark(Mesh Mesh, string Letter, Level Level, Point PitchPoint, Point Centre)
{
    private const int Letters = 26;

    /// <summary>The letter of a mesh by its index: A to Z, then AA, AB and so on.</summary>
    public static string LetterOf(int index) => (index >= Letters ? LetterOf((index / Letters) - 1) : "") + (char)('A' + (index % Letters));

    public Figure Figure(Look look)
    {
        double dot = Math.Clamp(0.12 * Mesh.Pair.First.Module, 0.04 * look.Height, 0.2 * look.Height);
        ImmutableArray<ArcPath> stem = [ArcPath.Strokes([PitchPoint, Centre])];
        return new Figure(
            $"mesh {Mesh.Name}: {Look.Word(Level)}",
            [
                new Shape(stem, look.Halo with { Width = 0.16 * look.Height }),
                new Shape(stem, new Ink(Look.Dark, 0.08 * look.Height)),
                new Shape([SvgPaths.InQuarters(new Circle(PitchPoint, dot))], new Ink(null, 0, Look.Dark)),
                .. MarkShapes.Of(Level, Letter, Centre, look),
            ],
            new Extent(Centre.X, Centre.Y, Centre.X, Centre.Y).Grown(look.MarkRadius * MarkShapes.Reach));
    }
}
