using System.Collections.Immutable;
using Fractions;

namespace GearBlanks.Trains;

/// <summary>Two gears in mesh, as a train sees them: a ring's teeth count negative, and a rack is a body of one tooth, whose turns are pitches.</summary>
/// <param name="Name">The mesh's name.</param>
/// <param name="First">Index of the body that carries the first gear.</param>
/// <param name="Second">Index of the body that carries the second gear.</param>
/// <param name="FirstTeeth">Tooth count of the first gear.</param>
/// <param name="SecondTeeth">Tooth count of the second gear.</param>
public sealed record TrainMesh(string Name, int First, int Second, int FirstTeeth, int SecondTeeth);

/// <summary>A mesh whose two bodies already turn at speeds that do not fit it: the train cannot turn.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="Loop">The meshes that close the loop, this one last.</param>
public sealed record LockedLoop(TrainMesh Mesh, ImmutableArray<TrainMesh> Loop);

/// <summary>Speeds of all bodies as exact fractions of the driven one's.</summary>
/// <param name="Speeds">Speed of each body, in turns per turn of the driven body, positive in its sense; null where it is not driven.</param>
/// <param name="Locked">Meshes that contradict the others.</param>
public sealed record Train(ImmutableArray<Fraction?> Speeds, ImmutableArray<LockedLoop> Locked)
{
    /// <summary>
    /// Solves a train of bodies on fixed axes: each mesh turns its bodies at w1 z1 = -w2 z2, exactly. Loops are looked for in every part of
    /// it, driven or not: what is locked cannot turn by hand either.
    /// </summary>
    /// <param name="bodies">How many bodies there are.</param>
    /// <param name="meshes">The meshes between them.</param>
    /// <param name="driven">Index of the driven body; null where nothing is driven.</param>
    public static Train Solve(int bodies, ImmutableArray<TrainMesh> meshes, int? driven)
    {
        var speeds = new Fraction?[bodies];
        var reachedBy = new TrainMesh?[bodies];
        ILookup<int, TrainMesh> around = meshes
            .SelectMany(mesh => (int[])[mesh.First, mesh.Second], (mesh, body) => (mesh, body))
            .ToLookup(pair => pair.body, pair => pair.mesh);
        var locked = new List<LockedLoop>();
        if (driven is { } first)
        {
            Spread(first, around, speeds, reachedBy, locked);
        }

        ImmutableArray<Fraction?> found = [.. speeds];
        for (int body = 0; body < bodies; body++)
        {
            if (speeds[body] is null)
            {
                Spread(body, around, speeds, reachedBy, locked);
            }
        }

        return new Train(found, [.. locked]);
    }

    // Speeds of all bodies that meshes connect to one, which turns once.
    private static void Spread(int start, ILookup<int, TrainMesh> around, Fraction?[] speeds, TrainMesh?[] reachedBy, List<LockedLoop> locked)
    {
        var used = new HashSet<TrainMesh>();
        var queue = new Queue<int>([start]);
        speeds[start] = Fraction.One;
        while (queue.TryDequeue(out int body))
        {
            foreach (TrainMesh mesh in around[body].Where(used.Add))
            {
                int other = mesh.First == body ? mesh.Second : mesh.First;
                Fraction speed = -speeds[body]!.Value * Ratio(mesh, body);
                if (speeds[other] is null)
                {
                    speeds[other] = speed;
                    reachedBy[other] = mesh;
                    queue.Enqueue(other);
                }
                else if (speeds[other] != speed)
                {
                    locked.Add(new LockedLoop(mesh, Loop(mesh, reachedBy)));
                }
            }
        }
    }

    private static Fraction Ratio(TrainMesh mesh, int body) => mesh.First == body
        ? new Fraction(mesh.FirstTeeth, mesh.SecondTeeth)
        : new Fraction(mesh.SecondTeeth, mesh.FirstTeeth);

    // The ways from both bodies back to the driven one, without the part they share.
    private static ImmutableArray<TrainMesh> Loop(TrainMesh closing, TrainMesh?[] reachedBy)
    {
        List<TrainMesh> one = WayBack(closing.First, reachedBy);
        List<TrainMesh> other = WayBack(closing.Second, reachedBy);
        while (one.Count > 0 && other.Count > 0 && one[^1] == other[^1])
        {
            one.RemoveAt(one.Count - 1);
            other.RemoveAt(other.Count - 1);
        }

        return [.. one.AsEnumerable().Reverse(), .. other, closing];
    }

    private static List<TrainMesh> WayBack(int body, TrainMesh?[] reachedBy)
    {
        var way = new List<TrainMesh>();
        while (reachedBy[body] is { } mesh)
        {
            way.Add(mesh);
            body = mesh.First == body ? mesh.Second : mesh.First;
        }

        return way;
    }
}
