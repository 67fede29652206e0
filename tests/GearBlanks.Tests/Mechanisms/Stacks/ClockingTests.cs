using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Which tooth faces which gap, by turning every tooth; and screws that let a gear be put on otherwise.</summary>
public sealed class ClockingTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(37, 0)]
    [InlineData(200, 11)]
    public void The_named_tooth_stands_in_the_named_gap(double direction, double turned)
    {
        Job job = Chain([Gear("a", 20), Gear("b", 33), Gear("c", 17, 0.2)], [26.55, 25.3])
            .WithGear("a", gear => gear with { Turned = TestRacks.Radians(turned) });
        job = job with { Axes = job.Axes.SetItem(2, job.Axes[2] with { Position = job.Axes[1].Position!.Value + (Vector.AtAngle(TestRacks.Radians(direction)) * 25.3) }) };
        MechanismReport report = job.Report();
        var phases = MeshedPhases.Of(report.Mechanism);
        Assert.Equal(2, report.Stack.Teeth.Length);
        foreach (FacingTeeth teeth in report.Stack.Teeth)
        {
            (MountedGear gear, MountedGear mate) = (report.Mechanism.Named(teeth.ToothOf), report.Mechanism.Named(teeth.GapOf));

            // The tooth and the gap named are those nearest to the line of centres, each found among all by their angles.
            double towards = (mate.Axis.Position - gear.Axis.Position).Angle;
            Assert.Equal(Nearest(gear, towards, 0, phases), teeth.Tooth);
            int gap = Nearest(mate, towards + Math.PI, 0.5, phases);
            Assert.Equal((gap, (gap % mate.Toothing.Teeth) + 1), (teeth.Before, teeth.After));
            double beside = Math.IEEERemainder(towards - phases.AngleOf(gear) - (2 * Math.PI * (teeth.Tooth - 1) / gear.Toothing.Teeth), 2 * Math.PI);
            Assert.Equal(beside * report.Mechanism.Meshes.Single(mesh => mesh.Name == teeth.Mesh).WorkingPitch * gear.Toothing.Teeth / (2 * Math.PI), teeth.Offset, 1e-9);
        }
    }

    /// <summary>Seen from above with every gear in mesh, the one gear's mark lies between the other's two, all of them near the pitch point.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(37, 0)]
    [InlineData(200, 11)]
    public void One_mark_goes_between_two(double direction, double turned)
    {
        Job job = Chain([Gear("a", 40), Gear("b", 53), Gear("c", 37, 0.2)], [46.55, 45.3])
            .WithGear("a", gear => gear with { Turned = TestRacks.Radians(turned) });
        job = job with { Axes = job.Axes.SetItem(2, job.Axes[2] with { Position = job.Axes[1].Position!.Value + (Vector.AtAngle(TestRacks.Radians(direction)) * 45.3) }) };
        job = job with { Defaults = job.Defaults with { MarkFacing = true } };
        MechanismReport report = job.Report();
        Assert.True(report.Mechanism.MarksFacingTeeth);
        var phases = MeshedPhases.Of(report.Mechanism);
        foreach (FacingTeeth teeth in report.Stack.Teeth)
        {
            Mesh mesh = report.Mechanism.Meshes.Single(one => one.Name == teeth.Mesh);
            (MountedGear gear, MountedGear mate) = (report.Mechanism.Named(teeth.ToothOf), report.Mechanism.Named(teeth.GapOf));
            Vector along = (mate.Axis.Position - gear.Axis.Position).Unit.TurnedLeft;
            double Across(Point point) => (point - mesh.PitchPoint).Dot(along);
            double[] ofMate = [.. Marks(mate).Where(Near).Select(Across).Where(across => Math.Abs(across) < mesh.WorkingPitch).Order()];
            double one = Marks(gear).Where(Near).Select(Across).MinBy(Math.Abs);
            bool Near(Point point) => point.DistanceTo(mesh.PitchPoint) < 2 * mesh.WorkingPitch;
            Assert.True(Math.Abs(one) <= (mesh.WorkingPitch / 2) + 0.01, $"{one}");
            Assert.Equal(2, ofMate.Length);
            Assert.True(ofMate[0] < one && one < ofMate[1], $"{one} between {ofMate[0]} and {ofMate[1]}");
        }

        IEnumerable<Point> Marks(MountedGear gear)
        {
            GearBlanks.Blanks.Blank blank = gear.Blank with { FacingTeeth = report.Stack.TeethToMark(gear), Lettering = "" };
            return GearBlanks.Blanks.PartBuilder.Build(blank).Engraving.Select(stroke => phases.PlaceOf(gear).Apply(stroke.Vertices[0].Point));
        }
    }

    [Theory]
    [InlineData(3, 24, 0, 0, false)]
    [InlineData(3, 25, 0, 2, true)]
    [InlineData(4, 30, 0, 2, true)]
    [InlineData(3, 24, 5, 0, true)]
    [InlineData(1, 25, 0, 0, false)]
    public void Ways_to_put_a_gear_on(int count, int teeth, double start, int wrong, bool flips)
    {
        Job job = Pair(Gear("a", teeth) with { Screws = Screws(count, start) }, Gear("b", 40), (teeth + 40.1) / 2);
        GearClocking clocking = job.Report().Stack.Clockings[0];
        Assert.Equal((count, wrong, flips), (clocking.Ways, clocking.WrongWays, clocking.FlipsUnseen));

        // By laying every turned gear and every turned mirror image on the first one.
        bool[] turned = [.. Steps(count).Select(step => FallsOnTeeth(step, teeth))];
        Assert.Equal(wrong, turned.Count(alike => !alike));
        Assert.Equal(flips, Steps(count).Any(step => !FallsOnTeeth((2 * TestRacks.Radians(start)) + step, teeth)));
    }

    [Fact]
    public void A_loop_makes_wrong_ways_a_finding_and_the_advice_ends_it()
    {
        // Two axes with two pairs between them: a loop.
        Job Loop(int count) => new(
            At(0), "loop", Defaults, [Axis("near", 0), Axis("far", 30.05)],
            [
                Sandwich("one", "near", Gear("a", 20) with { Screws = Screws(count, 0) }, Gear("c", 20)),
                Sandwich("other", "far", Gear("b", 40), Gear("d", 40)),
            ],
            [Mesh("a", "b"), Mesh("c", "d")], null, []);
        Finding finding = Assert.Single(Loop(3).Report().Findings, one => one.Name == "clocking-pattern");
        Assert.Equal(("gear a", Level.Tight, 2), (finding.Place, finding.Level, finding.Figure));
        double better = Advice.Number(finding.Advice, "Use # screws");
        Assert.DoesNotContain(Loop((int)better).Report().Findings, one => one.Name == "clocking-pattern");
    }

    private static JobScrews Screws(int count, double start) => new(At(2), count, 12, 2, null, TestRacks.Radians(start));

    private static IEnumerable<double> Steps(int count) => Enumerable.Range(0, count).Select(k => 2 * Math.PI * k / count);

    private static bool FallsOnTeeth(double angle, int teeth) => Enumerable.Range(0, teeth).Any(k => Math.Abs(Math.IEEERemainder(angle - (2 * Math.PI * k / teeth), 2 * Math.PI)) < 1e-9);

    private static int Nearest(MountedGear gear, double towards, double beyond, MeshedPhases phases) => 1 + Enumerable.Range(0, gear.Toothing.Teeth)
        .MinBy(k => Math.Abs(Math.IEEERemainder(towards - phases.AngleOf(gear) - (2 * Math.PI * (k + beyond) / gear.Toothing.Teeth), 2 * Math.PI)));
}
