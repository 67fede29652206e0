using System.Collections.Immutable;
using Fractions;
using GearBlanks.Findings;
using GearBlanks.Teeth;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>Speeds, hands, and what there is to say of them.</summary>
internal sealed record TrainReport(bool IsLocked, ImmutableArray<Finding> Findings, ImmutableArray<BodySpeed> Speeds, ImmutableArray<HandReport> Hands);

/// <summary>Solves a mechanism's train and judges its hands.</summary>
internal static class TrainCheck
{
    public static TrainReport Of(Mechanism mechanism)
    {
        var train = new MechanismTrain(mechanism);
        ImmutableArray<BodySpeed> speeds = mechanism.Drive is null ? [] : [.. mechanism.Sandwiches.Select(sandwich => Speed(sandwich, train))];
        ImmutableArray<HandReport> hands = mechanism.Drive is not { } drive ? [] : [.. mechanism.Hands.Select(hand => Timed(hand, train, drive))];
        return new TrainReport(
            !train.Solved.Locked.IsEmpty,
            [.. SpeedFindings.Of(train, speeds), .. hands.Select(hand => OnHand(hand, mechanism.Limits)), .. hands.SelectMany(hand => LostMotions.Judge(hand, train))],
            speeds, hands);
    }

    // A train counts a rack's pitches, against its direction where a gear would turn counter-clockwise.
    private static BodySpeed Speed(Sandwich sandwich, MechanismTrain train)
    {
        Fraction? speed = train.SpeedOf(sandwich.Name);
        return sandwich.Gears.Select(gear => gear.Toothing).OfType<RackBar>().FirstOrDefault() is { } rack
            ? new BodySpeed(sandwich.Name, null, speed is { } pitches ? -pitches.ToDouble() * rack.Pitch : null)
            : new BodySpeed(sandwich.Name, speed, null)
            {
                Arm = sandwich.Axis.CarriedBy,
                AgainstArm = sandwich.Axis.CarriedBy is { } arm ? speed - train.SpeedOf(arm) : speed,
            };
    }

    private static HandReport Timed(Hand hand, MechanismTrain train, Drive drive)
    {
        Fraction? speed = train.SpeedOf(hand.Sandwich);
        return new HandReport(hand, speed, speed is { IsZero: false } w ? new HandTiming(drive.Turn / w.Abs(), hand.Turn) : null)
        {
            LostMotion = LostMotions.Of(hand, train),
        };
    }

    private static Finding OnHand(HandReport report, Limits limits)
    {
        string place = Places.Hand(report.Hand.Name);
        return report.Timing is { } timing
            ? Check.Of(
                "hand-error", place, Math.Abs(timing.ErrorPpm), limits.HandError, "ppm", Sentence(timing), _ =>
                    "Look for tooth counts whose ratio comes nearer to the wanted period.")
            : new Finding(
                "hand-still", place, Level.Fails, 0, null, "", SpeedFindings.Reason, "The hand sits on a sandwich that the drive does not turn.",
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
