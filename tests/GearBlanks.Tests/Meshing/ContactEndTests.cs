using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>Where contact begins and ends, and how the flanks slide there, against the motion of points of the flanks.</summary>
public sealed class ContactEndTests
{
    /// <summary>
    /// Path of approach and recess, m 5, 20 degrees, 20 and 40 teeth, addendum 5 mm. S. Chand (Khurmi, Gupta), Theory of Machines, 2005 edition, Example 12.7
    /// (statement read, answers from memory): 12.65 and 11.5 mm as printed; greatest sliding speed 455.4 mm/s at 1.2 m/s as printed, 455.27 exactly.
    /// </summary>
    [Fact]
    public void Approach_recess_and_sliding_are_as_published()
    {
        BasicRack rack = TestRacks.A;
        GearPair pair = GearPair.At(ExternalGear.Create(new GearData(20, 5, rack)), ExternalGear.Create(new GearData(40, 5, rack)), 150);
        (ContactEnd root, ContactEnd tip) = pair.ContactEnds!.Value;
        Assert.Equal(12.65, -root.FromPitchPoint, 0.005);
        Assert.Equal(11.5, tip.FromPitchPoint, 0.011);

        // Sliding speed: of the first one's speed along its flank, w1 times its radius of curvature, the share that slides.
        double w1 = 1200 / pair.FirstWorkingRadius;
        double curvature = Math.Sqrt((root.FirstRadius * root.FirstRadius) - (pair.First is ExternalGear gear ? gear.BaseRadius * gear.BaseRadius : 0));
        Assert.Equal(455.2718826690935882431, Math.Abs(root.FirstSliding * w1 * curvature), 1e-6);
    }

    [Fact]
    public void External_flanks_touch_and_slide_as_said() => RandomPairs.Sound.Sample(pair => Check(pair, 1), iter: 200);

    [Fact]
    public void Flanks_in_a_ring_touch_and_slide_as_said() => RandomOtherPairs.Rings.Sample(pair => Check(pair, -1), iter: 200);

    [Fact]
    public void Flanks_over_a_rack_touch_and_slide_as_said() => RandomOtherPairs.Bars.Sample(pair => Check(pair, 0), iter: 200);

    [Theory]
    [InlineData(20, 40, 2)]
    [InlineData(40, 20, 1)]
    [InlineData(13, 87, 87)]
    [InlineData(24, 57, 19)]
    public void Teeth_meet_again_after_the_turns_that_are_said(int first, int second, int turns)
    {
        var a = ExternalGear.Create(new GearData(first, 1, TestRacks.A));
        var b = ExternalGear.Create(new GearData(second, 1, TestRacks.A));
        Assert.Equal(turns, GearPair.At(a, b, ((first + second) / 2.0) + 0.05).HuntingTurns);

        // Counted out: tooth 0 of the first meets gap k mod z2 at its k-th tooth.
        int met = Enumerable.Range(1, first * second).First(k => k % first == 0 && k % second == 0);
        Assert.Equal(met / first, turns);
    }

    // Velocities of two points that coincide, one of each body, by cross products in the plane: the pinion's centre is the origin, the mate's on +X.
    private static void Check(GearPair pair, int kind)
    {
        if (pair.ContactEnds is not { } ends)
        {
            Assert.Equal(0, pair.ContactRatio);
            return;
        }

        ExternalGear pinion = (ExternalGear)pair.First;
        double pitch = kind == 0 ? pinion.ReferenceRadius : pair.FirstWorkingRadius;
        double angle = pair.WorkingPressureAngle;
        Assert.Equal(pair.ContactRatio * Math.PI * pinion.Module * Math.Cos(pinion.PressureAngle), ends.AtTip.FromPitchPoint - ends.AtRoot.FromPitchPoint, 1e-9 * pitch);

        // The line of action runs through the pitch point, square to the common normal's direction at the working angle.
        var along = new Vector(Math.Sin(angle), Math.Cos(angle));
        foreach (ContactEnd end in (ContactEnd[])[ends.AtRoot, ends.AtTip])
        {
            Point p = new Point(pitch, 0) + (along * end.FromPitchPoint);
            Assert.Equal(end.FirstRadius, Math.Sqrt((p.X * p.X) + (p.Y * p.Y)), 1e-9 * pitch);
            var across = new Vector(along.Y, -along.X);
            var first = new Vector(-p.Y, p.X);
            Vector second;
            if (kind == 0)
            {
                second = new Vector(0, pitch);
                Assert.Equal(end.SecondRadius, pair.CentreDistance - p.X, 1e-9 * pitch);
            }
            else
            {
                double centre = kind * pair.CentreDistance;
                double speed = -kind * (double)pinion.Teeth / pair.Second.Teeth;
                second = new Vector(-p.Y, p.X - centre) * speed;
                Assert.Equal(end.SecondRadius, double.Hypot(p.X - centre, p.Y), 1e-9 * pair.SecondWorkingRadius);
            }

            // Along the normal both move alike; across it they slide.
            Assert.Equal(first.Dot(along), second.Dot(along), 1e-9 * pitch);
            (double own, double other) = (first.Dot(across), second.Dot(across));
            if (Math.Abs(own) > 1e-3 * pitch && Math.Abs(other) > 1e-3 * pitch)
            {
                Assert.Equal((own - other) / own, end.FirstSliding, 1e-6 * (1 + Math.Abs(end.FirstSliding)));
                Assert.Equal((other - own) / other, end.SecondSliding, 1e-6 * (1 + Math.Abs(end.SecondSliding)));
            }
        }
    }
}
