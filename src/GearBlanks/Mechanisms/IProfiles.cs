using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>Where profiles come from; the kernel knows them only by name.</summary>
public interface IProfiles
{
    /// <summary>The basic rack of a name asked for at a place.</summary>
    Outcome<BasicRack> Rack(string name, Place askedAt);

    /// <summary>The material of a name asked for at a place.</summary>
    Outcome<Material> Material(string name, Place askedAt);

    /// <summary>The machine of a name asked for at a place.</summary>
    Outcome<Machine> Machine(string name, Place askedAt);

    /// <summary>The limits of a name asked for at a place.</summary>
    Outcome<Limits> Limits(string name, Place askedAt);
}
