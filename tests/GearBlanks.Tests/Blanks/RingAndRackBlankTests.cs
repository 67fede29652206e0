using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Blanks;

/// <summary>Blanks of rings and racks, and what is engraved beside windows.</summary>
public sealed class RingAndRackBlankTests
{
    private const string Words = "RG-60 | ring | z 60 m 1";

    // Root diameter 60 + 2.5 = 62.5, tip diameter 58.
    private static readonly RingGear Ring = RingGear.Create(new RingData(60, 1, TestRacks.A, 80));

    // Root line 1.25 below the reference line.
    private static readonly RackBar Rack = RackBar.Create(new RackBarData(1, TestRacks.A, 30 * Math.PI, 11));

    private static readonly ExternalGear Wheel = ExternalGear.Create(new GearData(80, 1, TestRacks.A));

    [Fact]
    public void A_ring_is_its_rim_with_the_teeth_as_the_first_hole()
    {
        var screws = new ScrewCircle(6, 70, 3, null, 0.2);
        Part part = PartBuilder.Build(new Blank("ring", Ring, 3, new Cutouts { Screws = screws }, [1]));
        Assert.Equal(new Circle(default, 40), part.Outside.AsCircle);
        Assert.Equal(7, part.Holes.Length);
        Assert.Equal(60, part.Holes[0].Repeats);
        Assert.True(Shapes.IsCounterClockwise(part.Holes[0]));
        Assert.Equal(screws.Holes(), part.Holes.Skip(1).Select(hole => hole.AsCircle!.Value));
        Assert.Empty(part.Remarks);
    }

    [Fact]
    public void A_ring_whose_teeth_are_cut_later_is_bored_to_its_tip_diameter()
    {
        Part part = PartBuilder.Build(new Blank("ring", Ring, 3, Cutouts.None, []) { IsDisc = true });
        Assert.Equal((new Circle(default, 40), new Circle(default, 29)), (part.Outside.AsCircle!.Value, Assert.Single(part.Holes).AsCircle!.Value));
    }

    [Fact]
    public void A_rack_is_its_outline_or_a_plain_bar_of_its_tip_height()
    {
        var cutouts = new Cutouts { Holes = [new Circle(new Point(0, -6), 1.5)] };
        Part part = PartBuilder.Build(new Blank("rack", Rack, 3, cutouts, [1, 30]));
        Assert.Equal(Rack.Outline().Pattern.Length, part.Outside.Pattern.Length);
        Assert.Equal(cutouts.Holes[0], Assert.Single(part.Holes).AsCircle);
        Assert.Equal(2, part.Engraving.Length);
        Assert.All(part.Engraving[0].Vertices, vertex => Assert.Equal(Rack.FirstTooth, vertex.Point.X, 1e-12));
        Assert.All(part.Engraving[1].Vertices, vertex => Assert.Equal(-Rack.FirstTooth, vertex.Point.X, 1e-9));

        Polygon bar = Shapes.Polygon(PartBuilder.Build(new Blank("rack", Rack, 3, cutouts, []) { IsDisc = true }).Outside);
        Assert.Equal(30 * Math.PI * 12, bar.Area, 1e-9);
        Assert.Equal((-11.0, 1.0), (bar.EnvelopeInternal.MinY, bar.EnvelopeInternal.MaxY));
    }

    [Theory]
    [InlineData(32, 2, "hole and root circle")]
    [InlineData(39, 2, "hole and edge of the rim")]
    [InlineData(0, 2, "hole and root circle")]
    public void Holes_of_a_ring_stay_in_its_rim(double x, double diameter, string between) => Assert.Contains(
        $"The {between} of ring",
        Assert.Throws<GearGeometryException>(() => new Blank("ring", Ring, 3, new Cutouts { Holes = [new Circle(new Point(x, 0), diameter / 2)] }, [])).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0, -1, "hole and root line")]
    [InlineData(0, -10.5, "hole and back")]
    [InlineData(47, -6, "hole and right end")]
    [InlineData(-47, -6, "hole and left end")]
    public void Holes_of_a_rack_stay_in_its_bar(double x, double y, string between)
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(
            () => new Blank("rack", Rack, 3, new Cutouts { Holes = [new Circle(new Point(x, y), 1)] }, []));
        Assert.Contains($"The {between} of rack", e.Message, StringComparison.Ordinal);
        double move = Advice.Number(e.Remedy, "by more than #") + 1e-6;
        var towards = new Vector(between.Contains("right", StringComparison.Ordinal) ? -move : between.Contains("left", StringComparison.Ordinal) ? move : 0, between.Contains("line", StringComparison.Ordinal) ? -move : between.Contains("back", StringComparison.Ordinal) ? move : 0);
        Assert.NotNull(new Blank("rack", Rack, 3, new Cutouts { Holes = [new Circle(new Point(x, y) + towards, 1)] }, []));
    }

    [Fact]
    public void Walls_of_ring_and_rack_are_measured_to_every_edge()
    {
        Assert.Equal(
            ("hole and edge of the rim", 1.5),
            new Blank("ring", Ring, 3, new Cutouts { Holes = [new Circle(new Point(0, 37), 1.5)] }, []).LeastWall()!.Value);
        (string between, double width) = new Blank("rack", Rack, 3, new Cutouts { Holes = [new Circle(new Point(10, -4), 1)] }, []).LeastWall()!.Value;
        Assert.Equal("hole and root line", between);
        Assert.Equal(1.75, width, 1e-12);
    }

    [Fact]
    public void What_has_no_place_on_a_ring_or_a_rack_is_refused()
    {
        var bore = new Cutouts { Bore = new RoundBore(5) };
        var crossings = new Cutouts { Crossings = new Crossings(5, 20, 4, 3, 3, 1, 0) };
        var screws = new Cutouts { Screws = new ScrewCircle(3, 20, 2, null, 0) };
        foreach ((Toothing gear, Cutouts cutouts) in (ReadOnlySpan<(Toothing, Cutouts)>)[(Ring, bore), (Ring, crossings), (Rack, bore), (Rack, crossings), (Rack, screws)])
        {
            Assert.Equal("no-place", Assert.Throws<GearGeometryException>(() => new Blank("part", gear, 3, cutouts, [])).ShapeCase);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(81)]
    public void A_marked_tooth_must_exist(int tooth)
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => new Blank("wheel", Wheel, 2, Cutouts.None, [tooth]));
        Assert.Equal(("no-such-tooth", "use a tooth from 1 to 80"), (e.ShapeCase, e.Remedy));
    }

    [Fact]
    public void Marks_stand_on_the_teeth_they_are_counted_for()
    {
        Part part = PartBuilder.Build(new Blank("wheel", Wheel, 2, new Cutouts { Bore = new RoundBore(5) }, [1, 21, 5]));
        double[] angles = [0, Math.PI / 2, 4 * 2 * Math.PI / 80];
        Assert.Equal(3, part.Engraving.Length);
        for (int i = 0; i < 3; i++)
        {
            Assert.All(part.Engraving[i].Vertices, vertex => Assert.Equal(angles[i], vertex.Point.Angle, 1e-12));
            Assert.Equal((38.25, 37.25), (Math.Round(part.Engraving[i].Vertices[0].Point.Radius, 9), Math.Round(part.Engraving[i].Vertices[1].Point.Radius, 9)));
        }
    }

    [Fact]
    public void A_mark_over_a_window_is_left_out_by_its_tooth()
    {
        var crossings = new Crossings(4, 20, 1.2, 6, 6, 1, 0);
        Part part = PartBuilder.Build(new Blank("wheel", Wheel, 2, new Cutouts { Crossings = crossings }, [1, 11]));
        Assert.Single(part.Engraving);
        Assert.Contains("tooth 11", Assert.Single(part.Remarks), StringComparison.Ordinal);
    }

    public static TheoryData<string> Faces => ["ring", "rack", "wheel with a wide rim", "wheel with a wide hub", "wheel with a keyway"];

    [Theory]
    [MemberData(nameof(Faces))]
    public void Engraving_keeps_half_a_millimetre_from_every_edge(string which)
    {
        Blank blank = which switch
        {
            "ring" => new Blank(which, Ring, 3, new Cutouts { Screws = new ScrewCircle(4, 70, 3, null, 0.3) }, [1, 20]) { Lettering = Words },
            "rack" => new Blank(which, Rack, 3, new Cutouts { Holes = [new Circle(new Point(0, -6), 1.5), new Circle(new Point(30, -6), 1.5)] }, [1]) { Lettering = Words },
            "wheel with a wide rim" => Crossed(12, 6),
            "wheel with a wide hub" => Crossed(40, 2),
            _ => new Blank(which, Wheel, 2, new Cutouts { Bore = new KeywayBore(30, 8, 3.3) }, [1]) { Lettering = Words },
        };
        Part part = PartBuilder.Build(blank);
        Assert.True(part.Engraving.Length > 10, string.Join(' ', part.Remarks));
        Geometry material = Shapes.Polygon(part.Outside, 40);
        material = part.Holes.Aggregate(material, (rest, hole) => rest.Difference(Shapes.Polygon(hole, 100)));
        Assert.All(part.Engraving, stroke =>
        {
            LineString line = Shapes.Line(stroke);
            Assert.True(material.Contains(line));
            Assert.True(material.Boundary.Distance(line) >= 0.5 - 1e-3, $"{material.Boundary.Distance(line)}");
        });
    }

    [Fact]
    public void Lettering_without_room_on_hub_or_rim_is_left_out_with_a_word()
    {
        Part part = PartBuilder.Build(new Blank("wheel", Wheel, 2, new Cutouts { Bore = new RoundBore(5), Crossings = new Crossings(5, 10, 2.5, 3, 3, 1, 0) }, []) { Lettering = Words });
        Assert.Empty(part.Engraving);
        Assert.Contains("lettering", Assert.Single(part.Remarks), StringComparison.Ordinal);
    }

    private static Blank Crossed(double hub, double rim) =>
        new("wheel", Wheel, 2, new Cutouts { Bore = new RoundBore(6), Crossings = new Crossings(5, hub, rim, 3, 3, 1, 0.3) }, []) { Lettering = Words };
}
