using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>Makes a blank's exact shape.</summary>
public static class PartBuilder
{
    // Common practice, no source: closer than this a laser's engraving chars an edge.
    private const double EngravingClearance = 0.5;

    /// <summary>The shape of a blank.</summary>
    public static Part Build(Blank blank)
    {
        var engraving = new List<ArcPath>();
        var remarks = new List<string>();
        ImmutableArray<Circle> taken = Mark(blank, engraving, remarks);
        Letter(blank, taken, engraving, remarks);
        return new Part(
            blank.Name, Outside(blank), [.. Inside(blank), .. blank.Holes.Select(hole => hole.Outline)], [.. engraving], [.. remarks]);
    }

    private static Outline Outside(Blank blank) => blank.Gear switch
    {
        RingGear ring => Outline.Of(new Circle(default, ring.RimRadius)),
        Gear gear when blank.IsDisc => Outline.Of(new Circle(default, gear.NominalTipRadius)),
        RackBar rack when blank.IsDisc => Bar(rack),
        _ => blank.Gear.Outline(),
    };

    // A ring's teeth, or the bore that they are cut from later.
    private static IEnumerable<Outline> Inside(Blank blank) => blank.Gear is RingGear ring
        ? [blank.IsDisc ? Outline.Of(new Circle(default, ring.NominalTipRadius)) : ring.Outline()]
        : [];

    private static Outline Bar(RackBar rack)
    {
        double half = rack.Length / 2;
        Point[] corners = [new(-half, -rack.Data.BackHeight), new(half, -rack.Data.BackHeight), new(half, rack.TipHeight), new(-half, rack.TipHeight)];
        return new Outline([.. corners.Select((corner, i) => new Line(corner, corners[(i + 1) % corners.Length]))]);
    }

    // Returns the room that lettering leaves to the marks.
    private static ImmutableArray<Circle> Mark(Blank blank, List<ArcPath> engraving, List<string> remarks)
    {
        ImmutableArray<Circle>.Builder rooms = ImmutableArray.CreateBuilder<Circle>();
        foreach (int tooth in blank.MarkedTeeth)
        {
            string which = blank.MarkedTeeth.Length == 1 ? "The clocking mark" : FormattableString.Invariant($"The clocking mark of tooth {tooth}");
            Add(ClockingMark.At(blank, tooth, EngravingClearance), which);
        }

        foreach (int tooth in blank.FacingTeeth.Except(blank.MarkedTeeth))
        {
            Add(ClockingMark.At(blank, tooth, EngravingClearance, isFacing: true), FormattableString.Invariant($"The mark of tooth {tooth}, which faces a mate's gap or stands beside the gap of a mate's tooth,"));
        }

        return rooms.ToImmutable();

        void Add(ClockingMark mark, string which)
        {
            if (mark.IsClear(blank, EngravingClearance))
            {
                rooms.Add(mark.Room);
                engraving.Add(mark.Stroke);
            }
            else
            {
                remarks.Add($"{which} is left out: there is no room for it on the marked tooth's centre line.");
            }
        }
    }

    private static void Letter(Blank blank, ImmutableArray<Circle> taken, List<ArcPath> engraving, List<string> remarks)
    {
        if (blank.Lettering.Length == 0)
        {
            return;
        }

        if (blank.Face.Letter(blank.Lettering, blank.Cutouts, taken, EngravingClearance) is { } placed)
        {
            engraving.AddRange(placed.Strokes);
        }
        else
        {
            remarks.Add("The lettering is left out: it does not fit at 2 mm height between bore, holes and teeth.");
        }
    }
}
