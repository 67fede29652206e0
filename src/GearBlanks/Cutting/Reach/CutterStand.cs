using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>A place where the cutter touches twice and leaves its own round: the outline as it comes out runs about it from one touch to the other.</summary>
/// <param name="Cutter">Where the cutter stands.</param>
/// <param name="From">The first touch, in order of travel.</param>
/// <param name="To">The second.</param>
/// <param name="FirstCurve">Index of the chain's curve on which the first touch lies, or before it where that is a corner.</param>
/// <param name="LastCurve">The same of the second touch, or after it.</param>
internal readonly record struct CutterStand(Circle Cutter, Point From, Point To, int FirstCurve, int LastCurve)
{
    // Of the radius: what lies on the line to a touch is between them.
    private const double Rounding = 1e-12;

    /// <summary>The round that it leaves.</summary>
    public Arc Round => new(Cutter.Centre, Cutter.Radius, (From - Cutter.Centre).Angle, (From - Cutter.Centre).AngleTo(To - Cutter.Centre));

    /// <summary>True where a point, seen from the cutter's centre, lies between the touches.</summary>
    public bool Faces(Point point)
    {
        (Vector from, Vector to, Vector at) = (From - Cutter.Centre, To - Cutter.Centre, point - Cutter.Centre);
        int sense = from.Cross(to) < 0 ? -1 : 1;
        double least = -Rounding * Cutter.Radius * Cutter.Radius;
        return sense * from.Cross(at) >= least && sense * at.Cross(to) >= least;
    }

    /// <summary>Distance of a point from the round, mm: negative beyond it, in what stays uncut.</summary>
    public double RoomAt(Point point) => Faces(point)
        ? Cutter.Radius - point.DistanceTo(Cutter.Centre)
        : Math.Min(point.DistanceTo(From), point.DistanceTo(To));
}
