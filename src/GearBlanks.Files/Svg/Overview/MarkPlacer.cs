using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Finds each mesh's flag a place near its pitch point, clear of other flags, pitch points and spindles.</summary>
internal static class MarkPlacer
{
    // Teeth on either side of a pitch point that a flag should not hide, in modules.
    private const double FreeModules = 2.5;

    private static readonly double[] Distances = [1, 1.5, 2.1, 3, 4.2];

    // From the line of centres: square to it there is most air between the two gears.
    private static readonly double[] Directions = [90, -90, 65, -65, 115, -115, 40, -40, 140, -140];

    public static ImmutableArray<MeshMark> Place(MechanismReport report, Look look)
    {
        Mechanism mechanism = report.Mechanism;
        List<Circle> taken =
        [
            .. mechanism.Axes.Select(axis => new Circle(axis.Position, look.Height)),
            .. mechanism.Meshes.Select(mesh => new Circle(mesh.PitchPoint, FreeModules * mesh.Pair.First.Module)),
        ];
        ImmutableArray<MeshMark>.Builder marks = ImmutableArray.CreateBuilder<MeshMark>();
        foreach (Mesh mesh in mechanism.Meshes)
        {
            var mark = new MeshMark(
                mesh, MeshMark.LetterOf(marks.Count), report.VerdictOn(Places.Mesh(mesh.Name)), mesh.PitchPoint,
                Best(mesh, taken, look));
            marks.Add(mark);
            taken.Add(new Circle(mark.Centre, Radius(look)));
        }

        return marks.ToImmutable();
    }

    private static double Radius(Look look) => look.MarkRadius * 1.5;

    private static Point Best(Mesh mesh, List<Circle> taken, Look look)
    {
        Point pitchPoint = mesh.PitchPoint;
        double line = (mesh.Second.Axis.Position - mesh.First.Axis.Position).Angle;
        double least = Radius(look) + (FreeModules * mesh.Pair.First.Module);
        return (from distance in Distances
                from direction in Directions
                let centre = pitchPoint + (Vector.AtAngle(line + (direction * Math.PI / 180)) * (distance * least))
                let place = new Circle(centre, Radius(look))
                select (Centre: centre, Overlap: taken.Sum(other => Math.Max(0, -place.WallTo(other)))))
            .MinBy(place => place.Overlap).Centre;
    }
}
