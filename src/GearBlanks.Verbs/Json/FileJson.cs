namespace GearBlanks.Verbs.Json;

/// <summary>The results of the verbs that write files, as JSON.</summary>
public static class FileJson
{
    /// <summary>The result of <c>cut</c>.</summary>
    public static string Of(CutResult result) => JsonText.Of("gearblanks.cut/1", json =>
    {
        json.WriteString("folder", result.Folder);
        json.WriteStrings("files", result.Files);
        json.WriteStrings("remarks", result.Remarks);
        json.WriteStrings("cautions", result.Cautions);
        json.WriteStartArray("kerf");
        foreach (WrittenGear gear in result.Gears)
        {
            json.WriteStartObject();
            json.WriteString("gear", gear.Name);
            json.WriteKerf(gear);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("check");
        json.Write(result.Report);
        json.WriteEndObject();
    });

    /// <summary>The result of <c>gear</c>.</summary>
    public static string Of(GearResult result) => JsonText.Of("gearblanks.gear/1", json =>
    {
        json.WriteString("file", result.File);
        json.WriteStrings("cautions", result.Cautions);
        json.WriteStrings("remarks", result.Remarks);
        json.WriteStartObject("kerf");
        json.WriteKerf(result.Written);
        json.WriteEndObject();
        json.Write(result.Gear, null);
        json.Write(result.Findings);
    });

    /// <summary>The result of <c>new</c>.</summary>
    /// <param name="file">The file written.</param>
    public static string OfTemplate(string file) => JsonText.Of("gearblanks.new/1", json => json.WriteString("file", file));
}
