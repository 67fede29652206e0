using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Trains;

/// <summary>Exact speeds of trains on fixed axes.</summary>
public sealed class SolvedTrainTests
{
    // Bodies 0 to n, each meshing with the one before it.
    private static readonly Gen<Tree> Trees =
        from size in Gen.Int[1, 40]
        from picks in Gen.Int[0, 1000].Array[size]
        from teeth in Gen.Select(Gen.Int[4, 300], Gen.Int[4, 300], Gen.Bool).Array[size]
        from driven in Gen.Int[0, size]
        select new Tree(driven, [.. picks.Select((pick, i) => pick % (i + 1))], [.. Enumerable.Range(0, size).Select(i => Branch(i, picks[i], teeth[i]))]);

    [Fact]
    public void A_compound_train_worked_by_hand()
    {
        // 12 drives 48; on its spindle 15 drives 45: once in 4 times 3 turns, in the drive's sense.
        Train train = Train.Solve(3, [new("a", 0, 1, 12, 48), new("b", 2, 1, 45, 15)], 0);
        Assert.Equal([Fraction.One, new Fraction(-1, 4), new Fraction(1, 12)], train.Speeds);
        Assert.Empty(train.Locked);
    }

    [Fact]
    public void The_same_train_driven_from_its_slow_end()
    {
        Train train = Train.Solve(3, [new("a", 0, 1, 12, 48), new("b", 2, 1, 45, 15)], 2);
        Assert.Equal([new Fraction(12), new Fraction(-3), Fraction.One], train.Speeds);
    }

    [Theory]
    [InlineData(0, -1)]
    [InlineData(1, 1)]
    [InlineData(2, -1)]
    [InlineData(5, 1)]
    public void Idlers_change_the_sense_and_not_the_ratio(int idlers, int sense)
    {
        int[] teeth = [20, .. Enumerable.Range(31, idlers), 30];
        Train train = Train.Solve(teeth.Length, Chain(teeth), 0);
        Assert.Equal(new Fraction(sense * 2, 3), train.Speeds[^1]);
    }

    [Fact]
    public void Bodies_that_nothing_turns_have_no_speed()
    {
        Train train = Train.Solve(5, [new("a", 0, 1, 10, 20), new("b", 3, 4, 10, 20)], 0);
        Assert.Equal([Fraction.One, new Fraction(-1, 2), null, null, null], train.Speeds);
        Assert.Empty(train.Locked);
    }

    [Fact]
    public void Three_gears_in_a_ring_lock()
    {
        ImmutableArray<TrainMesh> meshes = [new("lead", 3, 0, 10, 20), new("a", 0, 1, 20, 30), new("b", 1, 2, 30, 40), new("c", 2, 0, 40, 20), new("tail", 2, 4, 40, 9)];
        LockedLoop loop = Assert.Single(Train.Solve(5, meshes, 3).Locked);
        Assert.Equal(["a", "b", "c"], loop.Loop.Select(mesh => mesh.Name).Order());
        Assert.Equal(loop.Mesh, loop.Loop[^1]);
    }

    [Fact]
    public void A_loop_that_nothing_drives_locks_as_well()
    {
        Train train = Train.Solve(5, [new("a", 0, 1, 20, 30), new("low", 2, 3, 20, 30), new("high", 3, 2, 20, 30), new("tail", 3, 4, 9, 9)], 0);
        Assert.Equal(["high", "low"], Assert.Single(train.Locked).Loop.Select(mesh => mesh.Name).Order());
        Assert.Equal([null, null, null], train.Speeds[2..]);
    }

    [Fact]
    public void Two_meshes_between_two_bodies_turn_only_at_one_ratio()
    {
        Assert.Empty(Train.Solve(2, [new("low", 0, 1, 20, 30), new("high", 0, 1, 24, 36)], 0).Locked);
        LockedLoop loop = Assert.Single(Train.Solve(2, [new("low", 0, 1, 20, 30), new("high", 0, 1, 24, 35)], 0).Locked);
        Assert.Equal(["low", "high"], loop.Loop.Select(mesh => mesh.Name));
    }

    [Fact]
    public void A_gear_that_meshes_with_its_own_body_locks()
    {
        LockedLoop loop = Assert.Single(Train.Solve(2, [new("a", 0, 1, 20, 30), new("self", 1, 1, 20, 20)], 0).Locked);
        Assert.Equal("self", Assert.Single(loop.Loop).Name);
    }

    [Fact]
    public void A_thousand_bodies_in_a_chain()
    {
        Train train = Train.Solve(1000, Chain([.. Enumerable.Range(0, 1000).Select(i => 1000 - i)]), 0);
        Assert.Equal(new Fraction(-1000), train.Speeds[^1]);
    }

    [Fact]
    public void A_ring_of_a_thousand_bodies_names_them_all()
    {
        ImmutableArray<TrainMesh> chain = Chain([.. Enumerable.Repeat(17, 999), 18]);
        Train train = Train.Solve(1000, [.. chain, new("close", 0, 999, 17, 17)], 500);
        Assert.Equal(1000, Assert.Single(train.Locked).Loop.Distinct().Count());
    }

    [Fact]
    public void Random_trees_agree_with_floating_point() =>
        Trees.Sample(
            tree =>
            {
                Train train = Train.Solve(tree.Parents.Length + 1, tree.Meshes, tree.Driven);
                Assert.Empty(train.Locked);
                for (int body = 0; body < train.Speeds.Length; body++)
                {
                    Assert.Equal(1, train.Speeds[body]!.Value.ToDouble() / (tree.FromRoot(body) / tree.FromRoot(tree.Driven)), 1e-12);
                }
            },
            iter: 200, threads: 1);

    [Fact]
    public void One_more_mesh_in_a_random_tree_locks_exactly_the_way_between_its_bodies() =>
        Gen.Select(Trees.Where(tree => tree.Parents.Length > 1), Gen.Int[0, 1000], Gen.Int[0, 1000]).Sample(
            (tree, a, b) =>
            {
                int bodies = tree.Parents.Length + 1;
                (int first, int second) = (a % bodies, b % bodies);
                var added = new TrainMesh("added", first, second, 301, 307);
                LockedLoop loop = Assert.Single(Train.Solve(bodies, tree.Meshes.Add(added), tree.Driven).Locked);
                IEnumerable<int> way = tree.ToRoot(first).Except(tree.ToRoot(second)).Concat(tree.ToRoot(second).Except(tree.ToRoot(first)));
                Assert.Equal(way.Select(i => tree.Meshes[i]).Append(added).OrderBy(mesh => mesh.Name), loop.Loop.OrderBy(mesh => mesh.Name));
            },
            iter: 200, threads: 1);

    [Fact]
    public void A_mesh_that_fits_the_others_locks_nothing()
    {
        // A square of four bodies: 20 : 30 twice one way round, 40 : 90 by two idlers' worth the other way.
        ImmutableArray<TrainMesh> meshes = [new("a", 0, 1, 20, 30), new("b", 1, 2, 20, 30), new("c", 2, 3, 90, 17), new("d", 3, 0, 17, 40)];
        Train train = Train.Solve(4, meshes, 0);
        Assert.Empty(train.Locked);
        Assert.Equal(new Fraction(4, 9), train.Speeds[2]);
    }

    private static ImmutableArray<TrainMesh> Chain(int[] teeth) =>
        [.. Enumerable.Range(0, teeth.Length - 1).Select(i => new TrainMesh(Name(i), i, i + 1, teeth[i], teeth[i + 1]))];

    private static TrainMesh Branch(int index, int pick, (int Parent, int Child, bool Reversed) teeth)
    {
        (int parent, int child) = (pick % (index + 1), index + 1);
        return teeth.Reversed
            ? new TrainMesh(Name(index), child, parent, teeth.Child, teeth.Parent)
            : new TrainMesh(Name(index), parent, child, teeth.Parent, teeth.Child);
    }

    private static string Name(int index) => index.ToString("D4", CultureInfo.InvariantCulture);

    // Body i + 1 hangs on Parents[i] by Meshes[i].
    private sealed record Tree(int Driven, ImmutableArray<int> Parents, ImmutableArray<TrainMesh> Meshes)
    {
        public IEnumerable<int> ToRoot(int body)
        {
            for (; body > 0; body = Parents[body - 1])
            {
                yield return body - 1;
            }
        }

        public double FromRoot(int body) => ToRoot(body).Aggregate(1.0, (speed, i) => Meshes[i].First == i + 1
            ? -speed * Meshes[i].SecondTeeth / Meshes[i].FirstTeeth
            : -speed * Meshes[i].FirstTeeth / Meshes[i].SecondTeeth);
    }
}
