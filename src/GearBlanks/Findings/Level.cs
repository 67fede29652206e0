namespace GearBlanks.Findings;

/// <summary>How bad a finding is; a later one is worse. The default is <see cref="Ok"/>.</summary>
public enum Level
{
    /// <summary>Within its limits.</summary>
    Ok,

    /// <summary>Works as drawn, with little to spare.</summary>
    Tight,

    /// <summary>Does not work, or not within the limits chosen.</summary>
    Fails,
}
