using System.Collections.Immutable;
using GearBlanks.Blanks.Faces;
using GearBlanks.Blanks.Walls;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks;

/// <summary>
/// A gear, a ring or a rack with all that is cut into its face, in its own frame: a gear centred on the origin with a tooth's centre line on
/// +X, a rack as <see cref="RackBar"/> says.
/// </summary>
public sealed record Blank
{
    /// <summary>Makes a blank whose cutouts lie within its face and apart from one another.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="gear">Its teeth.</param>
    /// <param name="thickness">Sheet thickness, mm; 0 where it is not known.</param>
    /// <param name="cutouts">What is cut through its face.</param>
    /// <param name="markedTeeth">
    /// Teeth with a clocking mark: 1 is the one on +X and counting goes counter-clockwise; of a rack, 1 is the leftmost.
    /// </param>
    /// <exception cref="GearGeometryException">
    /// A cutout reaches an edge or another cutout, the windows do not fit, the teeth leave no place for such a cutout, or a marked tooth does
    /// not exist.
    /// </exception>
    public Blank(string name, Toothing gear, double thickness, Cutouts cutouts, ImmutableArray<int> markedTeeth)
    {
        Name = name;
        Gear = gear;
        Thickness = thickness;
        Cutouts = cutouts;
        MarkedTeeth = markedTeeth;
        Face = Face.Of(gear);
        BlankRules.Require(this);
        Holes = WallList.Holes(cutouts, gear is ExternalGear round ? cutouts.Crossings?.Windows(round.RootRadius) ?? [] : []);
        Walls = [.. WallList.Of(Face, Holes)];
        if (Walls.MinBy(wall => wall.Width) is { Width: <= 0 } wall)
        {
            throw new GearGeometryException(
                "holes-cross", $"The {wall.Between} of {name} touch or overlap; wall between them, mm", wall.Width, 0, WallAdvice.Remedy(wall, cutouts));
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its teeth: of an external gear, a ring or a rack.</summary>
    public Toothing Gear { get; }

    /// <summary>Sheet thickness, mm; 0 where it is not known.</summary>
    public double Thickness { get; }

    /// <summary>What is cut through its face.</summary>
    public Cutouts Cutouts { get; }

    /// <summary>Teeth with a clocking mark, counted counter-clockwise from 1 on +X; of a rack from 1 on the left.</summary>
    public ImmutableArray<int> MarkedTeeth { get; }

    /// <summary>
    /// Teeth that face a mate's gap, or stand beside the gap that a mate's tooth faces, when the mechanism is put together at its setting: counted as the
    /// marked ones. They carry shorter strokes; one that is marked already carries no second stroke.
    /// </summary>
    public ImmutableArray<int> FacingTeeth { get; init; } = [];

    /// <summary>
    /// True where the teeth are cut later: a gear is a plain disc of the tip diameter, a ring is bored to its tip diameter, a rack is a plain
    /// bar of the tip height.
    /// </summary>
    public bool IsDisc { get; init; }

    /// <summary>What is engraved, parts separated by <see cref="Lettering.LetteringLayout.Break"/>; empty for nothing.</summary>
    public string Lettering { get; init; } = "";

    /// <summary>Its part number; null for none.</summary>
    public string? PartNumber { get; init; }

    internal Face Face { get; }

    internal ImmutableArray<Hole> Holes { get; }

    internal ImmutableArray<Wall> Walls { get; }

    /// <summary>Every contour within the face with its name, the bore first.</summary>
    public IEnumerable<(string Name, Outline Outline)> NamedHoles() => Holes.Select(hole => (hole.Name, hole.Outline));

    /// <summary>
    /// The least wall between two cutouts, or a cutout and an edge of the face, mm; null without cutouts. Arms are no walls.
    /// </summary>
    public (string Between, double Width)? LeastWall() =>
        Walls.Where(wall => !wall.IsArm).MinBy(wall => wall.Width) is { } least ? (least.Between, least.Width) : null;

    /// <summary>The least width of an arm, mm; null without crossings.</summary>
    public double? LeastArm() => Walls.FirstOrDefault(wall => wall.IsArm)?.Width;
}
