using System.Collections.Immutable;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>Which gear of each mesh drives the other: the one on the drive's side, by the fewest meshes.</summary>
internal static class Drivers
{
    /// <summary>The driving gear's name by the mesh's; meshes that the drive does not reach are left out.</summary>
    public static ImmutableDictionary<string, string> Of(Mechanism mechanism)
    {
        ImmutableDictionary<string, string>.Builder drivers = ImmutableDictionary.CreateBuilder<string, string>();
        if (mechanism.Drive is not { } drive)
        {
            return drivers.ToImmutable();
        }

        ILookup<string, (Mesh Mesh, MountedGear Gear, MountedGear Mate)> bySandwich = mechanism.Meshes
            .SelectMany(mesh => new[] { (mesh, mesh.First, mesh.Second), (mesh, mesh.Second, mesh.First) })
            .ToLookup(end => end.Item2.Sandwich);
        var reached = new HashSet<string> { drive.Sandwich };
        var next = new Queue<string>(reached);
        while (next.TryDequeue(out string? sandwich))
        {
            foreach ((Mesh mesh, MountedGear gear, MountedGear mate) in bySandwich[sandwich])
            {
                drivers.TryAdd(mesh.Name, gear.Name);
                if (reached.Add(mate.Sandwich))
                {
                    next.Enqueue(mate.Sandwich);
                }
            }
        }

        return drivers.ToImmutable();
    }

    /// <summary>True where a gear drives one with fewer teeth.</summary>
    public static bool IsStepUp(Mesh mesh, bool isFirst)
    {
        (Toothing driver, Toothing driven) = isFirst ? (mesh.First.Toothing, mesh.Second.Toothing) : (mesh.Second.Toothing, mesh.First.Toothing);
        return driver is Gear && driven is Gear && driver.Teeth > driven.Teeth;
    }
}
