namespace GearBlanks.Mechanisms.Conditions;

/// <summary>The conditions that a mechanism will meet, as its job says them. Lengths in mm, angles in rad.</summary>
/// <param name="Place">The table.</param>
public sealed record JobConditions(Place Place)
{
    /// <summary>By how much each centre distance may differ, mm either way.</summary>
    public double CentreDistanceTolerance { get; init; }

    /// <summary>How far a post may lean, mm a mm of height.</summary>
    public double PostTilt { get; init; }

    /// <summary>How far two posts may lean from one another beside that, mm a mm of height.</summary>
    public double PostParallelism { get; init; }

    /// <summary>By how much the sheet's thickness may differ, mm either way.</summary>
    public double SheetTolerance { get; init; }

    /// <summary>What holds for every gear that does not say otherwise.</summary>
    public JobGearConditions Gears { get; init; } = new();

    /// <summary>What holds for every sandwich that does not say otherwise.</summary>
    public JobSandwichConditions Sandwiches { get; init; } = new();

    /// <summary>True where the tolerance class may be used outside the standard's ranges.</summary>
    public bool IsOutsideStandard { get; init; }

    /// <summary>Name of the material of what holds the axes; null where no climate is asked for.</summary>
    public string? FrameMaterial { get; init; }

    /// <summary>The climate; null where none is asked for.</summary>
    public JobClimate? Climate { get; init; }

    /// <summary>The random builds.</summary>
    public JobBuilds Builds { get; init; } = new();
}

/// <summary>The conditions of one gear; null where the job's own hold.</summary>
public sealed record JobGearConditions
{
    /// <summary>By how much its tooth thickness may differ, mm either way.</summary>
    public double? ThicknessTolerance { get; init; }

    /// <summary>How far its cut edge may lean, rad.</summary>
    public double? EdgeTaper { get; init; }

    /// <summary>How far its teeth may run out of true: from the bore's middle to theirs, mm.</summary>
    public double? Eccentricity { get; init; }

    /// <summary>Its flank tolerance class after ISO 1328-1.</summary>
    public int? Grade { get; init; }
}

/// <summary>The conditions of one sandwich; null where the job's own hold.</summary>
public sealed record JobSandwichConditions
{
    /// <summary>By how much its bore is wider than its spindle at most, mm of diameter.</summary>
    public double? BoreClearance { get; init; }

    /// <summary>How far it can move along its axis, mm.</summary>
    public double? EndPlay { get; init; }
}

/// <summary>The climate a mechanism will meet.</summary>
/// <param name="LeastTemperature">Degrees Celsius.</param>
/// <param name="GreatestTemperature">Degrees Celsius.</param>
/// <param name="LeastHumidity">Per cent of relative humidity.</param>
/// <param name="GreatestHumidity">Per cent of relative humidity.</param>
/// <param name="ReferenceTemperature">Degrees Celsius at which the sizes hold.</param>
/// <param name="ReferenceHumidity">Per cent of relative humidity at which they hold.</param>
public sealed record JobClimate(
    double LeastTemperature, double GreatestTemperature, double LeastHumidity, double GreatestHumidity, double ReferenceTemperature, double ReferenceHumidity)
{
    /// <summary>Degrees Celsius at which sizes hold where the job does not say: ISO 1, standard reference temperature.</summary>
    public const double StandardTemperature = 20;

    /// <summary>Per cent of relative humidity at which they hold: common practice, no source.</summary>
    public const double StandardHumidity = 50;

    /// <summary>True where the temperature counts.</summary>
    public bool HasHeat => LeastTemperature != ReferenceTemperature || GreatestTemperature != ReferenceTemperature;

    /// <summary>True where the humidity counts.</summary>
    public bool HasDamp => LeastHumidity != ReferenceHumidity || GreatestHumidity != ReferenceHumidity;
}

/// <summary>How random builds are drawn, and what is asked of them.</summary>
public sealed record JobBuilds
{
    /// <summary>How many where the job does not say.</summary>
    public const int DefaultCount = 10_000;

    /// <summary>How many.</summary>
    public int Count { get; init; } = DefaultCount;

    /// <summary>The seed they are drawn from.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>True for normal distributions cut off at their limits, false for uniform ones.</summary>
    public bool IsNormal { get; init; }

    /// <summary>Greatest share of builds that may bind, 0 to 1; null for the limits' own.</summary>
    public double? MostBinding { get; init; }

    /// <summary>Greatest share of builds that may rattle, 0 to 1; null for the limits' own.</summary>
    public double? MostRattling { get; init; }
}
