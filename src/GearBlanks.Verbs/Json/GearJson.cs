using System.Text.Json;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs.Json;

internal static class GearJson
{
    /// <summary>A gear's or rack's fields; the working diameter only where it is in a mesh and has one.</summary>
    public static void Write(this Utf8JsonWriter json, Toothing teeth, double? workingRadius)
    {
        json.WriteNumber("teeth", teeth.Teeth);
        json.WriteNumber("module", teeth.Module);
        json.WriteDegrees("pressureAngle", teeth.PressureAngle);
        json.WriteString("rack", teeth.Data.Rack.Name);
        json.WriteNumber("profileShift", teeth.Data.ProfileShift);
        json.WriteNumber("generatingProfileShift", teeth.Data.GeneratingShift);
        json.WriteString("kind", KindOf(teeth));
        WriteSizes(json, teeth, workingRadius);
        json.WriteNumber("toothThickness", teeth.ToothThickness);
        json.WriteNumber("tipThickness", teeth.TipThickness);
        WriteUndercut(json, (teeth as ExternalGear)?.Undercut);
    }

    private static string KindOf(Toothing teeth) => teeth switch
    {
        RingGear => "ring",
        RackBar => "rack",
        _ => "external",
    };

    private static void WriteSizes(Utf8JsonWriter json, Toothing teeth, double? workingRadius)
    {
        if (teeth is Gear gear)
        {
            WriteDiameters(json, gear, workingRadius);
        }
        else if (teeth is RackBar rack)
        {
            json.WriteNumber("length", rack.Length);
            json.WriteNumber("pitch", rack.Pitch);
            json.WriteStartObject("heights");
            json.WriteNumber("tip", rack.TipHeight);
            json.WriteNumber("form", rack.FormHeight);
            json.WriteNumber("root", rack.RootHeight);
            json.WriteNumber("back", -rack.Data.BackHeight);
            json.WriteEndObject();
        }
    }

    private static void WriteDiameters(Utf8JsonWriter json, Gear gear, double? workingRadius)
    {
        json.WriteStartObject("diameters");
        json.WriteNumber("reference", 2 * gear.ReferenceRadius);
        json.WriteNumber("base", 2 * gear.BaseRadius);
        json.WriteNumber("tip", 2 * gear.TipRadius);
        json.WriteNumber("root", 2 * gear.RootRadius);
        json.WriteNumber("form", 2 * gear.FormRadius);
        if (workingRadius is { } working)
        {
            json.WriteNumber("working", 2 * working);
        }

        if (gear is RingGear ring)
        {
            json.WriteNumber("rim", 2 * ring.RimRadius);
        }

        json.WriteEndObject();
    }

    private static void WriteUndercut(Utf8JsonWriter json, Undercut? undercut)
    {
        if (undercut is null)
        {
            json.WriteNull("undercut");
            return;
        }

        json.WriteStartObject("undercut");
        json.WriteNumber("depth", undercut.Depth);
        json.WriteNumber("formDiameter", undercut.FormDiameter);
        json.WriteEndObject();
    }
}
