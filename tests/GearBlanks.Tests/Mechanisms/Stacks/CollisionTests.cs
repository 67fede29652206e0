using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Stacks;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Mechanisms.Stacks;

/// <summary>Collisions against every pair compared as polygons of an independent library; advice followed.</summary>
public sealed class CollisionTests
{
    // Twice what chords stray from circles of up to 13 mm.
    private const double Near = 0.002;

    [Fact]
    public void Random_heaps_give_the_collisions_that_all_pairs_of_polygons_give()
    {
        var random = new Random(12);
        int collisions = 0;
        for (int heap = 0; heap < 20; heap++)
        {
            ImmutableArray<Body> bodies = [.. Enumerable.Range(0, 60).Select(i => Random(i, random))];
            HashSet<string> found = [.. Check(bodies).Where(finding => finding is { Name: "collision", Level: Level.Fails }).Select(finding => finding.Place)];
            collisions += found.Count;
            Geometry[] plans = [.. bodies.Select(body => PlanPolygons.Of(body.Shape))];
            for (int i = 0; i < bodies.Length; i++)
            {
                for (int j = i + 1; j < bodies.Length; j++)
                {
                    double shared = Math.Min(bodies[i].Heights.Top, bodies[j].Heights.Top) - Math.Max(bodies[i].Heights.Bottom, bodies[j].Heights.Bottom);
                    bool overlaps = bodies[i].Sandwich != bodies[j].Sandwich && shared > 0 && plans[i].Intersects(plans[j]);

                    // What only just touches is not told apart by polygons.
                    if (Math.Abs(bodies[i].Shape.DepthIn(bodies[j].Shape)) > Near)
                    {
                        Assert.Equal(overlaps, found.Contains($"{bodies[i].Words} and {bodies[j].Words}"));
                    }
                }
            }
        }

        Assert.InRange(collisions, 1000, 100000);
    }

    [Fact]
    public void Following_the_advice_in_height_clears_a_collision()
    {
        Body lower = Disc("low", BodyKind.Gear, 0, 10, 0, 3);
        Body upper = Disc("high", BodyKind.Gear, 12, 10, 2, 5);
        Finding finding = Assert.Single(Check([lower, upper]));
        Assert.Equal(("collision", Level.Fails, 1), (finding.Name, finding.Level, finding.Figure));
        double washer = Advice.Number(finding.Advice, "with a washer of # mm under it");
        Assert.Equal(Level.Ok, Assert.Single(Check([lower, upper with { Heights = new Heights(2 + washer, 5 + washer, 0, 0) }])).Level);
        double apart = Advice.Number(finding.Advice, "or part them by # mm in plan");
        Assert.Equal(Level.Ok, Assert.Single(Check([lower, Disc("high", BodyKind.Gear, 12 + apart, 10, 2, 5)])).Level);
    }

    [Fact]
    public void Following_the_advice_for_a_post_clears_it()
    {
        Body gear = Disc("wheel", BodyKind.Gear, 0, 10, 4, 6);
        Finding end = Check([gear, Post(0, 5)]).Single(finding => finding.Level == Level.Fails);
        Assert.Equal(Level.Ok, Assert.Single(Check([gear, Post(0, Advice.Number(end.Advice, "End spindle post below # mm"))])).Level);
        Finding begin = Check([gear, Post(5, 9)]).Single(finding => finding.Level == Level.Fails);
        Assert.Equal(Level.Ok, Assert.Single(Check([gear, Post(Advice.Number(begin.Advice, "Begin spindle post above # mm"), 9)])).Level);

        static Body Post(double bottom, double top) => Disc("post", BodyKind.Spindle, 3, 2, bottom, top) with { Sandwich = null };
    }

    [Theory]
    [InlineData(0.25, 0, Level.Ok)]
    [InlineData(0.15, 0, Level.Tight)]
    [InlineData(0.25, 0.1, Level.Tight)]
    [InlineData(0.25, 0.3, Level.Fails)]
    public void Gaps_in_height_are_held_against_the_worst_tolerances(double gap, double tolerance, Level level)
    {
        Body lower = Disc("low", BodyKind.Gear, 0, 10, 0, 3) with { Heights = new Heights(0, 3, 0, tolerance) };
        Body upper = Disc("high", BodyKind.Gear, 12, 10, 3 + gap, 6);
        Finding? finding = Check([lower, upper]).SingleOrDefault(one => one.Name == "stack-clearance");
        Assert.Equal(level, finding?.Level ?? Level.Ok);
        if (finding is not null)
        {
            Assert.Equal(gap - tolerance, finding.Figure, 1e-9);
            double by = Advice.Number(finding.Advice, "Raise gear high by # mm");
            Assert.DoesNotContain(Check([lower, Disc("high", BodyKind.Gear, 12, 10, 3 + gap + by, 6 + by)]), one => one.Level != Level.Ok);
        }
    }

    [Fact]
    public void Tubes_within_tubes_and_hubs_on_them_are_no_false_alarm()
    {
        Body Tube(string name, double inner, double outer, double top) => new(
            name, BodyKind.Spindle, name, "column", PlanShape.Ring(default, inner / 2, outer / 2), new Heights(0, top, 0, 0));
        Body Wheel(string name, double bore, double bottom) => new(
            name, BodyKind.Gear, name, "column", PlanShape.Ring(default, bore / 2, 20), new Heights(bottom, bottom + 2, 0, 0));
        Body[] bodies = [Tube("rod", 0, 3, 30), Tube("tube", 3.1, 4, 20), Tube("outer", 4.1, 5, 10), Wheel("a", 5, 5), Wheel("b", 4, 15), Wheel("c", 3, 25)];
        Assert.DoesNotContain(Check([.. bodies]), finding => finding.Level != Level.Ok);

        // The wheel for the tube does not go over the outer one, nor does a tube go over too thick a rod.
        Assert.Contains(Check([.. bodies, Wheel("d", 4, 8)]), finding => finding is { Name: "collision", Place: "spindle outer and gear d" });
        Assert.Contains(Check([Tube("rod", 0, 3.5, 30), Tube("tube", 3.1, 4, 20)]), finding => finding is { Name: "collision", Level: Level.Fails });
    }

    [Fact]
    public void Without_bodies_nothing_is_said() => Assert.Empty(Check([]));

    private static Finding[] Check(ImmutableArray<Body> bodies) => [.. CollisionCheck.Of(
        new Mechanism("heap", TestLimits.Common, new Machine("m", "m", new LayerPlan(ImmutableDictionary<Operation, string>.Empty, false), []), [], [], [], null, [])
        {
            Stack = new Stack([], [], bodies),
        })];

    private static Body Disc(string name, BodyKind kind, double x, double radius, double bottom, double top) => new(
        name, kind, name, null, PlanShape.Ring(new Point(x, 0), 0, radius), new Heights(bottom, top, 0, 0));

    private static Body Random(int i, Random random)
    {
        Point middle = new(random.NextDouble() * 60, random.NextDouble() * 60);
        double bottom = random.NextDouble() * 12;
        double size = 3 + (random.NextDouble() * 9);
        PlanShape shape = random.Next(4) switch
        {
            0 => PlanShape.Ring(middle, size / 3, size),
            1 => PlanShape.Bar(middle, middle + (Vector.AtAngle(random.NextDouble() * 7) * size), 2),
            2 => PlanShape.Box(middle, random.NextDouble() * 7, -size, size, -size / 2, size / 2) with { Holes = [new Circle(middle, size / 3)] },
            _ => PlanShape.Ring(middle, 0, size),
        };

        // A few share a sandwich, and then may overlap.
        return new Body($"b{i}", BodyKind.Plate, $"s{i % 40}", null, shape, new Heights(bottom, bottom + 1 + (random.NextDouble() * 2), 0, 0));
    }
}
