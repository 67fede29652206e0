using System.Collections.Immutable;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Trains;

/// <summary>What is loose, locked, contradicting or more than needed in trains with arms.</summary>
public sealed class ArmLoopTests
{
    // Bodies: 0 middle wheel, 1 arm, 2 ring, 3 and 4 carried gears.
    private static readonly ImmutableArray<TrainMesh> Stage =
    [
        new("in one", 0, 3, 20, 20) { Carrier = 1 }, new("out one", 3, 2, 20, -60) { Carrier = 1 },
        new("in two", 0, 4, 20, 20) { Carrier = 1 }, new("out two", 4, 2, 20, -60) { Carrier = 1 },
    ];

    [Fact]
    public void A_second_carried_gear_is_one_mesh_more_than_needed()
    {
        Train train = Train.Solve(5, Stage, [new(0, 1), new(2, 0)]);
        TrainTie tie = Assert.Single(train.Surplus);
        Assert.Equal(Stage, tie.Loop);
        Assert.Empty(tie.Driven);
        Assert.Empty(train.Locked);
        Assert.Empty(train.Contradicted);
        Assert.Equal(new Fraction(1, 4), train.Speeds[1]);
    }

    [Fact]
    public void A_second_carried_gear_of_another_pitch_locks_the_stage()
    {
        Train train = Train.Solve(5, Stage.SetItem(3, Stage[3] with { FirstTeeth = 19 }), [new(0, 1), new(2, 0)]);
        LockedLoop loop = Assert.Single(train.Locked);
        Assert.Equal("out two", loop.Mesh.Name);
        Assert.Equal(4, loop.Loop.Length);
    }

    [Fact]
    public void Three_gears_in_mesh_on_an_arm_lock_though_the_arm_turns()
    {
        ImmutableArray<TrainMesh> ring = [new("a", 1, 2, 20, 21) { Carrier = 0 }, new("b", 2, 3, 21, 22) { Carrier = 0 }, new("c", 3, 1, 22, 20) { Carrier = 0 }];
        LockedLoop loop = Assert.Single(Train.Solve(4, ring, 0).Locked);
        Assert.Equal(["a", "b", "c"], loop.Loop.Select(mesh => mesh.Name));
    }

    [Fact]
    public void A_stage_with_one_drive_leaves_two_bodies_unsettled()
    {
        Train train = Train.Solve(5, Stage, 0);
        Assert.Equal([Fraction.One, null, null, null, null], train.Speeds);
        Assert.All(train.Reached, Assert.True);
    }

    [Fact]
    public void Drives_that_meshes_tie_must_agree()
    {
        ImmutableArray<TrainMesh> chain = [new("a", 0, 1, 20, 30), new("b", 1, 2, 30, 40), new("tail", 2, 3, 40, 10)];
        Assert.Empty(Train.Solve(4, chain, [new(0, 1), new(2, new Fraction(1, 2))]).Contradicted);
        Train train = Train.Solve(4, chain, [new(0, 1), new(2, new Fraction(1, 3))]);
        TrainTie tie = Assert.Single(train.Contradicted);
        Assert.Equal(["a", "b"], tie.Loop.Select(mesh => mesh.Name));
        Assert.Equal([0, 2], tie.Driven);
        Assert.Equal(new Fraction(1, 2), tie.Fitting);
        Assert.Equal(new Fraction(-2, 3), train.Speeds[1]);
        Assert.Empty(train.Locked);
    }

    [Fact]
    public void A_drive_that_meshes_hold_still_is_told()
    {
        // As many teeth on either side of an idler on the arm, over a wheel that is held: this wheel cannot be driven, though all turns with the arm.
        Train train = Train.Solve(
            3, [new("held", Train.Frame, 1, 40, 20) { Carrier = 0 }, new("driven", 1, 2, 20, 40) { Carrier = 0 }], 2);
        TrainTie tie = Assert.Single(train.Contradicted);
        Assert.Equal(["held", "driven"], tie.Loop.Select(mesh => mesh.Name));
        Assert.Equal([2], tie.Driven);
        Assert.True(tie.Fitting.IsZero);
        Assert.Empty(train.Locked);
    }

    [Fact]
    public void A_held_wheel_locks_the_mesh_and_not_what_leads_to_it()
    {
        Train train = Train.Solve(3, [new("lead", 0, 1, 10, 20), new("held", 1, Train.Frame, 20, 30), new("tail", 1, 2, 20, 11)], 0);
        Assert.Equal("held", Assert.Single(Assert.Single(train.Locked).Loop).Name);
        Assert.Equal(new Fraction(-1, 2), train.Speeds[1]);
    }

    [Fact]
    public void A_gear_of_the_arm_itself_locks_what_it_meshes_with()
    {
        LockedLoop loop = Assert.Single(Train.Solve(3, [new("own", 0, 1, 30, 20) { Carrier = 0 }, new("tail", 1, 2, 20, 30) { Carrier = 0 }], 0).Locked);
        Assert.Equal("own", Assert.Single(loop.Loop).Name);
    }

    [Fact]
    public void A_differential_closed_by_its_own_train_turns()
    {
        // Bodies: 0 drive, 1 wheel, 2 other wheel, 3 arm, 4 and 5 carried gears. w3 is the mean of -1/2 and 1.
        ImmutableArray<TrainMesh> meshes =
        [
            new("to one", 0, 1, 20, 40), new("one", 1, 4, 30, 20) { Carrier = 3 }, new("across", 4, 5, 20, 20) { Carrier = 3 },
            new("other", 5, 2, 20, 30) { Carrier = 3 }, new("direct", 0, 6, 20, 20), new("on", 6, 2, 20, 20),
        ];
        Train train = Train.Solve(7, meshes, 0);
        Assert.Equal(new Fraction(1, 4), train.Speeds[3]);
        Assert.Empty(train.Locked);
        Assert.Empty(train.Surplus);
    }

    [Fact]
    public void Slips_in_a_plain_train_are_divided_by_the_ratio_from_there_on()
    {
        // One tooth of slip turns the driven gear of its own mesh by 1/z.
        Train train = Train.Solve(4, [new("a", 0, 1, 12, 48), new("b", 1, 2, 15, 45), new("tail", 2, 3, 45, 7)], 0);
        Assert.Equal([(0, new Fraction(1, 48) * new Fraction(15, 45)), (1, new Fraction(1, 45))], train.SlipsOf(2).Select(slip => (slip.Index, slip.TurnsPerTooth.Abs())));
    }

    // Rows and columns of equal gears, each in mesh with its neighbours: every square is a loop that agrees.
    [Fact]
    public void A_field_of_gears_turns_to_and_fro()
    {
        const int Side = 20;
        Train train = Train.Solve(Side * Side, Field(Side, _ => 20), 0);
        Assert.Equal((Side - 1) * (Side - 1), train.Surplus.Length);
        Assert.All(Enumerable.Range(0, Side * Side), body => Assert.Equal(((body / Side) + (body % Side)) % 2 == 0 ? 1 : -1, train.Speeds[body]!.Value.ToInt32()));
    }

    [Fact]
    public void A_field_in_which_everything_locks_is_told_as_far_as_anybody_reads()
    {
        Train train = Train.Solve(400, Field(20, mesh => 20 + (mesh % 11)), 0);
        Assert.Equal(25, train.Locked.Length);
        Assert.Empty(train.Contradicted);
    }

    [Fact]
    public void A_thousand_bodies_in_stages_with_arms()
    {
        // 333 stages of a held ring, each a quarter.
        var meshes = new List<TrainMesh>();
        for (int stage = 0; stage < 333; stage++)
        {
            (int middle, int carried, int arm) = (3 * stage, (3 * stage) + 1, (3 * stage) + 3);
            meshes.Add(new TrainMesh($"in {stage}", middle, carried, 20, 20) { Carrier = arm });
            meshes.Add(new TrainMesh($"out {stage}", carried, Train.Frame, 20, -60) { Carrier = arm });
        }

        Train train = Train.Solve(1000, [.. meshes], 0);
        Assert.Equal(Fraction.Pow(new Fraction(1, 4), 333), train.Speeds[999]);
        Assert.Empty(train.Surplus);
    }

    private static ImmutableArray<TrainMesh> Field(int side, Func<int, int> teeth) =>
    [
        .. Enumerable.Range(0, side * side).SelectMany(body => (int[])[.. body % side < side - 1 ? (int[])[body + 1] : [], .. body < side * (side - 1) ? (int[])[body + side] : []],
            (body, next) => (body, next)).Select((pair, i) => new TrainMesh($"{pair.body} {pair.next}", pair.body, pair.next, 20, teeth(i))),
    ];
}
