using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Walls;
using GearBlanks.Cutting.Reach;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>What there is to say of a tool's reach into one gear.</summary>
internal static class ReachFindings
{
    /// <summary>On its teeth: for each mate the room as cut; where there is none, the root against the rack's own bottom clearance.</summary>
    public static IEnumerable<Finding> OnTeeth(
        string name, Toothing teeth, double tool, UncutRest rest, LargestCutters largest, ImmutableArray<ToothMesh> meshes, Limits limits, ImmutableArray<BasicRack> racks)
    {
        foreach (ToothMesh mesh in meshes)
        {
            yield return Check.Of(
                "as-cut-clearance", mesh.Place, mesh.RoomAsCut(tool / 2), limits.FilletClearance.Times(teeth.Module), "mm",
                $"Room between the tip corner of {mesh.MateName} and {name} as a tool of {Words.Mm(tool)} leaves it",
                bound => new ReachRemedies(mesh, name, tool, racks).Sentence(bound, largest.RunningFree));
        }

        if (meshes.IsEmpty)
        {
            double clearance = teeth.Data.RackDedendum - (teeth.Data.Rack.Addendum * teeth.Module);
            var limit = new Limit(null, null, Math.Max(0, clearance), null, "geometry: bottom clearance of the basic rack, hfP - haP");
            yield return Check.Of(
                "root-reach", Places.Gear(name), rest.Depth, limit, "mm", $"What a tool of {Words.Mm(tool)} leaves standing in the root",
                _ => $"Use a tool of at most {Words.Mm(Math.Floor(largest.RootTouching * 100) / 100)} to reach the root, or name the mate in a job and see whether it runs free.");
        }
    }

    /// <summary>On holes that the tool does not go through; windows are all alike.</summary>
    public static IEnumerable<Finding> OnHoles(Blank blank, double tool) => blank.Holes
        .GroupBy(hole => (hole.Name, Size: hole.Kind == HoleKind.Window ? 0 : hole.Outline.AsCircle?.Diameter ?? -1))
        .Select(alike => alike.First())
        .Where(hole => !HoleReach.Takes(hole.Outline, tool))
        .Select(hole => OnHole(blank, hole, tool));

    private static Finding OnHole(Blank blank, Hole hole, double tool)
    {
        double largest = HoleReach.Largest(hole.Outline, tool);
        string what = hole.Kind == HoleKind.Bore && hole.Outline.AsCircle is null ? blank.Cutouts.Bore!.Narrowest.What
            : hole.Outline.AsCircle is null ? $"Narrowest way through a {hole.Name} of {blank.Name}"
            : $"Diameter of the {hole.Name} of {blank.Name}";
        return Check.Of(
            "hole-reach", Places.Gear(blank.Name), largest, new Limit(tool, null, null, null, "geometry: no tool goes through a hole narrower than itself"), "mm", what,
            _ => $"Use a tool of at most {Words.Mm(Math.Floor(largest * 1000) / 1000)}{(hole.Outline.AsCircle is null ? "" : ", drill it")}, or make it at least {Words.Mm(Words.RoundedUp(tool))} wide.");
    }
}
