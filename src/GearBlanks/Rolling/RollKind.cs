namespace GearBlanks.Rolling;

/// <summary>What kind of teeth roll.</summary>
public enum RollKind
{
    /// <summary>A gear whose teeth point outward.</summary>
    External,

    /// <summary>A ring whose teeth point inward.</summary>
    Ring,

    /// <summary>A straight rack.</summary>
    Rack,
}
