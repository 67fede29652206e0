using System.Collections.Immutable;

namespace GearBlanks.Mechanisms;

/// <summary>One walk over the meshes of a mechanism, nearest to the drive first.</summary>
internal sealed class PhaseWalk(Mechanism mechanism)
{
    // Far above the rounding of a hundred meshes in a row, far below anything that can be seen.
    private const double LeastOffset = 1e-6;

    private readonly Dictionary<string, double> _angles = [];
    private readonly Dictionary<string, double> _rates = [];
    private readonly Dictionary<string, Mesh> _reachedBy = [];
    private readonly HashSet<Mesh> _walked = new(ReferenceEqualityComparer.Instance);

    public MeshedPhases Walk()
    {
        foreach (string start in mechanism.Sandwiches.Select(sandwich => sandwich.Name).OrderBy(name => name != mechanism.Drive?.Sandwich))
        {
            WalkFrom(start);
        }

        return new MeshedPhases(
            _angles.ToImmutableDictionary(),
            [.. mechanism.Meshes
                .Where(mesh => !_walked.Contains(mesh))
                .Select(mesh => new PhaseGap(mesh, Offset(mesh), Play(mesh)))
                .Where(gap => Math.Abs(gap.Offset) > LeastOffset)]);
    }

    private void WalkFrom(string start)
    {
        if (!_angles.TryAdd(start, 0))
        {
            return;
        }

        _rates[start] = 1;
        var reached = new Queue<string>([start]);
        while (reached.TryDequeue(out string? name))
        {
            foreach (Mesh mesh in mechanism.Meshes.Where(mesh => mesh.First.Sandwich == name || mesh.Second.Sandwich == name))
            {
                (MountedGear standing, MountedGear next) = mesh.First.Sandwich == name ? (mesh.First, mesh.Second) : (mesh.Second, mesh.First);
                if (_angles.TryAdd(next.Sandwich, AngleOfNext(standing, next)))
                {
                    _walked.Add(mesh);
                    _reachedBy[next.Sandwich] = mesh;
                    _rates[next.Sandwich] = _rates[name] * standing.Blank.Gear.Teeth / next.Blank.Gear.Teeth;
                    reached.Enqueue(next.Sandwich);
                }
            }
        }
    }

    // Seen from the two centres the pitch point runs opposite ways, so a tooth here and a gap there meet where both phases add up to a half.
    private double AngleOfNext(MountedGear standing, MountedGear next)
    {
        double phase = 0.5 - Phase(standing, Direction(standing, next));
        double angle = Direction(next, standing) - (2 * Math.PI * phase / next.Blank.Gear.Teeth) - next.Turned;
        return Math.IEEERemainder(angle, 2 * Math.PI);
    }

    private double Offset(Mesh mesh)
    {
        double sum = Phase(mesh.First, Direction(mesh.First, mesh.Second)) + Phase(mesh.Second, Direction(mesh.Second, mesh.First));
        double pitch = 2 * Math.PI * mesh.Pair.FirstWorkingRadius / mesh.First.Blank.Gear.Teeth;
        return -Math.IEEERemainder(sum - 0.5, 1) * pitch;
    }

    // A slip at one mesh shows at another as both speeds along the working circles are to each other.
    private double Play(Mesh closing)
    {
        HashSet<Mesh> loop = WayBack(closing.First.Sandwich);
        loop.SymmetricExceptWith(WayBack(closing.Second.Sandwich));
        return loop.Append(closing).Sum(mesh => Math.Max(0, mesh.Pair.CircumferentialBacklash) / 2 * Speed(closing) / Speed(mesh));
    }

    private double Speed(Mesh mesh) => mesh.Pair.FirstWorkingRadius * _rates[mesh.First.Sandwich];

    private HashSet<Mesh> WayBack(string sandwich)
    {
        var way = new HashSet<Mesh>(ReferenceEqualityComparer.Instance);
        while (_reachedBy.TryGetValue(sandwich, out Mesh? mesh))
        {
            way.Add(mesh);
            sandwich = mesh.First.Sandwich == sandwich ? mesh.Second.Sandwich : mesh.First.Sandwich;
        }

        return way;
    }

    // How far a direction lies beyond the middle of a tooth, in pitches: 0 on the tooth, a half in the gap.
    private double Phase(MountedGear gear, double direction)
    {
        double teeth = (direction - _angles[gear.Sandwich] - gear.Turned) * gear.Blank.Gear.Teeth / (2 * Math.PI);
        return teeth - Math.Floor(teeth);
    }

    private static double Direction(MountedGear from, MountedGear to) => (to.Axis.Position - from.Axis.Position).Angle;
}
