using System.Text.Json;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs.Json;

/// <summary>Heights and clocking as JSON.</summary>
internal static class StackJson
{
    private const double DegreesInARadian = 180 / Math.PI;

    public static void Write(this Utf8JsonWriter json, StackReport stack)
    {
        json.WriteObjects("heights", stack.Heights, WriteHeight);
        json.WriteObjects("clocking", stack.Clockings, WriteClocking);
        json.WriteObjects("facingTeeth", stack.Teeth, WriteTeeth);
    }

    private static void WriteHeight(Utf8JsonWriter json, HeightRow row)
    {
        json.WriteString("sandwich", row.Sandwich);
        json.WriteString("part", row.Part);
        json.WriteNumber("from", row.From);
        json.WriteNumber("to", row.To);
        json.WriteNumber("fromTolerance", row.FromTolerance);
        json.WriteNumber("toTolerance", row.ToTolerance);
    }

    private static void WriteClocking(Utf8JsonWriter json, GearClocking gear)
    {
        json.WriteString("gear", gear.Gear);
        json.WriteString("sandwich", gear.Sandwich);
        json.WriteOptional("angle", gear.Angle * DegreesInARadian);
        json.WriteNumber("turned", gear.Turned * DegreesInARadian);
        json.WriteOptional("firstScrew", gear.FirstScrew * DegreesInARadian);
        json.WriteNumber("ways", gear.Ways);
        json.WriteNumber("wrongWays", gear.WrongWays);
        json.WriteBoolean("flipsUnseen", gear.FlipsUnseen);
    }

    private static void WriteTeeth(Utf8JsonWriter json, FacingTeeth teeth)
    {
        json.WriteString("mesh", teeth.Mesh);
        json.WriteString("toothOf", teeth.ToothOf);
        json.WriteNumber("tooth", teeth.Tooth);
        json.WriteString("gapOf", teeth.GapOf);
        json.WriteNumber("before", teeth.Before);
        json.WriteNumber("after", teeth.After);
        json.WriteNumber("offset", teeth.Offset);
    }
}
