using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace GearBlanks.Verbs.Json;

/// <summary>Writes results as JSON: one object with its schema's name, numbers unrounded, mm and degrees. JSON.md documents the fields.</summary>
internal static class JsonText
{
    internal const double DegreesInARadian = 180 / Math.PI;

    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object whose first property names its schema and version.</summary>
    public static string Of(string schema, Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("schema", schema);
            json.WriteString("program", ProgramName.WithVersion);
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    public static void WriteDegrees(this Utf8JsonWriter json, string name, double radians) => json.WriteNumber(name, radians * DegreesInARadian);

    public static void WriteOptional(this Utf8JsonWriter json, string name, double? value)
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

    public static void WriteNumbers(this Utf8JsonWriter json, string name, params ReadOnlySpan<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }

    public static void WriteStrings(this Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (string value in values)
        {
            json.WriteStringValue(value);
        }

        json.WriteEndArray();
    }

    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> values, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (T value in values)
        {
            json.WriteStartObject();
            write(json, value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
