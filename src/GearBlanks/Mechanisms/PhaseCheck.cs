using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>Where meshes form a loop, the last of them must find its tooth in a gap: otherwise the mechanism cannot be put together.</summary>
internal static class PhaseCheck
{
    private const double DegreesInARadian = 180 / Math.PI;

    public static IEnumerable<Finding> Of(Mechanism mechanism, MeshedPhases phases) =>
        phases.OutOfPhase.SelectMany(gap => ArmPhases.Held(gap, phases.Centred, mechanism)).Select(gap => OnGap(gap, mechanism));

    private static Finding OnGap(PhaseGap gap, Mechanism mechanism) => Check.Of(
        "out-of-phase", Places.Mesh(gap.Mesh.Name), Math.Abs(gap.Offset), Bounds(gap), "mm",
        "Offset of the teeth beside their gaps, the other meshes of the loop being centred,", _ => Advice(gap, mechanism));

    // Beyond the play nothing can be put together; within it the teeth lean against one another, and no free backlash is left at the end of it.
    private static Limit Bounds(PhaseGap gap) => new(null, null, gap.Play / 2, gap.Play, "geometry of the loop, with the backlash of its meshes");

    private static string Advice(PhaseGap gap, Mechanism mechanism) => Free(gap.Mesh, mechanism) is { } gear
        ? $"Turn {gear.Name} against its sandwich by {Words.Change(TurnBy(gear, gap) * DegreesInARadian)} degrees."
        : "Move one of the loop's axes, or take one of its meshes out.";

    // A gear that nothing else holds: others in its sandwich, but no other mesh.
    private static MountedGear? Free(Mesh mesh, Mechanism mechanism) => ((MountedGear[])[mesh.First, mesh.Second]).FirstOrDefault(gear =>
        gear.Toothing is Gear
        && mechanism.Meshes.Count(other => other.First.Name == gear.Name || other.Second.Name == gear.Name) == 1
        && mechanism.Sandwiches.Single(sandwich => sandwich.Name == gear.Sandwich).Gears.Length > 1);

    // The tooth runs back by the offset: about a ring's centre the other way than about the gears it meshes with.
    private static double TurnBy(MountedGear gear, PhaseGap gap) =>
        -gap.Offset * 2 * Math.PI / (MeshSide.SignedTeeth(gear) * gap.Mesh.WorkingPitch);
}
