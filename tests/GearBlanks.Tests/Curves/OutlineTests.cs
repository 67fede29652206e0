using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Curves;

public sealed class OutlineTests
{
    private static readonly Point[] Corners = [new(0, 0), new(4, 0), new(4, 3), new(0, 3)];

    private static ImmutableArray<Curve> Sides(params Point[] corners) =>
        [.. corners.Select((p, i) => (Curve)new Line(p, corners[(i + 1) % corners.Length]))];

    private static double Area(Outline outline)
    {
        List<Point> points = [.. outline.Curves().SelectMany(curve => Enumerable.Range(0, 100).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 100))))];
        return points.Zip(points.Skip(1).Append(points[0]), (a, b) => ((a.X * b.Y) - (a.Y * b.X)) / 2).Sum();
    }

    [Fact]
    public void A_closed_chain_is_taken_as_it_is() => Assert.Equal(12, Area(new Outline(Sides(Corners))), 1e-12);

    [Fact]
    public void Gaps_are_rejected()
    {
        ImmutableArray<Curve> sides = Sides(Corners);
        Assert.Throws<ArgumentException>(() => new Outline([]));
        Assert.Throws<ArgumentException>(() => new Outline(default));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Outline(sides, 0));
        Assert.Throws<ArgumentException>(() => new Outline(sides.RemoveAt(3)));
        Assert.Throws<ArgumentException>(() => new Outline(sides.RemoveAt(1)));
        Assert.Throws<ArgumentException>(() => new Outline(Sides(Corners[1], Corners[2], Corners[3]), 2));
        Assert.Throws<ArgumentException>(() => new Outline(sides.SetItem(2, new Line(new Point(4, 3), new Point(1e-9, 3)))));
        Assert.Throws<ArgumentException>(() => new Outline(sides.SetItem(2, new Line(new Point(4, 3), new Point(double.NaN, 3)))));
        Assert.Throws<ArgumentException>(() => new Outline(sides.SetItem(0, sides[0].Reversed())));
        _ = new Outline(sides.SetItem(2, new Line(new Point(4, 3), new Point(1e-12, 3))));
    }

    [Fact]
    public void A_pattern_is_repeated_until_it_closes()
    {
        Outline gear = ExternalGear.Create(new GearData(17, 2, TestRacks.A)).Outline();
        Curve[] curves = [.. gear.Curves()];
        Assert.Equal(17 * gear.Pattern.Length, curves.Length);
        Assert.All(Enumerable.Range(0, curves.Length), i =>
            Assert.Equal(0, curves[i].EndPoint.DistanceTo(curves[(i + 1) % curves.Length].StartPoint), 1e-12));
    }

    [Fact]
    public void Moved_outlines_keep_their_size_and_stay_counter_clockwise()
    {
        Outline gear = ExternalGear.Create(new GearData(17, 2, TestRacks.A, 0.2)).Outline();
        double area = Area(gear);
        Assert.True(area > 0);
        Assert.Equal(area, Area(gear.Moved(Motion.Turn(0.3).Then(Motion.Shift(new Vector(30, 5))))), 1e-8);
        Assert.Equal(area, Area(gear.Moved(Motion.MirrorInX.Then(Motion.Shift(new Vector(30, 5))))), 1e-2);
        Assert.Equal(-area, Area(gear.Reversed()), 1e-2);
        Assert.Equal(Math.PI * 4, Area(Outline.Of(new Circle(new Point(5, 5), 2))), 0.01);
    }
}
