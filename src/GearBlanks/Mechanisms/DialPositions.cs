using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>Where the hands of a dial stand at a date, from where they stood at the setting: exact to the end.</summary>
public static class DialPositions
{
    private static readonly Fraction Turn = 360;

    /// <summary>Reads the dial at a date.</summary>
    /// <param name="report">The mechanism's report.</param>
    /// <param name="at">The date.</param>
    /// <returns>The reading; null where the mechanism has no setting.</returns>
    public static DialReading? At(MechanismReport report, Moment at)
    {
        Mechanism mechanism = report.Mechanism;
        if (mechanism.Setting is not { } setting || mechanism.Drive is not { } drive)
        {
            return null;
        }

        Fraction seconds = at.Seconds - setting.Seconds;
        return new DialReading(at, setting, [.. report.Hands.Select(hand => Position(hand, drive, seconds))]);
    }

    private static HandPosition Position(HandReport report, Drive drive, Fraction seconds)
    {
        if (report.Speed is not { } speed)
        {
            return new HandPosition(report.Hand, null, null);
        }

        // Clockwise is positive on a dial.
        Fraction turns = speed * seconds / drive.Turn * (drive.Sense == Sense.Clockwise ? 1 : -1);
        Fraction? ahead = report.Timing is null ? null : Turn * ((speed.Abs() * seconds / drive.Turn) - (seconds / report.Hand.Turn));
        return new HandPosition(report.Hand, WithinATurn(report.Hand.Angle + (Turn * turns)), ahead);
    }

    private static Fraction WithinATurn(Fraction degrees)
    {
        Fraction rest = degrees % Turn;
        return rest.IsNegative ? rest + Turn : rest;
    }
}
