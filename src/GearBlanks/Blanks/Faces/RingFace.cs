using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Faces;

/// <summary>The face of a ring gear: between its root circle and the edge of its rim.</summary>
internal sealed record RingFace(double RootRadius, double RimRadius, int Teeth) : Face
{
    public override ImmutableArray<FaceEdge> Edges => [new InnerEdge("root circle", RootRadius), new OuterEdge("edge of the rim", RimRadius)];

    public override double Depth => RimRadius - RootRadius;

    public override (Point Start, Vector Inward) ToothAt(int tooth)
    {
        var outward = Vector.AtAngle(2 * Math.PI * (tooth - 1) / Teeth);
        return (default(Point) + (outward * RootRadius), outward);
    }

    public override PlacedLettering? Letter(string text, Cutouts cutouts, ImmutableArray<Circle> taken, double clearance) => LetteringLayout.Place(
        text, new LetteringFace(RootRadius, RimRadius, [.. cutouts.Screws?.Holes() ?? [], .. cutouts.Holes, .. taken], clearance));
}
