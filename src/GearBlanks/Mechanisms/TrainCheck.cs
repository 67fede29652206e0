using System.Collections.Immutable;
using Fractions;
using GearBlanks.Findings;
using GearBlanks.Teeth;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>Speeds, hands, and what there is to say of them.</summary>
internal sealed record TrainReport(bool IsLocked, ImmutableArray<Finding> Findings, ImmutableArray<BodySpeed> Speeds, ImmutableArray<HandReport> Hands);

/// <summary>Solves a mechanism's train and judges it.</summary>
internal static class TrainCheck
{
    private const string Reason = "exact speeds of the train";

    public static TrainReport Of(Mechanism mechanism)
    {
        string[] names = [.. mechanism.Sandwiches.Select(sandwich => sandwich.Name)];
        Train train = Train.Solve(
            names.Length,
            [.. mechanism.Meshes.Select(mesh => new TrainMesh(
                mesh.Name, Array.IndexOf(names, mesh.First.Sandwich), Array.IndexOf(names, mesh.Second.Sandwich),
                MeshSide.SignedTeeth(mesh.First), MeshSide.SignedTeeth(mesh.Second)))],
            mechanism.Drive is null ? null : Array.IndexOf(names, mechanism.Drive.Sandwich));
        ImmutableArray<Finding> locked = [.. train.Locked.Select(Locked)];
        if (mechanism.Drive is not { } drive)
        {
            return new TrainReport(!locked.IsEmpty, locked, [], []);
        }

        ImmutableArray<BodySpeed> speeds = [.. mechanism.Sandwiches.Select((sandwich, i) => Speed(sandwich, train.Speeds[i]))];
        ImmutableArray<HandReport> hands = [.. mechanism.Hands.Select(hand => Timed(hand, train.Speeds[Array.IndexOf(names, hand.Sandwich)], drive))];
        return new TrainReport(
            !locked.IsEmpty,
            [.. locked, .. speeds.Where(speed => speed.Speed is null && speed.Travel is null).Select(Loose), .. hands.Select(hand => OnHand(hand, mechanism.Limits))],
            speeds, hands);
    }

    // A train counts a rack's pitches, against its direction where a gear would turn counter-clockwise.
    private static BodySpeed Speed(Sandwich sandwich, Fraction? speed) =>
        sandwich.Gears.Select(gear => gear.Toothing).OfType<RackBar>().FirstOrDefault() is { } rack
            ? new BodySpeed(sandwich.Name, null, speed is { } pitches ? -pitches.ToDouble() * rack.Pitch : null)
            : new BodySpeed(sandwich.Name, speed, null);

    private static HandReport Timed(Hand hand, Fraction? speed, Drive drive) => new(
        hand, speed, speed is { } w ? new HandTiming(drive.Turn / w.Abs(), hand.Turn) : null);

    private static Finding Locked(LockedLoop loop)
    {
        string way = Words.List([.. loop.Loop.Select(mesh => mesh.Name)]);
        return new Finding(
            "train-locked", Places.Mesh(loop.Mesh.Name), Level.Fails, loop.Loop.Length, null, "meshes", Reason,
            $"The meshes {way} form a loop whose speeds contradict one another: the train cannot turn.",
            "Take one of these meshes out, or change tooth counts until the loop's ratio is one.");
    }

    private static Finding Loose(BodySpeed speed) => new(
        "train-loose", Places.Sandwich(speed.Sandwich), Level.Tight, 0, null, "", Reason,
        "No mesh connects this sandwich to the drive.", "Add the mesh that turns it, or take the sandwich out of the job.");

    private static Finding OnHand(HandReport report, Limits limits)
    {
        string place = Places.Hand(report.Hand.Name);
        return report.Timing is { } timing
            ? Check.Of(
                "hand-error", place, Math.Abs(timing.ErrorPpm), limits.HandError, "ppm", Sentence(timing), _ =>
                    "Look for tooth counts whose ratio comes nearer to the wanted period.")
            : new Finding(
                "hand-still", place, Level.Fails, 0, null, "", Reason, "The hand sits on a sandwich that the drive does not turn.",
                "Add the mesh that turns it.");
    }

    private static string Sentence(HandTiming timing)
    {
        string drift = timing.SecondsToOneDegree is { } seconds
            ? $"{(timing.ErrorPpm > 0 ? "slow" : "fast")}, one degree out after {Words.Time(seconds)}"
            : "exact";
        return $"Error of the hand's period ({drift})";
    }
}
