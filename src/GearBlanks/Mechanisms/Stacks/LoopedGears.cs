namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Gears whose meshes belong to a loop, so that the angle at which they stand in their sandwich is not free.</summary>
internal sealed class LoopedGears
{
    private readonly Dictionary<string, (Mesh By, string From, int Depth)> _reached = [];
    private readonly Dictionary<string, string> _merged = [];
    private readonly HashSet<Mesh> _looped = new(ReferenceEqualityComparer.Instance);

    private LoopedGears(Mechanism mechanism)
    {
        HashSet<Mesh> walked = Walk(mechanism);
        foreach (Mesh mesh in mechanism.Meshes.Where(mesh => !walked.Contains(mesh)))
        {
            _looped.Add(mesh);
            Close(mesh.First.Sandwich, mesh.Second.Sandwich);
        }
    }

    /// <summary>The names of the gears.</summary>
    public static HashSet<string> Of(Mechanism mechanism) => [.. new LoopedGears(mechanism)._looped.SelectMany(mesh => (string[])[mesh.First.Name, mesh.Second.Name])];

    // A tree over each part of the mechanism; the meshes it does not need close the loops.
    private HashSet<Mesh> Walk(Mechanism mechanism)
    {
        var walked = new HashSet<Mesh>(ReferenceEqualityComparer.Instance);
        ILookup<string, (Mesh Mesh, string To)> meshes = mechanism.Meshes
            .SelectMany(mesh => ((string From, Mesh Mesh, string To)[])[(mesh.First.Sandwich, mesh, mesh.Second.Sandwich), (mesh.Second.Sandwich, mesh, mesh.First.Sandwich)])
            .ToLookup(way => way.From, way => (way.Mesh, way.To));
        var depths = new Dictionary<string, int>();
        foreach (Sandwich start in mechanism.Sandwiches.Where(start => depths.TryAdd(start.Name, 0)))
        {
            var open = new Queue<string>([start.Name]);
            while (open.TryDequeue(out string? name))
            {
                foreach ((Mesh mesh, string to) in meshes[name].Where(way => depths.TryAdd(way.To, depths[name] + 1)))
                {
                    walked.Add(mesh);
                    _reached[to] = (mesh, name, depths[to]);
                    open.Enqueue(to);
                }
            }
        }

        return walked;
    }

    // Every mesh on the way between the two belongs to the loop; what is known to be in one is passed over from then on.
    private void Close(string one, string other)
    {
        (one, other) = (Top(one), Top(other));
        while (one != other)
        {
            if (DepthOf(one) < DepthOf(other))
            {
                (one, other) = (other, one);
            }

            (Mesh by, string from, _) = _reached[one];
            _looped.Add(by);
            _merged[one] = from;
            one = Top(from);
        }
    }

    private int DepthOf(string sandwich) => _reached.TryGetValue(sandwich, out var way) ? way.Depth : 0;

    private string Top(string sandwich)
    {
        string top = sandwich;
        while (_merged.TryGetValue(top, out string? next))
        {
            top = next;
        }

        while (_merged.TryGetValue(sandwich, out string? next) && next != top)
        {
            _merged[sandwich] = top;
            sandwich = next;
        }

        return top;
    }
}
