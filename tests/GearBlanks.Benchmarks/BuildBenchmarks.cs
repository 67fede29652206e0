using System.Text;
using BenchmarkDotNet.Attributes;
using GearBlanks.Files.Jobs;
using GearBlanks.Files.Profiles;
using GearBlanks.Mechanisms;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Benchmarks;

/// <summary>Random builds of a train of twelve gears under every condition, on one core. Wanted: 1,000,000 in at most one second.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class BuildBenchmarks
{
    private const int Builds = 1_000_000;

    private static readonly int[] Teeth = [24, 59, 13, 57, 40, 87, 19, 81, 30, 42, 21, 64];

    private TrainBuild? _train;

    [Params(false, true)]
    public bool Normal { get; set; }

    [GlobalSetup]
    public void Make()
    {
        Outcome<Job> job = JobReader.Parse(Text(), "twelve.toml");
        Mechanism? mechanism = Resolver.Resolve(job.Value ?? throw new InvalidOperationException(job.Problems[0].Message), ProfileFinder.BuiltIn).Value;
        _train = mechanism?.Conditions?.Train ?? throw new InvalidOperationException("This train has no conditions.");
        if (_train.Gears.Length != Teeth.Length || _train.Meshes.Length != Teeth.Length - 1)
        {
            throw new InvalidOperationException("This is not a train of twelve gears.");
        }
    }

    [Benchmark]
    public int Million() => BuildRun.Of(_train!, Normal ? Spread.Normal : Spread.Uniform, 1, Builds, 1).Binding;

    private static string Text()
    {
        var (axes, sandwiches, meshes) = (new StringBuilder(), new StringBuilder(), new StringBuilder());
        for (int i = 0; i < Teeth.Length; i++)
        {
            Add(axes, i == 0 ? (FormattableString)$"name = 'a0', position = [0, 0]" : $"name = 'a{i}', from = 'a{i - 1}', distance = {0.4 * (Teeth[i - 1] + Teeth[i])}, direction = {30 - (60 * (i % 2))}");
            Add(sandwiches, $"name = 's{i}', axis = 'a{i}', height = 2, layers = [{{ gear = 'g{i}', teeth = {Teeth[i]} }}]");
            if (i > 0)
            {
                Add(meshes, $"gears = ['g{i - 1}', 'g{i}']");
            }
        }

        return FormattableString.Invariant(
            $$"""
            defaults = { module = 0.8, material = "brass", thickness = 2, backlash = 0.05 }
            conditions = { centre-distance-tolerance = 0.02, post-tilt = 0.001, thickness-tolerance = 0.005, edge-taper = 0.1, eccentricity = 0.01, grade = 8,
              outside-standard = true, bore-clearance = 0.02, temperature = [0, 40], humidity = [20, 80], frame-material = "steel" }
            axes = [
            {{axes}}]
            sandwiches = [
            {{sandwiches}}]
            meshes = [
            {{meshes}}]
            """);
    }

    private static void Add(StringBuilder list, FormattableString item) => list.Append("  { ").Append(FormattableString.Invariant(item)).Append(" },\n");
}
