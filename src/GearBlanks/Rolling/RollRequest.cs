using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Two gears and how they are rolled.</summary>
/// <param name="First">The one that drives.</param>
/// <param name="Second">The one that is driven; a rack is always this one.</param>
/// <param name="Distance">Distance of the axes, mm; over a rack the height of the axis over its reference line.</param>
public sealed record RollRequest(RollGear First, RollGear Second, double Distance)
{
    /// <summary>How far.</summary>
    public RollLength Length { get; init; }

    /// <summary>True to roll them without play as well, at a distance that gives way.</summary>
    public bool WithDoubleFlank { get; init; }

    /// <summary>Where the first one's teeth are centred, seen from its axis while it stands as drawn, mm.</summary>
    public Vector FirstEccentricity { get; init; }

    /// <summary>The same of the second one, mm; none for a rack.</summary>
    public Vector SecondEccentricity { get; init; }
}
