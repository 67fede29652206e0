using System.Collections.Immutable;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Which tooth stands in which gap when every gear is in mesh at the setting.</summary>
internal static class ToothFacing
{
    public static ImmutableArray<FacingTeeth> Of(Mechanism mechanism, MeshedPhases phases) => [.. mechanism.Meshes.Select(mesh => Of(mesh, phases))];

    // The gear whose tooth is nearer to the line of centres gives the tooth.
    private static FacingTeeth Of(Mesh mesh, MeshedPhases phases)
    {
        (double first, double second) = (Phase(mesh.First, mesh, phases), Phase(mesh.Second, mesh, phases));
        return Math.Abs(first - Math.Round(first)) <= Math.Abs(second - Math.Round(second))
            ? Of(mesh, mesh.First, first, mesh.Second, second)
            : Of(mesh, mesh.Second, second, mesh.First, first);
    }

    // As the tooth comes to the pitch point, the other gear's flanks come from the other side: the phases add up to a half there as here.
    private static FacingTeeth Of(Mesh mesh, MountedGear gear, double phase, MountedGear mate, double matePhase)
    {
        double beside = phase - Math.Round(phase);
        double gap = Math.Round(matePhase + beside - 0.5);
        (int lower, int upper) = (Number(mate, gap), Number(mate, gap + 1));
        bool isAsCounted = CountsUp(mate);
        return new FacingTeeth(
            mesh.Name, gear.Name, Number(gear, Math.Round(phase)), mate.Name, isAsCounted ? lower : upper, isAsCounted ? upper : lower,
            (CountsUp(gear) ? beside : -beside) * mesh.WorkingPitch);
    }

    // How many pitches the pitch point lies beyond the first tooth.
    private static double Phase(MountedGear gear, Mesh mesh, MeshedPhases phases)
    {
        MeshSide side = MeshSide.Of(gear, mesh);
        return (side.PitchDirection - phases.Angles[gear.Sandwich] - side.ToothDirection) * side.Teeth / (2 * Math.PI);
    }

    // The phases of rings and racks run against the order in which their teeth are counted.
    private static bool CountsUp(MountedGear gear) => gear.Toothing is ExternalGear;

    private static int Number(MountedGear gear, double phase)
    {
        int index = (int)(CountsUp(gear) ? phase : -phase);
        int teeth = gear.Toothing.Teeth;
        return (gear.Toothing is RackBar ? index : ((index % teeth) + teeth) % teeth) + 1;
    }
}
