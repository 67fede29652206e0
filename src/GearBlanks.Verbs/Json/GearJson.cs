using System.Text.Json;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs.Json;

internal static class GearJson
{
    /// <summary>A gear's fields; the working diameter only where the gear is in a mesh.</summary>
    public static void Write(this Utf8JsonWriter json, ExternalGear gear, double? workingRadius)
    {
        json.WriteNumber("teeth", gear.Teeth);
        json.WriteNumber("module", gear.Module);
        json.WriteDegrees("pressureAngle", gear.PressureAngle);
        json.WriteString("rack", gear.Data.Rack.Name);
        json.WriteNumber("profileShift", gear.Data.ProfileShift);
        json.WriteNumber("generatingProfileShift", gear.Data.GeneratingShift);
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

        json.WriteEndObject();
        json.WriteNumber("toothThickness", gear.ToothThickness);
        json.WriteNumber("tipThickness", gear.TipThickness);
        WriteUndercut(json, gear.Undercut);
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
