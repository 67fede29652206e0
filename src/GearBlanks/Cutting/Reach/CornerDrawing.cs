using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;

namespace GearBlanks.Cutting.Reach;

/// <summary>What a large tool leaves in the corners, as a drawing of its own for a second tool.</summary>
public static class CornerDrawing
{
    /// <summary>Draws the corners.</summary>
    /// <param name="title">What the drawing is called.</param>
    /// <param name="corners">Their closed contours; at least one.</param>
    /// <param name="layers">The machine's layers: the contours go on the one for holes.</param>
    /// <param name="tolerance">Greatest distance between the written pieces and the exact contours, mm.</param>
    /// <param name="pieces">Arcs or chords.</param>
    /// <param name="words">What the note says, a line an item.</param>
    public static Drawing Of(string title, ImmutableArray<Outline> corners, LayerPlan layers, double tolerance, Pieces pieces, IEnumerable<string> words)
    {
        var contours = new DrawingLayer(
            layers.Names[Operation.CutHoles], Operation.CutHoles, [.. corners.Select(corner => OutlineFit.Fit(corner, tolerance, pieces))], []);
        double bottom = Extent.Of(contours).Bottom - PartDrawing.NoteGap;
        var note = new DrawingLayer(layers.Names[Operation.Note], Operation.Note, PartDrawing.Notes(words, bottom), []);
        return new Drawing(title, [contours, note]);
    }
}
