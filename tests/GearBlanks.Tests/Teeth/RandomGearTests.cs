using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Tests.Properties;

namespace GearBlanks.Tests.Teeth;

/// <summary>How the curves of a tooth meet and what is told of its neck and undercut, on random gears; their outlines are tried in Properties.</summary>
public sealed class RandomGearTests
{
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
        iter: Count.Of(4000));

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
        iter: Count.Of(500));

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
        iter: Count.Of(1000));

    private static IEnumerable<Point> Along(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
