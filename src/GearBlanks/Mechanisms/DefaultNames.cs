namespace GearBlanks.Mechanisms;

/// <summary>Names of the profiles that hold where nothing else is said.</summary>
public static class DefaultNames
{
    /// <summary>The rack.</summary>
    public const string Rack = "iso-53-a";

    /// <summary>The machine: a drawing only.</summary>
    public const string Machine = "drawing";

    /// <summary>The limits.</summary>
    public const string Limits = "hand-assembled";
}
