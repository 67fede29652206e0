using GearBlanks.Curves;

namespace GearBlanks.Meshing;

/// <summary>Where the mate's tip corner, on its way past a tooth's side while the flanks touch, comes nearest to the fillet, and whether it digs in.</summary>
internal static class TipCorner
{
    // The room is smooth on the scale of a module, and both stretches are shorter: there are no more dips than these find.
    private const int FilletSamples = 24;
    private const int FlankSamples = 12;

    // Flanks that touch on the line of action are found at zero but for rounding.
    private const double Rounding = 1e-7;

    /// <summary>
    /// Least room between the corner and the side beyond the form circle, mm: negative where they dig in, there or on the flank as far as the working
    /// circle; null where the corner stays short of the form circle and free.
    /// </summary>
    /// <param name="path">The corner's way.</param>
    /// <param name="side">The side that it passes.</param>
    /// <param name="form">The form circle's radius, mm; of a rack the height.</param>
    /// <param name="working">The working circle's, mm.</param>
    /// <param name="meetsFlank">
    /// True where the corner meets the flank on the line of action at the form circle or above: convex flanks that touch there cross nowhere, so that the
    /// flank need not be searched.
    /// </param>
    public static double? LeastRoom(CornerPath path, ToothSide side, double form, double working, bool meetsFlank = false)
    {
        double toForm = path.Reach(form);
        double toWorking = path.Reach(working);
        double inner = toForm > 0 ? toForm : 0;
        double? fillet = inner > 0 ? Least(path, side, -inner, inner, FilletSamples) : null;
        double flank = toWorking > inner && !meetsFlank
            ? Math.Min(Least(path, side, -toWorking, -inner, FlankSamples), Least(path, side, inner, toWorking, FlankSamples))
            : double.PositiveInfinity;
        double least = Math.Min(flank, fillet ?? double.PositiveInfinity);
        return least < -Rounding ? least : fillet is < 0 ? 0 : fillet;
    }

    private static double Least(CornerPath path, ToothSide side, double from, double to, int samples) =>
        LeastValue.Of(at => side.Room(path.At(at)), path.RateAt, from, to, samples).Value;
}
