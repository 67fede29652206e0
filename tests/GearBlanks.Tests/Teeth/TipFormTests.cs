using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>Round, chamfer and relief on external gears and rings.</summary>
public sealed class TipFormTests
{
    private const int Gears = 2000;

    private static readonly GearData External = new(20, 2, TestRacks.A);
    private static readonly RingData Ring = new(60, 2, TestRacks.A, 140);

    [Fact]
    public void Outlines_close_and_the_contour_is_the_side_that_is_told() => RandomTips.Gears.Sample(
        gear =>
        {
            Outline outline = gear.Outline();
            double outer = gear is RingGear ? gear.RootRadius : gear.TipRadius;
            double half = Math.PI / gear.Teeth;
            foreach (Curve curve in outline.Pattern)
            {
                foreach (Point p in Along(curve, 12))
                {
                    Assert.InRange(p.Angle, -half - 1e-10, (3 * half) + 1e-10);
                    double angle = Math.IEEERemainder(p.Angle, 2 * half);
                    double side = gear.SideAngleAt(p.Radius);
                    bool isOnLand = Math.Abs(p.Radius - gear.TipRadius) < 1e-7 * outer || Math.Abs(p.Radius - gear.RootRadius) < 1e-7 * outer;
                    Assert.True(isOnLand ? Math.Abs(angle) <= half + 1e-10 : Math.Abs(Math.Abs(angle) + side) < 1e-6, $"{curve} {p} {side}");
                }
            }

            ArcPath path = OutlineFit.Fit(outline, 0.001 * gear.Module);
            Assert.All(path.Vertices, v => Assert.True(double.IsFinite(v.Point.X + v.Point.Y + v.Bulge)));
        },
        iter: Gears);

    [Fact]
    public void A_round_touches_flank_and_tip_circle_and_no_curve_turns_into_the_tooth() => RandomTips.Gears.Sample(
        gear =>
        {
            Curve[] rising = Rising(gear);
            TipForm form = gear.Data.Tip!;
            bool isExternal = gear is ExternalGear;
            for (int i = 0; i + 1 < rising.Length; i++)
            {
                Vector one = rising[i].TangentAt(rising[i].End);
                Vector next = rising[i + 1].TangentAt(rising[i + 1].Start);
                bool isRound = rising[i + 1] is Arc;
                double turn = (isExternal ? 1 : -1) * one.Cross(next);

                // A short piece far out keeps fewer digits of its direction.
                double slack = 1e-9 + (1e-14 * gear.TipRadius / Math.Min(rising[i].Length, rising[i + 1].Length));
                Assert.True(one.Dot(next) > 0);
                Assert.True(isRound ? Math.Abs(turn) < slack : turn > -slack, $"{rising[i + 1]} turns by {turn}");
            }

            if (form.Round > Least(gear))
            {
                var round = (Arc)rising[^1];
                Assert.Equal(form.Round, round.Radius);
                Assert.Equal(gear.TipRadius, round.Centre.Radius + (isExternal ? form.Round : -form.Round), 1e-12 * gear.TipRadius);
                Assert.Equal(0, round.TangentAt(round.End).Dot(Vector.AtAngle(round.EndPoint.Angle)), 1e-9 + (1e-14 * gear.TipRadius / form.Round));
            }

            Assert.Equal(gear.TipThickness, -2 * rising[^1].EndPoint.Angle * gear.TipRadius, 1e-11 * gear.TipRadius);
        },
        iter: Gears);

    [Fact]
    public void The_relief_starts_at_nothing_and_recedes_by_its_amount_at_the_tip() =>
        RandomTips.Gears.Sample(
            gear =>
            {
                if (gear.Data.Tip is not { Round: 0, Chamfer: 0, Relief: { } relief } || relief.Amount <= Least(gear))
                {
                    return;
                }

                var piece = (Involute)Rising(gear)[^1];
                Assert.Equal(gear.TipFormRadius, relief.Start / 2, 1e-12 * gear.TipRadius);
                Assert.Equal(relief.Start / 2, piece.StartPoint.Radius, 1e-12 * gear.TipRadius);
                Assert.Equal(relief.Amount, Deviation(gear, piece.EndPoint), 1e-9 * gear.Module);
                Assert.Equal(0, Deviation(gear, piece.StartPoint), 1e-9 * gear.Module);
            },
            iter: Gears);

    [Theory]
    [InlineData(20, 0.02, 0.3, 0.005)]
    [InlineData(20, 0.02, 0.6, 0.005)]
    [InlineData(100, 0.02, 0.6, 0.005)]
    [InlineData(20, 0.1, 0.6, 0.015)]
    public void How_far_a_relief_is_from_linear_in_the_roll_angle(int teeth, double amount, double height, double share)
    {
        foreach (GearData data in (GearData[])[External with { Teeth = teeth }, Ring with { Teeth = teeth + 40, RimDiameter = 2 * (teeth + 50) }])
        {
            double tip = Gear.Of(data).TipRadius;
            double start = tip - ((data is RingData ? -1 : 1) * height * data.Module);
            Gear gear = Gear.Of(data with { Tip = new TipForm(Relief: new TipRelief(amount * data.Module, 2 * start)) });
            Curve piece = Rising(gear)[^1];
            (double from, double to) = (Roll(gear, start), Roll(gear, tip));
            double worst = Along(piece, 50).Max(p => Math.Abs(
                Deviation(gear, p) - (amount * data.Module * (Roll(gear, p.Radius) - from) / (to - from))));
            Assert.InRange(worst / (amount * data.Module), 0, share);
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.05)]
    public void A_chamfer_stands_at_45_degrees_to_the_radius_and_has_its_height(double height)
    {
        foreach (GearData data in (GearData[])[External, Ring])
        {
            Gear gear = Gear.Of(data with { Tip = new TipForm(Chamfer: height) });
            var line = (Line)Rising(gear)[^1];
            Assert.Equal(height, Math.Abs(line.To.Radius - line.From.Radius), 1e-12);
            Assert.Equal(Math.Sqrt(0.5), Math.Abs(line.TangentAt(0).Dot(Vector.AtAngle(line.From.Angle))), 1e-9);
            Assert.Equal(gear.TipRadius, line.To.Radius, 1e-12);
            Assert.Equal(gear.TipFormRadius, line.From.Radius, 1e-12);
        }
    }

    [Fact]
    public void Plain_forms_are_plain_corners()
    {
        foreach (GearData data in (GearData[])[External, Ring])
        {
            Gear plain = Gear.Of(data);
            foreach (TipForm form in (TipForm[])[new TipForm(), new TipForm(Relief: new TipRelief(0, 40)), new TipForm(1e-300)])
            {
                Assert.Equal(plain.Outline().Pattern.AsEnumerable(), Gear.Of(data with { Tip = form }).Outline().Pattern);
            }

            Assert.Equal(plain.TipRadius, plain.TipFormRadius);
        }
    }

    [Fact]
    public void Rounds_that_just_meet_leave_no_land()
    {
        foreach (GearData data in (GearData[])[External, Ring])
        {
            (double low, double high) = (0, 2.0);
            for (int i = 0; i < 60; i++)
            {
                double middle = (low + high) / 2;
                (low, high) = Record.Exception(() => Gear.Of(data with { Tip = new TipForm(middle) })) is null ? (middle, high) : (low, middle);
            }

            Gear gear = Gear.Of(data with { Tip = new TipForm(low) });
            Assert.Equal(0, gear.TipThickness, 1e-10);
            Assert.Equal(gear.TipRadius, gear.Outline().Pattern.SelectMany(c => Along(c, 50)).Select(p => p.Radius).MinBy(r => Math.Abs(r - gear.TipRadius)), 1e-12);
        }
    }

    private static double Deviation(Gear gear, Point p)
    {
        // The involute through the point has its foot where the point's angle less the involute function says; parallels are turned.
        double profile = Math.Acos(Math.Min(1, gear.BaseRadius / p.Radius));
        double inv = Math.Tan(profile) - profile;
        double atReference = Math.Tan(gear.PressureAngle) - gear.PressureAngle;
        double half = gear.ToothThickness / 2 / gear.ReferenceRadius;
        return gear.BaseRadius * (Math.Abs(gear is ExternalGear ? half + atReference - inv : half - atReference + inv) - Math.Abs(p.Angle));
    }

    // What is smaller is left out.
    private static double Least(Gear gear) => 1e-9 * gear.Module;

    private static double Roll(Gear gear, double radius) => Math.Sqrt((radius * radius / gear.BaseRadius / gear.BaseRadius) - 1);

    // Nominal flank and what follows up to the land, at the clockwise side.
    private static Curve[] Rising(Gear gear)
    {
        Involute flank = gear is ExternalGear external ? external.Flank : ((RingGear)gear).Flank;
        System.Collections.Immutable.ImmutableArray<Curve> pattern = gear.Outline().Pattern;
        int from = pattern.IndexOf(flank);
        int count = 1 + (gear.Data.Tip!.Relief?.Amount > Least(gear) ? 1 : 0) + (Math.Max(gear.Data.Tip.Round, gear.Data.Tip.Chamfer) > Least(gear) ? 1 : 0);
        return [.. pattern.Skip(from).Take(count)];
    }

    private static IEnumerable<Point> Along(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
