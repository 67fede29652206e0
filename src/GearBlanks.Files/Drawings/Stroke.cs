using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A chain of lines and arcs as a drawing has it, mm.</summary>
/// <param name="Vertices">Its vertices; the last one's bulge counts only where it is closed.</param>
/// <param name="IsClosed">True where it says that it ends where it begins.</param>
/// <param name="Layer">Its layer or group.</param>
/// <param name="Line">Where it stands in the file.</param>
internal sealed record Stroke(List<PathVertex> Vertices, bool IsClosed, string Layer, int Line)
{
    // mm: what is smaller is a point, not a line.
    private const double Nothing = 1e-6;

    /// <summary>What it is in the file: the entity's type or the element's name.</summary>
    public string Kind { get; init; } = "";

    /// <summary>Layers or groups around it by which it can be chosen; null for its layer alone.</summary>
    public IReadOnlyList<string>? Groups { get; init; }

    public Point Start => Vertices[0].Point;

    public Point End => Vertices[^1].Point;

    /// <summary>The farthest that it goes from its start, mm.</summary>
    public double Reach => Vertices.Max(vertex => vertex.Point.DistanceTo(Start));

    /// <summary>True where it has no length to speak of.</summary>
    public bool IsNothing => Reach <= Nothing;

    public bool IsOn(IReadOnlyCollection<string> layers) =>
        layers.Any(name => Groups?.Contains(name, StringComparer.OrdinalIgnoreCase) ?? string.Equals(name, Layer, StringComparison.OrdinalIgnoreCase));
}
