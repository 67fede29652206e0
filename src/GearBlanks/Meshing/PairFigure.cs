using GearBlanks.Findings;

namespace GearBlanks.Meshing;

/// <summary>One figure of a pair that is held against a limit.</summary>
/// <param name="Name">The finding's name.</param>
/// <param name="Side">Whose it is: 1 the first one's, 2 the second's, 0 the pair's.</param>
/// <param name="Value">The figure, in <paramref name="Unit"/>.</param>
/// <param name="Limit">Its limit, in the same unit.</param>
/// <param name="Unit">Unit; empty for a plain number.</param>
internal readonly record struct PairFigure(string Name, int Side, double Value, Limit Limit, string Unit)
{
    /// <summary>The verdict.</summary>
    public Level Level => Limit.Judge(Value).Level;

    /// <summary>True for the same figure of another pair.</summary>
    public bool IsOf(PairFigure other) => Name == other.Name && Side == other.Side;
}
