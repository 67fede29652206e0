using Fractions;
using GearBlanks.Trains;

namespace GearBlanks.Tests.Trains;

/// <summary>Speeds of trains worked out by hand: w1 z1 = -w2 z2 at each mesh.</summary>
public sealed class TrainTests
{
    private static readonly TrainMesh[] Triangle = [new("ab", 0, 1, 20, 20), new("bc", 1, 2, 20, 20), new("ca", 2, 0, 20, 20)];

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(null)]
    public void Three_wheels_in_a_ring_are_locked_whatever_is_driven(int? driven)
    {
        Train train = Train.Solve(4, [.. Triangle], driven);
        LockedLoop loop = Assert.Single(train.Locked);
        Assert.Equal(["ab", "bc", "ca"], loop.Loop.Select(mesh => mesh.Name).Order());
    }

    [Fact]
    public void Only_what_meshes_connect_to_the_drive_has_a_speed()
    {
        Train train = Train.Solve(4, [new("ab", 0, 1, 13, 87), new("cd", 2, 3, 20, 40)], 0);
        Assert.Equal([Fraction.One, new Fraction(-13, 87), null, null], train.Speeds);
        Assert.Empty(train.Locked);
        Assert.All(Train.Solve(4, [new("ab", 0, 1, 13, 87)], null).Speeds, speed => Assert.Null(speed));
    }
}
