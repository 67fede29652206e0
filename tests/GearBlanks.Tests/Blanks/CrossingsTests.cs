using System.Collections.Immutable;
using CsCheck;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace GearBlanks.Tests.Blanks;

/// <summary>Windows between hub, rim and arms, against shapes cut out of polygons by another library.</summary>
public sealed class CrossingsTests
{
    private const double Root = 38.75;

    private static readonly GeometryFactory Factory = new();

    private static readonly Crossings Five = new(5, 26, 4, 5, 5, 2, 0);

    private static readonly Gen<Crossings> Any =
        from arms in Gen.Int[2, 12]
        from hub in Gen.Double[4, 60]
        from rim in Gen.Double[1, 12]
        from width in Gen.Double[1, 14]
        from atRim in Gen.Double[1, 14]
        from corner in Gen.Double[0, 4]
        from start in Gen.Double[-7, 7]
        select new Crossings(arms, hub, rim, width, atRim, corner, start);

    [Fact]
    public void Windows_are_the_ring_between_hub_and_rim_without_the_arms_opened_by_the_corner_radius()
    {
        int made = 0;
        Any.Sample(
            crossings =>
            {
                if (TryWindows(crossings) is not { } windows)
                {
                    return;
                }

                made++;
                Assert.Equal(crossings.Arms, windows.Length);
                Geometry expected = Shapes.Opened(Sharp(crossings), crossings.CornerRadius);
                Geometry cut = Factory.BuildGeometry(windows.Select(window => (Geometry)Shapes.Polygon(window)).ToArray()).Buffer(0);
                Assert.Equal(0, cut.SymmetricDifference(expected).Area / cut.Area, 2e-3);
            },
            iter: 30, threads: 1);
        Assert.True(made > 6, "Too few of the crossings tried exist for the check to mean anything.");
    }

    [Fact]
    public void Every_window_is_simple_counter_clockwise_and_tangent_in_its_corners() => Any.Sample(
        crossings =>
        {
            foreach (Outline window in TryWindows(crossings) ?? [])
            {
                Assert.True(Shapes.Polygon(window).IsValid);
                Assert.True(Shapes.IsCounterClockwise(window));
                Assert.All(window.Curves(), curve => Assert.True(curve is Line or Arc));
                if (crossings.CornerRadius >= 1e-6)
                {
                    Assert.All(Shapes.Kinks(window), kink => Assert.Equal(0, kink, 1e-7));
                    Assert.Equal(4, window.Curves().Count(curve => curve is Arc arc && arc.Centre.Radius > 1e-6));
                }
            }
        },
        iter: 150, threads: 1);

    [Fact]
    public void A_refusal_s_every_way_out_works()
    {
        var cases = new HashSet<string>();
        Any.Sample(
            crossings =>
            {
                try
                {
                    crossings.Windows(Root);
                }
                catch (GearGeometryException e)
                {
                    cases.Add(e.ShapeCase);
                    Follow(crossings, e.Remedy!);
                }
            },
            iter: 150, threads: 1);
        Assert.Equal(["arms-meet", "corners-too-wide", "no-window"], cases.Order());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(101)]
    public void The_number_of_arms_has_bounds(int arms) =>
        Assert.Equal("no-arms", Assert.Throws<GearGeometryException>(() => (Five with { Arms = arms }).Windows(Root)).ShapeCase);

    [Fact]
    public void Sizes_that_are_none_are_refused()
    {
        foreach (Crossings wrong in (Crossings[])
            [Five with { HubDiameter = 0 }, Five with { RimWidth = -1 }, Five with { ArmWidth = double.NaN }, Five with { ArmWidthAtRim = 0 }, Five with { CornerRadius = -1 }])
        {
            Assert.Equal("no-size", Assert.Throws<GearGeometryException>(() => wrong.Windows(Root)).ShapeCase);
        }
    }

    private static void Follow(Crossings crossings, string remedy)
    {
        foreach (string way in remedy["use ".Length..].Split(", or "))
        {
            if (way is "a smaller hub, rim, arms and corner radius together" or "no crossings")
            {
                continue;
            }

            double[] numbers = Advice.NumbersIn(way);
            Crossings changed = way switch
            {
                _ when way.StartsWith("a corner", StringComparison.Ordinal) => crossings with { CornerRadius = numbers[0] },
                _ when way.StartsWith("arms of", StringComparison.Ordinal) => crossings with { ArmWidth = numbers[0], ArmWidthAtRim = numbers[^1] },
                _ when way.StartsWith("a hub", StringComparison.Ordinal) => crossings with { HubDiameter = numbers[0] },
                _ when way.StartsWith("a rim", StringComparison.Ordinal) => crossings with { RimWidth = numbers[0] },
                _ when way.EndsWith("arms", StringComparison.Ordinal) => crossings with { Arms = (int)numbers[0] },
                _ => throw new InvalidOperationException($"A way out that this test does not know: {way}"),
            };
            Assert.Equal(changed.Arms, changed.Windows(Root).Length);
        }
    }

    private static ImmutableArray<Outline>? TryWindows(Crossings crossings)
    {
        try
        {
            return crossings.Windows(Root);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    private static Geometry Sharp(Crossings crossings)
    {
        (double hub, double rim) = (crossings.HubDiameter / 2, Root - crossings.RimWidth);
        Geometry ring = Shapes.Disc(rim).Difference(Shapes.Disc(hub));
        double slope = (crossings.ArmWidthAtRim - crossings.ArmWidth) / 2 / (rim - hub);
        double HalfAt(double x) => (crossings.ArmWidth / 2) + (slope * (x - hub));

        // A little beyond hub and rim, but not beyond where a tapered arm would end in a point.
        double point = slope == 0 ? double.NaN : hub - (crossings.ArmWidth / 2 / slope);
        double from = slope > 0 ? Math.Max(hub * 0.5, point) : hub * 0.5;
        double to = slope < 0 ? Math.Min(rim * 1.2, point) : rim * 1.2;
        Geometry arm = Factory.CreatePolygon(
        [
            new Coordinate(from, -HalfAt(from)), new Coordinate(to, -HalfAt(to)), new Coordinate(to, HalfAt(to)), new Coordinate(from, HalfAt(from)), new Coordinate(from, -HalfAt(from)),
        ]).Buffer(0);
        for (int i = 0; i < crossings.Arms; i++)
        {
            ring = ring.Difference(AffineTransformation.RotationInstance(crossings.StartAngle + (2 * Math.PI * i / crossings.Arms)).Transform(arm));
        }

        return ring;
    }
}
