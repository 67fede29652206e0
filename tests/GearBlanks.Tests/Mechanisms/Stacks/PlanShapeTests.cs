using GearBlanks.Curves;
using GearBlanks.Mechanisms.Stacks;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Overlaps and gaps in plan, against polygons of an independent library.</summary>
public sealed class PlanShapeTests
{
    // Twice what chords stray from circles of up to 13 mm.
    private const double Near = 0.002;

    [Fact]
    public void Random_shapes_overlap_as_their_polygons_do()
    {
        var random = new Random(1729);
        int overlapping = 0;
        for (int i = 0; i < 2000; i++)
        {
            (PlanShape one, PlanShape other) = (RandomShape(random), RandomShape(random));
            double depth = one.DepthIn(other);
            Assert.Equal(depth, other.DepthIn(one), 1e-9);
            (Geometry first, Geometry second) = (PlanPolygons.Of(one), PlanPolygons.Of(other));
            if (depth > Near)
            {
                overlapping++;
                Assert.True(first.Intersection(second).Area > 0, $"{one} and {other} should overlap by {depth}");
            }
            else if (depth < -Near)
            {
                Assert.Equal(-depth, first.Distance(second), Near);
            }
        }

        // Enough of either kind.
        Assert.InRange(overlapping, 500, 1500);
    }

    [Fact]
    public void Moving_by_the_depth_parts_shapes_without_holes()
    {
        var random = new Random(4104);
        for (int i = 0; i < 300; i++)
        {
            (PlanShape one, PlanShape other) = (RandomShape(random) with { Holes = [] }, RandomShape(random) with { Holes = [] });
            double depth = one.DepthIn(other);
            double[] after = [.. Enumerable.Range(0, 720).Select(k => Moved(one, Vector.AtAngle(k * Math.PI / 360) * depth).DepthIn(other))];
            if (depth > Near)
            {
                // In the best direction it is just enough, in none more than enough.
                Assert.InRange(after.Min(), -1e-9, depth * 0.002);
            }
        }
    }

    [Theory]
    [InlineData(2, 2.5, 0.5)]
    [InlineData(2.5, 2.5, 0)]
    [InlineData(3, 2.5, -0.5)]
    public void A_tube_within_a_bore(double bore, double outer, double depth)
    {
        var centre = new Point(3, 4);
        Assert.Equal(depth, PlanShape.Ring(centre, bore, 20).DepthIn(PlanShape.Ring(centre, 1, outer)), 1e-12);
        Assert.Equal(depth, PlanShape.Ring(centre, 1, outer).DepthIn(PlanShape.Ring(centre, bore, 20)), 1e-12);
    }

    [Fact]
    public void A_bar_of_no_length_is_a_disc() =>
        Assert.Equal(-3, PlanShape.Bar(default, default, 4).DepthIn(PlanShape.Ring(new Point(6, 0), 0, 1)), 1e-12);

    private static PlanShape RandomShape(Random random)
    {
        Point middle = new(random.NextDouble() * 24, random.NextDouble() * 24);
        double size = 1 + (random.NextDouble() * 12);
        switch (random.Next(5))
        {
            case 0:
                return PlanShape.Ring(middle, 0, size);
            case 1:
                return PlanShape.Ring(middle, size * random.NextDouble() * 0.9, size);
            case 2:
                return PlanShape.Bar(middle, middle + (Vector.AtAngle(random.NextDouble() * 7) * size), 0.5 + (random.NextDouble() * 4));
            case 3:
                return PlanShape.Box(middle, random.NextDouble() * 7, -size, size * random.NextDouble(), -size / 3, size / 4);
            default:
                PlanShape plate = PlanShape.Box(middle, random.NextDouble() * 7, -size, size, -size / 2, size / 2);
                return plate with { Holes = [new Circle(middle, size * 0.45)] };
        }
    }

    private static PlanShape Moved(PlanShape shape, Vector by) => shape with { Core = [.. shape.Core.Select(corner => corner + by)] };
}
