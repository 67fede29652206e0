using System.Collections.Immutable;

namespace GearBlanks.Trains;

/// <summary>Which bodies hang together, the frame left out: through it nothing is moved.</summary>
internal static class TrainReach
{
    /// <summary>Whether each body is connected to one of some bodies, by meshes or by the arms that carry them.</summary>
    public static ImmutableArray<bool> Of(int bodies, ImmutableArray<TrainMesh> meshes, IEnumerable<int> from)
    {
        ILookup<int, int> beside = meshes
            .Select(mesh => (int[])[.. ((int[])[mesh.First, mesh.Second, mesh.Carrier]).Where(body => body != Train.Frame)])
            .SelectMany(together => together.SelectMany(_ => together, (one, other) => (one, other)))
            .ToLookup(pair => pair.one, pair => pair.other);
        var reached = new bool[bodies];
        var queue = new Queue<int>(from);
        while (queue.TryDequeue(out int body))
        {
            if (!reached[body])
            {
                reached[body] = true;
                foreach (int other in beside[body])
                {
                    queue.Enqueue(other);
                }
            }
        }

        return [.. reached];
    }
}
