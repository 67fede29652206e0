using CsCheck;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Tests.Blanks;

/// <summary>Walls between contours that are not round, and what is said of them.</summary>
public sealed class ShapedBlankTests
{
    // Root diameter 80 - 2.5 = 77.5.
    private static readonly ExternalGear Gear = ExternalGear.Create(new GearData(80, 1, TestRacks.A));

    // A chord of 1/4000 of a whole turn at radius 10, or of 120 degrees at 38, lies within 4e-6 of it.
    private const int Pieces = 4000;

    private static readonly Crossings Six = new(6, 30, 5, 6, 6, 1.5, 0.2);

    private static readonly Gen<Bore> Bores = Gen.OneOf<Bore>(
        Gen.Select(Gen.Double[3, 20], Gen.Double[0.3, 0.9], Gen.Double[0, 7], (d, share, angle) => (Bore)new FlattedBore(d, 1, share * d, 0.1, angle)),
        Gen.Select(Gen.Double[3, 20], Gen.Double[0, 7], (across, angle) => (Bore)new HexagonBore(across, 0, angle)),
        Gen.Select(Gen.Double[3, 20], Gen.Double[0.1, 0.5], Gen.Double[0, 7], (d, share, angle) => (Bore)new KeywayBore(d, share * d, 0.2 * d, 0, angle)),
        Gen.Select(Gen.Double[1, 20], d => (Bore)new RoundBore(d)));

    private static readonly Gen<Cutouts> Any =
        from bore in Bores
        from hub in Gen.Double[10, 50]
        from arms in Gen.Int[3, 8]
        from width in Gen.Double[2, 12]
        from atRim in Gen.Double[2, 8]
        from rim in Gen.Double[2, 8]
        from start in Gen.Double[0, 7]
        from screws in Gen.Int[1, 8]
        from circle in Gen.Double[5, 75]
        from hole in Gen.Double[0.5, 6]
        from free in Gen.Select(Gen.Double[-38, 38], Gen.Double[-38, 38])
        select new Cutouts
        {
            Bore = bore,
            Screws = new ScrewCircle(screws, circle, hole, null, start / 2),
            Holes = [new Circle(new GearBlanks.Curves.Point(free.Item1, free.Item2), hole)],
            Crossings = new Crossings(arms, hub, rim, width, atRim, 1, start),
        };

    [Fact]
    public void Walls_and_refusals_are_those_of_fine_polygons()
    {
        (int made, int refused) = (0, 0);
        Any.Sample(
            cutouts =>
            {
                try
                {
                    Blank blank = new("wheel", Gear, 2, cutouts, []);
                    (double wall, double arm) = Least(blank);
                    Assert.Equal(wall, blank.LeastWall()!.Value.Width, 5e-6);
                    Assert.Equal(arm, blank.LeastArm()!.Value, 5e-6);
                    made++;
                }
                catch (GearGeometryException e) when (e.ShapeCase == "holes-cross")
                {
                    Assert.True(e.Value <= 0);
                    Assert.True(Overlaps(cutouts));
                    refused++;
                }
                catch (GearGeometryException)
                {
                    // The crossings themselves do not exist: that has tests of its own.
                }
            },
            iter: 250, threads: 1);
        Assert.True(made > 3 && refused > 5, $"Too few of the blanks tried mean anything: {made} made, {refused} refused.");
    }

    [Theory]
    [InlineData(50, 2, "screw hole and window")]
    [InlineData(26, 4.2, "screw hole and window")]
    [InlineData(6, 2, "bore and screw hole")]
    [InlineData(1, 0.5, "bore and screw hole")]
    [InlineData(76, 3, "screw hole and root circle")]
    public void Holes_that_touch_are_refused_by_name(double circle, double hole, string between)
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => With(new KeywayBore(6, 2, 1), Six, new ScrewCircle(3, circle, hole, null, 0.7)));
        Assert.Equal("holes-cross", e.ShapeCase);
        Assert.Contains($"The {between} of wheel", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_in_a_window_is_sent_to_hub_rim_or_arm_and_fits_there()
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => With(new RoundBore(6), Six, new ScrewCircle(6, 50, 3, null, 0.7)));
        double hub = Advice.Number(e.Remedy, "less than # mm from the middle");
        Assert.Contains("in the rim", e.Remedy, StringComparison.Ordinal);
        Assert.Contains("centre line of an arm", e.Remedy, StringComparison.Ordinal);
        Assert.NotNull(With(new RoundBore(6), Six, new ScrewCircle(6, (2 * hub) - 0.002, 3, null, 0.7)));
        Assert.NotNull(With(new RoundBore(6), Six, new ScrewCircle(6, 77.5 - 5, 3, null, 0.7)));
        Assert.NotNull(With(new RoundBore(6), Six, new ScrewCircle(6, 50, 3, null, 0.2)));

        GearGeometryException wide = Assert.Throws<GearGeometryException>(() => With(new RoundBore(28), Six, new ScrewCircle(6, 50, 7, null, 0.7)));
        double diameter = Advice.Number(wide.Remedy, "less than #");
        Assert.NotNull(With(new RoundBore(28), Six, new ScrewCircle(6, 50, diameter - 0.001, null, 0.2)));
    }

    [Fact]
    public void Other_refusals_advice_is_enough_too()
    {
        GearGeometryException hub = Assert.Throws<GearGeometryException>(() => With(new HexagonBore(28), Six, null));
        double diameter = Advice.Number(hub.Remedy, "more than #");
        Assert.NotNull(With(new HexagonBore(28), Six with { HubDiameter = diameter + 0.001 }, null));

        var key = new KeywayBore(6, 2, 1);
        GearGeometryException screw = Assert.Throws<GearGeometryException>(() => With(key, null, new ScrewCircle(1, 6, 2, null, 0)));
        Assert.NotNull(With(key, null, new ScrewCircle(1, 6 + (2 * Advice.Number(screw.Remedy, "more than #")) + 1e-6, 2, null, 0)));

        GearGeometryException root = Assert.Throws<GearGeometryException>(() => With(new HexagonBore(70), null, null));
        double smaller = Advice.Number(root.Remedy, "more than #");
        Assert.NotNull(With(new HexagonBore(70 - smaller - 1e-6), null, null));
    }

    [Theory]
    [InlineData(1e-15, 5, "two windows", "make the arms wider")]
    [InlineData(6, 1e-15, "window and root circle", "make the rim wider")]
    public void Arms_and_rims_of_nothing_but_rounding_are_refused(double arm, double rim, string between, string remedy)
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(
            () => With(new RoundBore(6), new Crossings(3, 30, rim, arm, arm, 0, 0), null));
        Assert.Contains($"The {between} of wheel", e.Message, StringComparison.Ordinal);
        Assert.Equal(remedy, e.Remedy);
    }

    [Fact]
    public void Arms_have_a_finding_of_their_own_and_its_advice_is_enough()
    {
        Crossings thin = Six with { ArmWidth = 2.5, ArmWidthAtRim = 2.5 };
        Finding finding = Find(With(new RoundBore(6), thin, null), "arm-width");
        Assert.Equal((Level.Tight, 3.0), (finding.Level, finding.Limit));
        Assert.Equal(2.5, finding.Figure, 1e-12);
        double wide = Advice.Number(finding.Advice, "arms # mm wide");
        Assert.Equal(Level.Ok, Find(With(new RoundBore(6), Six with { ArmWidth = wide, ArmWidthAtRim = wide }, null), "arm-width").Level);
        Assert.Equal(Level.Fails, Find(With(new RoundBore(6), Six with { ArmWidth = 0.9, ArmWidthAtRim = 0.9 }, null), "arm-width").Level);
        Assert.DoesNotContain(WallCheck.Of(With(new RoundBore(6), null, null), "gear wheel", TestLimits.Common), one => one.Name == "arm-width");
    }

    [Fact]
    public void The_advice_on_a_thin_wall_is_enough()
    {
        Becomes(With(new RoundBore(6), Six with { RimWidth = 1.5 }, null), "window and root circle", advice =>
            With(new RoundBore(6), Six with { RimWidth = 1.5 + Advice.Number(advice, "wider by #") }, null));
        Becomes(With(new HexagonBore(24), Six, null), "bore and window", advice =>
            With(new HexagonBore(24), Six with { HubDiameter = 30 + Advice.Number(advice, "greater by #") }, null));
        Becomes(With(new RoundBore(6), Six, new ScrewCircle(6, 50, 3, null, 0.2)), "screw hole and window", advice =>
            With(new RoundBore(6), Six, new ScrewCircle(6, 50, 3 - Advice.Number(advice, "smaller by #"), null, 0.2)));
        Becomes(With(new KeywayBore(12, 4, 1.8), null, new ScrewCircle(5, 20, 1.8, null, 0)), "bore and screw hole", advice =>
            With(new KeywayBore(12, 4, 1.8), null, new ScrewCircle(5, 20, 1.8 - Advice.Number(advice, "smaller by #"), null, 0)));
        Becomes(With(new FlattedBore(75, 1, 70), null, null), "bore and root circle", advice =>
            With(new FlattedBore(75 - Advice.Number(advice, "smaller by #"), 1, 70), null, null));
    }

    [Fact]
    public void The_narrowest_way_through_a_bore_is_held_against_the_hole_s_limit()
    {
        Finding finding = Find(With(new KeywayBore(6, 0.8, 0.5), null, null), "hole-diameter");
        Assert.Equal((Level.Tight, 0.8), (finding.Level, finding.Figure));
        Assert.StartsWith("Width of the keyway", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Drill", finding.Advice, StringComparison.Ordinal);
        Assert.Equal(Level.Ok, Find(With(new KeywayBore(6, Advice.Number(finding.Advice, "at least #"), 0.5), null, null), "hole-diameter").Level);
    }

    private static void Becomes(Blank thin, string between, Func<string, Blank> follow)
    {
        Finding finding = Find(thin, "wall");
        Assert.Contains(between, finding.Message, StringComparison.Ordinal);
        Assert.NotEqual(Level.Ok, finding.Level);
        Assert.Equal(Level.Ok, Find(follow(finding.Advice!), "wall").Level);
    }

    private static Finding Find(Blank blank, string name) =>
        Assert.Single(WallCheck.Of(blank, "gear wheel", TestLimits.Common), finding => finding.Name == name);

    private static Blank With(Bore bore, Crossings? crossings, ScrewCircle? screws) =>
        new("wheel", Gear, 2, new Cutouts { Bore = bore, Crossings = crossings, Screws = screws }, []);

    // Least distances between polygons, and of each from the root circle; arms apart from the other walls.
    private static (double Wall, double Arm) Least(Blank blank)
    {
        (string Name, Outline Outline)[] holes = [.. blank.NamedHoles()];
        LinearRing[] lines = [.. holes.Select(hole => Shapes.Ring(hole.Outline, Pieces))];
        IndexedFacetDistance[] from = [.. lines.Select(line => new IndexedFacetDistance(line))];
        (double wall, double arm) = (double.PositiveInfinity, double.PositiveInfinity);
        for (int i = 0; i < holes.Length; i++)
        {
            wall = Math.Min(wall, Gear.RootRadius - lines[i].Coordinates.Max(corner => Math.Sqrt((corner.X * corner.X) + (corner.Y * corner.Y))));
            for (int j = i + 1; j < holes.Length; j++)
            {
                double distance = from[i].Distance(lines[j]);
                bool isArm = (holes[i].Name, holes[j].Name) == ("window", "window");
                (wall, arm) = isArm ? (wall, Math.Min(arm, distance)) : (Math.Min(wall, distance), arm);
            }
        }

        return (wall, arm);
    }

    private static bool Overlaps(Cutouts cutouts)
    {
        Polygon[] shapes =
        [
            Shapes.Polygon(cutouts.Bore!.Outline()),
            .. cutouts.Screws!.Holes().Concat(cutouts.Holes).Select(circle => Shapes.Polygon(Outline.Of(circle))),
            .. cutouts.Crossings!.Windows(Gear.RootRadius).Select(window => Shapes.Polygon(window)),
        ];
        Geometry face = Shapes.Disc(Gear.RootRadius - 1e-3);
        return shapes.Any(shape => !face.Contains(shape))
            || shapes.SelectMany((one, i) => shapes.Skip(i + 1).Select(other => one.Intersects(other) || IndexedFacetDistance.Distance(one, other) < 1e-3)).Any(touch => touch);
    }
}
