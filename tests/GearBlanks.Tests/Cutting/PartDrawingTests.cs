using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Cutting;

/// <summary>Drawings of parts.</summary>
public sealed class PartDrawingTests
{
    private static readonly LayerPlan Names = new(ImmutableDictionary<Operation, string>.Empty
        .Add(Operation.CutOutside, "outer").Add(Operation.CutHoles, "inner").Add(Operation.Engrave, "mark").Add(Operation.Note, "words"), false);

    private static readonly ImmutableArray<string> Lines = ["nominal, kerf not compensated", "brass 2 mm"];

    private static readonly Part Wheel = PartBuilder.Build(Blank);

    private static Blank Blank => new(
        "wheel", ExternalGear.Create(new GearData(40, 1, TestRacks.A)), 2,
        new Cutouts { Bore = new RoundBore(10), Screws = new ScrewCircle(3, 25, 2, null, 0.3) }, [1])
    {
        Lettering = "wheel | z 40",
    };

    [Fact]
    public void Layers_come_in_the_order_of_work_under_the_machine_s_names()
    {
        Drawing drawing = Draw(Wheel);
        Assert.Equal(["words", "mark", "inner", "outer"], drawing.Layers.Select(layer => layer.Name));
        Assert.Equal([Operation.Note, Operation.Engrave, Operation.CutHoles, Operation.CutOutside], drawing.Layers.Select(layer => layer.Operation));
        Assert.Equal("wheel", drawing.Title);
    }

    [Fact]
    public void What_is_cut_is_closed_and_what_is_marked_is_open()
    {
        Drawing drawing = Draw(Wheel);
        Assert.True(Assert.Single(Layer(drawing, Operation.CutOutside).Paths).Closed);
        Assert.Empty(Layer(drawing, Operation.CutHoles).Paths);
        Assert.Equal(4, Layer(drawing, Operation.CutHoles).Circles.Length);
        Assert.NotEmpty(Layer(drawing, Operation.Engrave).Paths);
        Assert.All([.. Layer(drawing, Operation.Engrave).Paths, .. Layer(drawing, Operation.Note).Paths], path => Assert.False(path.Closed));
    }

    [Fact]
    public void A_disc_is_drawn_as_a_circle()
    {
        DrawingLayer outside = Layer(Draw(PartBuilder.Build(Blank with { IsDisc = true })), Operation.CutOutside);
        Assert.Empty(outside.Paths);
        Assert.Equal(new Circle(default, 21), Assert.Single(outside.Circles));
    }

    [Fact]
    public void The_length_mark_measures_twenty_millimetres()
    {
        // The only stroke among the notes that is so wide without being text.
        ArcPath mark = Assert.Single(Layer(Draw(Wheel), Operation.Note).Paths, path => Extent.Of(path).Width > 10);
        Assert.Equal(20, Extent.Of(mark).Width, 1e-12);
        Assert.Contains(
            Enumerable.Range(0, PathPiece.CountIn(mark)).Select(i => PathPiece.At(mark, i)),
            piece => piece.From.Y == piece.To.Y && Math.Abs(piece.To.X - piece.From.X - 20) < 1e-12);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Words_stand_below_the_part_and_below_one_another(bool disc)
    {
        Drawing drawing = Draw(PartBuilder.Build(Blank with { IsDisc = disc }));
        DrawingLayer note = Layer(drawing, Operation.Note);
        Assert.True(Extent.Of(note).Top < Extent.Of(Layer(drawing, Operation.CutOutside)).Bottom);
        Assert.Equal(0, (Extent.Of(note).Left + Extent.Of(note).Right) / 2, 1.0);
        int strokes = 1 + Lines.Prepend("this line: 20 mm").Sum(line => StrokeFont.Lay(line, 2.5, default).Length);
        Assert.Equal(strokes, note.Paths.Length);
        Assert.Equal(4, Bands(note));
    }

    [Fact]
    public void Without_words_there_is_still_the_length_mark() =>
        Assert.Equal(2, Bands(Layer(PartDrawing.Of(Wheel, Names, 0.001, Pieces.Arcs, []), Operation.Note)));

    [Theory]
    [InlineData(Pieces.Arcs)]
    [InlineData(Pieces.Chords)]
    public void A_wider_tolerance_takes_fewer_pieces_and_is_kept(Pieces pieces)
    {
        ArcPath fine = Contour(0.001, pieces);
        ArcPath coarse = Contour(0.05, pieces);
        Assert.True(coarse.Vertices.Length < fine.Vertices.Length);
        Assert.Equal(OutlineFit.Fit(Wheel.Outside, 0.05, pieces).Vertices, coarse.Vertices);
        Assert.Equal(42, Extent.Of(fine).Width, 0.002);
    }

    private static ArcPath Contour(double tolerance, Pieces pieces) =>
        Assert.Single(Layer(PartDrawing.Of(Wheel, Names, tolerance, pieces, []), Operation.CutOutside).Paths);

    // How many lines there are, one above the other with room between.
    private static int Bands(DrawingLayer layer)
    {
        int bands = 0;
        double bottom = double.PositiveInfinity;
        foreach (Extent extent in layer.Paths.Select(Extent.Of).OrderByDescending(extent => extent.Top))
        {
            bands += extent.Top < bottom - 0.5 ? 1 : 0;
            bottom = Math.Min(bottom, extent.Bottom);
        }

        return bands;
    }

    private static Drawing Draw(Part part) => PartDrawing.Of(part, Names, 0.001, Pieces.Arcs, Lines);

    private static DrawingLayer Layer(Drawing drawing, Operation operation) => drawing.Layers.Single(layer => layer.Operation == operation);
}
