using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>A chain of lines and arcs as a drawing has it, mm.</summary>
/// <param name="Vertices">Its vertices; the last one's bulge counts only where it is closed.</param>
/// <param name="IsClosed">True where it says that it ends where it begins.</param>
/// <param name="Layer">Its layer or group.</param>
/// <param name="Line">Where it stands in the file.</param>
internal sealed record Stroke(List<PathVertex> Vertices, bool IsClosed, string Layer, int Line)
{
    public Point Start => Vertices[0].Point;

    public Point End => Vertices[^1].Point;
}
