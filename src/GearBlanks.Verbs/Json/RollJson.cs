using System.Text.Json;
using GearBlanks.Rolling;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>roll</c> as JSON.</summary>
public static class RollJson
{
    private const double ArcsecondsInARadian = 3600 * JsonText.DegreesInARadian;
    private const double MicrometresInAMillimetre = 1000;

    /// <summary>The whole object.</summary>
    public static string Of(RollResult result) => JsonText.Of("gearblanks.roll/1", json =>
    {
        RollReport report = result.Report;
        json.WriteString("name", result.Name);
        json.WriteNumber("distance", report.Request.Distance);
        json.WriteObjects("gears", [report.Request.First, report.Request.Second], WriteGear);
        json.WriteNumber("positions", report.Positions);
        json.WriteStartObject("singleFlank");
        Write(json, "left", report.Left, report);
        Write(json, "right", report.Right, report);
        json.WriteNumber("micrometresAtRadius", report.ReferenceRadius);
        json.WriteString("micrometresAt", IsRack(report) ? "way" : report.Request.Second.ReferenceRadius is null ? "working circle" : "reference circle");
        json.WriteEndObject();
        WriteBacklash(json, report);
        json.WriteOptional("contactLostAt", report.LostAt * JsonText.DegreesInARadian);
        Write(json, report.Interference, report);
        Write(json, report.DoubleFlank);
        json.WriteStrings("cautions", result.Cautions);
        json.WriteStrings("remarks", result.Remarks);
        json.WriteStrings("files", result.Files);
        json.Write(result.Findings);
    });

    private static void WriteGear(Utf8JsonWriter json, RollGear gear)
    {
        json.WriteString("name", gear.Name);
        json.WriteString("kind", gear.Kind switch { RollKind.Ring => "ring", RollKind.Rack => "rack", _ => "external" });
        json.WriteNumber("teeth", gear.Teeth);
        json.WriteNumber("tipRadius", gear.TipRadius);
        json.WriteNumber("rootRadius", gear.RootRadius);
        json.WriteNumber("basePitch", gear.BasePitch);
        json.WriteOptional("referenceRadius", gear.ReferenceRadius);
    }

    // Angles of a rack are none: its way in mm stands in the micrometres only.
    private static void Write(Utf8JsonWriter json, string name, Deviation deviation, RollReport report)
    {
        json.WriteStartObject(name);
        json.WriteOptional("total", IsRack(report) ? null : Finite(deviation.Total * ArcsecondsInARadian));
        json.WriteOptional("toothToTooth", IsRack(report) ? null : Finite(deviation.ToothToTooth * ArcsecondsInARadian));
        json.WriteOptional("totalMicrometres", Finite(deviation.Total * report.ReferenceRadius * MicrometresInAMillimetre));
        json.WriteOptional("toothToToothMicrometres", Finite(deviation.ToothToTooth * report.ReferenceRadius * MicrometresInAMillimetre));
        json.WriteEndObject();
    }

    private static void WriteBacklash(Utf8JsonWriter json, RollReport report)
    {
        json.WriteStartObject("backlash");
        json.WriteOptional("least", Finite(report.Backlash.Least * report.WorkingRadius));
        json.WriteOptional("mean", Finite(report.Backlash.Mean * report.WorkingRadius));
        json.WriteOptional("greatest", Finite(report.Backlash.Greatest * report.WorkingRadius));
        json.WriteStartArray("angular");
        WriteAngle(json, report.Backlash.Least, report);
        WriteAngle(json, report.Backlash.Greatest, report);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteAngle(Utf8JsonWriter json, double angle, RollReport report)
    {
        if (IsRack(report) || !double.IsFinite(angle))
        {
            json.WriteNullValue();
        }
        else
        {
            json.WriteNumberValue(angle * JsonText.DegreesInARadian);
        }
    }

    private static void Write(Utf8JsonWriter json, RollInterference? found, RollReport report)
    {
        if (found is null)
        {
            json.WriteNull("interference");
            return;
        }

        json.WriteStartObject("interference");
        json.WriteNumber("depth", found.Depth);
        json.WriteString("gear", report.Request.First.Name);
        json.WriteNumber("radius", found.FirstRadius);
        json.WriteNumber("mateRadius", found.SecondRadius);
        json.WriteNumber("tooth", found.Tooth);
        json.WriteDegrees("turn", found.Turn);
        json.WriteString("place", found.Kind switch { RollObstacle.Fillet => "fillet", RollObstacle.Root => "root", _ => "flanks" });
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, DoubleFlank? found)
    {
        if (found is null)
        {
            json.WriteNull("doubleFlank");
            return;
        }

        json.WriteStartObject("doubleFlank");
        json.WriteOptional("total", Finite(found.Distance.Total));
        json.WriteOptional("toothToTooth", Finite(found.Distance.ToothToTooth));
        json.WriteOptional("leastDistance", Finite(found.Least));
        json.WriteEndObject();
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static bool IsRack(RollReport report) => report.Request.Second.Kind == RollKind.Rack;
}
