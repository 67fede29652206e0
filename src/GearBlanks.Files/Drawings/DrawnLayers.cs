using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Drawings;

/// <summary>Chooses what stands on layers that are named.</summary>
internal static class DrawnLayers
{
    /// <exception cref="DrawingException">Nothing stands on any of them.</exception>
    public static IEnumerable<Stroke> Chosen(IReadOnlyCollection<Stroke> strokes, IReadOnlyCollection<string> layers)
    {
        if (layers.Count == 0)
        {
            return strokes;
        }

        Stroke[] chosen = [.. strokes.Where(stroke => stroke.IsOn(layers))];
        string[] names = [.. strokes.SelectMany(stroke => stroke.Groups ?? [stroke.Layer]).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];
        string asked = layers.First();
        return chosen.Length > 0 ? chosen : throw new DrawingException(
            0, asked, "Nothing stands on this layer in this drawing", names.Length == 0 ? "a drawing whose lines stand on named layers" : $"its layers: {InWords(names)}")
        {
            Key = "--layer",
            Nearest = Nearest.To(asked, names),
        };
    }

    /// <summary>Names of layers, the first ones of many.</summary>
    public static string InWords(IReadOnlyCollection<string> names)
    {
        const int Most = 12;
        return string.Join(", ", names.Take(Most)) + (names.Count > Most ? $" and {names.Count - Most} more" : "");
    }
}
