namespace GearBlanks.Files.Profiles;

/// <summary>The kinds of profiles: data that users may copy and edit.</summary>
public enum ProfileKind
{
    /// <summary>Basic racks, in racks/.</summary>
    Rack,

    /// <summary>Materials, in materials/.</summary>
    Material,

    /// <summary>Machines and shops, in machines/.</summary>
    Machine,

    /// <summary>Limits of findings, in limits/.</summary>
    Limits,
}
