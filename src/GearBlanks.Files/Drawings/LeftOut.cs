using System.Globalization;

namespace GearBlanks.Files.Drawings;

/// <summary>Counts what is left out of a drawing, or not read as it stands, by kind, and keeps where the first of each stands.</summary>
/// <param name="why">The reason, in words.</param>
/// <param name="what">What is done with it.</param>
/// <param name="advice">What follows from it; null for nothing.</param>
internal sealed class LeftOut(string why, string what = "Left out", string? advice = null)
{
    private readonly SortedDictionary<string, (int Count, int Line, string Layer)> _kinds = new(StringComparer.Ordinal);

    public void Add(string kind, int line, string layer) => _kinds[kind] = _kinds.TryGetValue(kind, out (int Count, int Line, string Layer) known)
        ? known with { Count = known.Count + 1 }
        : (1, line, layer);

    /// <summary>What there is to say: nothing, or one sentence.</summary>
    public IEnumerable<string> Remarks() => _kinds.Count == 0
        ? []
        : [$"{what}, because {why}: {string.Join(", ", _kinds.Select(kind => InWords(kind.Key, kind.Value.Count, kind.Value.Line, kind.Value.Layer)))}.{(advice is null ? "" : $" {advice}.")}"];

    private static string InWords(string kind, int count, int line, string layer) => string.Create(
        CultureInfo.InvariantCulture, $"{kind} ({(count > 1 ? $"{count}, the first in " : "")}line {line}{(layer.Length > 0 ? $", layer {layer}" : "")})");
}
