using System.Text.Json;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Verbs.Json;

/// <summary>What conditions make of a mechanism, as JSON.</summary>
internal static class ConditionsJson
{
    public static void Write(this Utf8JsonWriter json, ConditionsReport report)
    {
        json.WriteStartObject("conditions");
        json.WriteNumber("builds", report.Builds);
        json.WriteNumber("seed", report.Seed);
        json.WriteString("distribution", report.IsNormal ? "normal" : "uniform");
        json.WriteString("standard", report.Standard);
        json.WriteNumber("bindingShare", report.BindingShare);
        json.WriteNumber("rattlingShare", report.RattlingShare);
        json.WriteObjects("meshes", report.Meshes, WriteMesh);
        json.WriteEndObject();
    }

    private static void WriteMesh(Utf8JsonWriter json, MeshConditions mesh)
    {
        json.WriteString("name", mesh.Mesh);
        json.WriteStartObject("backlash");
        json.WriteNumber("least", mesh.Least);
        json.WriteNumber("asDrawn", mesh.AsDrawn);
        json.WriteNumber("greatest", mesh.Greatest);
        json.WriteNumber("mean", mesh.Mean);
        json.WriteNumbers("rootSumSquare", mesh.Mean - mesh.ThreeDeviations, mesh.Mean + mesh.ThreeDeviations);
        json.WriteStartObject("drawn");
        json.WriteNumber("least", mesh.Drawn.Least);
        json.WriteNumber("greatest", mesh.Drawn.Greatest);
        json.WriteNumber("mean", mesh.Drawn.Mean);
        json.WriteNumber("deviation", mesh.Drawn.Deviation);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteNumber("bindingShare", mesh.BindingShare);
        json.WriteNumber("rattlingShare", mesh.RattlingShare);
        WriteDistance(json, "atLeastDistance", mesh.LeastDistance);
        WriteDistance(json, "atGreatestDistance", mesh.GreatestDistance);
        json.WriteOptional("leastFaceOverlap", mesh.LeastFaceOverlap);
        json.WriteOptional("approachShare", mesh.ApproachShare);
        json.WriteBoolean("stepUp", mesh.IsStepUp);
        json.WriteObjects("contributions", mesh.Contributions, WriteContribution);
    }

    // Where no such pair exists only the distance is told.
    private static void WriteDistance(Utf8JsonWriter json, string name, MeshAtDistance at)
    {
        json.WriteStartObject(name);
        if (at.Pair is { } pair)
        {
            json.WriteFigures(pair);
        }
        else
        {
            json.WriteNumber("centreDistance", at.Distance);
        }

        json.WriteEndObject();
    }

    private static void WriteContribution(Utf8JsonWriter json, Contribution contribution)
    {
        json.WriteString("name", contribution.Name);
        json.WriteString("of", contribution.Of.Length == 0 ? null : contribution.Of);
        json.WriteNumber("takes", contribution.Takes);
        json.WriteNumber("gives", contribution.Gives);
        json.WriteNumber("deviation", contribution.Deviation);
    }
}
