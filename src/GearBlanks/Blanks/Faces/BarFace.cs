using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Blanks.Faces;

/// <summary>The face of a rack: the rectangle between its root line, its back and its ends.</summary>
internal sealed record BarFace(RackBar Rack) : Face
{
    public override ImmutableArray<FaceEdge> Edges =>
    [
        new StraightEdge("root line", new Vector(0, 1), Rack.RootHeight),
        new StraightEdge("back", new Vector(0, -1), Rack.Data.BackHeight),
        new StraightEdge("right end", new Vector(1, 0), Rack.Length / 2),
        new StraightEdge("left end", new Vector(-1, 0), Rack.Length / 2),
    ];

    public override double Depth => Rack.RootHeight + Rack.Data.BackHeight;

    public override (Point Start, Vector Inward) ToothAt(int tooth) =>
        (new Point(Rack.FirstTooth + ((tooth - 1) * Rack.Pitch), Rack.RootHeight), new Vector(0, -1));

    public override PlacedLettering? Letter(string text, Cutouts cutouts, ImmutableArray<Circle> taken, double clearance) => LetteringBar.Place(
        text,
        new Point(-Rack.Length / 2, -Rack.Data.BackHeight) + new Vector(clearance, clearance),
        new Point(Rack.Length / 2, Rack.RootHeight) - new Vector(clearance, clearance),
        [.. cutouts.Holes.Concat(taken).Select(hole => hole with { Radius = hole.Radius + clearance })]);
}
