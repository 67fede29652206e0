using GearBlanks.Cutting.Reach;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>One side of a pair, seen from the teeth that are cut.</summary>
/// <param name="Place">What the mesh is called in findings.</param>
/// <param name="Pair">The pair.</param>
/// <param name="IsFirst">True where the teeth that are cut are its first.</param>
/// <param name="MateName">Name of the mate.</param>
internal sealed record ToothMesh(string Place, GearPair Pair, bool IsFirst, string MateName)
{
    public Toothing Teeth => IsFirst ? Pair.First : Pair.Second;

    public Toothing Mate => IsFirst ? Pair.Second : Pair.First;

    private double? FilletClearance => IsFirst ? Pair.FirstFilletClearance : Pair.SecondFilletClearance;

    /// <summary>The same mesh with other teeth; null where they do not exist or do not mesh.</summary>
    public ToothMesh? With(ToothData teeth, ToothData mate)
    {
        try
        {
            (Toothing one, Toothing other) = (Toothing.Of(teeth), Toothing.Of(mate));
            return this with { Pair = IsFirst ? GearPair.At(one, other, Pair.CentreDistance) : GearPair.At(other, one, Pair.CentreDistance) };
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }

    /// <summary>Least room, mm, between the teeth as cut by a radius and the corners of the mate's tips on their ways; the nominal fillet counts too.</summary>
    public double RoomAsCut(double radius)
    {
        var gap = HalfGap.Of(Teeth);
        MateCorner[] corners = [.. MateCorner.Past(Pair, IsFirst)];
        return Math.Min(
            RunningFree.LeastRoom(Teeth, gap, corners, CutterReach.Half(Teeth, gap, radius).Stands), FilletClearance ?? double.PositiveInfinity);
    }
}
