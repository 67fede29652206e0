using System.Text.Json;
using Fractions;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>check</c> as JSON.</summary>
public static class CheckJson
{
    private const double SecondsInADay = 86_400;

    /// <summary>The whole object.</summary>
    public static string Of(MechanismReport report) => JsonText.Of("gearblanks.check/1", json => json.Write(report));

    internal static void Write(this Utf8JsonWriter json, MechanismReport report)
    {
        json.WriteString("title", report.Mechanism.Title);
        json.Write(report.Findings);
        json.WriteObjects("meshes", report.Mechanism.Meshes, (writer, mesh) => WriteMesh(writer, mesh, report));
        json.WriteObjects("speeds", report.Speeds, WriteSpeed);
        json.WriteObjects("hands", report.Hands, WriteHand);
        if (report.Conditions is { } conditions)
        {
            json.Write(conditions);
        }
    }

    private static void WriteMesh(Utf8JsonWriter json, Mesh mesh, MechanismReport report)
    {
        json.WriteString("name", mesh.Name);
        json.WriteNumber("drawnCentreDistance", mesh.DrawnDistance);
        json.WriteOptional("measuredCentreDistance", mesh.MeasuredDistance);
        json.WriteNumber("wantedBacklash", mesh.WantedBacklash);
        json.Write(mesh.Pair, mesh);
        string[] places = [Places.Mesh(mesh.Name), Places.Gear(mesh.First.Name), Places.Gear(mesh.Second.Name)];
        json.Write([.. report.Findings.Where(finding => places.Contains(finding.Place))]);
    }

    private static void WriteSpeed(Utf8JsonWriter json, BodySpeed speed)
    {
        json.WriteString("sandwich", speed.Sandwich);
        json.WriteString("speed", speed.Speed is { } exact ? Exact(exact) : null);
        json.WriteString("sense", Sense(speed.Speed));
        json.WriteOptional("travel", speed.Travel);
    }

    private static void WriteHand(Utf8JsonWriter json, HandReport report)
    {
        json.WriteString("name", report.Hand.Name);
        json.WriteString("sandwich", report.Hand.Sandwich);
        json.WriteString("speed", report.Speed is { } exact ? Exact(exact) : null);
        json.WriteString("sense", Sense(report.Speed));
        json.WriteOptional("periodSeconds", report.Timing?.PeriodSeconds);
        json.WriteNumber("wantedPeriodSeconds", report.Hand.Turn.ToDouble());
        json.WriteOptional("errorPpm", report.Timing?.ErrorPpm);
        json.WriteOptional("daysToOneDegree", report.Timing?.SecondsToOneDegree / SecondsInADay);
    }

    private static string Exact(Fraction fraction) => $"{fraction.Numerator}/{fraction.Denominator}";

    private static string? Sense(Fraction? speed) => speed is { } w ? (w.IsPositive ? "as the drive" : "against the drive") : null;
}
