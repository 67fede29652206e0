using System.Globalization;
using System.Text.RegularExpressions;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Teeth as measured beat teeth as drawn in every mesh, and what differs is told.</summary>
public sealed partial class MeasuredTeethTests
{
    private static readonly Job Drawn = TestJobs.Pair(TestJobs.Gear("pinion", 20, thinning: 0.02), TestJobs.Gear("wheel", 40, thinning: 0.02), 30);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(-0.03)]
    [InlineData(0.01)]
    [InlineData(0.05)]
    public void TheMeshHasTheBacklashOfTheMeasuredThickness(double thicker)
    {
        MountedGear drawn = Drawn.Resolved().Named("pinion");
        Mechanism measured = Measured(new JobMeasuredTeeth(TestJobs.At(20), drawn.Toothing.ToothThickness + thicker, null, 0)).Resolved();

        // At the reference distance the working circles are the reference circles.
        Assert.Equal(0.04 - thicker, measured.Meshes[0].Pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(drawn.Toothing, measured.Named("pinion").Toothing);
        Assert.Equal(((Gear)drawn.Toothing).TipRadius, ((Gear)measured.Meshes[0].Pair.First).TipRadius, 1e-12);
    }

    /// <summary>The length between two parallel lines that hold the polygon of the outline's middle teeth, and no formula.</summary>
    [Theory]
    [InlineData(20, 3, 0.07)]
    [InlineData(33, 4, 0.15)]
    [InlineData(57, 7, 0.02)]
    public void ASpanTakenOverTheOutlineGivesItsThickness(int teeth, int over, double thinning)
    {
        Job job = TestJobs.Pair(TestJobs.Gear("pinion", teeth, thinning: 0), TestJobs.Gear("wheel", 40, thinning: 0.02), (teeth + 40) / 2.0);
        ExternalGear cut = ExternalGear.Create(new GearData(teeth, 1, TestRacks.A, 0, thinning));
        Job measured = job.WithGear("pinion", gear => gear with { Measured = new JobMeasuredTeeth(TestJobs.At(20), null, Caliper(cut, over), over) });
        Assert.Equal(cut.ToothThickness, measured.Resolved().Named("pinion").Measured!.ToothThickness, 5e-6);
    }

    [Theory]
    [InlineData(0.005, Level.Ok)]
    [InlineData(-0.03, Level.Tight)]
    [InlineData(0.03, Level.Tight)]
    [InlineData(-0.15, Level.Fails)]
    public void WhatDiffersIsToldAndCanBeDrawn(double thicker, Level level)
    {
        double thickness = Drawn.Resolved().Named("pinion").Toothing.ToothThickness + thicker;
        Job measured = Measured(new JobMeasuredTeeth(TestJobs.At(20), thickness, null, 0));
        Finding finding = measured.Report().Findings.Single(one => one.Name == "tooth-thickness-disagreement");
        Assert.Equal((level, "gear pinion"), (finding.Level, finding.Place));
        Assert.Equal(Math.Abs(thicker), finding.Figure, 1e-12);
        if (level == Level.Ok)
        {
            return;
        }

        Match said = Said().Match(finding.Advice!);
        double shift = said.Groups[1].Success ? Number(said.Groups[1]) : 0;
        Job followed = measured.WithGear("pinion", gear => gear with { ProfileShift = shift, Thinning = Number(said.Groups[2]) });
        Assert.Equal(Level.Ok, followed.Report().Findings.Single(one => one.Name == "tooth-thickness-disagreement").Level);
    }

    [Fact]
    public void NothingIsToldWhereNothingWasMeasured() => Assert.DoesNotContain(Drawn.Report().Findings, one => one.Name == "tooth-thickness-disagreement");

    [Theory]
    [InlineData(0.4, 1, "span-beside-flank", "measure over 3 teeth, which is 7.")]
    [InlineData(16.0, 6, "span-beside-flank", "measure over 3 teeth")]
    [InlineData(30.0, 20, "span-too-wide", "measure over 3 teeth")]
    public void ALengthThatTouchesNoFlankIsRefused(double span, int over, string shapeCase, string says)
    {
        Problem problem = Assert.Single(Measured(new JobMeasuredTeeth(TestJobs.At(20), null, span, over)).Problems());
        Assert.Equal((20, "measured-span"), (problem.Place.Line, problem.Key));
        Assert.Contains(shapeCase, problem.Message, StringComparison.Ordinal);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    private static Job Measured(JobMeasuredTeeth measured) => Drawn.WithGear("pinion", gear => gear with { Measured = measured });

    // The jaws do not reach into the gaps beside. Over an even number of teeth the middle of a gap lies in the middle of the caliper, over an odd one a tooth.
    private static double Caliper(ExternalGear gear, int over)
    {
        var fine = new List<Point>();
        foreach (Curve curve in gear.Outline().Curves())
        {
            fine.AddRange(Enumerable.Range(0, 400).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 400))));
        }

        double middle = over % 2 == 1 ? 0 : Math.PI / gear.Teeth;
        double reach = over * Math.PI / gear.Teeth;
        double jaws = gear.ReferenceRadius - (0.3 * gear.Module);
        var between = fine.Where(point => point.DistanceTo(default) > jaws && Math.Abs(Math.IEEERemainder(Math.Atan2(point.Y, point.X) - middle, 2 * Math.PI)) < reach);
        double[] across = [.. between.Select(point => (point.Y * Math.Cos(middle)) - (point.X * Math.Sin(middle)))];
        return across.Max() - across.Min();
    }

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"draw the teeth so: (?:profile-shift = ([-\d.]+), )?thinning = ([\d.]+) mm")]
    private static partial Regex Said();
}
