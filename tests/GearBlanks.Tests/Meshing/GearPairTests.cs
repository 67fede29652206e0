using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Tests.Properties;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Curve = GearBlanks.Curves.Curve;

namespace GearBlanks.Tests.Meshing;

/// <summary>A pair's figures against polygons turned against one another.</summary>
public sealed class GearPairTests
{
    [Fact]
    public void Distance_and_backlash_answer_one_another() => RandomPairs.Any.Sample(
        pair =>
        {
            double distance = GearPair.DistanceFor(pair.First, pair.Second, pair.CircumferentialBacklash);
            Assert.Equal(pair.CentreDistance, distance, 1e-9);
            Assert.Equal(pair.CircumferentialBacklash, GearPair.At(pair.First, pair.Second, distance).CircumferentialBacklash, 1e-9);
            double closed = GearPair.ZeroBacklashDistance(pair.First, pair.Second)!.Value;
            Assert.Equal(closed, GearPair.DistanceFor(pair.First, pair.Second, 0), 1e-9);
            Assert.Equal(0, GearPair.At(pair.First, pair.Second, closed).CircumferentialBacklash, 1e-9);
            Assert.Equal(pair.CentreDistance - closed, pair.RadialBacklash!.Value, 1e-12);
        },
        iter: Count.Of(2500));

    [Fact]
    public void Exchanged_gears_exchange_their_figures() => RandomPairs.LongTipped.Sample(
        pair =>
        {
            var other = GearPair.At(pair.Second, pair.First, pair.CentreDistance);
            Assert.Equal(pair.CircumferentialBacklash, other.CircumferentialBacklash, 1e-12);
            Assert.Equal(pair.ContactRatio, other.ContactRatio, 1e-10);
            Assert.Equal(pair.FirstTipClearance, other.SecondTipClearance);
            Assert.Equal(pair.FirstAngularBacklash!.Value, other.SecondAngularBacklash!.Value, 1e-12);
            Assert.Equal(pair.FirstFilletClearance, other.SecondFilletClearance);
            Assert.Equal(pair.FirstWorkingRadius, other.SecondWorkingRadius, 1e-11);
        },
        iter: Count.Of(300));

    /// <summary>Two in three of the pairs are external; each at a distance a hair over the closed one, at its own and at one with much play.</summary>
    [Fact]
    public void Backlash_is_how_far_the_real_outlines_can_be_turned()
    {
        int measured = 0;
        Gen.OneOf(Of(RandomPairs.Sound), Of(RandomPairs.Sound), Of(RandomOtherPairs.Rings), Of(RandomOtherPairs.Bars)).Where(IsSound).Sample(
            pair =>
            {
                double m = pair.First.Module;
                double closed = GearPair.ZeroBacklashDistance(pair.First, pair.Second)!.Value;
                int sense = pair is RingPair ? -1 : 1;
                double[] distances = [closed + (sense * 0.003), pair.CentreDistance, closed + (sense * 0.12 * m)];
                foreach (double distance in distances.Where(distance => distance > pair.Layout.LeastDistance))
                {
                    GearPair at = GearPair.At(pair.First, pair.Second, distance);
                    if (IsSound(at))
                    {
                        Assert.Equal(TurnedPolygons.Play(at), at.CircumferentialBacklash, 0.001);
                        Interlocked.Increment(ref measured);
                    }
                }
            },
            iter: Count.Of(500));
        Assert.True(measured > Count.Of(500) * 2, $"{measured} distances");
    }

    [Fact]
    public void Fillet_clearance_is_the_tip_corners_least_distance_from_the_real_outline()
    {
        (int digging, int free) = (0, 0);
        RandomPairs.LongTippedOftenDigging.Sample(
            pair =>
            {
                double? told = pair.FirstFilletClearance;
                (double below, double anywhere, double overlap) = Roll(pair);
                double? seen = anywhere < -0.0005 ? anywhere : double.IsPositiveInfinity(below) ? null : below;
                if (told is < -0.0005)
                {
                    Interlocked.Increment(ref digging);
                    Assert.Equal(seen!.Value, told.Value, 0.001 + (0.03 * Math.Abs(told.Value)));
                    Assert.True(overlap > 0);
                }
                else
                {
                    Interlocked.Increment(ref free);
                    Assert.True(anywhere > -0.001);

                    // A corner that only grazes the form circle is on either side of it by rounding.
                    if (told is not null && seen is not null)
                    {
                        // Where it comes nearest as it crosses the form circle, the polygons see it up to one step later.
                        double step = 0.003 * pair.First.Module;
                        Assert.Equal(seen.Value, told.Value, 0.002 + step + (0.01 * told.Value));
                    }
                    else
                    {
                        Assert.True((told is null && seen is null) || (told ?? seen) < 0.02 * pair.First.Module);
                    }
                }
            },
            iter: 60);
        Assert.True(digging > 3 && free > 3, $"{digging} dig in, {free} are free");
    }

    [Theory]
    [InlineData(17, 40, 0, 0, 0)]
    [InlineData(12, 24, 0.6, 0.36, 0.1)]
    [InlineData(8, 30, 0.1, 0, 0.3)]
    [InlineData(10, 11, 0, 0, 0.2)]
    [InlineData(24, 59, -0.1, -0.376, 0.05)]
    [InlineData(60, 61, 0, 0, 0)]
    public void Contact_ratio_is_the_turn_for_which_two_flanks_touch(int z1, int z2, double x1, double x2, double apart)
    {
        var one = ExternalGear.Create(new GearData(z1, 1, TestRacks.A, x1, 0.02));
        var two = ExternalGear.Create(new GearData(z2, 1, TestRacks.A, x2, 0.02));
        var pair = (ExternalPair)GearPair.At(one, two, GearPair.ZeroBacklashDistance(one, two)!.Value + apart);
        (double firstAngle, double secondAngle) = Touching(pair, 2000);

        // The lower side of the second gear's tooth above meets the upper side of the first gear's tooth on the line of centres.
        LineString upper = Flank(one, 1, 0);
        LineString lower = Flank(two, 1, -1);
        const int steps = 1000;
        double range = 2 * Math.PI / z1 * 2;
        int touching = Enumerable.Range(-steps, (2 * steps) + 1).AsParallel().Count(i =>
        {
            double turn = range * i / steps;
            var first = Moved(upper, firstAngle + turn, 0);
            var second = Moved(lower, secondAngle - (turn * z1 / z2), pair.CentreDistance);
            return IndexedFacetDistance.Distance(first, second) < 1e-6;
        });

        // The flanks part with the square of the way, so that the ends are blurred by a few thousandths.
        Assert.Equal(pair.ContactRatio, touching * range / steps * z1 / (2 * Math.PI), 0.01);
    }

    [Fact]
    public void Impossible_pairs_are_refused_by_name()
    {
        var one = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        var two = ExternalGear.Create(new GearData(30, 1, TestRacks.A));
        Refused("pitch-mismatch", () => GearPair.At(one, ExternalGear.Create(new GearData(30, 1.01, TestRacks.A)), 25));
        Refused("pitch-mismatch", () => GearPair.ZeroBacklashDistance(one, ExternalGear.Create(new GearData(30, 1, TestRacks.Iso('C', 25)))));
        Refused("no-line-of-action", () => GearPair.At(one, two, one.BaseRadius + two.BaseRadius - 0.001));
        foreach (double distance in (double[])[double.NaN, double.PositiveInfinity, 0, -25, double.NegativeInfinity])
        {
            Refused("no-line-of-action", () => GearPair.At(one, two, distance));
        }

        Refused("backlash-out-of-reach", () => GearPair.DistanceFor(one, two, 1e9));
        Refused("backlash-out-of-reach", () => GearPair.DistanceFor(one, two, double.PositiveInfinity));
        Refused("backlash-out-of-reach", () => GearPair.DistanceFor(one, two, double.NaN));
        var thin = ExternalGear.Create(new GearData(20, 1, TestRacks.A with { Dedendum = 1.1 }, -0.3, 0.5));
        Assert.Null(GearPair.ZeroBacklashDistance(thin, thin));
        Refused("backlash-out-of-reach", () => GearPair.DistanceFor(thin, thin, 0.01));
        Assert.Null(GearPair.At(thin, thin, 19).RadialBacklash);
        Assert.Equal(0, GearPair.At(one, two, 30).ContactRatio);
    }

    // From touching base circles to far apart, with gears of any legal kind.
    [Fact]
    public void Every_figure_of_any_pair_is_a_number() =>
        Gen.Select(RandomGears.Legal, RandomGears.Data, Gen.Double[0, 1], Gen.Double[0, 1]).Sample(
            (one, data, far, wide) =>
            {
                if (RandomGears.TryCreate(data with { Module = one.Module, Rack = one.Data.Rack, Thinning = 0, TipDiameter = null }) is not { } two)
                {
                    return;
                }

                double least = one.BaseRadius + two.BaseRadius;
                double most = one.TipRadius + two.TipRadius;
                var pair = GearPair.At(one, two, far < 0.1 ? least : least + (Math.Max(0, most - least) * far * 1.1));
                double[] figures = [
                    pair.CircumferentialBacklash, pair.NormalBacklash, pair.RadialBacklash ?? 0, pair.FirstAngularBacklash!.Value, pair.SecondAngularBacklash!.Value, pair.ContactRatio,
                    pair.FirstTipClearance, pair.SecondTipClearance, pair.FirstFilletClearance ?? 0, pair.SecondFilletClearance ?? 0, pair.WorkingPressureAngle];
                Assert.All(figures, figure => Assert.True(double.IsFinite(figure)));
                Assert.True(pair.ContactRatio >= 0);
                try
                {
                    double distance = GearPair.DistanceFor(one, two, wide * one.Module);
                    Assert.Equal(wide * one.Module, GearPair.At(one, two, distance).CircumferentialBacklash, 1e-9 * (1 + distance));
                }
                catch (GearGeometryException e)
                {
                    Assert.Equal("backlash-out-of-reach", e.ShapeCase);
                }
            },
            iter: Count.Of(2500));

    private static void Refused(string name, Func<object?> act) => Assert.Equal(name, Assert.Throws<GearGeometryException>(act).ShapeCase);

    // Gear angles at which two flanks touch at the pitch point, felt with teeth so short that nothing else can touch.
    private static (double First, double Second) Touching(ExternalPair pair, int steps = 200)
    {
        double m = pair.First.Module;
        (ExternalGear one, ExternalGear two) = (Shortened(pair.First, pair.FirstWorkingRadius + (0.08 * m)), Shortened(pair.Second, pair.SecondWorkingRadius + (0.08 * m)));
        Curve flank = one.Flank;
        double onWorkingCircle = 0;
        for (int i = 0; i <= 20_000; i++)
        {
            var p = flank.PointAt(flank.Start + ((flank.End - flank.Start) * i / 20_000));
            if (p.Radius <= pair.FirstWorkingRadius)
            {
                onWorkingCircle = p.Angle;
            }
        }

        // The upper side is the mirror image of the lower: turn it down to the line of centres.
        (var first, var second) = (new PolygonGear(one, steps), new PolygonGear(two, steps));
        double start = second.GapToTheLeft - (onWorkingCircle * one.Teeth / two.Teeth);
        return (onWorkingCircle, start + PolygonGear.FreeTurn(first, onWorkingCircle, second, pair.CentreDistance, start, 1));
    }

    private static ExternalGear Shortened(ExternalGear gear, double tipRadius) =>
        ExternalGear.Create(gear.Data with { TipDiameter = 2 * Math.Min(tipRadius, gear.TipRadius) });

    // Least signed distance of the second gear's corners from the first gear: below its form circle, and below form or working circle; and the greatest overlap.
    private static (double Below, double Anywhere, double Overlap) Roll(ExternalPair pair)
    {
        (double firstAngle, double secondAngle) = Touching(pair);
        (var one, var two) = (new PolygonGear(pair.First), new PolygonGear(pair.Second));
        Func<Coordinate, double> distance = PolygonGear.SignedDistance(one.Placed(0));
        (double below, double anywhere, double worst) = (double.PositiveInfinity, double.PositiveInfinity, 0);
        const int steps = 600;
        for (int i = -steps; i <= steps; i++)
        {
            double turn = Math.PI / one.Teeth * i / steps;
            foreach (Coordinate corner in two.Corners)
            {
                Coordinate placed = PolygonGear.Turned(corner, secondAngle - (turn * one.Teeth / two.Teeth), pair.CentreDistance);
                Coordinate seen = PolygonGear.Turned(placed, -firstAngle - turn, 0);
                double radius = Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y));
                if (radius > Math.Max(pair.First.FormRadius, pair.FirstWorkingRadius))
                {
                    continue;
                }

                double room = distance(seen);
                below = radius <= pair.First.FormRadius ? Math.Min(below, room) : below;
                (anywhere, worst) = room < anywhere ? (room, turn) : (anywhere, worst);
            }
        }

        Geometry overlap = one.Placed(firstAngle + worst).Intersection(two.Placed(secondAngle - (worst * one.Teeth / two.Teeth), pair.CentreDistance));
        return (below, anywhere, overlap.Area);
    }

    // One side of a tooth (1 the counter-clockwise one) at a place from the one that faces the mate.
    private static LineString Flank(ExternalGear gear, int side, int place)
    {
        double turn = 2 * Math.PI * place / gear.Teeth;
        return new GeometryFactory().CreateLineString([.. Enumerable.Range(0, 1501)
            .Select(i => gear.Flank.PointAt(gear.Flank.Start + ((gear.Flank.End - gear.Flank.Start) * i / 1500)))
            .Select(p => PolygonGear.Turned(new Coordinate(p.X, -side * p.Y), turn, 0))]);
    }

    private static LineString Moved(LineString line, double angle, double x) =>
        line.Factory.CreateLineString([.. line.Coordinates.Select(p => PolygonGear.Turned(p, angle, x))]);

    private static Gen<GearPair> Of<TPair>(Gen<TPair> pairs)
        where TPair : GearPair => pairs.Select(pair => (GearPair)pair);

    private static bool IsSound(GearPair pair) =>
        pair.ContactRatio > 1 && pair.FirstFilletClearance is null or > 0.005 && pair.SecondFilletClearance is null or > 0.005
        && pair.FirstTipClearance > 0.01 && pair.SecondTipClearance > 0.01
        && pair is not RingPair { InvoluteClearance: < 0 } and not RingPair { TrochoidClearance: < 0 };
}
