using System.Text.Json;
using GearBlanks.Findings;

namespace GearBlanks.Verbs.Json;

/// <summary>The result of <c>shift</c> as JSON.</summary>
public static class ShiftJson
{
    /// <summary>The whole object.</summary>
    public static string Of(ShiftResult result) => JsonText.Of("gearblanks.shift/1", json =>
    {
        json.WriteString("title", result.Title);
        json.WriteString("verdict", LevelWords.Of(result.Verdict));
        json.WriteObjects("meshes", result.Groups.SelectMany(group => group.Meshes), WriteMesh);
        json.WriteObjects("tipDiameters", result.Groups.SelectMany(group => group.Tips), (item, tip) =>
        {
            item.WriteString("gear", tip.Gear);
            item.WriteNumber("tipDiameter", tip.Diameter);
        });
        json.WriteObjects("modules", result.Groups.Where(group => group.Module is not null), (item, group) =>
        {
            item.WriteStrings("meshes", group.Meshes.Select(mesh => mesh.Name));
            item.WriteOptional("module", group.Module);
        });
        json.WriteObjects("obstacles", result.Groups.Where(group => group.Level == Level.Fails), (item, group) =>
        {
            item.WriteStrings("meshes", group.Meshes.Select(mesh => mesh.Name));
            item.WriteStrings("inTheWay", group.Obstacles);
            item.WriteStrings("nearest", group.Nearest);
        });
        if (result.WrittenFile is { } file)
        {
            json.WriteString("written", file);
        }
        else
        {
            json.WriteNull("written");
        }
    });

    private static void WriteMesh(Utf8JsonWriter json, ShiftedMesh mesh)
    {
        json.WriteString("name", mesh.Name);
        json.WriteStrings("gears", [mesh.First, mesh.Second]);
        json.WriteNumbers("profileShift", mesh.ProfileShift.First, mesh.ProfileShift.Second);
        json.WriteOptional("backlash", mesh.Pair?.CircumferentialBacklash);
        json.WriteOptional("contactRatio", mesh.Pair?.ContactRatio);
        if (mesh.Pair is { } pair)
        {
            json.WriteNumbers("tipThickness", pair.First.TipThickness, pair.Second.TipThickness);
        }
        else
        {
            json.WriteNull("tipThickness");
        }
    }
}
