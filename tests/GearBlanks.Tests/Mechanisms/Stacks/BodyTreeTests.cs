using System.Collections.Immutable;
using GearBlanks.Mechanisms.Stacks;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>The index finds every pair that a comparison of all with all finds, and no other.</summary>
public sealed class BodyTreeTests
{
    [Theory]
    [InlineData(0, 100, 10)]
    [InlineData(1, 100, 10)]
    [InlineData(2, 100, 10)]
    [InlineData(300, 60, 20)]
    [InlineData(700, 400, 2)]
    [InlineData(700, 0, 300)]
    public void Finds_what_all_pairs_give(int count, double wide, double high)
    {
        var random = new Random(count + 7);
        ImmutableArray<Body> bodies = [.. Enumerable.Range(0, count).Select(i => Random(i, random, wide, high))];
        const double aside = 0.4;
        const double above = 0.2;
        var dense =
            from i in Enumerable.Range(0, count)
            from j in Enumerable.Range(i + 1, count - i - 1)
            where Near(bodies[i], bodies[j], aside, above)
            select (i, j);
        Assert.Equal(dense, new BodyTree(bodies, aside, above).Pairs());
    }

    internal static Body Random(int i, Random random, double wide, double high)
    {
        double bottom = random.NextDouble() * high;
        var middle = new Point(random.NextDouble() * wide, random.NextDouble() * wide);
        double tolerance = random.NextDouble() * 0.05;
        return new Body(
            $"b{i}", BodyKind.Gear, $"s{i}", null, PlanShape.Ring(middle, 0, 1 + (random.NextDouble() * 6)),
            new Heights(bottom, bottom + 1 + random.NextDouble(), tolerance, tolerance));
    }

    private static bool Near(Body one, Body other, double aside, double above) =>
        Meet(one.Shape.Left, one.Shape.Right, other.Shape.Left, other.Shape.Right, aside)
        && Meet(one.Shape.Front, one.Shape.Back, other.Shape.Front, other.Shape.Back, aside)
        && Meet(one.Heights.Least, one.Heights.Greatest, other.Heights.Least, other.Heights.Greatest, above);

    private static bool Meet(double from, double to, double otherFrom, double otherTo, double gap) => Math.Max(from, otherFrom) - Math.Min(to, otherTo) <= gap;
}
