namespace GearBlanks.Findings;

/// <summary>Limits of what stands over and beside what. Units stand at each member.</summary>
public sealed record StackLimits
{
    private static readonly Limit Never = new(null, null, null, null, "no limit given");

    /// <summary>Limits that never bite.</summary>
    public static StackLimits None { get; } = new();

    /// <summary>Gap in height between bodies that lie over one another, at the worst tolerances, in mm.</summary>
    public Limit StackClearance { get; init; } = Never;

    /// <summary>Gap in plan between bodies that lie beside one another, in mm.</summary>
    public Limit SideClearance { get; init; } = Never;

    /// <summary>Difference between a measured height or thickness and the drawn one, in mm, without sign.</summary>
    public Limit HeightDisagreement { get; init; } = Never;

    /// <summary>Gap between a screw's head and the next part of its own sandwich, in mm.</summary>
    public Limit HeadClearance { get; init; } = Never;

    /// <summary>Engaged length of a screw's thread, in thread diameters.</summary>
    public Limit ScrewEngagement { get; init; } = Never;

    /// <summary>Room between a screw's end and the bottom of its socket, in mm.</summary>
    public Limit ScrewEndRoom { get; init; } = Never;

    /// <summary>Clearance between a bore and a spindle that it runs on, in mm of diameter.</summary>
    public Limit FitClearance { get; init; } = Never;

    /// <summary>Interference between a bore and a spindle that is pressed into it, in mm of diameter.</summary>
    public Limit FitInterference { get; init; } = Never;

    /// <summary>What a rim that swings leaves of the gap to its neighbours, in mm.</summary>
    public Limit WobbleRoom { get; init; } = Never;

    /// <summary>Backlash that is left where the play of the bores brings the gears together, in modules.</summary>
    public Limit PlayBacklash { get; init; } = Never;
}
