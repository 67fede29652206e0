using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Benchmarks;

/// <summary>Exact speeds of a thousand bodies.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class TrainBenchmarks
{
    private const int Bodies = 1000;
    private const string Chain = "chain";
    private const string Tree = "tree";
    private const string Ring = "ring that agrees";
    private const string Stages = "stages with arms";

    private ImmutableArray<TrainMesh> _meshes = [];

    /// <summary>How the bodies hang together.</summary>
    [Params(Chain, Tree, Ring, Stages)]
    public string Arrangement { get; set; } = Chain;

    [GlobalSetup]
    public void Make()
    {
        _meshes = Arrangement switch
        {
            Chain => [.. Enumerable.Range(0, Bodies - 1).Select(i => Mesh(i, i, i + 1))],
            Tree => [.. Enumerable.Range(1, Bodies - 1).Select(i => Mesh(i, (i - 1) / 2, i))],
            // An even number of equal gears.
            Ring => [.. Enumerable.Range(0, Bodies).Select(i => new TrainMesh($"mesh {i}", i, (i + 1) % Bodies, 20 + (i % 7), 20 + ((i + 1) % Bodies % 7)))],
            // Middle wheel, carried gear, held ring; the arm turns the next stage's middle wheel.
            _ => [.. Enumerable.Range(0, (Bodies - 2) / 2).SelectMany(Stage)],
        };
        Train train = Solve();
        if (train.Speeds.Any(speed => speed is null) || train.Surplus.Length != (Arrangement == Ring ? 1 : 0))
        {
            throw new InvalidOperationException("This train is not the one that is meant.");
        }
    }

    [Benchmark]
    public Fraction?[] Speeds() => [.. Solve().Speeds];

    private Train Solve() => Train.Solve(Arrangement == Stages ? Bodies - 1 : Bodies, _meshes, 0);

    // Counts that no two meshes share, as wheels of a real train are.
    private static TrainMesh Mesh(int index, int first, int second) => new($"mesh {index}", first, second, 13 + (index * 7 % 80), 17 + (index * 11 % 90));

    // Bodies: 2 s the middle wheel, 2 s + 1 the carried gear, 2 s + 2 the arm.
    private static TrainMesh[] Stage(int stage)
    {
        (int middle, int carried) = (17 + (stage % 13), 18 + (stage % 11));
        return
        [
            new($"in {stage}", 2 * stage, (2 * stage) + 1, middle, carried) { Carrier = (2 * stage) + 2 },
            new($"out {stage}", (2 * stage) + 1, Train.Frame, carried, -(middle + (2 * carried))) { Carrier = (2 * stage) + 2 },
        ];
    }
}
