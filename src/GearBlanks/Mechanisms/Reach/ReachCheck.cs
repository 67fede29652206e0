using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Cutting.Reach;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>What a beam or an end mill reaches of gears, and whether they still run.</summary>
public static class ReachCheck
{
    private const string NoMate = "no mate is known: give a job with the mesh";

    /// <summary>The reach into every gear of a mechanism whose tool is known.</summary>
    /// <param name="mechanism">The mechanism.</param>
    /// <param name="tool">Diameter of the beam or mill for a gear, mm, positive; null for one that is left out.</param>
    /// <param name="racks">Racks that advice may fall back on.</param>
    public static ImmutableArray<GearReach> Of(Mechanism mechanism, Func<MountedGear, double?> tool, ImmutableArray<BasicRack> racks) =>
        [.. mechanism.Gears.Select(gear => tool(gear) is { } diameter ? Of(gear.Blank, diameter, MeshesOf(gear, mechanism), mechanism.Limits, racks) : null).OfType<GearReach>()];

    /// <summary>The reach into one gear that no mate is known of.</summary>
    /// <param name="blank">The gear.</param>
    /// <param name="tool">Diameter of the beam or mill, mm, positive.</param>
    /// <param name="limits">The limits.</param>
    public static GearReach Of(Blank blank, double tool, Limits limits) => Of(blank, tool, [], limits, []);

    /// <summary>The tool of a gear where none is asked for: the machine's mill, else the beam it is known to have in the gear's sheet; null where neither is known.</summary>
    public static double? ToolOf(Machine machine, MountedGear? gear) => machine.ToolDiameter
        ?? (machine.Compensates ? null : GearKerf.Of(machine, gear?.Material?.Name, gear?.Blank.Thickness ?? 0, null).Kerf is { } kerf ? Math.Max(kerf.X, kerf.Y) : null);

    private static ImmutableArray<ToothMesh> MeshesOf(MountedGear gear, Mechanism mechanism) =>
    [
        .. mechanism.Meshes.Where(mesh => mesh.First == gear).Select(mesh => new ToothMesh(Places.Mesh(mesh.Name), mesh.Pair, true, mesh.Second.Name)),
        .. mechanism.Meshes.Where(mesh => mesh.Second == gear).Select(mesh => new ToothMesh(Places.Mesh(mesh.Name), mesh.Pair, false, mesh.First.Name)),
    ];

    private static GearReach Of(Blank blank, double tool, ImmutableArray<ToothMesh> meshes, Limits limits, ImmutableArray<BasicRack> racks)
    {
        Toothing teeth = blank.Gear;
        var gap = HalfGap.Of(teeth);
        CutHalf half = CutterReach.Half(teeth, gap, tool / 2);
        var rest = UncutRest.Of(gap, half);
        double root = LargestTools.RootTouching(gap);
        double whole = LargestTools.WholeFillet(gap, root);
        LargestCutters largest = Largest(teeth, gap, root, whole, meshes);
        ImmutableArray<Finding> findings =
        [
            .. (blank.IsDisc ? [] : ReachFindings.OnTeeth(blank.Name, teeth, tool, rest, largest, meshes, limits, racks)).OrderByDescending(finding => finding.Level),
            .. ReachFindings.OnHoles(blank, tool),
        ];
        int gaps = teeth is RackBar ? teeth.Teeth - 1 : teeth.Teeth;
        return new GearReach(blank.Name, teeth, tool, largest, CutterReach.Outline(teeth, gap, half, tool / 2), rest.Depth, rest.Area, gaps * rest.Area, findings)
        {
            Uncut = UncutContours.All(teeth, gap, half),
            Gap = GapView.Of(gap, half),
        };
    }

    private static LargestCutters Largest(Toothing teeth, HalfGap gap, double root, double whole, ImmutableArray<ToothMesh> meshes)
    {
        if (meshes.IsEmpty)
        {
            return new LargestCutters(2 * root, 2 * whole, null, NoMate);
        }

        double least = double.PositiveInfinity;
        foreach (ToothMesh mesh in meshes)
        {
            if (RunningFree.Radius(teeth, gap, root, whole, mesh.Pair, mesh.IsFirst) is not { } radius)
            {
                return new LargestCutters(2 * root, 2 * whole, null, $"the tips of {mesh.MateName} strike the fillet however finely it is cut: check the mesh first");
            }

            least = Math.Min(least, radius);
        }

        return new LargestCutters(2 * root, 2 * whole, 2 * least, null);
    }
}
