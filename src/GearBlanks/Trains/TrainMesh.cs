using System.Collections.Immutable;
using Fractions;

namespace GearBlanks.Trains;

/// <summary>Two gears in mesh, as a train sees them: a ring's teeth count negative, and a rack is a body of one tooth, whose turns are pitches.</summary>
/// <param name="Name">The mesh's name.</param>
/// <param name="First">Index of the body that carries the first gear, or <see cref="Train.Frame"/> for one that is held to it.</param>
/// <param name="Second">Index of the body that carries the second gear, or <see cref="Train.Frame"/>.</param>
/// <param name="FirstTeeth">Tooth count of the first gear.</param>
/// <param name="SecondTeeth">Tooth count of the second gear.</param>
internal sealed record TrainMesh(string Name, int First, int Second, int FirstTeeth, int SecondTeeth)
{
    /// <summary>Index of the body against which both axes are at rest.</summary>
    public int Carrier { get; init; } = Train.Frame;
}

/// <summary>A body whose speed is given.</summary>
/// <param name="Body">Its index.</param>
/// <param name="Speed">Its speed, in turns per turn of the first drive.</param>
internal readonly record struct TrainDrive(int Body, Fraction Speed);

/// <summary>Meshes that cannot turn: together they hold at least one of themselves still against its carrier.</summary>
/// <param name="Mesh">The mesh that closes the loop: the last of them as given.</param>
/// <param name="Loop">The meshes of the loop in the order given, the closing one last.</param>
internal sealed record LockedLoop(TrainMesh Mesh, ImmutableArray<TrainMesh> Loop);

/// <summary>Meshes that say one thing more often than needed.</summary>
/// <param name="Loop">The meshes, in the order given.</param>
/// <param name="Driven">Driven bodies whose speeds they tie to one another; empty for a loop of meshes alone.</param>
/// <param name="Fitting">Speed of the last of the driven bodies that agrees with the others', in turns per turn of the first drive; zero without any.</param>
internal sealed record TrainTie(ImmutableArray<TrainMesh> Loop, ImmutableArray<int> Driven, Fraction Fitting)
{
    /// <summary>How much a tooth of slip in each mesh of the loop counts: the slips that a loop of meshes alone allows add up to zero by these weights.</summary>
    public ImmutableArray<Fraction> Weights { get; init; } = [];
}

/// <summary>A mesh on the way from the drives to a body.</summary>
/// <param name="Index">The mesh's index.</param>
/// <param name="TurnsPerTooth">Turns of the body for one tooth of slip in the mesh, while the drives stand still.</param>
internal readonly record struct TrainSlip(int Index, Fraction TurnsPerTooth);
