using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Tests.Properties;

namespace GearBlanks.Tests.Meshing;

/// <summary>Thinning for a backlash, and tips for a clearance, in pairs of every kind.</summary>
public sealed class ThicknessTests
{
    private static readonly Gen<GearPair> Any = Gen.OneOf(
        RandomPairs.Any.Select(pair => (GearPair)pair), RandomOtherPairs.Rings.Select(pair => (GearPair)pair), RandomOtherPairs.Bars.Select(pair => (GearPair)pair));

    [Fact]
    public void Thinning_is_what_makes_the_backlash() => Gen.Select(Any, Gen.Double[0.05, 0.15], Gen.Double[0, 1]).Sample(
        (pair, wanted, share) =>
        {
            double m = pair.First.Module;
            double total = Thickness.TotalThinningFor(pair.First.Data, pair.Second.Data, pair.CentreDistance, wanted * m);
            Assert.Equal(total, Thickness.TotalThinningFor(pair.Second.Data, pair.First.Data, pair.CentreDistance, wanted * m), 1e-12);

            // What is there makes the backlash that is there.
            Assert.Equal(
                pair.First.Data.Thinning + pair.Second.Data.Thinning,
                Thickness.TotalThinningFor(pair.First.Data, pair.Second.Data, pair.CentreDistance, pair.CircumferentialBacklash), 1e-9);
            if (total >= 0 && TryThinned(pair, total * share, total * (1 - share)) is { } thinned)
            {
                Assert.Equal(wanted * m, thinned.CircumferentialBacklash, 1e-9);
            }
        },
        iter: Count.Of(2000));

    [Fact]
    public void Where_nothing_meshes_nothing_is_thinned()
    {
        var gear = new GearData(20, 1, TestRacks.A);
        var ring = new RingData(50, 1, TestRacks.A, 60);
        var rack = new RackBarData(1, TestRacks.A, 20, 5);
        Assert.Equal(0, Thickness.TotalThinningFor(gear, ring, 15 * Math.Cos(TestRacks.Radians(20)) - 1e-9, 0.1));
        Assert.NotEqual(0, Thickness.TotalThinningFor(gear, ring, 15 * Math.Cos(TestRacks.Radians(20)) + 1e-9, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(gear, gear, 18, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(ring, ring, 15, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(ring, rack, 15, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(rack, rack, 15, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(gear with { Teeth = 50 }, ring, 15, 0.1));
        Assert.Equal(0, Thickness.TotalThinningFor(gear with { Module = 1.1 }, rack, 10, 0.1));
        Assert.Equal(0.1, Thickness.TotalThinningFor(gear, rack, 10, 0.1), 1e-12);
    }

    /// <summary>KHK, Gear Technical Reference, Table 4.3 (profile-shifted pair, m 3, 12 and 24 teeth, x 0.6 and 0.36): a 56.4999, addenda 4.420 and 3.700 as printed; from memory.</summary>
    [Fact]
    public void Tips_by_the_rule_are_as_published()
    {
        (GearData one, GearData two) = TipRule.WithClearance(new GearData(12, 3, TestRacks.A, 0.6), new GearData(24, 3, TestRacks.A, 0.36), 56.4999);
        Assert.Equal(36 + (2 * 4.420), one.TipDiameter!.Value, 0.001);
        Assert.Equal(72 + (2 * 3.700), two.TipDiameter!.Value, 0.001);
    }

    /// <summary>Worked out by hand: (1 - y - x) m with y = (a - m (z2 - z1) / 2) / m, m 2, 20 in 60, x 0.1 and 0.2, a 40.1.</summary>
    [Fact]
    public void Tips_by_the_rule_in_a_ring()
    {
        (GearData one, GearData two) = TipRule.WithClearance(new GearData(20, 2, TestRacks.A, 0.1), new RingData(60, 2, TestRacks.A, 150, null, 0.2), 40.1);
        Assert.Equal(40 + (4 * (1 - 0.05 - 0.2)), one.TipDiameter!.Value, 1e-12);
        Assert.Equal(120 - (4 * (1 - 0.05 - 0.1)), two.TipDiameter!.Value, 1e-12);
    }

    /// <summary>What is refused names the bound: just beyond it there is a distance.</summary>
    [Fact]
    public void Backlashes_out_of_reach_name_what_is_in_reach()
    {
        ExternalGear thin = ExternalGear.Create(new GearData(40, 2, TestRacks.A with { Dedendum = 1.1 }, -0.9, 1, 78.8));
        double least = Limit(thin, thin, 0);
        Assert.True(least > 0.1);
        GearPair.DistanceFor(thin, thin, least + 1e-6);
        Assert.Equal(least, Limit(thin, thin, least - 1e-6), 1e-9);

        ExternalGear gear = ExternalGear.Create(new GearData(20, 2, TestRacks.A));
        double most = Limit(gear, gear, 1e9);
        Assert.True(most is > 10 and < 1e9);
        GearPair.DistanceFor(gear, gear, most * (1 - 1e-9));

        RingGear ring = RingGear.Create(new RingData(60, 2, TestRacks.A, 150));
        double widest = Limit(gear, ring, 50);
        Assert.True(widest is > 0.1 and < 50);
        GearPair.DistanceFor(gear, ring, widest - 1e-6);
        Assert.Equal(widest, Limit(gear, ring, widest + 1e-6), 1e-9);

        RackBar rack = RackBar.Create(new RackBarData(2, TestRacks.A, 60, 10));
        Assert.Equal(0, Limit(gear, rack, -0.5));
        Assert.Equal(20, GearPair.DistanceFor(gear, rack, 0), 1e-12);

        static double Limit(Toothing one, Toothing other, double backlash)
        {
            GearGeometryException refused = Assert.Throws<GearGeometryException>(() => GearPair.DistanceFor(one, other, backlash));
            Assert.Equal("backlash-out-of-reach", refused.ShapeCase);
            return refused.Limit;
        }
    }

    [Fact]
    public void Tips_by_the_rule_keep_the_racks_clearance() => Gen.Select(
        Gen.OneOf(RandomPairs.Any.Select(pair => (GearPair)pair), RandomOtherPairs.Rings.Select(pair => (GearPair)pair)), Gen.Bool).Sample(
        (pair, exchanged) =>
        {
            (GearData one, GearData two) = ((GearData)pair.First.Data with { Thinning = 0 }, (GearData)pair.Second.Data with { Thinning = 0 });
            (one, two) = exchanged ? (two, one) : (one, two);
            (one, two) = TipRule.WithClearance(one, two, pair.CentreDistance);
            if (TryPair(one, two, pair.CentreDistance) is { } ruled)
            {
                double clearance = (one.Rack.Dedendum - one.Rack.Addendum) * one.Module;
                Assert.Equal(clearance, ruled.FirstTipClearance, 1e-10);
                Assert.Equal(clearance, ruled.SecondTipClearance, 1e-10);
            }
        },
        iter: Count.Of(1000));

    [Fact]
    public void Tips_by_the_rule_need_a_pair()
    {
        var ring = new RingData(50, 1, TestRacks.A, 60);
        Assert.Equal("two-rings", Assert.Throws<GearGeometryException>(() => TipRule.WithClearance(ring, ring, 15)).ShapeCase);
    }

    private static GearPair? TryThinned(GearPair pair, double first, double second) => TryPair(
        pair.First.Data with { Thinning = first }, pair.Second.Data with { Thinning = second }, pair.CentreDistance);

    private static GearPair? TryPair(ToothData one, ToothData two, double distance)
    {
        try
        {
            GearPair pair = GearPair.At(Made(one), Made(two), distance);
            return pair.First.IsPointed || pair.Second.IsPointed ? null : pair;
        }
        catch (GearGeometryException)
        {
            return null;
        }

        static Toothing Made(ToothData data) => data is RackBarData rack ? RackBar.Create(rack) : Gear.Of((GearData)data);
    }
}
