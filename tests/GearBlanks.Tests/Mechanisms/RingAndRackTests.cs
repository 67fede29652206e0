using System.Collections.Immutable;
using Fractions;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Mechanisms;
using NetTopologySuite.Geometries;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Rings and racks in a whole mechanism: where they stand in mesh, how they turn and slide.</summary>
public sealed class RingAndRackTests
{
    private const double Pinion = 20;
    private const double Wheel = 30;

    /// <summary>A ring and a rack, in directions that no symmetry hides; what turns first is the drive.</summary>
    public static TheoryData<string, double, double> Drives => new()
    {
        { "clock", 0.3, 0.7 },
        { "clock", -2, 2.5 },
        { "ring", 0.3, -0.4 },
    };

    [Theory]
    [MemberData(nameof(Drives))]
    public void TeethStandInGaps(string drive, double toRing, double ofRack)
    {
        Mechanism mechanism = Sled(drive, toRing, ofRack).Resolved();
        MeshedPhases phases = MeshedPhases.Of(mechanism);
        Assert.Empty(phases.OutOfPhase);
        foreach (Mesh mesh in mechanism.Meshes)
        {
            // By half a pitch aside a tooth would stand on a tooth.
            double half = Math.PI / mesh.First.Toothing.Teeth;
            Assert.Equal(0, Overlap(mesh, phases, 0), 1e-9);
            Assert.True(Overlap(mesh, phases, half) > 0.1);
            Assert.True(Overlap(mesh, phases, -half) > 0.1);

            // The tooth stands in the middle of its gap: there is as much room one way as the other.
            double play = mesh.Pair.FirstAngularBacklash!.Value / 2;
            Assert.All((double[])[-1, 1], sense => Assert.Equal(0, Overlap(mesh, phases, 0.9 * sense * play), 1e-9));
            Assert.All((double[])[-1, 1], sense => Assert.True(Overlap(mesh, phases, 1.3 * sense * play) > 1e-6));
        }
    }

    [Fact]
    public void RingsTurnWithTheirPinionAndRacksSlideByTheirPitches()
    {
        MechanismReport report = Sled("clock", 0.3, 0.7).Report();
        Assert.Equal(new Fraction(20, 60), report.Speeds.Single(speed => speed.Sandwich == "ring").Speed);
        BodySpeed rack = report.Speeds.Single(speed => speed.Sandwich == "rack");
        Assert.Null(rack.Speed);
        Assert.Equal(Math.PI * Wheel, rack.Travel!.Value, 9);
        Assert.DoesNotContain(report.Findings, finding => finding.Name is "train-loose" or "train-locked");
    }

    [Fact]
    public void AWheelTurningCounterClockwiseMovesTheRackUnderItAlongItsDirection()
    {
        // A little later the wheel has turned by one tooth, and the rack stands one pitch further on: the teeth mesh as before, and half way they do too.
        Mechanism mechanism = Sled("clock", 0.3, 0.7).Resolved();
        Mesh mesh = mechanism.Meshes[1];
        MeshedPhases phases = MeshedPhases.Of(mechanism);
        Motion slid = Motion.Shift(Vector.AtAngle(0.7) * (Math.PI / 4));
        Motion turned = Motion.Turn(2 * Math.PI / Wheel / 4);
        Assert.Equal(0, Area(Placed(mesh.First, turned.Then(phases.PlaceOf(mesh.First))), Placed(mesh.Second, phases.PlaceOf(mesh.Second).Then(slid))), 1e-9);
        Assert.True(Area(Placed(mesh.First, turned.Then(phases.PlaceOf(mesh.First))), Placed(mesh.Second, phases.PlaceOf(mesh.Second).Then(Motion.Shift(Vector.AtAngle(0.7) * (-Math.PI / 4))))) > 0.1);
    }

    [Fact]
    public void AGearAtTheBackOfARackDoesNotMeshWithIt()
    {
        Job job = Sled("clock", 0.3, 0.7);
        job = job with { Axes = [.. job.Axes.Select(axis => axis.Name == "rack" ? axis with { Position = new GearBlanks.Curves.Point(default(GearBlanks.Curves.Point).X - axis.Position!.Value.X, -axis.Position.Value.Y) } : axis)] };
        Problem problem = Assert.Single(job.Problems());
        Assert.Contains("no-line-of-action", problem.Message, StringComparison.Ordinal);
    }

    // The clock arbor carries a pinion inside a ring and a wheel over a rack, which pass one another at two heights.
    private static Job Sled(string drive, double toRing, double ofRack)
    {
        GearBlanks.Curves.Point under = GearBlanks.Curves.Point.Polar(Wheel / 2, ofRack - (Math.PI / 2));
        JobGear ring = TestJobs.Gear("ring", 60, tip: 58.4) with { Ring = new JobRing(80, 0.2), Turned = 0.21 };
        JobGear rack = TestJobs.Gear("rack", 0) with { RackBar = new JobRackBar(100, 6), Turned = ofRack };
        return new Job(
            TestJobs.At(0), "sled", TestJobs.Defaults,
            [TestJobs.Axis("clock", 0), TestJobs.Axis("ring", 20 * Math.Cos(toRing), 20 * Math.Sin(toRing)), TestJobs.Axis("rack", under.X, under.Y)],
            [
                TestJobs.Sandwich("clock", "clock", TestJobs.Gear("pinion", (int)Pinion) with { Turned = 0.1 }, TestJobs.Gear("wheel", (int)Wheel) with { Turned = -0.4 }),
                TestJobs.Sandwich("ring", "ring", ring),
                TestJobs.Sandwich("rack", "rack", rack),
            ],
            [TestJobs.Mesh("pinion", "ring"), TestJobs.Mesh("wheel", "rack")],
            new JobDrive(TestJobs.At(6), drive, 3600), []);
    }

    private static double Overlap(Mesh mesh, MeshedPhases phases, double turned) => Area(
        Placed(mesh.First, Motion.Turn(turned).Then(phases.PlaceOf(mesh.First))), Placed(mesh.Second, phases.PlaceOf(mesh.Second)));

    private static double Area(Geometry one, Geometry other) => one.Intersection(other).Area;

    private static Geometry Placed(MountedGear gear, Motion motion)
    {
        Part part = PartBuilder.Build(gear.Blank);
        return Polygon(part.Outside, motion).Difference(part.Holes.Aggregate((Geometry)NetTopologySuite.Geometries.Polygon.Empty, (holes, hole) => holes.Union(Polygon(hole, motion))));
    }

    private static Polygon Polygon(Outline outline, Motion motion)
    {
        ImmutableArray<PathVertex> vertices = OutlineFit.Fit(outline, 2e-4, Pieces.Chords).Moved(motion).Vertices;
        return new Polygon(new LinearRing([.. vertices.Append(vertices[0]).Select(vertex => new Coordinate(vertex.Point.X, vertex.Point.Y))]));
    }
}
