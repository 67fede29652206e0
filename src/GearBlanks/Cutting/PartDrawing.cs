using System.Collections.Immutable;
using System.Runtime.InteropServices;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;

namespace GearBlanks.Cutting;

/// <summary>Turns a part into a drawing: its contours by operation, and beside it, on the layer that is never cut, what it is in words.</summary>
public static class PartDrawing
{
    /// <summary>Length of the line by which a reader without units can be checked, mm.</summary>
    public const double LengthMark = 20;

    private const int MarkingDecimals = 3;
    private const double NoteHeight = 2.5;
    private const double NoteSpacing = 4.5;
    internal const double NoteGap = 5;

    // Half the height of the ticks that end the length mark.
    private const double Tick = 1;

    /// <summary>Draws a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="layers">The machine's layers.</param>
    /// <param name="tolerance">Greatest distance between the written pieces and the exact outline, mm.</param>
    /// <param name="pieces">Arcs or chords.</param>
    /// <param name="words">What the note says, a line an item.</param>
    public static Drawing Of(
        Part part, LayerPlan layers, double tolerance, Pieces pieces, IEnumerable<string> words)
    {
        DrawingLayer outside = Contours(Operation.CutOutside, [part.Outside]);
        return new Drawing(part.Name, [.. layers.Order.Select(operation => operation switch
        {
            Operation.Note => Strokes(operation, NotesUnder(outside, words)),
            Operation.Engrave => Strokes(operation, [.. part.Engraving.Select(Rounded)]),
            Operation.CutHoles => Contours(operation, part.Holes),
            _ => outside,
        })]);

        DrawingLayer Strokes(Operation operation, ImmutableArray<ArcPath> strokes) => new(layers.Names[operation], operation, strokes, []);

        // Circles stay circles; everything else becomes a path.
        DrawingLayer Contours(Operation operation, ImmutableArray<Outline> outlines) => new(
            layers.Names[operation], operation,
            [.. outlines.Where(outline => outline.AsCircle is null).Select(outline => OutlineFit.Fit(outline, tolerance, pieces))],
            [.. outlines.Select(outline => outline.AsCircle).OfType<Circle>()]);
    }

    /// <summary>A routed drawing with other words beside it, where they stood.</summary>
    /// <param name="routed">The drawing.</param>
    /// <param name="closed">The drawing before its contours got leads.</param>
    /// <param name="words">What the note says, a line an item.</param>
    public static Drawing WithWords(Drawing routed, Drawing closed, IEnumerable<string> words)
    {
        DrawingLayer outside = closed.Layers.Single(layer => layer.Operation == Operation.CutOutside);
        return routed with { Layers = [.. routed.Layers.Select(layer => layer.Operation == Operation.Note ? layer with { Paths = NotesUnder(outside, words) } : layer)] };
    }

    private static ImmutableArray<ArcPath> NotesUnder(DrawingLayer outside, IEnumerable<string> words) => Notes(words, Extent.Of(outside).Bottom - NoteGap);

    /// <summary>A line by which sizes can be checked, and words under it.</summary>
    internal static ImmutableArray<ArcPath> Notes(IEnumerable<string> words, double top)
    {
        ImmutableArray<ArcPath>.Builder strokes = ImmutableArray.CreateBuilder<ArcPath>();
        double half = LengthMark / 2;
        strokes.Add(ArcPath.Strokes(
            [new Point(-half, top + Tick), new Point(-half, top - Tick), new Point(-half, top), new Point(half, top), new Point(half, top + Tick), new Point(half, top - Tick)]));
        double line = top - Tick;
        foreach (string text in words.Prepend(FormattableString.Invariant($"this line: {LengthMark:0} mm")))
        {
            line -= NoteSpacing;
            var start = new Point(-StrokeFont.WidthOf(text, NoteHeight) / 2, line);
            strokes.AddRange(StrokeFont.Lay(text, NoteHeight, start).Select(Rounded));
        }

        return strokes.ToImmutable();
    }

    // No marking is finer than a micrometre, and shorter numbers make smaller files.
    private static ArcPath Rounded(ArcPath stroke)
    {
        var vertices = new PathVertex[stroke.Vertices.Length];
        for (int i = 0; i < vertices.Length; i++)
        {
            Point point = stroke.Vertices[i].Point;
            vertices[i] = new PathVertex(new Point(Math.Round(point.X, MarkingDecimals), Math.Round(point.Y, MarkingDecimals)), 0);
        }

        return stroke with { Vertices = ImmutableCollectionsMarshal.AsImmutableArray(vertices) };
    }
}
