using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Blanks;

/// <summary>Holes and walls of blanks.</summary>
public sealed class BlankTests
{
    // Root diameter 40 - 2.5 = 37.5.
    private static readonly ExternalGear Gear = ExternalGear.Create(new GearData(40, 1, TestRacks.A));

    [Theory]
    [InlineData(38, 0, 0, 0, "bore and root circle")]
    [InlineData(37.5, 0, 0, 0, "bore and root circle")]
    [InlineData(10, 7, 0, 2.1, "bore and hole")]
    [InlineData(4, 17, 0, 2, "hole and root circle")]
    [InlineData(8, 0, 1, 1, "bore and hole")]
    public void Holes_that_touch_are_refused_by_name(double bore, double x, double y, double radius, string between)
    {
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => Blank(bore, null, radius == 0 ? [] : [new Circle(new Point(x, y), radius)]));
        Assert.Equal("holes-cross", e.ShapeCase);
        Assert.Contains($"The {between} of wheel", e.Message, StringComparison.Ordinal);
        Assert.True(e.Value <= 0);
    }

    [Fact]
    public void Screws_that_touch_one_another_or_a_hole_are_refused()
    {
        var crowded = new ScrewCircle(12, 10, 3, null, 0);
        Assert.Contains("two screw holes", Assert.Throws<GearGeometryException>(() => Blank(null, crowded, [])).Message, StringComparison.Ordinal);
        var screws = new ScrewCircle(3, 20, 2, null, 0);
        Assert.Contains(
            "screw hole and hole",
            Assert.Throws<GearGeometryException>(() => Blank(null, screws, [new Circle(new Point(11, 1), 1)])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Following_the_refusal_s_advice_is_enough()
    {
        // A bore of 10 and a hole of 4 whose middle stands 6.5 out overlap by half a millimetre.
        GearGeometryException e = Assert.Throws<GearGeometryException>(() => Blank(10, null, [new Circle(new Point(6.5, 0), 2)]));
        Assert.Equal(-0.5, e.Value, 1e-12);
        double[] numbers = Advice.NumbersIn(e.Remedy!);
        const double more = 1e-6;
        Assert.True(Blank(10, null, [new Circle(new Point(6.5 + numbers[0] + more, 0), 2)]).LeastWall()!.Value.Width > 0);
        Assert.True(Blank(10, null, [new Circle(new Point(6.5, 0), (4 - numbers[1] - more) / 2)]).LeastWall()!.Value.Width > 0);
    }

    [Fact]
    public void Least_wall_is_the_least_of_all()
    {
        Assert.Null(Blank(null, null, []).LeastWall());
        Assert.Equal(("bore and root circle", 18.75 - 5), Blank(10, null, []).LeastWall()!.Value);

        // Between bore and screw 10 - 5 - 1 = 4, screws 20 sin 60 - 2, screw and rim 18.75 - 11; the hole of 2 at 15 leaves 18.75 - 16.
        Blank blank = Blank(10, new ScrewCircle(3, 20, 2, null, 0), [new Circle(new Point(-15, 0), 1)]);
        (string between, double width) = blank.LeastWall()!.Value;
        Assert.Equal("hole and root circle", between);
        Assert.Equal(2.75, width, 1e-12);
    }

    [Fact]
    public void Thinned_teeth_have_a_smaller_root_circle()
    {
        var thin = ExternalGear.Create(new GearData(40, 1, TestRacks.A, 0, 0.1));
        double wall = new Blank("wheel", thin, 2, new Cutouts { Bore = new RoundBore(10) }, []).LeastWall()!.Value.Width;
        Assert.Equal(13.75 - (0.05 / Math.Tan(TestRacks.Radians(20))), wall, 1e-12);
    }

    [Fact]
    public void Screws_stand_at_equal_angles_from_the_first()
    {
        var screws = new ScrewCircle(6, 14, 1.8, 3, TestRacks.Radians(10));
        ImmutableArray<Circle> holes = screws.Holes(TestRacks.Radians(5));
        Assert.Equal(6, holes.Length);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(0.9, holes[i].Radius);
            Assert.Equal(0, holes[i].Centre.DistanceTo(Point.Polar(7, TestRacks.Radians(15 + (60 * i)))), 1e-12);
        }

        Assert.All(screws.Rooms(), room => Assert.Equal(1.5, room.Radius));
        Assert.All((screws with { HeadDiameter = null }).Rooms(), room => Assert.Equal(0.9, room.Radius));
        Assert.All((screws with { HeadDiameter = 1 }).Rooms(), room => Assert.Equal(0.9, room.Radius));
    }

    [Fact]
    public void The_bore_comes_first_among_the_named_holes() => Assert.Equal(
        ["bore", "screw hole", "screw hole", "hole"],
        Blank(4, new ScrewCircle(2, 20, 2, null, 0), [new Circle(new Point(0, 8), 1)]).NamedHoles().Select(hole => hole.Name));

    [Fact]
    public void A_blank_without_holes_has_no_wall_to_speak_of() =>
        Assert.Empty(WallCheck.Of(Blank(null, null, []), "gear wheel", TestLimits.Common));

    [Fact]
    public void A_blank_of_unknown_thickness_has_walls_that_are_thick_enough() =>
        Assert.All(
            WallCheck.Of(new Blank("wheel", Gear, 0, new Cutouts { Bore = new RoundBore(30) }, []), "gear wheel", TestLimits.Common),
            finding => Assert.Equal(Level.Ok, finding.Level));

    private static Blank Blank(double? bore, ScrewCircle? screws, ImmutableArray<Circle> holes) =>
        new("wheel", Gear, 2, new Cutouts { Bore = bore is { } diameter ? new RoundBore(diameter) : null, Screws = screws, Holes = holes }, []);
}
