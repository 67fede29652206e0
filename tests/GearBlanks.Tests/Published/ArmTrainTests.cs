using System.Collections.Immutable;
using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Published;

/// <summary>Trains with arms whose speeds are printed in textbooks, or follow from their formulas, as exact fractions.</summary>
public sealed class ArmTrainTests
{
    // S. Chand, R. S. Khurmi and J. K. Gupta, Theory of Machines, epicyclic gear trains, example with gears of 36 and 45 teeth on an arm at 150 r.p.m.;
    // from memory: the second gear makes 270 r.p.m. in the arm's sense where the first is fixed, and 510 where the first makes 300 against the arm.
    [Theory]
    [InlineData(0, 270)]
    [InlineData(-300, 510)]
    public void Two_gears_on_an_arm(int first, int second)
    {
        // Bodies: 0 arm, 1 first gear, 2 second gear.
        Train train = Train.Solve(3, [new("a", 1, 2, 36, 45) { Carrier = 0 }], [new(0, 150), new(1, first)]);
        Assert.Equal(new Fraction(second), train.Speeds[2]);
    }

    // The same place, reverted train: 75, 30 and 90 teeth, hence 45; the arm makes 100 r.p.m., the gear of 30 then 400 the other way; from memory.
    [Fact]
    public void Reverted_train()
    {
        // Bodies: 0 arm, 1 compound of 90 and 45, 2 gear of 30; the gear of 75 is held to the frame.
        Train train = Train.Solve(
            3, [new("be", Train.Frame, 1, 75, 45) { Carrier = 0 }, new("cd", 2, 1, 30, 90) { Carrier = 0 }], [new(0, -100)]);
        Assert.Equal(new Fraction(400), train.Speeds[2]);
    }

    // The same place: a fixed ring of 72 teeth, a gear of 32 in its middle, the arm at 18 r.p.m.; printed 58.5 and 46.8 r.p.m. the other way; from memory.
    [Fact]
    public void A_gear_between_a_fixed_ring_and_the_middle()
    {
        // Bodies: 0 arm, 1 carried gear of 20, 2 middle gear.
        Train train = Train.Solve(
            3, [new("ab", Train.Frame, 1, -72, 20) { Carrier = 0 }, new("bc", 1, 2, 20, 32) { Carrier = 0 }], [new(0, 18)]);
        Assert.Equal(new Fraction(117, 2), train.Speeds[2]);
        Assert.Equal(new Fraction(-234, 5), train.Speeds[1]);
    }

    // J. Ferguson's paradox, Select Mechanical Exercises, 1773; from memory: over a fixed wheel, through one idler on the arm, wheels of one tooth
    // fewer, as many and one tooth more turn forward, not at all, and backward. With 40 teeth: 1 - 40/39, 0, 1 - 40/41 of the arm's turn.
    [Fact]
    public void Three_wheels_beside_one_idler()
    {
        ImmutableArray<TrainMesh> meshes =
        [
            new("fixed", Train.Frame, 1, 40, 20) { Carrier = 0 },
            new("fewer", 1, 2, 20, 39) { Carrier = 0 }, new("as many", 1, 3, 20, 40) { Carrier = 0 }, new("more", 1, 4, 20, 41) { Carrier = 0 },
        ];
        Train train = Train.Solve(5, meshes, 0);
        Assert.Equal([new Fraction(-1, 39), Fraction.Zero, new Fraction(1, 41)], train.Speeds[2..]);
        Assert.Empty(train.Locked);
        Assert.Empty(train.Surplus);
    }

    // R. Willis, Principles of Mechanism, 1841, differential: with equal wheels the arm makes half the sum of the two; from memory.
    [Theory]
    [InlineData(1, 1, 1, 1)]
    [InlineData(1, -1, 0, 1)]
    [InlineData(3, 8, 11, 2)]
    public void An_arm_makes_the_mean_of_two_wheels(int first, int second, int over, int under)
    {
        // Two gears on the arm in mesh with one another, each with one of the wheels. Bodies: 0 arm, 1 and 2 wheels, 3 and 4 carried gears.
        Train train = Train.Solve(
            5,
            [new("one", 1, 3, 30, 20) { Carrier = 0 }, new("across", 3, 4, 20, 20) { Carrier = 0 }, new("other", 4, 2, 20, 30) { Carrier = 0 }],
            [new(1, first), new(2, second)]);
        Assert.Equal(new Fraction(over, under), train.Speeds[0]);
    }

    // Willis' formula (n - a) / (m - a) = e (from memory), the ring held: the arm makes zs / (zs + zr) of the middle wheel's turns.
    [Theory]
    [InlineData(24, 24, 1, 4)]
    [InlineData(13, 31, 13, 88)]
    public void A_held_ring_divides_by_one_and_its_ratio(int middle, int carried, int over, int under)
    {
        int ring = middle + (2 * carried);
        Train train = Train.Solve(
            3, [new("inner", 0, 1, middle, carried) { Carrier = 2 }, new("outer", 1, Train.Frame, carried, -ring) { Carrier = 2 }], 0);
        Assert.Equal(new Fraction(over, under), train.Speeds[2]);
        Assert.Equal(new Fraction(middle, middle + ring), train.Speeds[2]);
    }

    // Two such stages, the first arm turning the second middle wheel, multiply.
    [Fact]
    public void Two_stages_multiply()
    {
        ImmutableArray<TrainMesh> meshes =
        [
            new("a", 0, 1, 24, 24) { Carrier = 2 }, new("b", 1, Train.Frame, 24, -72) { Carrier = 2 },
            new("c", 2, 3, 18, 36) { Carrier = 4 }, new("d", 3, Train.Frame, 36, -90) { Carrier = 4 },
        ];
        Assert.Equal(new Fraction(1, 4) * new Fraction(18, 108), Train.Solve(5, meshes, 0).Speeds[4]);
    }

    // Motion work of a clock, 12 to 1: pinions of 12 and 10, wheels of 36 and 40; common practice, from memory.
    [Fact]
    public void Motion_work() => Assert.Equal(new Fraction(1, 12), Train.Solve(3, [new("minute", 0, 1, 12, 36), new("hour", 1, 2, 10, 40)], 0).Speeds[2]);

    // Going train of a seconds clock: centre wheel 64, third wheel 60, pinions of 8 give sixty turns an hour; common practice, from memory.
    [Fact]
    public void Going_train() => Assert.Equal(new Fraction(60), Train.Solve(3, [new("centre", 0, 1, 64, 8), new("third", 1, 2, 60, 8)], 0).Speeds[2]);
}
