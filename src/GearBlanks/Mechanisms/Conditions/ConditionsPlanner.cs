using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Meshing.Accuracy;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>Makes of a job's conditions what is drawn for each build, and what of it each mesh feels.</summary>
internal sealed class ConditionsPlanner
{
    private readonly Mechanism _mechanism;
    private readonly JobConditions _conditions;
    private readonly ClimatePlan _climate;
    private readonly GearPlacing _placing;
    private readonly List<MeshedGear> _gears = [];
    private readonly Dictionary<string, int> _spans = [];
    private readonly List<double> _spanTolerances = [];
    private readonly List<(string, GradeMiss)> _misses = [];
    private readonly Dictionary<string, JobMesh> _jobMeshes;
    private readonly Dictionary<string, (JobGear Gear, JobSandwich Sandwich, int Layers)> _jobGears = [];
    private bool _hasGrade;

    public ConditionsPlanner(Job job, JobConditions conditions, Mechanism mechanism, Material? frame, List<Problem> problems)
    {
        (_conditions, _mechanism) = (conditions, mechanism);
        _jobMeshes = job.Meshes.ToDictionary(mesh => mesh.Name);
        foreach (JobSandwich sandwich in job.Sandwiches)
        {
            foreach ((int index, JobLayer layer) in sandwich.Layers.Index())
            {
                if (layer is JobGear gear)
                {
                    _jobGears[gear.Name] = (gear, sandwich, index + 1);
                }
            }
        }

        _climate = new ClimatePlan(conditions, frame, problems);
        _placing = new GearPlacing(conditions, problems);
    }

    public ConditionsPlan Plan()
    {
        // Meshes on the same two axes share one distance, so all of them must be known before any is planned.
        foreach (Mesh mesh in _mechanism.Meshes)
        {
            AddSpan(mesh);
        }

        ImmutableArray<MeshDraw> meshes = [.. _mechanism.Meshes.Select(Draw)];
        string? standard = !_hasGrade ? null : _misses.Count == 0 ? "ISO 1328-1:2013" : GradeRange.Outside;
        return new ConditionsPlan(
            new TrainBuild(_placing.Places, [.. _gears.Select(gear => gear.Draw)], [.. _spanTolerances], _climate.Frame, _climate.Temperature, _climate.Humidity, meshes),
            _conditions.Builds, [.. _mechanism.Meshes.Select(LeastOverlap)], [.. _misses], standard, _conditions.IsOutsideStandard);
    }

    private void AddSpan(Mesh mesh)
    {
        // What was measured has no tolerance left, unless the mesh has one of its own.
        double tolerance = _jobMeshes[mesh.Name].CentreDistanceTolerance ?? (mesh.MeasuredDistance is null ? _conditions.CentreDistanceTolerance : 0);
        if (_spans.TryAdd(Places.Axes(mesh), _spanTolerances.Count))
        {
            _spanTolerances.Add(tolerance);
            return;
        }

        int known = _spans[Places.Axes(mesh)];
        _spanTolerances[known] = Math.Max(_spanTolerances[known], tolerance);
    }

    private MeshDraw Draw(Mesh mesh)
    {
        int first = IndexOf(mesh.First, mesh.Second);
        int second = IndexOf(mesh.Second, mesh.First);
        int span = _spans[Places.Axes(mesh)];
        (MeshedGear one, MeshedGear two) = (_gears[first], _gears[second]);
        double height = Math.Max(one.Height, two.Height);
        double face = CrossedFace(mesh);
        IEnumerable<Quantity> own =
        [
            new Quantity("centre distance", "", Influence.Distance, -_spanTolerances[span], _spanTolerances[span]),
            new Quantity("post parallelism", "", Influence.Place, 0, _conditions.PostParallelism * height),
            new Quantity("crossing by post parallelism", "", Influence.Crossing, 0, _conditions.PostParallelism * face),
            new Quantity("crossing by post tilt", mesh.First.Axis.Name, Influence.Crossing, 0, _conditions.PostTilt * face),
            new Quantity("crossing by post tilt", mesh.Second.Axis.Name, Influence.Crossing, 0, _conditions.PostTilt * face),
            new Quantity("temperature", "", Influence.Temperature, _climate.Temperature.Least, _climate.Temperature.Most),
            new Quantity("humidity", "", Influence.Humidity, _climate.Humidity.Least, _climate.Humidity.Most),
        ];
        var build = new MeshBuild(
            new BacklashEquation(mesh.Pair), mesh.Pair.CentreDistance, _climate.Frame, one.Growth, two.Growth,
            [.. own.Concat(one.On(Influence.FirstThickness)).Concat(two.On(Influence.SecondThickness)).Where(quantity => quantity.Most != 0 || quantity.Least != 0)]);
        return new MeshDraw(
            build, first, second, span, Towards(mesh), _placing.Parallelism(Places.Axes(mesh), height),
            [
                .. _placing.Parallelism(Places.Axes(mesh), face),
                .. _placing.Tilt(mesh.First.Axis, -face),
                .. _placing.Tilt(mesh.Second.Axis, face),
            ],
            mesh.Pair is not Meshing.RackPair,
            (_mechanism.Limits.Conditions.BacklashGreatest.FailsAbove ?? double.PositiveInfinity) * mesh.Pair.First.Module);
    }

    // Teeth that cross lose backlash on the working circle over the whole face, as far as the thinner gear can reach; in mm of thickness on the reference circle.
    private double CrossedFace(Mesh mesh) => (Math.Min(mesh.First.Blank.Thickness, mesh.Second.Blank.Thickness) + _conditions.SheetTolerance)
        * Math.Cos(mesh.Pair.WorkingPressureAngle) / Math.Cos(mesh.Pair.First.PressureAngle);

    private int IndexOf(MountedGear gear, MountedGear mate)
    {
        int known = _gears.FindIndex(other => other.Name == gear.Name);
        if (known >= 0)
        {
            return known;
        }

        (JobGear job, JobSandwich sandwich, _) = _jobGears[gear.Name];
        _gears.Add(MeshedGear.Of(gear, job, sandwich, _conditions, _placing, _climate.Of(gear, job.Place), Flanks(gear, job, mate)));
        return _gears.Count - 1;
    }

    // A rack has no reference circle: it takes the tolerances of the gear over it (common practice, no source).
    private FlankTolerances? Flanks(MountedGear gear, JobGear job, MountedGear mate)
    {
        if ((job.Conditions?.Grade ?? _conditions.Gears.Grade) is not { } grade)
        {
            return null;
        }

        _hasGrade = true;
        var round = (Gear)(gear.Toothing is RackBar ? mate.Toothing : gear.Toothing);
        GradeMiss? miss = GradeRange.Of(round, gear.Blank.Thickness);
        if (miss is not null)
        {
            _misses.Add((gear.Name, miss));
        }

        return miss is null || _conditions.IsOutsideStandard ? FlankTolerances.Of(grade, 2 * round.ReferenceRadius, gear.Toothing.Module) : null;
    }

    private static Vector Towards(Mesh mesh)
    {
        if (mesh.Second.RackPlace is { } under)
        {
            return -Vector.AtAngle(under.Direction).TurnedLeft;
        }

        if (mesh.First.RackPlace is { } place)
        {
            return Vector.AtAngle(place.Direction).TurnedLeft;
        }

        Vector between = mesh.Second.Axis.Position - mesh.First.Axis.Position;
        return between.Length > 0 ? between.Unit : new Vector(1, 0);
    }

    // Each layer below can be thinner or thicker, and each sandwich can move along its axis.
    private double? LeastOverlap(Mesh mesh)
    {
        if (mesh.First.Bottom is not { } first || mesh.Second.Bottom is not { } second)
        {
            return null;
        }

        double overlap = Math.Min(first + mesh.First.Blank.Thickness, second + mesh.Second.Blank.Thickness) - Math.Max(first, second);
        return overlap - Loss(mesh.First) - Loss(mesh.Second);

        double Loss(MountedGear gear)
        {
            (_, JobSandwich sandwich, int layers) = _jobGears[gear.Name];
            return (sandwich.Conditions?.EndPlay ?? _conditions.Sandwiches.EndPlay ?? 0) + (layers * _conditions.SheetTolerance);
        }
    }
}
