using System.Collections.Immutable;
using Fractions;

namespace GearBlanks.Trains;

/// <summary>
/// Exact speeds of a train of any kind: each mesh says (w1 - wc) z1 + (w2 - wc) z2 = 0, c being the body against which both axes are at rest
/// (the relative motion of gears in train formula by R. Willis, Principles of Mechanism, 1841; from memory).
/// </summary>
internal sealed class Train
{
    /// <summary>The body that never turns.</summary>
    public const int Frame = -1;

    // Where more loops than this lock, nobody reads on: all meshes that are still held then are left out unnamed.
    private const int MostLoops = 25;

    private readonly SparseElimination _solved;
    private readonly List<int> _used;

    private Train(int bodies, ImmutableArray<TrainMesh> meshes, ImmutableArray<TrainDrive> drives)
    {
        var search = new LoopSearch(bodies, meshes);
        ImmutableArray<int> driven = [.. drives.Select(drive => drive.Body)];
        var locked = new List<LockedLoop>();
        _used = [.. Enumerable.Range(0, meshes.Length)];
        _solved = search.Solved(_used, driven);
        while (search.Still(_used, _solved).FirstOrDefault(-1) is >= 0 and var still)
        {
            ImmutableArray<int> loop = search.Cause(_used, _solved, still);
            locked.Add(new LockedLoop(meshes[loop[^1]], [.. loop.Select(index => meshes[index])]));
            int[] left = locked.Count < MostLoops ? [loop[^1]] : [.. search.Still(_used, _solved).Select(at => _used[at])];
            _used.RemoveAll(left.Contains);
            _solved = search.Solved(_used, driven);
        }

        Locked = [.. locked];
        Dictionary<int, Fraction> given = drives.ToDictionary(drive => drive.Body, drive => drive.Speed);
        ILookup<bool, TrainTie> ties = _solved.BetweenLast.ToLookup(
            pair => Value(pair.Left, given)!.Value.IsZero, pair => Tie(meshes, pair.Row, [.. driven.Where(pair.Left.Terms.ContainsKey)], pair.Left, given));
        Surplus = [.. _solved.Surplus.Select(row => Loop(meshes, row)), .. ties[true]];
        Contradicted = [.. ties[false]];
        Speeds = [.. Enumerable.Range(0, bodies).Select(body => drives.IsEmpty ? null : Value(_solved.Expression(body), given))];
        Reached = TrainReach.Of(bodies, meshes, driven);
    }

    /// <summary>Speed of each body against the frame, in turns per turn of the first drive, positive in its sense; null where the drives do not settle it.</summary>
    public ImmutableArray<Fraction?> Speeds { get; }

    /// <summary>Whether meshes connect each body to a drive.</summary>
    public ImmutableArray<bool> Reached { get; }

    /// <summary>Loops that cannot turn. The closing mesh of each is left out of the speeds.</summary>
    public ImmutableArray<LockedLoop> Locked { get; }

    /// <summary>Loops whose meshes agree, one mesh more than the speeds need, and drives that agree with the meshes between them.</summary>
    public ImmutableArray<TrainTie> Surplus { get; }

    /// <summary>Driven bodies that meshes tie to one another, or to the frame, at other speeds than they are given. The last drive of each is left out of the speeds.</summary>
    public ImmutableArray<TrainTie> Contradicted { get; }

    /// <summary>Solves a train with one drive that turns once, or with none.</summary>
    public static Train Solve(int bodies, ImmutableArray<TrainMesh> meshes, int? driven) =>
        new(bodies, meshes, driven is { } body ? [new TrainDrive(body, Fraction.One)] : []);

    /// <summary>
    /// Solves a train. Loops are looked for in every part of it, driven or not: what is locked cannot turn by hand either.
    /// </summary>
    /// <param name="bodies">How many bodies there are.</param>
    /// <param name="meshes">The meshes between them.</param>
    /// <param name="drives">The bodies whose speeds are given, each once.</param>
    public static Train Solve(int bodies, ImmutableArray<TrainMesh> meshes, ImmutableArray<TrainDrive> drives) => new(bodies, meshes, drives);

    /// <summary>The meshes through which a body turns, and what a slip in each does to it; of loops that agree, one way round.</summary>
    public ImmutableArray<TrainSlip> SlipsOf(int body)
    {
        var form = new SparseRow();
        form.Add(body, Fraction.One);
        return [.. _solved.Combination(form, holdsLast: true).Select(pair => new TrainSlip(_used[pair.Key], pair.Value))];
    }

    private TrainTie Loop(ImmutableArray<TrainMesh> meshes, int row)
    {
        SortedDictionary<int, Fraction> origin = _solved.Origin(row);
        return new TrainTie([.. origin.Keys.Select(at => meshes[_used[at]])], [], Fraction.Zero) { Weights = [.. origin.Values] };
    }

    private ImmutableArray<TrainMesh> Origin(ImmutableArray<TrainMesh> meshes, int row) => [.. _solved.Origin(row).Keys.Select(at => meshes[_used[at]])];

    private TrainTie Tie(ImmutableArray<TrainMesh> meshes, int row, ImmutableArray<int> driven, SparseRow left, Dictionary<int, Fraction> given) =>
        new(Origin(meshes, row), driven, given[driven[^1]] - (Value(left, given)!.Value / left[driven[^1]]));

    private static Fraction? Value(SparseRow row, Dictionary<int, Fraction> given) => row.Terms.Keys.All(given.ContainsKey)
        ? row.Terms.Aggregate(Fraction.Zero, (sum, term) => sum + (term.Value * given[term.Key]))
        : null;
}
