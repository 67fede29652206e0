using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Stacks;
using NetTopologySuite.Geometries;
using static GearBlanks.Tests.Mechanisms.TestJobs;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>What an arm carries round, against the same bodies turned step by step as polygons of an independent library.</summary>
public sealed class CarriedBodiesTests
{
    [Fact]
    public void A_swept_shape_covers_every_turn_of_it_and_nothing_beyond()
    {
        var random = new Random(8);
        var centre = new Point(2, -1);
        for (int i = 0; i < 60; i++)
        {
            Point middle = new(random.NextDouble() * 20, random.NextDouble() * 20);
            PlanShape shape = i % 2 == 0
                ? PlanShape.Ring(middle, 0, 1 + (random.NextDouble() * 5))
                : PlanShape.Bar(middle, middle + (Vector.AtAngle(random.NextDouble() * 7) * 9), 2);
            PlanShape swept = shape.Swept(centre);
            double[] radii = [.. PlanPolygons.Of(shape).Coordinates.Select(corner => new Point(corner.X, corner.Y).DistanceTo(centre))];
            double nearest = PlanPolygons.Of(shape).Distance(new GeometryFactory().CreatePoint(new Coordinate(centre.X, centre.Y)));
            Assert.Equal(radii.Max(), swept.Radius, 0.002);
            Assert.Equal(nearest, swept.Holes.IsEmpty ? 0 : swept.Holes[0].Radius, 0.002);
        }
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(14.5, false)]
    [InlineData(15.5, true)]
    [InlineData(20, true)]
    [InlineData(24.5, true)]
    [InlineData(25.5, false)]
    public void A_carried_gear_meets_a_post_in_a_part_of_the_arms_turn(double distance, bool meets)
    {
        // The gear on the arm: 20 from the arm's axis, rim at 4; the post has a radius of 1.
        Body gear = Built(4, new JobColumn(At(9), "post", Point.Polar(distance, 2), 2, 0, 9)).Single(body => body.Name == "carried");
        Body post = Built(4, new JobColumn(At(9), "post", Point.Polar(distance, 2), 2, 0, 9)).Single(body => body.Name == "post");
        Geometry still = PlanPolygons.Of(post.Shape);
        bool struck = Enumerable.Range(0, 720).Any(k =>
        {
            Point at = Point.Polar(20, k * Math.PI / 360);
            return PlanPolygons.Of(PlanShape.Ring(at, 0, 4)).Intersects(still);
        });
        Assert.Equal(meets, struck);
        (PlanShape own, PlanShape others) = gear.Beside(post);
        Assert.Equal(struck, own.DepthIn(others) > 0);
    }

    [Fact]
    public void Bodies_on_one_arm_are_compared_where_they_stand_on_it()
    {
        ImmutableArray<Body> bodies = Built(4);
        (Body one, Body other, Body arm) = (bodies.Single(body => body.Name == "carried"), bodies.Single(body => body.Name == "opposite"), bodies.Single(body => body.Kind == BodyKind.Arm));
        (PlanShape own, PlanShape others) = one.Beside(other);
        Assert.Equal(-32, own.DepthIn(others), 1e-9);
        (own, others) = arm.Beside(other);
        Assert.Equal(-13, own.DepthIn(others), 1e-9);
        (own, others) = arm.Beside(one);
        Assert.True(own.DepthIn(others) > 0);
    }

    // A sandwich that carries a bar and two axes, right and left of its own.
    private static ImmutableArray<Body> Built(int radius, params JobColumn[] columns)
    {
        Job job = new(
            At(0), "arm", Defaults, [Axis("sun", 0), Axis("right", 20) with { CarriedBy = "arm" }, Axis("left", -20) with { CarriedBy = "arm" }],
            [
                Sandwich("arm", "sun", new JobWasher(At(2), 2)) with { Height = 0 },
                Sandwich("carried", "right", Disc(radius)) with { Height = 2 },
                Sandwich("opposite", "left", Disc(radius)) with { Height = 2 },
            ],
            [], null, [])
        {
            Frame = new JobFrame([.. columns], [], [new JobArm(At(8), "bar", "sun", "right", 6, 2, 2, 0, 0, "arm")]),
        };
        ImmutableDictionary<string, Axis> axes = job.Axes.ToImmutableDictionary(axis => axis.Name, axis => new Axis(axis.Name, axis.Position!.Value));
        return [.. StackBuilder.Of(job, ImmutableDictionary<string, MountedGear>.Empty, axes).Bodies
            .Select(body => body.Kind == BodyKind.Washer ? body with { Name = body.Sandwich! } : body)];

        static JobWasher Disc(int radius) => new(At(2), 2) { Stack = new JobLayerFit { Diameter = 2 * radius } };
    }
}
