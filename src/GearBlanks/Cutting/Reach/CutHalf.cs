using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Cutting.Reach;

/// <summary>A chain as a cutter leaves it: what it touches alone, and its own rounds.</summary>
/// <param name="Curves">From end to end.</param>
/// <param name="Stands">Where the cutter touched twice, in order of travel; the first may stand on the gap's middle line.</param>
internal sealed record CutHalf(ImmutableArray<Curve> Curves, ImmutableArray<CutterStand> Stands)
{
    /// <summary>True where the cutter reached everything.</summary>
    public bool IsWhole => Stands.IsEmpty;
}
