using System.Collections.Immutable;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>
/// Against which body the two axes of a mesh are at rest. An axis rests against the body that carries it and against every sandwich that turns on it;
/// axes in one place of which one rests against a body of the other are one line, and rest against the bodies of both.
/// </summary>
internal sealed class MeshCarriers
{
    // In mm, far below what can be made.
    private const double SamePlace = 1e-6;

    private readonly ImmutableDictionary<string, ImmutableSortedSet<int>> _restsOn;

    /// <param name="mechanism">The mechanism.</param>
    /// <param name="bodyOf">The body that each sandwich is; the frame for those that are held to it.</param>
    public MeshCarriers(Mechanism mechanism, ImmutableDictionary<string, int> bodyOf)
    {
        ILookup<string, int> on = mechanism.Sandwiches.ToLookup(sandwich => sandwich.Axis.Name, sandwich => bodyOf[sandwich.Name]);
        _restsOn = mechanism.Axes
            .GroupBy(axis => (Math.Round(axis.Position.X / SamePlace), Math.Round(axis.Position.Y / SamePlace)))
            .SelectMany(place => Lines([.. place.Select(axis => new Line([axis.Name], [.. on[axis.Name], axis.CarriedBy is { } arm ? bodyOf[arm] : Train.Frame]))]))
            .SelectMany(line => line.Axes, (line, axis) => (axis, line.Bodies))
            .ToImmutableDictionary(pair => pair.axis, pair => pair.Bodies);
    }

    /// <summary>The body against which both axes of a mesh are at rest; null where there is none, and their distance changes.</summary>
    public int? Of(Mesh mesh)
    {
        ImmutableSortedSet<int> both = _restsOn[mesh.First.Axis.Name].Intersect(_restsOn[mesh.Second.Axis.Name]);
        return both.IsEmpty ? null : both[0];
    }

    // Axes in one place are one line where a body holds both; a line may hold more axes with every one that it takes in.
    private static List<Line> Lines(List<Line> axes)
    {
        var lines = new List<Line>();
        foreach (Line axis in axes)
        {
            Line[] same = [.. lines.Where(line => !line.Bodies.Intersect(axis.Bodies).IsEmpty)];
            lines.RemoveAll(same.Contains);
            lines.Add(same.Aggregate(axis, (one, other) => new Line(one.Axes.AddRange(other.Axes), one.Bodies.Union(other.Bodies))));
        }

        return lines;
    }

    private sealed record Line(ImmutableArray<string> Axes, ImmutableSortedSet<int> Bodies);
}
