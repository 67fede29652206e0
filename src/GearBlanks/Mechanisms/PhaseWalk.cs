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
                .Where(gap => Math.Abs(gap.Offset) > LeastOffset)])
        {
            Centred = [.. mechanism.Meshes.Where(_walked.Contains)],
        };
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
                if (_angles.TryAdd(next.Sandwich, AngleOfNext(standing, next, mesh)))
                {
                    _walked.Add(mesh);
                    _reachedBy[next.Sandwich] = mesh;
                    _rates[next.Sandwich] = _rates[name] * Math.Abs((double)MeshSide.SignedTeeth(standing) / MeshSide.SignedTeeth(next));
                    reached.Enqueue(next.Sandwich);
                }
            }
        }
    }

    // Seen from the two centres the pitch point runs opposite ways, so a tooth here and a gap there meet where both phases add up to a half.
    private double AngleOfNext(MountedGear standing, MountedGear next, Mesh mesh)
    {
        double phase = 0.5 - Phase(standing, mesh);
        MeshSide side = MeshSide.Of(next, mesh);
        return Math.IEEERemainder(side.PitchDirection - (2 * Math.PI * phase / side.Teeth) - side.ToothDirection, 2 * Math.PI);
    }

    private double Offset(Mesh mesh) => -Math.IEEERemainder(Phase(mesh.First, mesh) + Phase(mesh.Second, mesh) - 0.5, 1) * mesh.WorkingPitch;

    // A slip at one mesh shows at another as both speeds along the working circles are to each other.
    private double Play(Mesh closing)
    {
        HashSet<Mesh> loop = WayBack(closing.First.Sandwich);
        loop.SymmetricExceptWith(WayBack(closing.Second.Sandwich));
        return loop.Append(closing).Sum(mesh => Math.Max(0, mesh.Pair.CircumferentialBacklash) / 2 * Speed(closing) / Speed(mesh));
    }

    // Along the working circles, but for a factor that all meshes share.
    private double Speed(Mesh mesh) => mesh.WorkingPitch * Math.Abs(MeshSide.SignedTeeth(mesh.First)) * _rates[mesh.First.Sandwich];

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

    // How far the pitch point lies beyond the middle of a tooth, in pitches: 0 on the tooth, a half in the gap.
    private double Phase(MountedGear gear, Mesh mesh)
    {
        MeshSide side = MeshSide.Of(gear, mesh);
        double teeth = (side.PitchDirection - _angles[gear.Sandwich] - side.ToothDirection) * side.Teeth / (2 * Math.PI);
        return teeth - Math.Floor(teeth);
    }
}
