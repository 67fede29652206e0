using GearBlanks.Curves;
using GearBlanks.Curves.Offsets;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Rolling;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Rolling;

/// <summary>Faults of known size show as theory says.</summary>
public sealed class FaultTests
{
    private const double Arcsecond = Math.PI / 180 / 3600;

    // An eccentric gear's base circle moves along the line of action by 2 e from end to end: F. L. Litvin and A. Fuentes, Gear Geometry and Applied Theory, 2nd ed.
    // 2004, ch. 9; from memory. Both flanks without play: the axes' distance follows the centre itself.
    [Theory]
    [InlineData(0.05, 0)]
    [InlineData(0, 0.05)]
    [InlineData(0.1, 0)]
    public void An_eccentric_bore(double first, double second)
    {
        (Toothing one, Toothing other) = Pair(24, 36, 0.03);
        double e = first + second;
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 30.2)
        {
            FirstEccentricity = new Vector(first, 0),
            SecondEccentricity = new Vector(0, second),
            WithDoubleFlank = true,
        });
        double working = Math.Acos(30 * Math.Cos(20 * Math.PI / 180) / 30.2);
        Assert.Equal(2 * e, report.DoubleFlank!.Distance.Total, 0.02 * 2 * e);

        // An angle of the driven gear; at its working circle 2 e / cos alpha_w, at its reference circle 2 e / cos alpha.
        Assert.Equal(2 * e / Math.Cos(working), report.Left.Total * report.WorkingRadius, 0.02 * 2 * e);
        Assert.Equal(2 * e / Math.Cos(working), report.Right.Total * report.WorkingRadius, 0.02 * 2 * e);
        Assert.Equal(2 * e / Math.Cos(20 * Math.PI / 180), report.Left.Total * report.ReferenceRadius, 0.02 * 2 * e);
    }

    [Fact]
    public void An_eccentric_outline_is_an_eccentric_gear()
    {
        (Toothing one, Toothing other) = Pair(24, 36, 0.03);
        var off = new Vector(0.05, 0);
        RollReport posed = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 30.2) { FirstEccentricity = off, SecondEccentricity = off });
        RollReport moved = RollTest.Of(new RollRequest(
            RollGear.OfOutline("one", one.Outline().Moved(Motion.Shift(off))), RollGear.OfOutline("other", other.Outline().Moved(Motion.Shift(off))), 30.2));
        for (int i = 0; i < posed.Positions; i += 7)
        {
            Assert.Equal(posed.Track[i].Leading, moved.Track[i].Leading, 0.1 * Arcsecond);
            Assert.Equal(posed.Track[i].Trailing, moved.Track[i].Trailing, 0.1 * Arcsecond);
        }
    }

    // One tooth turned about the gear's axis by an arc of 10 um on the reference circle: as it drives, the mate leads by the same arc.
    [Fact]
    public void A_tooth_moved()
    {
        (Toothing one, Toothing other) = Pair(20, 40, 0.03);
        const double moved = 0.010;
        Outline outline = one.Outline();
        Motion[] turns = [.. Enumerable.Range(0, 20).Select(i => Motion.Turn((2 * Math.PI * i / 20) + (i == 5 ? moved / 10 : 0)))];
        List<Curve> curves = [];
        for (int i = 0; i < 20; i++)
        {
            // The root circle's piece joins the tooth to the next one: drawn anew between their feet.
            curves.AddRange(outline.Pattern[..^1].Select(curve => curve.Moved(turns[i])));
            double from = curves[^1].EndPoint.Angle;
            double to = outline.Pattern[0].StartPoint.Angle + (2 * Math.PI * (i + 1) / 20) + (i + 1 == 5 ? moved / 10 : 0);
            double sweep = to - from - (2 * Math.PI * Math.Round((to - from) / (2 * Math.PI)));
            curves.Add(new Arc(default, outline.Pattern[0].StartPoint.Radius, from, sweep));
        }

        RollReport report = RollTest.Of(new RollRequest(RollGear.OfOutline("one", new Outline([.. curves])), RollGear.Of("other", other), 30) { Length = RollLength.HuntingPeriod });

        // Driving counter-clockwise on its left flanks it pushes ahead; on the other side it lets the mate fall back only where its neighbours let go.
        Assert.InRange(Math.Max(report.Left.Total, report.Right.Total) * 20, moved - 0.0002, moved + 0.0002);
        Assert.InRange(Math.Min(report.Left.Total, report.Right.Total) * 20, 0.001, moved + 0.0002);
        Assert.Null(report.LostAt);
    }

    // Half a degree off: base pitches differ by m pi (cos 20 - cos 20.5), which each change of teeth makes up for.
    [Fact]
    public void A_pressure_angle_half_a_degree_off()
    {
        Toothing one = Toothing.Of(new GearData(20, 1, TestRacks.Iso('A', 20), 0, 0.03));
        Toothing other = Toothing.Of(new GearData(40, 1, TestRacks.Iso('A', 20.5), 0, 0.03));
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 30));
        double off = Math.PI * (Math.Cos(20 * Math.PI / 180) - Math.Cos(20.5 * Math.PI / 180));
        double normal = report.Left.ToothToTooth * 20 * Math.Cos(20.5 * Math.PI / 180);
        Assert.InRange(normal, 0.5 * off, 1.7 * off);
        Assert.True(report.Left.Total * 20 > 0.004);
        Assert.Null(report.LostAt);
    }

    // needs: each outline moves inward by k / 2 along its normal, so the pair gains 2 k of normal backlash (k a gear: two flanks, half a kerf each).
    [Theory]
    [InlineData(0, 0, 30)]
    [InlineData(0.4, 0.3, 30.6)]
    public void A_kerf_that_is_not_compensated(double firstShift, double secondShift, double distance)
    {
        const double kerf = 0.15;
        Toothing one = Toothing.Of(new GearData(20, 1, TestRacks.A, firstShift, 0.03));
        Toothing other = Toothing.Of(new GearData(40, 1, TestRacks.A, secondShift, 0.03));
        GearPair pair = GearPair.At(one, other, distance);
        RollReport report = RollTest.Of(new RollRequest(Cut(one, kerf), Cut(other, kerf), distance));
        double expected = pair.CircumferentialBacklash + (2 * kerf / Math.Cos(pair.WorkingPressureAngle));
        Assert.Equal(expected, report.Backlash.Least * report.WorkingRadius, 0.001);
        Assert.Equal(expected, report.Backlash.Greatest * report.WorkingRadius, 0.001);
    }

    [Fact]
    public void A_pair_too_close()
    {
        (Toothing one, Toothing other) = Pair(20, 40, 0.02);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 29.9) { WithDoubleFlank = true });
        GearPair pair = GearPair.At(one, other, 29.9);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Least * report.WorkingRadius, 1e-6);
        Assert.Equal(RollObstacle.Flanks, report.Interference!.Kind);
        Assert.Equal(-pair.NormalBacklash, report.Interference.Depth, 1e-4);
        Assert.Equal(GearPair.ZeroBacklashDistance(one, other)!.Value, report.DoubleFlank!.Least, 1e-5);
        Assert.False(report.Runs);
        Assert.Contains(RollCheck.Of(report, "pair", TestLimits.Common.Roll), finding => finding is { Name: "roll-backlash", Level: Level.Fails });
    }

    // Beside the flanks fillets are in the way here too: what counts is how far apart it turns.
    [Theory]
    [InlineData(29.7)]
    [InlineData(29.8)]
    public void A_pair_far_too_close(double distance)
    {
        (Toothing one, Toothing other) = Pair(20, 40, 0.02);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), distance));
        GearPair pair = GearPair.At(one, other, distance);
        Assert.Equal(pair.CircumferentialBacklash, report.Backlash.Least * report.WorkingRadius, 0.001);
        Assert.Equal(RollObstacle.Flanks, report.Interference!.Kind);
        Finding play = Assert.Single(RollCheck.Of(report, "pair", TestLimits.Common.Roll), finding => finding.Name == "roll-backlash");
        double opened = Advice.NumbersIn(play.Advice!)[0];
        Assert.InRange(distance + opened, GearPair.ZeroBacklashDistance(one, other)!.Value - 0.03, GearPair.ZeroBacklashDistance(one, other)!.Value + 0.1);
    }

    [Fact]
    public void Too_far_apart_contact_is_lost_or_never_made()
    {
        (Toothing one, Toothing other) = Pair(20, 40, 0.02);
        RollReport report = RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 31.8));
        Assert.NotNull(report.LostAt);
        Assert.False(report.Runs);
        Assert.Contains(RollCheck.Of(report, "pair", TestLimits.Common.Roll), finding => finding is { Name: "roll-contact", Level: Level.Fails });
        var refused = Assert.Throws<GearGeometryException>(() => RollTest.Of(new RollRequest(RollGear.Of("one", one), RollGear.Of("other", other), 32.5)));
        Assert.Equal("out-of-reach", refused.ShapeCase);
    }

    private static (Toothing One, Toothing Other) Pair(int first, int second, double thinning) => (
        Toothing.Of(new GearData(first, 1, TestRacks.A, 0, thinning)), Toothing.Of(new GearData(second, 1, TestRacks.A, 0, thinning)));

    // What a beam of this width leaves of the nominal outline: its parallel half a kerf inside.
    private static RollGear Cut(Toothing gear, double kerf) => RollGear.OfOutline("cut", OutlineOffset.Of(gear.Outline(), new Beam(kerf / 2, kerf / 2), outward: false).Shape!);
}
