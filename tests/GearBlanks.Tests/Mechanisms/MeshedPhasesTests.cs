using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Mechanisms;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>Gears in their meshed phases: outlines as polygons must keep clear where the geometry leaves backlash.</summary>
public sealed class MeshedPhasesTests
{
    private const double Thinning = 0.03;

    // Proportions of ISO 53:1998, profile A; from memory.
    private static readonly BasicRack Rack = new("iso-53-a", 20 * Math.PI / 180, 1, 1.25, 0.38);

    [Fact]
    public void TrainsOfRandomGearsAndDirectionsKeepClear() =>
        Gen.Select(Gen.Int[9, 40], Gen.Double[-3, 3], Gen.Double[-0.1, 0.3], Gen.Double[-4, 4])
            .Select((teeth, direction, shift, turned) => new Link(teeth, direction, shift, turned))
            .Array[2, 5]
            .Sample(links => RequireClear(Train(links)), iter: 25, threads: 1);

    [Fact]
    public void HalfAPitchAsideTheyOverlap()
    {
        Mechanism train = Train([new(17, 0, 0, 0), new(23, 1, 0, 0)]);
        Assert.True(Overlap(train.Meshes[0], Turned(MeshedPhases.Of(train), Math.PI / 23)) > 0.1);
    }

    [Fact]
    public void ToothStandsInTheMiddleOfTheGap()
    {
        // Room is the same on both sides: turned either way by a little less than half the backlash the gears keep clear, a little more and they do not.
        Mechanism train = Train([new(17, 0, 0.1, 0.4), new(23, 0.7, 0, -1)]);
        MeshedPhases phases = MeshedPhases.Of(train);
        double half = train.Meshes[0].Pair.SecondAngularBacklash!.Value / 2;
        foreach (int sense in new[] { -1, 1 })
        {
            Assert.Equal(0, Overlap(train.Meshes[0], Turned(phases, sense * 0.9 * half)), 1e-9);
            Assert.True(Overlap(train.Meshes[0], Turned(phases, sense * 1.3 * half)) > 1e-5);
        }
    }

    [Fact]
    public void TheDrivenSandwichStandsAtZeroAndSoDoesEveryLoosePart()
    {
        Mechanism train = Train([new(17, 0, 0, 0.4), new(23, 1, 0, 0.2), new(31, 2, 0, 0)]);
        Mechanism driven = train with { Drive = new Drive("2", 60), Meshes = [train.Meshes[1]] };
        MeshedPhases phases = MeshedPhases.Of(driven);
        Assert.Equal(0, phases.Angles["2"]);
        Assert.Equal(0, phases.Angles["0"]);
        Assert.NotEqual(0, phases.Angles["1"]);
        Assert.Equal(0.4, phases.AngleOf(train.Sandwiches[0].Gears[0]));
        Assert.Empty(phases.OutOfPhase);
    }

    [Fact]
    public void ALoopThatCannotBeMetIsTold()
    {
        Assert.Empty(MeshedPhases.Of(Loop(Math.PI / 2)).OutOfPhase);

        // Turning two opposite sides of the square turns each gear at their ends by twice as much: four times in all, counted in pitches of 20 teeth.
        const double aside = 0.02;
        PhaseGap gap = Assert.Single(MeshedPhases.Of(Loop((Math.PI / 2) + aside)).OutOfPhase);
        double pitch = 2 * Math.PI * gap.Mesh.Pair.FirstWorkingRadius / 20;
        double expected = Math.Abs(Math.IEEERemainder(4 * aside * 20 / (2 * Math.PI), 1)) * pitch;
        Assert.Equal(expected, Math.Abs(gap.Offset), 1e-9);
    }

    [Fact]
    public void TheOffsetOfALoopIsWhatTurnsItsToothIntoTheGap()
    {
        PhaseGap gap = Assert.Single(MeshedPhases.Of(Loop((Math.PI / 2) + 0.02)).OutOfPhase);
        MeshedPhases phases = MeshedPhases.Of(Loop((Math.PI / 2) + 0.02));
        string first = gap.Mesh.First.Sandwich;
        MeshedPhases met = phases with
        {
            Angles = phases.Angles.SetItem(first, phases.Angles[first] - (gap.Offset / gap.Mesh.Pair.FirstWorkingRadius)),
        };
        Assert.True(Overlap(gap.Mesh, phases) > 1e-3);
        Assert.Equal(0, Overlap(gap.Mesh, met), 1e-9);
    }

    private static MeshedPhases Turned(MeshedPhases phases, double second) =>
        phases with { Angles = phases.Angles.SetItem("1", phases.Angles["1"] + second) };

    private static Mechanism Loop(double corner)
    {
        ExternalGear gear = Gear(20, 0);
        double side = GearPair.DistanceFor(gear, gear, 2.5 * Thinning);
        Point b = new(side, 0);
        Vector up = Vector.AtAngle(corner) * side;
        return Mechanism(
            [Mounted(0, gear, default, 0), Mounted(1, gear, b, 0), Mounted(2, gear, b + up, 0), Mounted(3, gear, default(Point) + up, 0)],
            [(0, 1), (1, 2), (2, 3), (3, 0)]);
    }

    private static Mechanism Train(Link[] links)
    {
        List<MountedGear> gears = [];
        Point at = new(3, -2);
        foreach (Link link in links)
        {
            ExternalGear gear = Gear(link.Teeth, link.Shift);
            at += gears.Count == 0
                ? default
                : Vector.AtAngle(link.Direction) * GearPair.DistanceFor((ExternalGear)gears[^1].Blank.Gear, gear, 2.5 * Thinning);
            gears.Add(Mounted(gears.Count, gear, at, link.Turned));
        }

        return Mechanism([.. gears], [.. Enumerable.Range(1, gears.Count - 1).Select(i => (i - 1, i))]);
    }

    // Small gears are shifted out of the undercut, so that every train can mesh.
    private static ExternalGear Gear(int teeth, double shift) =>
        ExternalGear.Create(new GearData(teeth, 1, Rack, Math.Max(shift, (17.0 - teeth) / 17), Thinning));

    private static MountedGear Mounted(int index, ExternalGear gear, Point at, double turned)
    {
        string name = index.ToString(CultureInfo.InvariantCulture);
        var blank = new Blank(name, gear, 2, Cutouts.None, [1]);
        return new MountedGear(blank, null, name, new Axis(name, at), turned, null);
    }

    // Phases need no limits.
    private static Mechanism Mechanism(MountedGear[] gears, (int First, int Second)[] meshes) => new(
        "train",
        null!,
        new Machine("drawing", "drawing", new LayerPlan(ImmutableDictionary<Operation, string>.Empty, false), []),
        [.. gears.Select(gear => gear.Axis)],
        [.. gears.Select(gear => new Sandwich(gear.Sandwich, gear.Axis, [gear]))],
        [.. meshes.Select(mesh => Mesh(gears[mesh.First], gears[mesh.Second]))],
        null,
        []);

    private static Mesh Mesh(MountedGear first, MountedGear second)
    {
        double distance = first.Axis.Position.DistanceTo(second.Axis.Position);
        GearPair pair = GearPair.At((ExternalGear)first.Blank.Gear, (ExternalGear)second.Blank.Gear, distance);
        return new Mesh($"{first.Name}-{second.Name}", first, second, pair, distance, null, Thinning);
    }

    private static void RequireClear(Mechanism train)
    {
        MeshedPhases phases = MeshedPhases.Of(train);
        Assert.Empty(phases.OutOfPhase);
        Assert.All(train.Meshes, mesh => Assert.Equal(0, Overlap(mesh, phases), 1e-9));
    }

    // Area in mm2 that both gears claim.
    private static double Overlap(Mesh mesh, MeshedPhases phases) =>
        Polygon(mesh.First, phases).Intersection(Polygon(mesh.Second, phases)).Area;

    private static Polygon Polygon(MountedGear gear, MeshedPhases phases)
    {
        const int pieces = 12;
        Motion motion = Motion.Turn(phases.AngleOf(gear)).Then(Motion.Shift(gear.Axis.Position - default(Point)));
        List<Coordinate> corners = [.. from curve in gear.Blank.Gear.Outline().Curves()
                                       from i in Enumerable.Range(0, pieces)
                                       let point = motion.Apply(curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / pieces)))
                                       select new Coordinate(point.X, point.Y)];
        corners.Add(corners[0].Copy());
        return new GeometryFactory().CreatePolygon([.. corners]);
    }

    private sealed record Link(int Teeth, double Direction, double Shift, double Turned);
}
