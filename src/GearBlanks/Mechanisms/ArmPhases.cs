using System.Collections.Immutable;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>
/// Which meshes can never come into phase where arms turn. A mesh that settles a speed finds its gap as an arm is turned a little; one that the other
/// meshes make superfluous never does.
/// </summary>
internal static class ArmPhases
{
    /// <summary>The gap, with the play of its loop, where its mesh is held out of phase; nothing where turning an arm mends it.</summary>
    public static IEnumerable<PhaseGap> Held(PhaseGap gap, ImmutableArray<Mesh> centred, Mechanism mechanism)
    {
        if (mechanism.Axes.All(axis => axis.CarriedBy is null))
        {
            return [gap];
        }

        var train = new MechanismTrain(mechanism with { Meshes = centred.Add(gap.Mesh), Drive = null, OtherDrives = [] });
        return train.Solved.Surplus.Where(tie => tie.Loop.Any(mesh => mesh.Name == gap.Mesh.Name)).Take(1).Select(tie => gap with { Play = Play(gap.Mesh, tie, train) });
    }

    // Half the backlash of every mesh, either way, as it shows at the gap.
    private static double Play(Mesh closing, TrainTie tie, MechanismTrain train)
    {
        Dictionary<string, Fraction> weights = tie.Loop.Zip(tie.Weights).ToDictionary(pair => pair.First.Name, pair => pair.Second);
        return train.Meshes.Where(mesh => weights.ContainsKey(mesh.Name)).Sum(mesh =>
            Math.Max(0, mesh.Pair.CircumferentialBacklash) / 2 / mesh.WorkingPitch * Math.Abs((weights[mesh.Name] / weights[closing.Name]).ToDouble()) * closing.WorkingPitch);
    }
}
