using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Small jobs: gears of module 1 in sheet of 2 mm, unless said otherwise.</summary>
internal static class TestJobs
{
    public static JobDefaults Defaults { get; } = new(At(1), 1, null, null, null, null, 2, null, null, null, false, false);

    public static IProfiles Profiles { get; } = new TestProfiles();

    public static Place At(int line) => new("job.toml", line, 1);

    /// <summary>A gear; its line is its tooth count, so that places can be told apart.</summary>
    public static JobGear Gear(string name, int teeth, double shift = 0, double? thinning = null, double? tip = null) => new(
        At(teeth), name, teeth, null, null, shift, tip, thinning, null, null, null, null, [], 0, false, null, null);

    public static JobSandwich Sandwich(string name, string axis, params JobLayer[] layers) => new(At(2), name, axis, null, [.. layers]);

    public static JobAxis Axis(string name, double x, double y = 0) => new(At(3), name, new Point(x, y), null, 0, 0);

    public static JobMesh Mesh(string first, string second) => new(At(4), $"{first}-{second}", first, second, null, null, null);

    public static JobHand Hand(string sandwich, Fraction turn) => new(At(5), $"{sandwich} hand", sandwich, turn);

    /// <summary>Two gears in mesh, each the only one of a sandwich of its own name.</summary>
    public static Job Pair(JobGear first, JobGear second, double distance) => Chain([first, second], [distance]);

    /// <summary>Gears in a row, each in mesh with the one before it.</summary>
    public static Job Chain(JobGear[] gears, double[] distances) => new(
        At(0), "test", Defaults,
        [.. gears.Select((gear, i) => Axis("axis " + gear.Name, distances.Take(i).Sum()))],
        [.. gears.Select(gear => Sandwich(gear.Name, "axis " + gear.Name, gear))],
        [.. gears.Zip(gears.Skip(1), (one, other) => Mesh(one.Name, other.Name))],
        null, []);

    public static Job WithMesh(this Job job, Func<JobMesh, JobMesh> change) => job with { Meshes = [.. job.Meshes.Select(change)] };

    public static Job WithGear(this Job job, string name, Func<JobGear, JobGear> change) => job.WithSandwich(
        _ => true, sandwich => sandwich with { Layers = [.. sandwich.Layers.Select(layer => layer is JobGear gear && gear.Name == name ? change(gear) : layer)] });

    public static Job WithSandwich(this Job job, Func<JobSandwich, bool> which, Func<JobSandwich, JobSandwich> change) =>
        job with { Sandwiches = [.. job.Sandwiches.Select(sandwich => which(sandwich) ? change(sandwich) : sandwich)] };

    /// <summary>Moves the last axis of a row outwards.</summary>
    public static Job Opened(this Job job, double by) =>
        job with { Axes = job.Axes.SetItem(job.Axes.Length - 1, job.Axes[^1] with { Position = job.Axes[^1].Position!.Value + new Vector(by, 0) }) };

    public static Mechanism Resolved(this Job job)
    {
        Outcome<Mechanism> outcome = Resolver.Resolve(job, Profiles);
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }

    public static ImmutableArray<Problem> Problems(this Job job)
    {
        Outcome<Mechanism> outcome = Resolver.Resolve(job, Profiles);
        Assert.Null(outcome.Value);
        return outcome.Problems;
    }

    public static MechanismReport Report(this Job job) => MechanismCheck.Of(job.Resolved());

    public static MountedGear Named(this Mechanism mechanism, string gear) => mechanism.Gears.Single(one => one.Name == gear);

    /// <summary>Profiles of which one of each kind exists under its default name, and "other" beside it.</summary>
    private sealed class TestProfiles : IProfiles
    {
        public Outcome<BasicRack> Rack(string name, Place askedAt) => name switch
        {
            DefaultNames.Rack => TestRacks.A with { Name = name },
            "other" => TestRacks.Iso('D') with { Name = name },
            "steep" => TestRacks.Iso('C', 25) with { Name = name },
            _ => Missing(name, askedAt),
        };

        public Outcome<Material> Material(string name, Place askedAt) => name switch
        {
            "brass" => new Material(name, "Brass", null, []),
            "steel" => new Material(name, "Steel", 11.7e-6, []) { MoistureExpansion = 0 },
            "acrylic" => new Material(name, "Acrylic", 77e-6, []) { MoistureExpansion = 4e-5 },
            _ => Missing(name, askedAt),
        };

        public Outcome<Machine> Machine(string name, Place askedAt) => name is DefaultNames.Machine or "other"
            ? new Machine(name, name, new LayerPlan(ImmutableDictionary<Operation, string>.Empty, false), [])
            : Missing(name, askedAt);

        public Outcome<Limits> Limits(string name, Place askedAt) => name is DefaultNames.Limits or "other"
            ? TestLimits.Common with { Name = name }
            : Missing(name, askedAt);

        private static ImmutableArray<Problem> Missing(string name, Place askedAt) =>
            [new Problem(askedAt, "profile", name, string.Create(CultureInfo.InvariantCulture, $"no profile {name}"))];
    }
}
