using System.Collections.Immutable;
using GearBlanks.Curves;
using MathNet.Numerics.Integration;

namespace GearBlanks.Cutting.Reach;

/// <summary>What a cutter leaves standing in one gap.</summary>
/// <param name="Depth">Greatest distance of a point of the nominal outline from the outline as cut, mm.</param>
/// <param name="Area">Area between both in one gap, mm2.</param>
internal readonly record struct UncutRest(double Depth, double Area)
{
    // With so many nodes a curve's area comes out to the last bits.
    private const int Nodes = 20;

    // What is looked for has at most a few dips along a flank or fillet.
    private const int Samples = 24;

    public static UncutRest Of(HalfGap gap, CutHalf half) => half.IsWhole
        ? default
        : new UncutRest(
            half.Stands.Max(stand => DepthBehind(gap, stand)),
            2 * Math.Abs(Swept(half.Curves, gap.Root) - Swept(gap.Curves, gap.Root)));

    /// <summary>Greatest distance of the nominal outline from one of the rounds, mm.</summary>
    public static double DepthBehind(HalfGap gap, CutterStand stand)
    {
        double depth = 0;
        for (int i = stand.First.Curve; i <= stand.Last.Curve; i++)
        {
            Curve curve = gap.Curves[i];
            (double from, double to) = stand.RangeOn(i, curve);
            depth = Math.Max(depth, -LeastValue.Of(at => -stand.WidthAt(curve.PointAt(at)), from, to, Samples).Value);
        }

        return depth;
    }

    // The area swept by the way from a point of the middle line; what runs along that line sweeps none.
    private static double Swept(ImmutableArray<Curve> curves, Point from) => curves.Sum(curve => GaussLegendreRule.Integrate(
        at => curve.StateAt(at) is var state ? (state.Point - from).Cross(state.Tangent) * state.Speed / 2 : 0, curve.Start, curve.End, Nodes));
}
