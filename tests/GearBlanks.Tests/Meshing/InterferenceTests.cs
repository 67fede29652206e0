using CsCheck;
using GearBlanks.Meshing;
using GearBlanks.Tests.Properties;

namespace GearBlanks.Tests.Meshing;

/// <summary>What is said of interference, against polygons that are rolled and pushed into one another.</summary>
public sealed class InterferenceTests
{
    private const int Steps = 240;

    [Fact]
    public void Fillet_clearance_in_a_ring_is_what_polygons_show() => RandomOtherPairs.Rings
        .Where(pair => pair.FirstTipClearance > 0.01 && pair.SecondTipClearance > 0.01).Sample(
        pair =>
        {
            var rolling = new RollingPolygons(pair);
            double working = Math.Max(pair.Pinion.FormRadius, Math.Min(pair.FirstWorkingRadius, (pair.Pinion.FormRadius + pair.Pinion.TipRadius) / 2));
            Same(pair.FirstFilletClearance, rolling.AtGear(working, Steps).Below, rolling.AtGear(pair.Pinion.FormRadius, Steps).Below, pair);
            working = Math.Min(pair.Ring.FormRadius, Math.Max(pair.SecondWorkingRadius, (pair.Ring.FormRadius + pair.Ring.TipRadius) / 2));
            Same(pair.SecondFilletClearance, rolling.AtOther(working, Steps).Below, rolling.AtOther(pair.Ring.FormRadius, Steps).Below, pair);
        },
        iter: Count.Of(60));

    [Fact]
    public void Fillet_clearance_over_a_rack_is_what_polygons_show() => RandomOtherPairs.Bars
        .Where(pair => pair.FirstTipClearance > 0.01 && pair.SecondTipClearance > 0.01).Sample(
        pair =>
        {
            var rolling = new RollingPolygons(pair);
            double working = Math.Max(pair.Gear.FormRadius, pair.FirstWorkingRadius);
            Same(pair.FirstFilletClearance, rolling.AtGear(working, Steps).Below, rolling.AtGear(pair.Gear.FormRadius, Steps).Below, pair);
            working = Math.Max(pair.Rack.FormHeight, pair.CentreDistance - pair.FirstWorkingRadius);
            Same(pair.SecondFilletClearance, rolling.AtOther(working, Steps).Below, rolling.AtOther(pair.Rack.FormHeight, Steps).Below, pair);
        },
        iter: Count.Of(60));

    [Fact]
    public void A_pinion_runs_in_a_ring_where_nothing_is_said_to_interfere_and_only_there()
    {
        (int free, int trochoid, int fillet) = (0, 0, 0);
        Gen.Select(RandomOtherPairs.Rings.Array[20], Gen.Int[0, 2]).Select(Often).Sample(
            pair =>
            {
                double m = pair.Ring.Module;
                var rolling = new RollingPolygons(pair);
                double seen = Math.Min(rolling.AtGear(0, Steps).Anywhere, rolling.AtOther(0, Steps).Anywhere) / m;
                double fillets = Math.Min(pair.FirstFilletClearance ?? m, pair.SecondFilletClearance ?? m) / m;
                double tips = Math.Min(pair.FirstTipClearance, pair.SecondTipClearance) / m;
                double corners = (pair.TrochoidClearance ?? m) / m;
                double told = Math.Min(corners, Math.Min(fillets, tips));
                if (told >= 0)
                {
                    Interlocked.Increment(ref free);
                    Assert.True(seen > -0.0015, $"{seen} {Told(pair)}");
                }
                else if (told < -0.01)
                {
                    Interlocked.Increment(ref corners < -0.01 ? ref trochoid : ref fillet);
                    Assert.True(seen < -0.0015, $"{seen} {Told(pair)}");
                }
            },
            iter: 90);

        // Of ninety some ten of each come; by chance far fewer.
        Assert.True(free > 3 && trochoid > 1 && fillet > 0, $"{free} free, {trochoid} at the tips, {fillet} at the fillets");

        static RingPair Often(RingPair[] pairs, int kind) => (kind switch
        {
            0 => pairs.FirstOrDefault(pair => pair.TrochoidClearance < 0),
            1 => pairs.FirstOrDefault(pair => pair.TrochoidClearance is null or > 0 && pair.FirstFilletClearance is null or >= 0
                && pair.SecondFilletClearance is null or >= 0 && pair.FirstTipClearance > 0 && pair.SecondTipClearance > 0),
            _ => pairs.FirstOrDefault(pair => pair.FirstFilletClearance < 0 || pair.SecondFilletClearance < 0),
        }) ?? pairs[0];
    }

    // Where the ring's tip has no involute to touch it digs into the pinion, unless an undercut lets it pass.
    [Fact]
    public void Involute_interference_digs_in_or_finds_an_undercut() => RandomOtherPairs.Rings.Where(pair => pair.InvoluteClearance < -0.02 * pair.Ring.Module).Sample(
        pair => Assert.True(pair.FirstFilletClearance < 0 || pair.Pinion.Undercut is not null, Told(pair)),
        iter: Count.Of(300));

    [Fact]
    public void A_pinion_can_be_moved_in_where_nothing_is_said_to_be_trimmed_and_only_there()
    {
        (int free, int caught) = (0, 0);
        Gen.Select(RandomOtherPairs.Rings.Where(Runs).Array[20], Gen.Bool)
            .Select((pairs, trimmed) => pairs.FirstOrDefault(pair => trimmed == (pair.TrimmingClearance < 0)) ?? pairs[0]).Sample(
            pair =>
            {
                double m = pair.Ring.Module;
                double seen = new RollingPolygons(pair).MovingIn(24, 60) / m;
                double told = (pair.TrimmingClearance ?? m) / m;
                if (told >= 0)
                {
                    Interlocked.Increment(ref free);
                    Assert.True(seen > -0.0015, $"{seen} {Told(pair)}");
                }
                else if (told < -0.03)
                {
                    Interlocked.Increment(ref caught);
                    Assert.True(seen < -0.0015, $"{seen} {Told(pair)}");
                }
            },
            iter: 60);
        Assert.True(free > 10 && caught > 10, $"{free} go in, {caught} are caught");

        static bool Runs(RingPair pair) => pair.TrochoidClearance is null or > 0 && pair.FirstFilletClearance is null or >= 0
            && pair.SecondFilletClearance is null or >= 0 && pair.FirstTipClearance > 0 && pair.SecondTipClearance > 0;
    }

    private static void Same(double? told, double toWorking, double toForm, GearPair pair)
    {
        double m = pair.First.Module;
        double? seen = toWorking < -0.0005 * m ? toWorking : double.IsPositiveInfinity(toForm) ? null : toForm;
        if (told < -0.05 * m)
        {
            // So deep in the tooth, the nearest edge may be another one.
            Assert.True(seen < -0.02 * m, $"told {told}, seen {seen}");
        }
        else if (told is null || seen is null)
        {
            // A corner that only grazes the form circle is on either side of it by rounding.
            Assert.True((told is null && seen is null) || (told ?? seen) < 0.03 * m, $"told {told}, seen {seen}");
        }
        else
        {
            // Where it comes nearest as it crosses the form circle, the polygons see it up to one step later.
            Assert.Equal(told.Value / m, seen.Value / m, 0.006 + (0.03 * Math.Abs(told.Value / m)));
        }
    }

    private static string Told(RingPair pair) =>
        $"z {pair.Pinion.Teeth} {pair.Ring.Teeth} m {pair.Ring.Module} a {pair.CentreDistance} fillets {pair.FirstFilletClearance} {pair.SecondFilletClearance} "
        + $"tips {pair.FirstTipClearance} {pair.SecondTipClearance} involute {pair.InvoluteClearance} trochoid {pair.TrochoidClearance} trimming {pair.TrimmingClearance}";
}
