using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Tests.Properties;

namespace GearBlanks.Tests.Meshing;

/// <summary>Pinions in rings and gears over racks: their figures against one another, against formulas written out, and against polygons.</summary>
public sealed class OtherPairTests
{
    private static readonly Gen<GearPair> Any = Gen.OneOf(
        RandomOtherPairs.Rings.Select(pair => (GearPair)pair), RandomOtherPairs.Bars.Select(pair => (GearPair)pair));

    [Fact]
    public void Distance_and_backlash_answer_one_another() => Any.Sample(
        pair =>
        {
            double distance = GearPair.DistanceFor(pair.First, pair.Second, pair.CircumferentialBacklash);
            Assert.Equal(pair.CentreDistance, distance, 1e-9);
            Assert.Equal(pair.CircumferentialBacklash, GearPair.At(pair.First, pair.Second, distance).CircumferentialBacklash, 1e-9);
            double closed = GearPair.ZeroBacklashDistance(pair.Second, pair.First)!.Value;
            Assert.Equal(closed, GearPair.DistanceFor(pair.First, pair.Second, 0), 1e-9);
            GearPair tight = GearPair.At(pair.First, pair.Second, closed);
            Assert.Equal(0, tight.CircumferentialBacklash, 1e-9);
            Assert.Equal(0, tight.RadialBacklash!.Value, 1e-12);
            Assert.Equal(pair is RingPair ? closed - pair.CentreDistance : pair.CentreDistance - closed, pair.RadialBacklash!.Value, 1e-12);
            Assert.True(pair.RadialBacklash > 0 && pair.CircumferentialBacklash > 0);
        },
        iter: Count.Of(3000));

    [Fact]
    public void Exchanged_ones_exchange_their_figures() => Any.Sample(
        pair =>
        {
            GearPair other = GearPair.At(pair.Second, pair.First, pair.CentreDistance);
            Assert.Equal(pair.CircumferentialBacklash, other.CircumferentialBacklash, 1e-12);
            Assert.Equal(pair.WorkingPressureAngle, other.WorkingPressureAngle, 1e-12);
            Assert.Equal(pair.ContactRatio, other.ContactRatio, 1e-10);
            Assert.Equal((pair.FirstTipClearance, pair.SecondTipClearance), (other.SecondTipClearance, other.FirstTipClearance));
            Assert.Equal((pair.FirstFilletClearance, pair.SecondFilletClearance), (other.SecondFilletClearance, other.FirstFilletClearance));
            Assert.Equal((pair.FirstWorkingRadius, pair.SecondWorkingRadius), (other.SecondWorkingRadius, other.FirstWorkingRadius));
            Assert.Equal((pair.FirstAngularBacklash, pair.SecondAngularBacklash), (other.SecondAngularBacklash, other.FirstAngularBacklash));
            Assert.Equal((pair.First, pair.Second), (other.Second, other.First));
            if (pair is RingPair one && other is RingPair two)
            {
                Assert.Equal((one.InvoluteClearance, one.TrochoidClearance, one.TrimmingClearance), (two.InvoluteClearance, two.TrochoidClearance, two.TrimmingClearance));
            }
        },
        iter: Count.Of(500));

    // The gap of the ring at the working circle, less the pinion's tooth there.
    [Fact]
    public void Backlash_in_a_ring_is_the_gap_less_the_tooth() => RandomOtherPairs.Rings.Sample(
        pair =>
        {
            double gap = 2 * pair.SecondWorkingRadius * ((Math.PI / pair.Ring.Teeth) - pair.Ring.HalfAngleAt(pair.SecondWorkingRadius));
            double tooth = 2 * pair.FirstWorkingRadius * pair.Pinion.HalfAngleAt(pair.FirstWorkingRadius);
            Assert.Equal(gap - tooth, pair.CircumferentialBacklash, 1e-10);
            Assert.Equal(pair.CircumferentialBacklash * Math.Cos(pair.WorkingPressureAngle), pair.NormalBacklash, 1e-15);
            Assert.Equal(pair.CircumferentialBacklash / pair.FirstWorkingRadius, pair.FirstAngularBacklash!.Value, 1e-15);
            Assert.Equal(pair.CircumferentialBacklash / pair.SecondWorkingRadius, pair.SecondAngularBacklash!.Value, 1e-15);
            Assert.Equal(pair.CentreDistance, pair.SecondWorkingRadius - pair.FirstWorkingRadius, 1e-10);
            Assert.Equal(pair.Pinion.BaseRadius, pair.FirstWorkingRadius * Math.Cos(pair.WorkingPressureAngle), 1e-9);
            Assert.Equal(pair.Ring.BaseRadius, pair.SecondWorkingRadius * Math.Cos(pair.WorkingPressureAngle), 1e-9);
        },
        iter: Count.Of(1000));

    [Fact]
    public void Backlash_over_a_rack_is_the_gap_less_the_tooth() => RandomOtherPairs.Bars.Sample(
        pair =>
        {
            double height = pair.CentreDistance - pair.Gear.ReferenceRadius;
            double gap = pair.Rack.Pitch - pair.Rack.ToothThickness + (2 * height * Math.Tan(pair.Rack.PressureAngle));
            Assert.Equal(gap - pair.Gear.ToothThickness, pair.CircumferentialBacklash, 1e-11);
            Assert.Equal(pair.CircumferentialBacklash / pair.Gear.ReferenceRadius, pair.FirstAngularBacklash!.Value, 1e-15);
            Assert.Null(pair.SecondAngularBacklash);
            Assert.Equal(pair.Gear.ReferenceRadius, pair.FirstWorkingRadius);
            Assert.Equal(double.PositiveInfinity, pair.SecondWorkingRadius);
            Assert.Equal(pair.Rack.PressureAngle, pair.WorkingPressureAngle);
            Assert.Equal(pair.CentreDistance - pair.Gear.TipRadius - pair.Rack.RootHeight, pair.FirstTipClearance, 1e-12);
            Assert.Equal(pair.CentreDistance - pair.Gear.RootRadius - pair.Rack.TipHeight, pair.SecondTipClearance, 1e-12);
        },
        iter: Count.Of(1000));

    // Turns the gear by small steps: its flank touches the other's where the line of action, at the base circle's distance from the centre, crosses both.
    [Fact]
    public void Contact_ratio_counts_the_turns_for_which_both_flanks_reach_the_line_of_action() => Any.Sample(
        pair =>
        {
            var gear = (ExternalGear)pair.First;
            const int steps = 20_000;
            double longest = Math.Sqrt((gear.TipRadius * gear.TipRadius) - (gear.BaseRadius * gear.BaseRadius));
            int touching = 0;
            for (int i = 0; i < steps; i++)
            {
                // The point of the line of action that far from where it touches the gear's base circle.
                double along = longest * (i + 0.5) / steps;
                double radius = Math.Sqrt((gear.BaseRadius * gear.BaseRadius) + (along * along));
                touching += radius >= gear.FormRadius && Reaches(along) ? 1 : 0;
            }

            double pitch = Math.PI * pair.First.Module * Math.Cos(pair.First.PressureAngle);
            Assert.Equal(pair.ContactRatio, touching * longest / steps / pitch, 0.001);

            bool Reaches(double along)
            {
                (double sine, double cosine) = Math.SinCos(pair.WorkingPressureAngle);

                // The gear's centre at the origin, the pitch point on +X.
                double x = (gear.BaseRadius * cosine) + (along * sine);
                double y = (gear.BaseRadius * sine) - (along * cosine);
                if (pair.Second is RackBar rack)
                {
                    double height = pair.CentreDistance - x;
                    return height <= rack.TipHeight && height >= rack.FormHeight;
                }

                var ring = (RingGear)pair.Second;
                double fromRing = Math.Sqrt(((x + pair.CentreDistance) * (x + pair.CentreDistance)) + (y * y));
                return fromRing >= ring.TipRadius && fromRing <= ring.FormRadius;
            }
        },
        iter: Count.Of(100));

    [Fact]
    public void Impossible_pairs_are_refused_by_name()
    {
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        var ring = RingGear.Create(new RingData(50, 1, TestRacks.A, 60));
        var rack = RackBar.Create(new RackBarData(1, TestRacks.A, 20, 5));
        Refused("two-rings", () => GearPair.At(ring, ring, 1));
        Refused("two-racks", () => GearPair.At(rack, rack, 1));
        Refused("ring-with-rack", () => GearPair.At(ring, rack, 1));
        Refused("ring-with-rack", () => GearPair.ZeroBacklashDistance(rack, ring));
        var large = ExternalGear.Create(new GearData(50, 1, TestRacks.A));
        Refused("ring-too-small", () => GearPair.At(large, ring, 1));
        Refused("ring-too-small", () => GearPair.DistanceFor(ring, large, 1));
        Assert.IsType<RingPair>(GearPair.At(ExternalGear.Create(new GearData(49, 1, TestRacks.A)), ring, 0.6));
        Refused("pitch-mismatch", () => GearPair.At(ExternalGear.Create(new GearData(20, 1.01, TestRacks.A)), ring, 15));
        Refused("pitch-mismatch", () => GearPair.At(rack, ExternalGear.Create(new GearData(20, 1, TestRacks.Iso('A', 19))), 10));
        double least = ring.BaseRadius - gear.BaseRadius;
        Assert.Equal(0, GearPair.At(ring, gear, least).WorkingPressureAngle, 1e-7);
        Assert.Contains("at 15 mm", Refused("no-line-of-action", () => GearPair.At(ring, gear, least - 1e-6)).Message, StringComparison.Ordinal);
        foreach (double distance in (double[])[double.NaN, double.PositiveInfinity, -1])
        {
            Refused("no-line-of-action", () => GearPair.At(ring, gear, distance));
            Assert.Contains("at 10 mm", Refused("no-line-of-action", () => GearPair.At(gear, rack, distance)).Message, StringComparison.Ordinal);
        }

        foreach (double backlash in (double[])[double.NaN, double.PositiveInfinity, -0.1])
        {
            Refused("backlash-out-of-reach", () => GearPair.DistanceFor(gear, rack, backlash));
        }

        foreach (double backlash in (double[])[double.NaN, double.PositiveInfinity, 1])
        {
            Assert.Contains("No centre distance", Refused("backlash-out-of-reach", () => GearPair.DistanceFor(gear, ring, backlash)).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void In_a_ring_the_backlash_has_a_greatest()
    {
        // 2 B (inv t0 - inv t) / cos t is greatest where inv t + tan t = inv t0.
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        var ring = RingGear.Create(new RingData(50, 1, TestRacks.A, 60));
        (double low, double high) = (0, 0.1);
        double closed = Math.Tan(gear.PressureAngle) - gear.PressureAngle;
        for (int i = 0; i < 60; i++)
        {
            double t = (low + high) / 2;
            (low, high) = (2 * Math.Tan(t)) - t < closed ? (t, high) : (low, t);
        }

        double greatest = 2 * 15 * Math.Cos(gear.PressureAngle) * (closed - Math.Tan(low) + low) / Math.Cos(low);
        Assert.Equal(15 * Math.Cos(gear.PressureAngle) / Math.Cos(low), GearPair.DistanceFor(gear, ring, greatest - 1e-13), 1e-6);
        Refused("backlash-out-of-reach", () => GearPair.DistanceFor(gear, ring, greatest + 1e-9));
        double distance = GearPair.DistanceFor(gear, ring, greatest * 0.999);
        Assert.Equal(greatest * 0.999, GearPair.At(gear, ring, distance).CircumferentialBacklash, 1e-12);
        Assert.True(distance > 15 * Math.Cos(gear.PressureAngle) / Math.Cos(low));
    }

    [Fact]
    public void Teeth_too_thick_for_a_ring_have_no_closed_distance()
    {
        var gear = ExternalGear.Create(new GearData(40, 1, TestRacks.A, 0.5));
        var ring = RingGear.Create(new RingData(44, 1, TestRacks.A, 60, null, 0.1, 0, 42));
        Assert.Null(GearPair.ZeroBacklashDistance(gear, ring));
        GearPair pair = GearPair.At(gear, ring, 2.2);
        Assert.Null(pair.RadialBacklash);
        Assert.True(pair.CircumferentialBacklash < 0);
        Assert.Contains("so thick", Refused("backlash-out-of-reach", () => GearPair.DistanceFor(gear, ring, 0.01)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_figure_of_any_pair_is_a_number() => Gen.Select(Any, Gen.Double[0, 1]).Sample(
        (pair, far) =>
        {
            double least = pair is RingPair ring ? ring.Ring.BaseRadius - ring.Pinion.BaseRadius : 0;
            GearPair moved = GearPair.At(pair.First, pair.Second, far < 0.1 ? least : least + (far * 1.3 * (pair.CentreDistance - least)));
            double[] figures = [
                moved.CircumferentialBacklash, moved.NormalBacklash, moved.RadialBacklash!.Value, moved.FirstAngularBacklash!.Value, moved.ContactRatio,
                moved.FirstTipClearance, moved.SecondTipClearance, moved.FirstFilletClearance ?? 0, moved.SecondFilletClearance ?? 0, moved.WorkingPressureAngle,
                (moved as RingPair)?.InvoluteClearance ?? 0, (moved as RingPair)?.TrochoidClearance ?? 0, (moved as RingPair)?.TrimmingClearance ?? 0];
            Assert.All(figures, figure => Assert.True(double.IsFinite(figure)));
            Assert.True(moved.ContactRatio >= 0);
        },
        iter: Count.Of(2000));

    private static GearGeometryException Refused(string name, Func<object?> act)
    {
        GearGeometryException exception = Assert.Throws<GearGeometryException>(act);
        Assert.Equal(name, exception.ShapeCase);
        Assert.NotNull(exception.Remedy);
        return exception;
    }
}
