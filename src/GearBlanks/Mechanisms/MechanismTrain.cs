using System.Collections.Immutable;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>A mechanism as a train of bodies.</summary>
internal sealed class MechanismTrain
{
    private readonly ImmutableDictionary<string, int> _bodies;

    public MechanismTrain(Mechanism mechanism)
    {
        Mechanism = mechanism;
        _bodies = mechanism.Sandwiches.Select((sandwich, i) => (sandwich.Name, Body: sandwich.IsFixed ? Train.Frame : i)).ToImmutableDictionary(pair => pair.Name, pair => pair.Body);
        var carriers = new MeshCarriers(mechanism, _bodies);
        ILookup<bool, (Mesh Mesh, int? Carrier)> meshes = mechanism.Meshes.Select(mesh => (Mesh: mesh, Carrier: carriers.Of(mesh))).ToLookup(pair => pair.Carrier is not null);
        Apart = [.. meshes[false].Select(pair => pair.Mesh)];
        Meshes = [.. meshes[true].Select(pair => pair.Mesh)];
        Solved = Train.Solve(
            mechanism.Sandwiches.Length, [.. meshes[true].Select(pair => Seen(pair.Mesh, pair.Carrier!.Value))],
            [.. mechanism.Drives.Where(drive => !IsHeld(drive.Sandwich)).DistinctBy(drive => drive.Sandwich).Select(drive => new TrainDrive(_bodies[drive.Sandwich], SpeedOf(drive)))]);
    }

    public Mechanism Mechanism { get; }

    /// <summary>Meshes whose axes keep their distance, in the order of the solved train's.</summary>
    public ImmutableArray<Mesh> Meshes { get; }

    /// <summary>Meshes whose axes do not keep their distance.</summary>
    public ImmutableArray<Mesh> Apart { get; }

    public Train Solved { get; }

    /// <summary>A sandwich's speed, in turns per turn of the first drive; null where the drives do not settle it.</summary>
    public Fraction? SpeedOf(string sandwich) => _bodies[sandwich] == Train.Frame ? Fraction.Zero : Solved.Speeds[_bodies[sandwich]];

    /// <summary>Whether a sandwich is connected to a drive.</summary>
    public bool IsReached(string sandwich) => _bodies[sandwich] != Train.Frame && Solved.Reached[_bodies[sandwich]];

    /// <summary>The meshes on the way to a sandwich, with the turns it makes for one tooth of slip in each.</summary>
    public IEnumerable<(Mesh Mesh, Fraction TurnsPerTooth)> SlipsOf(string sandwich) =>
        _bodies[sandwich] == Train.Frame ? [] : Solved.SlipsOf(_bodies[sandwich]).Select(slip => (Meshes[slip.Index], slip.TurnsPerTooth));

    /// <summary>Whether a sandwich is held to the frame.</summary>
    public bool IsHeld(string sandwich) => _bodies[sandwich] == Train.Frame;

    public string NameOf(int body) => Mechanism.Sandwiches[body].Name;

    private Fraction SpeedOf(Drive drive) => Mechanism.Drive!.Turn / drive.Turn * (drive.Sense == Mechanism.Drive.Sense ? 1 : -1);

    private TrainMesh Seen(Mesh mesh, int carrier) => new(
        mesh.Name, _bodies[mesh.First.Sandwich], _bodies[mesh.Second.Sandwich], MeshSide.SignedTeeth(mesh.First), MeshSide.SignedTeeth(mesh.Second))
    { Carrier = carrier };
}
