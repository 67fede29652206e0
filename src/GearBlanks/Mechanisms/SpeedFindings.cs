using Fractions;
using GearBlanks.Findings;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>What a train's equations have to say: loops that lock, drives that contradict one another, sandwiches that nothing settles.</summary>
internal static class SpeedFindings
{
    public const string Reason = "exact speeds of the train";

    public static IEnumerable<Finding> Of(MechanismTrain train, IEnumerable<BodySpeed> speeds) => train.Apart.Select(Apart)
        .Concat(train.Solved.Locked.Select(loop => Locked(loop, train)))
        .Concat(train.Solved.Contradicted.Select(tie => Contradicted(tie, train)))
        .Concat(speeds.Where(speed => speed.Speed is null && speed.Travel is null).Select(speed => Loose(speed, train)))
        .Concat(train.Solved.Surplus.Where(tie => !tie.Loop.IsEmpty).Select(Surplus));

    private static Finding Apart(Mesh mesh) => new(
        "distance-changes", Places.Mesh(mesh.Name), Level.Fails, 0, null, "", Reason,
        $"The axes {mesh.First.Axis.Name} and {mesh.Second.Axis.Name} are at rest against no one body: their distance changes as the mechanism turns.",
        $"Give both axes one carried-by, or let the arm that carries one of them turn on the other.");

    private static Finding Locked(LockedLoop loop, MechanismTrain train)
    {
        string way = Words.List([.. loop.Loop.Select(mesh => mesh.Name)]);
        return loop.Loop.Length == 1
            ? new Finding(
                "train-locked", Places.Mesh(loop.Mesh.Name), Level.Fails, 1, null, "meshes", Reason,
                $"The mesh {way} holds its gears still: {WhatHolds(train.Meshes.First(mesh => mesh.Name == loop.Mesh.Name), train)}.",
                "Take the mesh out, or let what holds its gear turn.")
            : new Finding(
                "train-locked", Places.Mesh(loop.Mesh.Name), Level.Fails, loop.Loop.Length, null, "meshes", Reason,
                $"The meshes {way} form a loop whose speeds contradict one another: the train cannot turn.",
                "Take one of these meshes out, or change tooth counts until the loop's ratio is one.");
    }

    private static string WhatHolds(Mesh mesh, MechanismTrain train) =>
        mesh.First.Sandwich == mesh.Second.Sandwich ? $"both belong to the sandwich {mesh.First.Sandwich}"
        : ((string[])[mesh.First.Sandwich, mesh.Second.Sandwich]).FirstOrDefault(train.IsHeld) is { } held ? $"the sandwich {held} is fixed to the frame that carries both axes"
        : "one of them is a part of the arm that carries both axes";

    private static Finding Contradicted(TrainTie tie, MechanismTrain train)
    {
        string last = train.NameOf(tie.Driven[^1]);
        string way = tie.Loop.IsEmpty ? "" : $"The meshes {Words.List([.. tie.Loop.Select(mesh => mesh.Name)])} ";
        string advice = tie.Fitting.IsZero ? $"Drive another sandwich than {last}." : $"Let {last} turn once in {Turn(tie.Fitting, train)}, or drive it by its meshes alone.";
        return new Finding(
            "train-contradiction", Places.Sandwich(last), Level.Fails, tie.Driven.Length, null, "drives", Reason,
            tie.Driven.Length == 1
                ? $"{way}hold the driven sandwich {last} still."
                : $"{way}tie the driven sandwiches {Words.List([.. tie.Driven.Select(train.NameOf)])} to one another at other speeds than their drives give them.",
            advice);
    }

    private static string Turn(Fraction speed, MechanismTrain train)
    {
        Drive first = train.Mechanism.Drive!;
        Fraction seconds = first.Turn / speed.Abs();
        bool isClockwise = first.Sense == Sense.Clockwise == speed.IsPositive;
        return $"\"{(seconds.Denominator.IsOne ? $"{seconds.Numerator}" : $"{seconds.Numerator}/{seconds.Denominator}")} s\" {(isClockwise ? "clockwise" : "counter-clockwise")}";
    }

    private static Finding Loose(BodySpeed speed, MechanismTrain train) => train.IsReached(speed.Sandwich)
        ? new Finding(
            "train-loose", Places.Sandwich(speed.Sandwich), Level.Tight, 0, null, "", Reason,
            "The drive does not settle this sandwich's speed: the train is free to turn in more ways than it is driven.",
            "Add a drive or a mesh that settles it, or fix a sandwich of its train.")
        : new Finding(
            "train-loose", Places.Sandwich(speed.Sandwich), Level.Tight, 0, null, "", Reason,
            "No mesh connects this sandwich to the drive.", "Add the mesh that turns it, or take the sandwich out of the job.");

    private static Finding Surplus(TrainTie tie) => new(
        "train-surplus", Places.Mesh(tie.Loop[^1].Name), Level.Ok, tie.Loop.Length, null, "meshes", Reason,
        $"The meshes {Words.List([.. tie.Loop.Select(mesh => mesh.Name)])} agree exactly, though one fewer would settle their speeds.", null);
}
