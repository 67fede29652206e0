using System.Text.Json;
using GearBlanks.Cutting;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs.Json;

internal static class KerfJson
{
    /// <summary>What a gear's file carries of the kerf, and the sizes of the cut gear.</summary>
    public static void WriteKerf(this Utf8JsonWriter json, WrittenGear gear)
    {
        json.WriteString("words", gear.Kerf.Words);
        json.WriteBoolean("compensated", gear.Kerf.IsCompensated);
        json.WriteBoolean("shopCompensates", gear.Kerf.IsShops);
        if (gear.Kerf.Kerf is { } kerf)
        {
            json.WriteStartArray("width");
            json.WriteNumberValue(kerf.X);
            json.WriteNumberValue(kerf.Y);
            json.WriteEndArray();
        }
        else
        {
            json.WriteNull("width");
        }

        if (gear.Sizes is not { } sizes)
        {
            json.WriteNull("asCut");
            return;
        }

        json.WriteStartObject("asCut");
        bool isRack = gear.Blank.Gear is RackBar;
        Write(json, isRack ? "tipOverBack" : "tipDiameter", sizes.Tip);
        Write(json, isRack ? "rootOverBack" : "rootDiameter", sizes.Root);
        Write(json, "toothThickness", sizes.ToothThickness);
        Write(json, "bore", sizes.Bore);
        Write(json, isRack ? "length" : "rimDiameter", sizes.Rim);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, SizeRange? range)
    {
        if (range is not { } size)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartArray(name);
        json.WriteNumberValue(size.Least);
        json.WriteNumberValue(size.Greatest);
        json.WriteEndArray();
    }
}
