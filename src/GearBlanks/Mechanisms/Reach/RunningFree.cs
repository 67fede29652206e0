using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting.Reach;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>
/// The largest cutter that leaves a mate running free: the root of the least room between what stays uncut and the corners of the mate's tips on their ways. The
/// land between two corners lies within the cutter's round where they do, as it is less bent.
/// </summary>
internal static class RunningFree
{
    // The room is smooth on the scale of a module: there are no more dips than these find.
    private const int Samples = 24;

    // mm of radius: a fifth of a micrometre on the diameter.
    private const double RadiusAccuracy = 1e-7;

    // Factor by which larger cutters are tried until one does not run free, and in modules the largest.
    private const double Step = 1.1;
    private const double Largest = 8;

    // In modules: smaller cutters are not asked about.
    private const double LeastRadius = 1e-3;

    // Of a radius: the cutter that just runs free leaves no doubt when it is so much smaller.
    private const double JustSmaller = 1e-5;

    private const int MaxSteps = 100;

    /// <summary>The largest radius, mm, for one side of a pair; null where even an outline cut whole does not clear the mate.</summary>
    /// <param name="teeth">The teeth that are cut.</param>
    /// <param name="gap">Their gap.</param>
    /// <param name="rootTouching">Radius of the largest cutter that touches the root, mm.</param>
    /// <param name="wholeFillet">Radius of the largest that follows all of it, mm.</param>
    /// <param name="pair">The pair that they are part of.</param>
    /// <param name="isFirst">True where they are its first.</param>
    public static double? Radius(Toothing teeth, HalfGap gap, double rootTouching, double wholeFillet, GearPair pair, bool isFirst)
    {
        if ((isFirst ? pair.FirstFilletClearance : pair.SecondFilletClearance) < 0)
        {
            return null;
        }

        MateCorner[] corners = [.. MateCorner.Past(pair, isFirst)];
        double Everywhere(double radius) => LeastRoom(teeth, gap, corners, CutterReach.Half(teeth, gap, radius).Stands);
        double InMiddle(double radius) => LeastRoom(teeth, gap, corners, [MiddleStand.Of(gap, radius)]);
        double most = teeth is RingGear ring ? Math.Min(Largest * teeth.Module, ring.TipRadius * (1 - 1e-6)) : Largest * teeth.Module;
        double least = Math.Max(wholeFillet, LeastRadius * teeth.Module);
        double touching = Math.Min(Math.Max(rootTouching, least), most);
        return touching > least && Everywhere(touching) < 0
            ? Root(Everywhere, least, touching)
            : Search(InMiddle, touching, most) is var found && Everywhere(found * (1 - JustSmaller)) >= 0 ? found
            : Search(Everywhere, least, most);
    }

    /// <summary>Least room between what a cutter leaves uncut and corners of the mate's tips, mm: negative where they strike; a module where nothing is left.</summary>
    public static double LeastRoom(Toothing teeth, HalfGap gap, MateCorner[] corners, ImmutableArray<CutterStand> stands)
    {
        double least = teeth.Module;
        foreach (CutterStand stand in stands)
        {
            foreach (MateCorner corner in corners)
            {
                double reach = corner.Reach(ReachOf(teeth, stand, corner.Round));
                if (reach > 0)
                {
                    least = Math.Min(least, LeastValue.Of(at => RoomAt(gap, stand, corner.At(at)) - corner.Round, -reach, reach, Samples).Value);
                }
            }
        }

        return least;
    }

    // The first radius that does not run free, or the most.
    private static double Search(Func<double, double> room, double free, double most)
    {
        while (free < most)
        {
            double tried = Math.Min(free * Step, most);
            if (room(tried) < 0)
            {
                return Root(room, free, tried);
            }

            free = tried;
        }

        return most;
    }

    private static double Root(Func<double, double> room, double free, double strikes) =>
        room(free) < 0 ? free : Brent.FindRoot(room, free, strikes, RadiusAccuracy, MaxSteps);

    // As far out as the cutter's round begins.
    private static double ReachOf(Toothing teeth, CutterStand stand, double round) => teeth switch
    {
        RackBar => Math.Max(stand.From.Y, stand.To.Y) + round,
        RingGear => Math.Min(stand.From.Radius, stand.To.Radius) - round,
        _ => Math.Max(stand.From.Radius, stand.To.Radius) + round,
    };

    private static double RoomAt(HalfGap gap, CutterStand stand, Point point) => stand.RoomAt(gap.IsBeyondMiddle(point) ? gap.AcrossGap.Apply(point) : point);
}
