using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>A place where the cutter touches twice and leaves its own round: the outline as it comes out runs about it from one touch to the other.</summary>
/// <param name="Cutter">Where the cutter stands.</param>
/// <param name="From">The first touch, in order of travel.</param>
/// <param name="To">The second.</param>
internal readonly record struct CutterStand(Circle Cutter, Point From, Point To)
{
    /// <summary>The round that it leaves.</summary>
    public Arc Round => new(Cutter.Centre, Cutter.Radius, (From - Cutter.Centre).Angle, (From - Cutter.Centre).AngleTo(To - Cutter.Centre));

    /// <summary>True where a point, seen from the cutter's centre, lies between the touches.</summary>
    public bool Faces(Point point)
    {
        (Vector from, Vector to, Vector at) = (From - Cutter.Centre, To - Cutter.Centre, point - Cutter.Centre);
        int sense = from.Cross(to) < 0 ? -1 : 1;
        return sense * from.Cross(at) > 0 && sense * at.Cross(to) > 0;
    }
}
