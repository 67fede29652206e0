using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Mechanisms.Stacks;
using GearBlanks.Teeth;
using GearBlanks.Trains.Closing;

namespace GearBlanks.Mechanisms;

/// <summary>
/// Turns a job into a mechanism: fills in every default, finds the profiles, works out thinning, gears and pairs. The job's
/// references are sound (its reader sees to that); what cannot exist comes back as problems, all at once.
/// </summary>
public sealed class Resolver
{
    private readonly Job _job;
    private readonly IProfiles _profiles;
    private readonly List<Problem> _problems = [];
    private readonly Dictionary<string, BasicRack?> _racks = [];
    private readonly Dictionary<string, Material?> _materials = [];

    private Resolver(Job job, IProfiles profiles)
    {
        _job = job;
        _profiles = profiles;
    }

    /// <summary>Resolves a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="profiles">Where its profiles come from.</param>
    public static Outcome<Mechanism> Resolve(Job job, IProfiles profiles)
    {
        var resolver = new Resolver(job, profiles);
        Mechanism? mechanism = resolver.Resolve();
        return mechanism is not null && resolver._problems.Count == 0
            ? mechanism
            : resolver._problems.Distinct().OrderBy(p => p.Place.Line).ThenBy(p => p.Place.Column).ToImmutableArray();
    }

    /// <summary>What a job asks of the profile shifts of its gears: its meshes at their real distances, with the thinning that it gives and no other.</summary>
    /// <param name="job">The job.</param>
    /// <param name="profiles">Where its profiles come from.</param>
    /// <param name="rule">How sums of profile shifts are split.</param>
    /// <param name="held">Names of the gears that keep their profile shifts.</param>
    /// <param name="shortensTips">True where tips may be shortened.</param>
    public static Outcome<ClosingTask> Closing(Job job, IProfiles profiles, ShiftRule rule, IReadOnlyCollection<string> held, bool shortensTips)
    {
        var resolver = new Resolver(job, profiles);
        ClosingTask? task = resolver.Closing(rule, held, shortensTips);
        return task is not null && resolver._problems.Count == 0
            ? task
            : resolver._problems.Distinct().OrderBy(p => p.Place.Line).ThenBy(p => p.Place.Column).ToImmutableArray();
    }

    private ClosingTask? Closing(ShiftRule rule, IReadOnlyCollection<string> held, bool shortensTips)
    {
        Limits? limits = Take(_profiles.Limits(_job.Defaults.Limits ?? DefaultNames.Limits, _job.Defaults.Place));
        ImmutableDictionary<string, GearPlan> plans = Plans(AxisPlacer.Place(_job.Axes));
        if (limits is null || _problems.Count > 0)
        {
            return null;
        }

        string[] names = [.. _job.Sandwiches.SelectMany(sandwich => sandwich.Layers.OfType<JobGear>()).Select(gear => gear.Name)];
        var meshes = ImmutableArray.CreateBuilder<ClosingMesh>();
        foreach (MeshPlan plan in _job.Meshes.Select(mesh => MeshPlan.Of(mesh, plans, _job.Defaults, limits)))
        {
            var mesh = new ClosingMesh(
                plan.Job.Name, Array.IndexOf(names, plan.First.Name), Array.IndexOf(names, plan.Second.Name),
                Places.Axes(plan.First.Axis.Name, plan.Second.Axis.Name), plan.Distance, plan.WantedBacklash);

            // Two that do not mesh at all are told at their place.
            if (Try(plan.Job.Place, "gears", () => (object)ShiftSums.SumFor(plan.First.Data(0), plan.Second.Data(0), mesh.Distance, mesh.Backlash)) is not null)
            {
                meshes.Add(mesh);
            }
        }

        return new ClosingTask(
            [.. names.Select(name => new ClosingGear(name, plans[name].Data(plans[name].GivenThinning ?? 0), held.Contains(name)))],
            meshes.ToImmutable(), limits, rule, shortensTips);
    }

    private Mechanism? Resolve()
    {
        JobDefaults defaults = _job.Defaults;
        Limits? limits = Take(_profiles.Limits(defaults.Limits ?? DefaultNames.Limits, defaults.Place));
        Machine? machine = Take(_profiles.Machine(defaults.Machine ?? DefaultNames.Machine, defaults.Place));
        ImmutableDictionary<string, Axis> axes = AxisPlacer.Place(_job.Axes);
        ImmutableDictionary<string, GearPlan> plans = Plans(axes);
        if (limits is null || machine is null)
        {
            return null;
        }

        ImmutableArray<MeshPlan> meshPlans = [.. _job.Meshes
            .Where(mesh => plans.ContainsKey(mesh.First) && plans.ContainsKey(mesh.Second))
            .Select(mesh => MeshPlan.Of(mesh, plans, defaults, limits))];
        ImmutableDictionary<string, double> thinning = Thinning.Of(plans.Values, meshPlans);
        ImmutableDictionary<string, MountedGear> gears = plans
            .Select(plan => (plan.Key, Gear: Mount(plan.Value, thinning[plan.Key])))
            .Where(pair => pair.Gear is not null)
            .ToImmutableDictionary(pair => pair.Key, pair => pair.Gear!);
        ImmutableArray<Mesh> meshes = [.. meshPlans
            .Where(plan => gears.ContainsKey(plan.Job.First) && gears.ContainsKey(plan.Job.Second))
            .Select(plan => Try(plan.Job.Place, "gears", () => plan.Mesh(gears)))
            .OfType<Mesh>()];
        if (_problems.Count > 0)
        {
            return null;
        }

        var mechanism = new Mechanism(
            _job.Title, limits, machine,
            [.. _job.Axes.Select(axis => axes[axis.Name])],
            [.. _job.Sandwiches.Select(sandwich => new Sandwich(
                sandwich.Name, axes[sandwich.Axis], [.. sandwich.Layers.OfType<JobGear>().Select(gear => gears[gear.Name])]) { IsFixed = sandwich.IsFixed })],
            meshes,
            _job.Drive is { } drive ? Drive(drive) : null,
            [.. _job.Hands.Select(hand => new Hand(hand.Name, hand.Sandwich, hand.Turn) { Angle = hand.Angle })])
        {
            OtherDrives = [.. _job.OtherDrives.Select(Drive)],
            Setting = _job.Setting,
            MarksFacingTeeth = defaults.MarkFacing,
            Stack = StackBuilder.Of(_job, gears, axes),
        };
        return _job.Conditions is { } conditions
            ? mechanism with { Conditions = new ConditionsPlanner(_job, conditions, mechanism, FrameMaterial(conditions), _problems).Plan() }
            : mechanism;
    }

    private Material? FrameMaterial(JobConditions conditions) =>
        conditions.FrameMaterial is { } name ? Cached(_materials, name, conditions.Place, _profiles.Material) : null;

    private static Drive Drive(JobDrive drive) => new(drive.Sandwich, drive.Turn) { Sense = drive.Sense };

    private ImmutableDictionary<string, GearPlan> Plans(ImmutableDictionary<string, Axis> axes)
    {
        ImmutableDictionary<string, GearPlan>.Builder plans = ImmutableDictionary.CreateBuilder<string, GearPlan>();
        foreach (JobSandwich sandwich in _job.Sandwiches)
        {
            double? bottom = sandwich.MeasuredHeight ?? sandwich.Height;
            foreach (JobLayer layer in sandwich.Layers)
            {
                double drawn = layer switch
                {
                    JobGear gear => AddPlan(gear, sandwich, axes[sandwich.Axis], bottom, plans),
                    JobWasher washer => washer.Thickness,
                    _ => throw new InvalidOperationException("A layer is a gear or a washer."),
                };
                bottom += layer.Stack.MeasuredThickness ?? drawn;
            }
        }

        return plans.ToImmutable();
    }

    // Returns the gear's thickness, 0 where it is missing and a problem is noted.
    private double AddPlan(
        JobGear gear, JobSandwich sandwich, Axis axis, double? bottom, ImmutableDictionary<string, GearPlan>.Builder plans)
    {
        JobDefaults defaults = _job.Defaults;
        double? module = Need(gear.Module ?? defaults.Module, gear, "module");
        double? thickness = Need(gear.Thickness ?? defaults.Thickness, gear, "thickness");
        BasicRack? rack = Cached(
            _racks, gear.Rack ?? defaults.Rack ?? DefaultNames.Rack, gear.Rack is null ? defaults.Place : gear.Place, _profiles.Rack);
        string? materialName = gear.Material ?? defaults.Material;
        Material? material = materialName is null
            ? null
            : Cached(_materials, materialName, gear.Material is null ? defaults.Place : gear.Place, _profiles.Material);
        if (module is { } m && thickness is { } t && rack is not null)
        {
            plans[gear.Name] = new GearPlan(gear, defaults, sandwich.Name, axis, m, t, rack, material, bottom);
        }

        return thickness ?? 0;
    }

    // A refusal is told where the job gives what it is about.
    private MountedGear? Mount(GearPlan plan, double thinning)
    {
        JobBoreShape? shape = plan.CutoutsPlan.Shape;
        string key = plan.Job.RackBar is null ? "teeth" : "rack-length";
        Toothing? gear = Try(plan.Place, key, () => Toothing.Of(plan.Data(thinning)));
        Cutouts? cutouts = Try(shape?.Place ?? plan.Place, shape is null ? "bore" : "bore-shape", plan.CutoutsPlan.Cutouts);
        if (gear is null || cutouts is null || !HasWindows(plan, gear, cutouts))
        {
            return null;
        }

        MountedGear? mounted = Try(plan.Place, key, () => plan.Mount(gear, cutouts));
        return plan.Job.Measured is { } measured && mounted is not null
            ? Try(measured.Place, measured.Span is null ? "measured-tooth-thickness" : "measured-span", () => mounted with { Measured = MeasuredTeeth.Of(gear, measured) })
            : mounted;
    }

    private bool HasWindows(GearPlan plan, Toothing gear, Cutouts cutouts) =>
        plan.Job.Crossings is not { } crossings
        || gear is not ExternalGear round
        || Try(crossings.Place, "crossings", () => (object)cutouts.Crossings!.Windows(round.RootRadius)) is not null;

    private double? Need(double? value, JobGear gear, string key)
    {
        if (value is null)
        {
            _problems.Add(new Problem(
                gear.Place, $"sandwiches.layers.{key}", null, $"Gear {gear.Name} has no {key}, and [defaults] gives none",
                $"a length in mm, here or as {key} in [defaults]"));
        }

        return value;
    }

    private T? Cached<T>(Dictionary<string, T?> known, string name, Place place, Func<string, Place, Outcome<T>> find)
        where T : class
    {
        if (!known.TryGetValue(name, out T? value))
        {
            known[name] = value = Take(find(name, place));
        }

        return value;
    }

    private T? Take<T>(Outcome<T> outcome)
        where T : class
    {
        _problems.AddRange(outcome.Problems);
        return outcome.Value;
    }

    private T? Try<T>(Place place, string key, Func<T> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (GearGeometryException e)
        {
            _problems.Add(new Problem(place, key, null, e.Message.TrimEnd('.')));
            return null;
        }
    }
}
