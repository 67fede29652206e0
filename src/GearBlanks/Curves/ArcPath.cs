using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace GearBlanks.Curves;

/// <summary>A vertex of a path of lines and arcs.</summary>
/// <param name="Point">Where the vertex is, mm.</param>
/// <param name="Bulge">
/// Tangent of a quarter of the angle swept by the piece that begins here, counter-clockwise positive; 0 for a line. As DXF defines it.
/// </param>
public readonly record struct PathVertex(Point Point, double Bulge);

/// <summary>A path of lines and arcs: what files carry.</summary>
/// <param name="Vertices">Vertices in order of travel; at least two.</param>
/// <param name="Closed">True where the last vertex's piece ends at the first vertex; otherwise its bulge is 0.</param>
public sealed record ArcPath(ImmutableArray<PathVertex> Vertices, bool Closed)
{
    /// <summary>An open path of straight strokes.</summary>
    public static ArcPath Strokes(IEnumerable<Point> points) => new([.. points.Select(point => new PathVertex(point, 0))], false);

    /// <summary>The path after a rigid motion; a mirror keeps the order of travel.</summary>
    public ArcPath Moved(Motion motion)
    {
        var moved = new PathVertex[Vertices.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            PathVertex vertex = Vertices[i];
            moved[i] = new PathVertex(motion.Apply(vertex.Point), motion.IsMirrored ? -vertex.Bulge : vertex.Bulge);
        }

        return this with { Vertices = ImmutableCollectionsMarshal.AsImmutableArray(moved) };
    }
}
