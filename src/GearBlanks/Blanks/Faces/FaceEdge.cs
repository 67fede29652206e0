using GearBlanks.Curves;

namespace GearBlanks.Blanks.Faces;

/// <summary>One edge of the face that the teeth leave free: what is cut into the face must stay on one side of it.</summary>
/// <param name="Name">What it is, as it follows "wall between hole and".</param>
internal abstract record FaceEdge(string Name)
{
    /// <summary>Material between a contour and the edge, mm; negative by as much as the contour reaches beyond.</summary>
    public abstract double WallTo(Contour contour);
}

/// <summary>A circle about the origin that contours stay inside.</summary>
internal sealed record OuterEdge(string Name, double Radius) : FaceEdge(Name)
{
    public override double WallTo(Contour contour) =>
        Radius - (contour.AsCircle is { } circle ? circle.Centre.Radius + circle.Radius : contour.FarthestFrom(default));
}

/// <summary>A circle about the origin that contours stay outside.</summary>
internal sealed record InnerEdge(string Name, double Radius) : FaceEdge(Name)
{
    public override double WallTo(Contour contour) =>
        (contour.AsCircle is { } circle ? circle.Centre.Radius - circle.Radius
            : contour.Contains(default) ? -contour.FarthestFrom(default) : contour.NearestTo(default)) - Radius;
}

/// <summary>A straight edge: contours stay on the side that its direction points away from.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Outward">Direction out of the face, length 1.</param>
/// <param name="Distance">Distance of the edge from the origin in that direction, mm; negative where the origin lies beyond it.</param>
internal sealed record StraightEdge(string Name, Vector Outward, double Distance) : FaceEdge(Name)
{
    public override double WallTo(Contour contour) => Distance - contour.Reach(Outward);
}
