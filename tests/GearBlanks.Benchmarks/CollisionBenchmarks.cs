using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using GearBlanks.Curves;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Stacks;

namespace GearBlanks.Benchmarks;

/// <summary>
/// Collisions among discs of 3 mm that stand over an ever greater base, or in an ever higher tower, each among as many neighbours. Wanted: time in proportion to the bodies up to 10,000, but for a logarithm.
/// </summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class CollisionBenchmarks
{
    private Mechanism? _mechanism;

    [Params(100, 1000, 10000)]
    public int Bodies { get; set; }

    /// <summary>Side by side they are told apart in plan, in a tower by their heights.</summary>
    [Params(false, true)]
    public bool Tower { get; set; }

    [GlobalSetup]
    public void Make()
    {
        var random = new Random(3);
        double wide = Tower ? 50 : 5 * Math.Sqrt(Bodies);
        double high = Tower ? 0.25 * Bodies : 25;
        ImmutableArray<Body> bodies = [.. Enumerable.Range(0, Bodies).Select(i =>
        {
            double bottom = random.NextDouble() * high;
            var middle = new Point(random.NextDouble() * wide, random.NextDouble() * wide);
            return new Body($"b{i}", BodyKind.Gear, $"s{i}", null, PlanShape.Ring(middle, 1, 2 + (random.NextDouble() * 8)), new Heights(bottom, bottom + 3, 0.02, 0.02));
        })];
        Limits limits = ProfileFinder.BuiltIn.Limits(DefaultNames.Limits, new Place("", 0, 0)).Value!;
        Machine machine = ProfileFinder.BuiltIn.Machine(DefaultNames.Machine, new Place("", 0, 0)).Value!;
        _mechanism = new Mechanism("heap", limits, machine, [], [], [], null, []) { Stack = new Stack([], [], bodies) };
    }

    /// <summary>Every pair that may meet, judged.</summary>
    [Benchmark]
    public int Check() => CollisionCheck.Of(_mechanism!).Count();

    /// <summary>The index alone: built, and asked for every pair.</summary>
    [Benchmark]
    public int Index() => new BodyTree(_mechanism!.Stack.Bodies, 0.3, 0.2).Pairs().Count();
}
