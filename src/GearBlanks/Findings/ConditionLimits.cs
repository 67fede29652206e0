namespace GearBlanks.Findings;

/// <summary>Limits of what a mechanism meets under its conditions.</summary>
public sealed record ConditionLimits
{
    /// <summary>Least backlash of any build, in modules.</summary>
    public required Limit BacklashLeast { get; init; }

    /// <summary>Greatest backlash of any build, in modules; beyond its failing bound a build rattles.</summary>
    public required Limit BacklashGreatest { get; init; }

    /// <summary>Least room between a tip corner and the mate's fillet in any build, in modules.</summary>
    public required Limit FilletClearanceLeast { get; init; }

    /// <summary>Share of builds in which a mesh binds, 0 to 1.</summary>
    public required Limit BindingShare { get; init; }

    /// <summary>Share of builds in which a mesh rattles, 0 to 1.</summary>
    public required Limit RattlingShare { get; init; }

    /// <summary>Share of the path of contact before the pitch point, 0 to 1, where the larger gear drives.</summary>
    public required Limit ApproachShare { get; init; }
}
