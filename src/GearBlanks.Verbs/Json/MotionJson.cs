using System.Text.Json;
using Fractions;
using GearBlanks.Mechanisms;
using GearBlanks.Trains;

namespace GearBlanks.Verbs.Json;

/// <summary>Speeds, hands and the dial as JSON.</summary>
internal static class MotionJson
{
    private const double SecondsInADay = 86_400;

    public static void WriteMotion(this Utf8JsonWriter json, MechanismReport report)
    {
        json.WriteObjects("speeds", report.Speeds, WriteSpeed);
        json.WriteObjects("hands", report.Hands, WriteHand);
        if (report.Dial is { } dial)
        {
            json.WriteStartObject("dial");
            WriteMoment(json, "at", dial.At);
            WriteMoment(json, "setting", dial.Setting);
            json.WriteObjects("hands", dial.Hands, WritePosition);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("dial");
        }
    }

    private static void WriteSpeed(Utf8JsonWriter json, BodySpeed speed)
    {
        json.WriteString("sandwich", speed.Sandwich);
        json.WriteString("speed", Exact(speed.Speed));
        json.WriteString("sense", Sense(speed.Speed));
        json.WriteOptional("travel", speed.Travel);
        json.WriteString("arm", speed.Arm);
        json.WriteString("againstArm", Exact(speed.AgainstArm));
    }

    private static void WriteHand(Utf8JsonWriter json, HandReport report)
    {
        json.WriteString("name", report.Hand.Name);
        json.WriteString("sandwich", report.Hand.Sandwich);
        json.WriteString("speed", Exact(report.Speed));
        json.WriteString("sense", Sense(report.Speed));
        json.WriteOptional("periodSeconds", report.Timing?.PeriodSeconds);
        json.WriteNumber("wantedPeriodSeconds", report.Hand.Turn.ToDouble());
        json.WriteOptional("errorPpm", report.Timing?.ErrorPpm);
        json.WriteOptional("degreesAheadAYear", report.Timing?.DegreesAYear);
        json.WriteOptional("daysToOneDegree", report.Timing?.SecondsToOneDegree / SecondsInADay);
        if (report.LostMotion is { } lost)
        {
            json.WriteStartObject("lostMotion");
            json.WriteNumber("worstCase", lost.WorstCase);
            json.WriteNumber("rootSumSquare", lost.RootSumSquare);
            json.WriteNumber("worstCaseMinutes", lost.WorstCaseMinutes);
            json.WriteNumber("rootSumSquareMinutes", lost.RootSumSquareMinutes);
            json.WriteObjects("meshes", lost.Meshes, WritePlay);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("lostMotion");
        }
    }

    private static void WritePlay(Utf8JsonWriter json, MeshPlay play)
    {
        json.WriteString("name", play.Mesh);
        json.WriteNumber("degrees", play.Degrees);
    }

    private static void WriteMoment(Utf8JsonWriter json, string name, Moment moment)
    {
        json.WriteStartObject(name);
        json.WriteString("written", moment.Written);
        json.WriteNumber("seconds", moment.Seconds.ToDouble());
        json.WriteBoolean("takenForUtc", moment.IsTakenForUtc);
        json.WriteEndObject();
    }

    private static void WritePosition(Utf8JsonWriter json, HandPosition position)
    {
        json.WriteString("name", position.Hand.Name);
        json.WriteOptional("angle", position.Angle?.ToDouble());
        json.WriteString("exactAngle", Exact(position.Angle));
        json.WriteOptional("ahead", position.Ahead?.ToDouble());
    }

    private static string? Exact(Fraction? fraction) => fraction is { } exact ? $"{exact.Numerator}/{exact.Denominator}" : null;

    private static string? Sense(Fraction? speed) => speed is { IsZero: false } w ? (w.IsPositive ? "as the drive" : "against the drive") : null;
}
