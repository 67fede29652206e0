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
