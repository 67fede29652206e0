using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>Makes a blank's exact shape.</summary>
public static class PartBuilder
{
    // Common practice, no source: closer than this a laser's engraving chars an edge.
    private const double EngravingClearance = 0.5;

    // Length of the clocking mark, in modules, and at least in mm so that it can be seen.
    private const double MarkModules = 1.0;
    private const double LeastMark = 0.8;

    /// <summary>The shape of a blank.</summary>
    public static Part Build(Blank blank)
    {
        var engraving = new List<ArcPath>();
        var remarks = new List<string>();
        ImmutableArray<Circle> holes = [.. blank.NamedHoles().Select(hole => hole.Circle)];
        ImmutableArray<Circle> taken = Mark(blank, holes, engraving, remarks);
        Letter(blank, holes.AddRange(taken), engraving, remarks);
        return new Part(blank.Name, Outside(blank), [.. holes.Select(Outline.Of)], [.. engraving], [.. remarks]);
    }

    private static Outline Outside(Blank blank) =>
        blank.IsDisc ? Outline.Of(new Circle(default, blank.Gear.NominalTipRadius)) : blank.Gear.Outline();

    // A short stroke on the marked tooth's centre line, just inside the root circle; returns the room that lettering leaves to it.
    private static ImmutableArray<Circle> Mark(Blank blank, ImmutableArray<Circle> holes, List<ArcPath> engraving, List<string> remarks)
    {
        if (!blank.HasMark)
        {
            return [];
        }

        double outer = blank.Gear.RootRadius - EngravingClearance;
        double length = Math.Max(LeastMark, MarkModules * blank.Gear.Module);
        var room = new Circle(new Point(outer - (length / 2), 0), length / 2);
        if (outer - length < EngravingClearance || holes.Any(hole => hole.WallTo(room) < EngravingClearance))
        {
            remarks.Add("The clocking mark is left out: there is no room for it on the marked tooth's centre line.");
            return [];
        }

        engraving.Add(ArcPath.Strokes([new Point(outer, 0), new Point(outer - length, 0)]));
        return [room];
    }

    private static void Letter(Blank blank, ImmutableArray<Circle> obstacles, List<ArcPath> engraving, List<string> remarks)
    {
        if (blank.Lettering.Length == 0)
        {
            return;
        }

        var face = new LetteringFace((blank.Bore ?? 0) / 2, blank.Gear.RootRadius, obstacles, EngravingClearance);
        if (LetteringLayout.Place(blank.Lettering, face) is { } placed)
        {
            engraving.AddRange(placed.Strokes);
        }
        else
        {
            remarks.Add("The lettering is left out: it does not fit at 2 mm height between bore, holes and teeth.");
        }
    }
}
