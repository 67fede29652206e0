using System.Text.Json;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>check</c> as JSON.</summary>
public static class CheckJson
{
    /// <summary>The whole object.</summary>
    public static string Of(MechanismReport report) => JsonText.Of("gearblanks.check/1", json => json.Write(report));

    internal static void Write(this Utf8JsonWriter json, MechanismReport report)
    {
        json.WriteString("title", report.Mechanism.Title);
        json.Write(report.Findings);
        json.WriteObjects("meshes", report.Mechanism.Meshes, (writer, mesh) => WriteMesh(writer, mesh, report));
        json.WriteMotion(report);
        json.Write(report.Stack);
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
}
