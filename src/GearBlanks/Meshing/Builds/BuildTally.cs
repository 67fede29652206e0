using System.Collections.Immutable;

namespace GearBlanks.Meshing.Builds;

/// <summary>What was counted over builds.</summary>
/// <param name="Builds">How many were drawn.</param>
/// <param name="Binding">In how many of them a mesh binds, whichever.</param>
/// <param name="Rattling">In how many a mesh has more backlash than its limit.</param>
/// <param name="Meshes">Each mesh's own.</param>
internal sealed record BuildTally(int Builds, int Binding, int Rattling, ImmutableArray<MeshTally> Meshes)
{
    public BuildTally With(BuildTally more) => new(
        Builds + more.Builds, Binding + more.Binding, Rattling + more.Rattling, [.. Meshes.Zip(more.Meshes, (one, other) => one.With(other))]);
}

/// <summary>What was counted of one mesh.</summary>
internal struct MeshTally
{
    public static readonly MeshTally Empty = new() { Least = double.PositiveInfinity, Most = double.NegativeInfinity };

    /// <summary>Least backlash drawn, mm.</summary>
    public double Least { get; private set; }

    /// <summary>Greatest backlash drawn, mm.</summary>
    public double Most { get; private set; }

    /// <summary>Sum of the backlashes, mm.</summary>
    public double Sum { get; private set; }

    /// <summary>Sum of their squares, mm2.</summary>
    public double Squares { get; private set; }

    /// <summary>Builds in which it binds.</summary>
    public int Binding { get; private set; }

    /// <summary>Builds in which it has more backlash than its limit.</summary>
    public int Rattling { get; private set; }

    /// <summary>Takes in the backlash of one build.</summary>
    public void Add(double backlash)
    {
        Least = backlash < Least ? backlash : Least;
        Most = backlash > Most ? backlash : Most;
        Sum += backlash;
        Squares += backlash * backlash;
    }

    /// <summary>Counts builds that bind and builds that rattle.</summary>
    public void Count(int binding, int rattling)
    {
        Binding += binding;
        Rattling += rattling;
    }

    public readonly MeshTally With(MeshTally other) => new()
    {
        Least = Math.Min(Least, other.Least),
        Most = Math.Max(Most, other.Most),
        Sum = Sum + other.Sum,
        Squares = Squares + other.Squares,
        Binding = Binding + other.Binding,
        Rattling = Rattling + other.Rattling,
    };

    /// <summary>Standard deviation of a number of builds, mm.</summary>
    public readonly double Deviation(int builds)
    {
        double mean = Sum / builds;
        return Math.Sqrt(Math.Max(0, (Squares / builds) - (mean * mean)));
    }
}
