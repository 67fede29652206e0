using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Stacks;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Loops of meshes, against taking each mesh out and looking whether its sandwiches still hang together.</summary>
public sealed class LoopedGearsTests
{
    [Fact]
    public void Random_trains()
    {
        var random = new Random(77);
        int looped = 0;
        for (int i = 0; i < 60; i++)
        {
            Mechanism mechanism = Train(random);
            HashSet<string> expected = [.. mechanism.Meshes.Where(mesh => IsInLoop(mesh, mechanism)).SelectMany(mesh => (string[])[mesh.First.Name, mesh.Second.Name])];
            looped += expected.Count;
            Assert.Equal(expected.Order(), LoopedGears.Of(mechanism).Order());
        }

        Assert.InRange(looped, 100, 2000);
    }

    // Axes far apart, each with gears of its own for every mesh; only the graph matters.
    private static Mechanism Train(Random random)
    {
        int count = random.Next(3, 12);
        (int From, int To)[] pairs = [.. Enumerable.Range(0, random.Next(2, 15))
            .Select(_ => (random.Next(count), random.Next(count)))
            .Where(pair => pair.Item1 != pair.Item2)
            .Distinct()];
        Job job = new(
            At(0), "graph", Defaults, [.. Enumerable.Range(0, count).Select(i => Axis($"a{i}", 0))],
            [.. Enumerable.Range(0, count).Select(i => Sandwich(
                $"s{i}", $"a{i}", [new JobWasher(At(2), 1), .. pairs.Select((pair, k) => (pair, k)).Where(item => item.pair.From == i || item.pair.To == i).Select(item => Gear($"g{i}-{item.k}", 20))]))],
            [.. pairs.Select((pair, k) => Mesh($"g{pair.From}-{k}", $"g{pair.To}-{k}") with { MeasuredDistance = 20.05 })], null, []);
        return job.Resolved();
    }

    private static bool IsInLoop(Mesh mesh, Mechanism mechanism)
    {
        var reached = new HashSet<string> { mesh.First.Sandwich };
        for (int before = 0; before != reached.Count;)
        {
            before = reached.Count;
            foreach (Mesh other in mechanism.Meshes.Where(other => !ReferenceEquals(other, mesh) && (reached.Contains(other.First.Sandwich) || reached.Contains(other.Second.Sandwich))))
            {
                reached.UnionWith([other.First.Sandwich, other.Second.Sandwich]);
            }
        }

        return reached.Contains(mesh.Second.Sandwich);
    }
}
