using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>A gear with all that is cut into its face, in its own frame: centred on the origin, a tooth's centre line on +X.</summary>
public sealed record Blank
{
    /// <summary>Makes a blank whose holes lie inside the root circle and apart from one another.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="gear">Its teeth.</param>
    /// <param name="thickness">Sheet thickness, mm; 0 where it is not known.</param>
    /// <param name="bore">Bore diameter, mm; null for none.</param>
    /// <param name="screws">Its screws; null for none.</param>
    /// <param name="holes">Further holes.</param>
    /// <param name="isDisc">True for a plain turned disc of the tip diameter, whose teeth are milled later.</param>
    /// <param name="hasMark">Whether the tooth on +X is marked.</param>
    /// <param name="lettering">What is engraved, parts separated by <see cref="Lettering.LetteringLayout.Break"/>; empty for nothing.</param>
    /// <exception cref="GearGeometryException">A hole reaches the root circle or another hole: contours would cross.</exception>
    public Blank(
        string name, ExternalGear gear, double thickness, double? bore, ScrewCircle? screws, ImmutableArray<Circle> holes,
        bool isDisc, bool hasMark, string lettering)
    {
        Name = name;
        Gear = gear;
        Thickness = thickness;
        Bore = bore;
        Screws = screws;
        Holes = holes;
        IsDisc = isDisc;
        HasMark = hasMark;
        Lettering = lettering;
        if (LeastWall() is { Width: <= 0 } wall)
        {
            double lacking = Math.Ceiling(-wall.Width * 1000) / 1000;
            throw new GearGeometryException(
                "holes-cross", $"The {wall.Between} of {name} touch or overlap; wall between them, mm", wall.Width, 0,
                $"move a hole by more than {Words.Mm(lacking)}, or make its diameter smaller by more than {Words.Mm(2 * lacking)}");
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its teeth.</summary>
    public ExternalGear Gear { get; }

    /// <summary>Sheet thickness, mm; 0 where it is not known.</summary>
    public double Thickness { get; }

    /// <summary>Bore diameter, mm; null for none.</summary>
    public double? Bore { get; }

    /// <summary>Its screws; null for none.</summary>
    public ScrewCircle? Screws { get; }

    /// <summary>Further holes.</summary>
    public ImmutableArray<Circle> Holes { get; }

    /// <summary>True for a plain turned disc of the tip diameter, whose teeth are milled later.</summary>
    public bool IsDisc { get; init; }

    /// <summary>Whether the tooth on +X is marked.</summary>
    public bool HasMark { get; }

    /// <summary>What is engraved; empty for nothing.</summary>
    public string Lettering { get; init; }

    /// <summary>Every hole with its name, the bore first.</summary>
    public IEnumerable<(string Name, Circle Circle)> NamedHoles()
    {
        if (Bore is { } bore)
        {
            yield return ("bore", new Circle(default, bore / 2));
        }

        foreach (Circle hole in Screws?.Holes() ?? [])
        {
            yield return ("screw hole", hole);
        }

        foreach (Circle hole in Holes)
        {
            yield return ("hole", hole);
        }
    }

    /// <summary>The least wall between two holes, or a hole and the root circle, mm; null without holes.</summary>
    public (string Between, double Width)? LeastWall()
    {
        (string Name, Circle Circle)[] holes = [.. NamedHoles()];
        return holes.Length == 0 ? null : Walls(holes).MinBy(wall => wall.Width);
    }

    private IEnumerable<(string Between, double Width)> Walls((string Name, Circle Circle)[] holes)
    {
        for (int i = 0; i < holes.Length; i++)
        {
            (string name, Circle circle) = holes[i];
            yield return ($"{name} and root circle", Gear.RootRadius - circle.Centre.Radius - circle.Radius);
            foreach ((string other, Circle second) in holes.Skip(i + 1))
            {
                yield return (name == other ? $"two {name}s" : $"{name} and {other}", circle.WallTo(second));
            }
        }
    }
}
