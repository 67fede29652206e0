using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Teeth;

/// <summary>What must hold for every gear that can exist.</summary>
public sealed class RandomGearTests
{
    private const int Gears = 4000;

    [Fact]
    public void Outlines_close_run_counter_clockwise_and_keep_their_radii() => RandomGears.Legal.Sample(
        gear =>
        {
            Outline outline = gear.Outline();
            List<Point> points = [.. outline.Pattern.SelectMany(curve => Along(curve, 24))];
            Assert.All(points, p => Assert.True(double.IsFinite(p.X) && double.IsFinite(p.Y)));
            double twiceArea = points.Zip(points.Skip(1), (a, b) => (a.X * b.Y) - (a.Y * b.X)).Sum();
            double least = points.Min(p => p.Radius);
            double most = points.Max(p => p.Radius);

            // A sector between the root and the tip circle, material inside.
            Assert.InRange(twiceArea * gear.Teeth / Math.PI, least * least * 2 * 0.9, most * most * 2);
            Assert.Equal(gear.RootRadius, least, 1e-11 * (1 + gear.RootRadius));
            Assert.Equal(gear.TipRadius, most, 1e-11 * (1 + gear.TipRadius));
            Point end = outline.Pattern[^1].EndPoint;
            Assert.Equal(0, end.DistanceTo(Motion.TurnStep(1, gear.Teeth).Apply(outline.Pattern[0].StartPoint)), 1e-11 * (1 + end.Radius));
        },
        iter: Gears);

    [Fact]
    public void Each_side_stays_in_its_half_pitch_and_rises_steadily() => RandomGears.Legal.Sample(
        gear =>
        {
            double half = Math.PI / gear.Teeth;
            List<Point> side = [.. Along(gear.Fillet, 40), .. Along(gear.Flank, 40)];
            const double slack = 1e-10;
            Assert.All(side, p => Assert.InRange(p.Angle, -half - slack, slack));
            Assert.All(side.Zip(side.Skip(1)), pair => Assert.True(pair.Second.Radius >= pair.First.Radius - (slack * gear.TipRadius)));
            Assert.All(side.Where(p => p.Radius > gear.RootRadius * (1 + 1e-7)), p => Assert.Equal(p.Angle, gear.SideAngleAt(p.Radius), 1e-7));
        },
        iter: Gears);

    [Fact]
    public void Curves_meet_tangentially_except_at_tip_and_undercut() => RandomGears.Legal.Sample(
        gear =>
        {
            Vector rootDirection = Point.Polar(1, gear.Fillet.StartPoint.Angle) - default(Point);
            Assert.Equal(0, rootDirection.Dot(gear.Fillet.TangentAt(gear.Fillet.Start)), 1e-9);
            double kink = gear.Fillet.TangentAt(gear.Fillet.End).Cross(gear.Flank.TangentAt(gear.Flank.Start));
            if (gear.Undercut is null)
            {
                Assert.Equal(0, kink, 1e-9);
                Assert.True(gear.Fillet.TangentAt(gear.Fillet.End).Dot(gear.Flank.TangentAt(gear.Flank.Start)) > 0);
            }
            else
            {
                // An outside corner of the tooth: a turn to the left on a counter-clockwise way.
                Assert.True(kink > -1e-9);
                Assert.True(gear.Undercut.Depth >= 0);
                Assert.Equal(2 * gear.FormRadius, gear.Undercut.FormDiameter);
            }

            Assert.Equal(0, gear.Fillet.EndPoint.DistanceTo(gear.Flank.StartPoint), 1e-11 * (1 + gear.TipRadius));
        },
        iter: Gears);

    [Fact]
    public void Thickness_on_the_reference_circle_is_the_formula_where_the_involute_crosses_it() => RandomGears.Legal.Sample(
        gear =>
        {
            if (gear.ReferenceRadius <= gear.FormRadius || gear.ReferenceRadius >= gear.TipRadius)
            {
                return;
            }

            Point p = gear.Flank.PointAt(Math.Tan(gear.PressureAngle));
            GearData d = gear.Data;
            double thickness = (d.Module * ((Math.PI / 2) + (2 * d.ProfileShift * Math.Tan(d.Rack.PressureAngle)))) - d.Thinning;
            Assert.Equal(gear.ReferenceRadius, p.Radius, 1e-12 * gear.ReferenceRadius);
            Assert.Equal(thickness, -2 * p.Angle * p.Radius, 1e-12 * gear.ReferenceRadius);
            Assert.Equal(thickness, gear.ToothThickness, 1e-12 * gear.ReferenceRadius);
            Assert.Equal(gear.IsPointed ? 0 : -2 * gear.Flank.EndPoint.Angle * gear.TipRadius, gear.TipThickness, 1e-10 * gear.TipRadius);
        },
        iter: Gears);

    [Fact]
    public void The_neck_is_the_least_thickness_below_the_form_circle() => RandomGears.Legal.Sample(
        gear =>
        {
            double least = Along(gear.Fillet, 2000).Min(p => -2 * p.Angle * p.Radius);
            double atNarrowest = Along(gear.Fillet, 2000).MaxBy(p => p.Angle) is var neck ? -2 * neck.Angle * neck.Radius : 0;
            Assert.True(gear.NeckThickness > 0);

            // Stated where the tooth's angle is least; its arc is a shade smaller a little further in.
            Assert.Equal(atNarrowest, gear.NeckThickness, 0.003 * gear.Module);
            Assert.InRange(gear.NeckThickness, least - (1e-9 * gear.Module), double.PositiveInfinity);
        },
        iter: 500);

    [Fact]
    public void Undercut_depth_is_what_the_fillet_takes_off_the_involutes_foot() => RandomGears.Legal.Where(gear => gear.Undercut is not null).Sample(
        gear =>
        {
            // The fillet before it is cut off at the crossing runs on to the end of the rack's straight flank; find it on the base circle.
            Trochoid whole = gear.Fillet with { EndNormal = (Math.PI / 2) - gear.PressureAngle };
            (double low, double high) = (0, whole.EndNormal);
            for (int i = 0; i < 100; i++)
            {
                double middle = (low + high) / 2;
                (low, high) = whole.PointAt(middle).Radius < gear.BaseRadius ? (middle, high) : (low, middle);
            }

            Point foot = gear.Flank.PointAt(0);
            double depth = (whole.PointAt(low).Angle - foot.Angle) * gear.BaseRadius;
            Assert.Equal(Math.Max(0, depth), gear.Undercut!.Depth, 1e-9 * gear.BaseRadius);
        },
        iter: 1000);

    private static IEnumerable<Point> Along(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
