using System.Text.Json;
using GearBlanks.Mechanisms;
using GearBlanks.Meshing;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>mesh</c> as JSON.</summary>
public static class MeshJson
{
    /// <summary>The whole object.</summary>
    public static string Of(MeshResult result) => JsonText.Of("gearblanks.mesh/1", json =>
    {
        json.Write(result.Pair, null);
        json.Write(result.Findings);
    });

    internal static void Write(this Utf8JsonWriter json, GearPair pair, Mesh? mesh)
    {
        json.WriteDegrees("workingPressureAngle", pair.WorkingPressureAngle);
        json.WriteNumber("centreDistance", pair.CentreDistance);
        json.WriteOptional("zeroBacklashCentreDistance", GearPair.ZeroBacklashDistance(pair.First, pair.Second));
        json.WriteStartObject("backlash");
        json.WriteNumber("circumferential", pair.CircumferentialBacklash);
        json.WriteNumber("normal", pair.NormalBacklash);
        json.WriteOptional("radial", pair.RadialBacklash);
        json.WriteStartArray("angular");
        WriteOptionalValue(json, pair.FirstAngularBacklash * JsonText.DegreesInARadian);
        WriteOptionalValue(json, pair.SecondAngularBacklash * JsonText.DegreesInARadian);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteNumber("contactRatio", pair.ContactRatio);
        json.WriteNumbers("tipClearance", pair.FirstTipClearance, pair.SecondTipClearance);
        json.WriteStartArray("filletClearance");
        WriteOptionalValue(json, pair.FirstFilletClearance);
        WriteOptionalValue(json, pair.SecondFilletClearance);
        json.WriteEndArray();
        json.WriteStartArray("gears");
        WriteGear(json, pair.First, pair.FirstWorkingRadius, mesh?.First.Name);
        WriteGear(json, pair.Second, pair.SecondWorkingRadius, mesh?.Second.Name);
        json.WriteEndArray();
    }

    private static void WriteGear(Utf8JsonWriter json, Teeth.Toothing gear, double workingRadius, string? name)
    {
        json.WriteStartObject();
        if (name is not null)
        {
            json.WriteString("name", name);
        }

        json.Write((Teeth.ExternalGear)gear, workingRadius);
        json.WriteEndObject();
    }

    private static void WriteOptionalValue(Utf8JsonWriter json, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumberValue(number);
        }
        else
        {
            json.WriteNullValue();
        }
    }
}
