using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>A place where the cutter touches twice and leaves its own round: the outline as it comes out runs about it from one touch to the other.</summary>
/// <param name="Cutter">Where the cutter stands.</param>
/// <param name="From">The first touch, in order of travel.</param>
/// <param name="To">The second.</param>
/// <param name="First">Where on the chain the first touch lies.</param>
/// <param name="Last">The same of the second touch.</param>
/// <param name="IsInMiddle">True where the cutter stands on the gap's middle line, so that the first touch is the line itself.</param>
internal readonly record struct CutterStand(Circle Cutter, Point From, Point To, ChainPlace First, ChainPlace Last, bool IsInMiddle)
{
    // Of the radius: what lies on the line to a touch is between them.
    private const double Rounding = 1e-12;

    /// <summary>The round that it leaves.</summary>
    public Arc Round => new(Cutter.Centre, Cutter.Radius, (From - Cutter.Centre).Angle, (From - Cutter.Centre).AngleTo(To - Cutter.Centre));

    /// <summary>The part of one of the chain's curves, by its index, that lies between the touches: its parameters.</summary>
    public (double From, double To) RangeOn(int curve, Curve of) => (curve == First.Curve ? First.At : of.Start, curve == Last.Curve ? Last.At : of.End);

    /// <summary>True where a point, seen from the cutter's centre, lies between the touches.</summary>
    public bool Faces(Point point)
    {
        (Vector from, Vector to, Vector at) = (From - Cutter.Centre, To - Cutter.Centre, point - Cutter.Centre);
        int sense = from.Cross(to) < 0 ? -1 : 1;
        double least = -Rounding * Cutter.Radius * Cutter.Radius;
        return sense * from.Cross(at) >= least && sense * at.Cross(to) >= least;
    }

    /// <summary>How far a point beyond the round is from it, mm.</summary>
    public double WidthAt(Point point) => point.DistanceTo(Cutter.Centre) - Cutter.Radius;

    /// <summary>Distance of a point from the round, mm: negative beyond it, in what stays uncut.</summary>
    public double RoomAt(Point point) => Faces(point)
        ? -WidthAt(point)
        : Math.Min(point.DistanceTo(From), point.DistanceTo(To));
}

/// <summary>A place on a chain.</summary>
/// <param name="Curve">Index of the curve.</param>
/// <param name="At">Its parameter there.</param>
internal readonly record struct ChainPlace(int Curve, double At);
