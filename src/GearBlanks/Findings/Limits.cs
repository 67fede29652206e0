namespace GearBlanks.Findings;

/// <summary>All limits of one profile under profiles/limits. Units stand at each member; a module-sized limit is multiplied by the module where it is used.</summary>
public sealed record Limits
{
    /// <summary>No bounds: of a figure that a profile says nothing of.</summary>
    public static Limit None { get; } = new(null, null, null, null, "no limit is given");

    /// <summary>The profile's name.</summary>
    public required string Name { get; init; }

    /// <summary>Circumferential backlash at the working circle, in modules.</summary>
    public required Limit Backlash { get; init; }

    /// <summary>Difference between the backlash a mesh has and the one it is designed for, in modules, without sign.</summary>
    public required Limit BacklashMiss { get; init; }

    /// <summary>Backlash that a mesh is designed for where the job does not say, in modules.</summary>
    public required double WantedBacklash { get; init; }

    /// <summary>The first gear's share of the thinning that makes the backlash, 0 to 1.</summary>
    public required double BacklashShareOfFirst { get; init; }

    /// <summary>Transverse contact ratio.</summary>
    public required Limit ContactRatio { get; init; }

    /// <summary>Clearance of a tip circle from the mate's root circle, in modules.</summary>
    public required Limit TipClearance { get; init; }

    /// <summary>Room between the mate's tip corner and the fillet, in modules; below zero they dig in.</summary>
    public required Limit FilletClearance { get; init; }

    /// <summary>Arc thickness of a tooth at its tip circle, in modules.</summary>
    public required Limit TipThickness { get; init; }

    /// <summary>How deep the fillet cuts into the involute, along the base circle, in modules.</summary>
    public required Limit UndercutDepth { get; init; }

    /// <summary>Material between a bore, a hole and the root circle, in sheet thicknesses.</summary>
    public required Limit Wall { get; init; }

    /// <summary>Diameter of a hole, in sheet thicknesses.</summary>
    public required Limit HoleDiameter { get; init; }

    /// <summary>Least width of an arm between two windows, in sheet thicknesses.</summary>
    public required Limit ArmWidth { get; init; }

    /// <summary>Room between the screws (heads where given) of gears on one spindle, in mm.</summary>
    public required Limit ScrewRoom { get; init; }

    /// <summary>Difference between a measured centre distance and the axes' positions, in mm, without sign.</summary>
    public required Limit DistanceDisagreement { get; init; }

    /// <summary>Difference between a measured tooth thickness and the drawn one, in mm, without sign; a profile that does not say sets no bounds.</summary>
    public Limit ToothThicknessDisagreement { get; init; } = None;

    /// <summary>Spread of the distances at which meshes between the same two axes have their wanted backlash, in modules.</summary>
    public required Limit DistanceSpread { get; init; }

    /// <summary>Overlap of the two gears' faces along the axis, as a share of the thinner one.</summary>
    public required Limit FaceOverlap { get; init; }

    /// <summary>What a mechanism may meet under its conditions.</summary>
    public required ConditionLimits Conditions { get; init; }

    /// <summary>Error of a hand's period against the wanted one, in parts per million, without sign.</summary>
    public required Limit HandError { get; init; }

    /// <summary>Lost motion of a hand, in degrees; a profile that does not say sets no bounds.</summary>
    public Limit LostMotion { get; init; } = None;

    /// <summary>Limits of a roll.</summary>
    public RollLimits Roll { get; init; } = new();

    /// <summary>Limits of the stack.</summary>
    public StackLimits Stack { get; init; } = StackLimits.None;
}
