using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Faces;

/// <summary>The face of an external gear: the disc inside its root circle.</summary>
internal sealed record DiscFace(double RootRadius, int Teeth) : Face
{
    public override ImmutableArray<FaceEdge> Edges => [new OuterEdge("root circle", RootRadius)];

    public override double Depth => RootRadius;

    public override (Point Start, Vector Inward) ToothAt(int tooth)
    {
        var outward = Vector.AtAngle(2 * Math.PI * (tooth - 1) / Teeth);
        return (default(Point) + (outward * RootRadius), -outward);
    }

    public override PlacedLettering? Letter(string text, Cutouts cutouts, ImmutableArray<Circle> taken, double clearance)
    {
        ImmutableArray<Circle> holes = [.. cutouts.Screws?.Holes() ?? [], .. cutouts.Holes, .. taken];
        double bore = cutouts.Bore?.OuterRadius ?? 0;
        if (cutouts.Crossings is not { } crossings)
        {
            return Ring(bore, RootRadius);
        }

        // Windows leave two rings; arms are too narrow for words.
        return Ring(RootRadius - crossings.RimWidth, RootRadius) ?? Ring(bore, crossings.HubDiameter / 2);

        PlacedLettering? Ring(double inner, double outer) => LetteringLayout.Place(text, new LetteringFace(inner, outer, holes, clearance));
    }
}
