using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Teeth;

/// <summary>What must hold for every rack bar.</summary>
public sealed class RackBarTests
{
    private const int Bars = 2000;

    [Fact]
    public void Outlines_close_run_counter_clockwise_and_keep_their_sizes() => RandomBars.Legal.Sample(Judge, iter: Bars);

    [Fact]
    public void Tip_forms_keep_all_that() => RandomBars.Formed.Sample(Judge, iter: Bars);

    [Fact]
    public void Curves_are_tangent_but_for_tip_corners_that_turn_outward() => Gen.OneOf(RandomBars.Legal, RandomBars.Formed).Sample(
        bar =>
        {
            Curve[] rising = Rising(bar);
            for (int i = 0; i + 1 < rising.Length; i++)
            {
                double turn = rising[i].TangentAt(rising[i].End).Cross(rising[i + 1].TangentAt(rising[i + 1].Start));
                bool isRound = rising[i] is Arc || rising[i + 1] is Arc;

                // A short piece far out keeps fewer digits of its direction.
                double slack = 1e-9 + (1e-14 * (bar.Length + bar.Module) / Math.Min(rising[i].Length, rising[i + 1].Length));
                Assert.True(isRound ? Math.Abs(turn) < slack : turn > -slack, $"turns by {turn} before {rising[i + 1]}");
            }

            if (rising[^1] is Arc round)
            {
                Assert.Equal(0, round.TangentAt(round.End).Y, 1e-12 + (1e-14 * (bar.Length + bar.Module) / round.Radius));
                Assert.Equal(bar.TipHeight, round.Centre.Y + round.Radius, 1e-12 * (1 + bar.Length));
            }
        },
        iter: Bars);

    [Fact]
    public void Thickness_on_the_reference_line_is_the_formula() => RandomBars.Formed.Sample(
        bar =>
        {
            RackBarData d = bar.Data;
            double thickness = (d.Module * ((Math.PI / 2) + (2 * d.ProfileShift * Math.Tan(d.Rack.PressureAngle)))) - d.Thinning;
            Assert.Equal(thickness, bar.ToothThickness, 1e-12 * bar.Length);
            if (bar.FormHeight < 0 && bar.TipFormHeight > 0)
            {
                Assert.Equal(thickness, 2 * bar.SideAt(0), 1e-12 * bar.Length);
            }

            Assert.Equal(bar.TipThickness, 2 * bar.SideAt(bar.TipHeight), 1e-5 * bar.Module);
        },
        iter: Bars);

    [Fact]
    public void A_relief_recedes_by_its_amount_and_a_chamfer_stands_at_45_degrees()
    {
        var data = new RackBarData(2, TestRacks.A, 30, 8);
        double alpha = TestRacks.Radians(20);
        var relieved = RackBar.Create(data with { Tip = new TipForm(Relief: new TipRelief(0.05, 0.8)) });
        Assert.Equal(0.8, relieved.TipFormHeight);
        double nominal = (Math.PI / 2) - (2 * Math.Tan(alpha));
        Assert.Equal(0.05, (nominal - relieved.SideAt(2)) * Math.Cos(alpha), 1e-12);
        Assert.Equal(0.025, ((Math.PI / 2) - (1.4 * Math.Tan(alpha)) - relieved.SideAt(1.4)) * Math.Cos(alpha), 1e-12);
        Assert.Equal((Math.PI / 2) - (0.8 * Math.Tan(alpha)), relieved.SideAt(0.8), 1e-12);

        var chamfered = RackBar.Create(data with { Tip = new TipForm(Chamfer: 0.3) });
        Assert.Equal(1.7, chamfered.TipFormHeight, 1e-12);
        Assert.Equal(0.3, chamfered.SideAt(1.7) - chamfered.SideAt(2), 1e-12);
        Assert.Equal((Math.PI / 2) - (1.7 * Math.Tan(alpha)), chamfered.SideAt(1.7), 1e-12);
    }

    [Theory]
    [InlineData(20, 0.5, 0.4)]
    [InlineData(30, 0.3, 0.2)]
    [InlineData(14.5, 0.6, 0.6)]
    public void Rounds_are_what_shrinking_and_growing_leaves(double degrees, double root, double tip)
    {
        BasicRack rack = new("bar", TestRacks.Radians(degrees), 1, 1.1, 0);
        var data = new RackBarData(2, rack, 10 * Math.PI, 8);
        Geometry Middle(Geometry shape) => OverlayNGRobust.Overlay(
            shape, Polygons.Of([new(-Math.PI, -6), new(Math.PI, -6), new(Math.PI, 6), new(-Math.PI, 6)]), SpatialFunction.Intersection);
        Geometry sharp = Polygons.Of(RackBar.Create(data).Outline());
        Geometry rounded = Polygons.Of(RackBar.Create(data with { Rack = rack with { FilletRadius = root / 2 }, Tip = new TipForm(tip) }).Outline());
        Geometry expected = Polygons.RoundedInside(Polygons.RoundedOutside(sharp, tip), root);
        Assert.InRange(Polygons.Apart(Middle(rounded), Middle(expected)), 0, 2e-5);
        Assert.True(Polygons.Apart(Middle(rounded), Middle(sharp)) > 1e-4);
    }

    // A bar of whole pitches whose gaps are full rounds has no root line; one a hair shorter still counts its teeth and closes.
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void Full_rounds_and_whole_pitches_close(int teeth)
    {
        double alpha = TestRacks.Radians(20);
        double widest = ((Math.PI / 4) - (1.25 * Math.Tan(alpha))) * Math.Cos(alpha) / (1 - Math.Sin(alpha));
        foreach (double module in (double[])[0.05, 1, 50])
        {
            foreach (double less in (double[])[0, 1e-16, 1e-13, 1e-11, 9e-10, 1.1e-9, 1e-8])
            {
                foreach (double shorter in (double[])[0, 1e-13, 1e-11, 9e-10])
                {
                    var bar = RackBar.Create(new RackBarData(
                        module, TestRacks.A with { FilletRadius = widest - less }, teeth * Math.PI * module * (1 - (shorter / teeth)), 3 * module));
                    Assert.Equal(teeth, bar.Teeth);
                    Judge(bar);
                }
            }
        }
    }

    [Fact]
    public void The_same_racks_close_as_gears()
    {
        double alpha = TestRacks.Radians(20);
        double widest = ((Math.PI / 4) - (1.25 * Math.Tan(alpha))) * Math.Cos(alpha) / (1 - Math.Sin(alpha));
        foreach (double module in (double[])[0.05, 1, 50])
        {
            foreach (double less in (double[])[-9e-10, 0, 1e-16, 1e-13, 1e-11, 9e-10, 1.1e-9, 1e-8])
            {
                Outline outline = ExternalGear.Create(new GearData(8, module, TestRacks.A with { FilletRadius = widest - less }, 0.5)).Outline();
                Assert.All(OutlineFit.Fit(outline, 0.001 * module).Vertices, v => Assert.True(double.IsFinite(v.Point.X + v.Point.Y + v.Bulge)));
            }
        }
    }

    [Fact]
    public void Bars_continue_into_one_another()
    {
        var bar = RackBar.Create(new RackBarData(2, TestRacks.A, 5 * 2 * Math.PI, 8));
        Assert.Equal(5, bar.Teeth);
        Assert.Equal(-bar.Length / 2, bar.FirstTooth - (bar.Pitch / 2), 1e-12);
        var longer = RackBar.Create(new RackBarData(2, TestRacks.A, 38, 8));
        Assert.Equal(6, longer.Teeth);
        Assert.Equal(-15.707963267948966, longer.FirstTooth, 1e-12);
    }

    private static void Judge(RackBar bar)
    {
        double slack = 1e-11 * (1 + bar.Length + bar.Data.BackHeight);
        Outline outline = bar.Outline();
        List<Point> points = [.. outline.Pattern.SelectMany(curve => Along(curve, 8))];
        double twiceArea = points.Zip(points.Skip(1), (a, b) => (a.X * b.Y) - (a.Y * b.X)).Sum();
        double low = bar.Length * (bar.RootHeight + bar.Data.BackHeight);
        Assert.InRange(twiceArea / 2, low * (1 - 1e-9), low + (bar.Length * (bar.TipHeight - bar.RootHeight)));
        Assert.Equal(bar.TipHeight, points.Max(p => p.Y), slack);
        Assert.Equal(-bar.Data.BackHeight, points.Min(p => p.Y), slack);
        Assert.Equal(bar.Length / 2, points.Max(p => Math.Abs(p.X)), slack + (2e-9 * bar.Module));
        Assert.All(outline.Pattern, curve => Assert.True(curve.Length > 0));

        // Every point of a tooth lies where the side is told to be.
        foreach (Point p in points.Where(p => p.Y > bar.RootHeight + (1e-7 * bar.Module) && p.Y < bar.TipHeight - (1e-7 * bar.Module)))
        {
            double fromTooth = Math.Abs(Math.IEEERemainder(p.X - bar.FirstTooth, bar.Pitch));
            Assert.Equal(bar.SideAt(p.Y), fromTooth, 1e-6 * bar.Module);
        }

        Assert.All(OutlineFit.Fit(outline, 0.001 * bar.Module).Vertices, v => Assert.True(double.IsFinite(v.Point.X + v.Point.Y + v.Bulge)));
    }

    // The right side of the rightmost tooth, which comes first after the bar's right end.
    private static Curve[] Rising(RackBar bar) =>
        [.. bar.Outline().Pattern.Skip(2).SkipWhile(curve => curve is Line && Math.Abs(curve.TangentAt(0).Y) < 1e-6).TakeWhile(curve => curve.EndPoint.Y > curve.StartPoint.Y)];

    private static IEnumerable<Point> Along(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
