using System.Collections.Immutable;
using CsCheck;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Blanks;

/// <summary>Shapes of blanks.</summary>
public sealed class PartBuilderTests
{
    private const string Words = "wheel | z 40 m 1 | x 0";

    [Fact]
    public void Outside_is_the_gear_s_outline_and_holes_come_bore_first()
    {
        Blank blank = Blank(40, 10, [new Circle(new Point(0, 13), 1)], words: "");
        Part part = PartBuilder.Build(blank);
        Assert.Equal("wheel", part.Name);
        Assert.Equal(blank.Gear.Outline().Repeats, part.Outside.Repeats);
        Assert.Equal([new Circle(default, 5), new Circle(new Point(0, 13), 1)], part.Holes.Select(hole => hole.AsCircle!.Value));
        Assert.Empty(part.Remarks);
    }

    [Fact]
    public void A_disc_is_a_full_circle_of_the_tip_diameter()
    {
        Part part = PartBuilder.Build(Blank(40, 10, [], words: "") with { IsDisc = true });
        Arc arc = Assert.IsType<Arc>(Assert.Single(part.Outside.Pattern));
        Assert.True(arc.IsFullCircle);
        Assert.Equal((21.0, 0.0), (arc.Radius, arc.Centre.Radius));
    }

    [Fact]
    public void The_mark_is_a_stroke_on_the_tooth_s_centre_line_inside_the_root_circle()
    {
        ArcPath mark = Assert.Single(PartBuilder.Build(Blank(40, 10, [], words: "")).Engraving);
        Assert.False(mark.Closed);
        Assert.All(mark.Vertices, vertex => Assert.Equal(0, vertex.Point.Y));
        Assert.All(mark.Vertices, vertex => Assert.InRange(vertex.Point.X, 5.5, 18.25));
    }

    [Fact]
    public void No_mark_no_stroke() => Assert.Empty(PartBuilder.Build(Blank(40, 10, [], mark: false, words: "")).Engraving);

    [Fact]
    public void A_mark_without_room_is_left_out_with_a_word()
    {
        Part part = PartBuilder.Build(Blank(40, 10, [new Circle(new Point(17, 0), 1)], words: ""));
        Assert.Empty(part.Engraving);
        Assert.Contains("mark", Assert.Single(part.Remarks), StringComparison.Ordinal);
        Assert.NotEmpty(PartBuilder.Build(Blank(40, 36, [], words: "")).Remarks);
    }

    [Fact]
    public void Lettering_without_room_is_left_out_with_a_word()
    {
        Part part = PartBuilder.Build(Blank(12, 4, [], mark: false));
        Assert.Empty(part.Engraving);
        Assert.Contains("lettering", Assert.Single(part.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void A_clear_face_takes_mark_and_lettering()
    {
        Part part = PartBuilder.Build(Blank(60, 5, []));
        Assert.True(part.Engraving.Length > 10);
        Assert.Empty(part.Remarks);
    }

    [Fact]
    public void Engraving_keeps_half_a_millimetre_from_teeth_and_holes_wherever_they_are() =>
        Gen.Select(Gen.Int[12, 80], Gen.Double[0.3, 2], Gen.Double[0.05, 0.9], Gen.Double[0.05, 0.95], Gen.Double[-0.5, 0.5], Gen.Double[0.2, 3]).Sample(
            (teeth, module, bore, out_, angle, radius) =>
            {
                var gear = ExternalGear.Create(new GearData(teeth, module, TestRacks.A, 0.4));
                var hole = new Circle(Point.Polar(gear.RootRadius * out_, angle), radius);
                if (TryBlank(gear, 2 * gear.RootRadius * bore, hole) is not { } blank)
                {
                    return;
                }

                Part part = PartBuilder.Build(blank);
                Assert.All(part.Engraving.SelectMany(Segments), segment =>
                {
                    Assert.True(Math.Max(segment.From.Radius, segment.To.Radius) <= gear.RootRadius - 0.5 + 1e-9);
                    Assert.All(part.Holes.Select(hole => hole.AsCircle!.Value), circle => Assert.True(Distance(circle.Centre, segment.From, segment.To) >= circle.Radius + 0.5 - 1e-9));
                });
                Assert.True(part.Engraving.Length + part.Remarks.Length > 0);
            },
            iter: 150, threads: 1);

    private static IEnumerable<PathPiece> Segments(ArcPath path) => Enumerable.Range(0, PathPiece.CountIn(path)).Select(i => PathPiece.At(path, i));

    private static double Distance(Point point, Point from, Point to)
    {
        Vector along = to - from;
        double share = along.Length == 0 ? 0 : Math.Clamp((point - from).Dot(along) / along.Dot(along), 0, 1);
        return point.DistanceTo(from + (along * share));
    }

    private static Blank? TryBlank(ExternalGear gear, double bore, Circle hole)
    {
        try
        {
            return new Blank("wheel", gear, 2, bore, null, [hole], false, true, Words);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    private static Blank Blank(int teeth, double bore, ImmutableArray<Circle> holes, bool mark = true, string words = Words) =>
        new("wheel", ExternalGear.Create(new GearData(teeth, 1, TestRacks.A)), 2, bore, null, holes, false, mark, words);
}
