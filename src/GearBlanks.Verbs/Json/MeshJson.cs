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
        json.WriteFigures(pair);
        json.WriteStartArray("gears");
        WriteGear(json, pair.First, pair.FirstWorkingRadius, mesh?.First.Name);
        WriteGear(json, pair.Second, pair.SecondWorkingRadius, mesh?.Second.Name);
        json.WriteEndArray();
    }

    /// <summary>What the two make of one another, without their own sizes.</summary>
    internal static void WriteFigures(this Utf8JsonWriter json, GearPair pair)
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
        json.WriteStartArray("contactEnds");
        if (pair.ContactEnds is var (atRoot, atTip))
        {
            WriteEnd(json, atRoot);
            WriteEnd(json, atTip);
        }

        json.WriteEndArray();
        WriteOptionalNumber(json, "huntingTurns", pair.HuntingTurns);
        WriteOptionalNumber(json, "leastRingTeethForRadialAssembly", pair is RingPair ring ? RadialAssembly.LeastRingTeeth(ring) : null);
        json.WriteNumbers("tipClearance", pair.FirstTipClearance, pair.SecondTipClearance);
        json.WriteStartArray("filletClearance");
        WriteOptionalValue(json, pair.FirstFilletClearance);
        WriteOptionalValue(json, pair.SecondFilletClearance);
        json.WriteEndArray();
        json.WriteNumbers("formMargin", pair.FirstFormMargin, pair.SecondFormMargin);
        if (pair is RingPair inside)
        {
            json.WriteOptional("involuteClearance", inside.InvoluteClearance);
            json.WriteOptional("trochoidClearance", inside.TrochoidClearance);
            json.WriteOptional("trimmingClearance", inside.TrimmingClearance);
        }
    }

    // Sliding without bound, where contact comes down to a base circle, is null.
    private static void WriteEnd(Utf8JsonWriter json, ContactEnd end)
    {
        json.WriteStartObject();
        json.WriteNumber("fromPitchPoint", end.FromPitchPoint);
        json.WriteNumbers("radius", end.FirstRadius, end.SecondRadius);
        json.WriteStartArray("specificSliding");
        WriteOptionalValue(json, double.IsInfinity(end.FirstSliding) ? null : end.FirstSliding);
        WriteOptionalValue(json, double.IsInfinity(end.SecondSliding) ? null : end.SecondSliding);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteOptionalNumber(Utf8JsonWriter json, string name, int? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, number);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void WriteGear(Utf8JsonWriter json, Teeth.Toothing gear, double workingRadius, string? name)
    {
        json.WriteStartObject();
        if (name is not null)
        {
            json.WriteString("name", name);
        }

        json.Write(gear, double.IsInfinity(workingRadius) ? null : workingRadius);
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
