using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace GearBlanks.Files.Folders;

/// <summary>The list of the files that the program wrote into a folder, and how it is written and read.</summary>
internal sealed record Manifest(ImmutableArray<ManifestFile> Files)
{
    public const string FileName = "manifest.json";

    private const string Schema = "gearblanks-manifest";
    private const int SchemaVersion = 1;

    // Letters of all languages stay legible: the file is no part of a web page.
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The manifest's bytes; its files in ordinal order of their names.</summary>
    public static byte[] Write(IEnumerable<ManifestFile> files, ManifestData data)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", Schema);
            json.WriteNumber("schemaVersion", SchemaVersion);
            WriteData(json, data);
            WriteFiles(json, files);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>The manifest in some bytes; null where they are not a manifest of this program's, whole and sound.</summary>
    public static Manifest? Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var document = JsonDocument.Parse(bytes);
            var root = document.RootElement;
            if (root.GetProperty("schema").GetString() != Schema || root.GetProperty("schemaVersion").GetInt32() != SchemaVersion)
            {
                return null;
            }

            ImmutableArray<ManifestFile> files = [.. root.GetProperty("files").EnumerateArray().Select(ReadFile)];
            return files.All(IsSound) ? new Manifest(files) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return null;
        }
    }

    private static void WriteData(Utf8JsonWriter json, ManifestData data)
    {
        json.WriteString("program", data.Program);
        json.WriteString("verdict", data.Verdict);
        json.WriteStartArray("inputs");
        foreach (var input in data.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("name", input.Name);
            json.WriteString("value", input.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("warnings");
        foreach (var warning in data.Warnings)
        {
            json.WriteStringValue(warning);
        }

        json.WriteEndArray();
    }

    private static void WriteFiles(Utf8JsonWriter json, IEnumerable<ManifestFile> files)
    {
        json.WriteStartArray("files");
        foreach (var file in files.OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("name", file.Name);
            json.WriteNumber("size", file.Size);
            json.WriteString("sha256", file.Sha256);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static ManifestFile ReadFile(JsonElement file) => new(
        file.GetProperty("name").GetString() ?? "",
        file.GetProperty("size").GetInt64(),
        file.GetProperty("sha256").GetString() ?? "");

    // A name that leads out of the folder could make the program remove what it never wrote.
    private static bool IsSound(ManifestFile file) =>
        OutputNames.IsPlain(file.Name) && file.Size >= 0 && file.Sha256.Length == 64 && file.Sha256.All(char.IsAsciiHexDigitLower);
}

/// <summary>A file as it was when it was written.</summary>
internal sealed record ManifestFile(string Name, long Size, string Sha256)
{
    public static ManifestFile Of(OutputFile file) => new(file.Name, file.Content.Length, file.Sha256);
}
