namespace GearBlanks.Teeth;

/// <summary>
/// What is taken off the tips of the teeth: a round or a chamfer at the corner, a relief of the flank, or a relief with one of them.
/// Source of the terms: ISO 21771:2007, clause 4 (tip corner chamfering and rounding) and ISO 1122-1:1998 (tip relief); from memory.
/// </summary>
/// <param name="Round">Radius of the round between flank and tip circle (line, of a rack), mm, tangent to both; 0 for none.</param>
/// <param name="Chamfer">
/// Height hK of the chamfer, mm, along the radius from its start on the flank to the tip circle; 0 for none. It stands at 45 degrees to the radius through
/// its start, to a rack's height; not together with a round.
/// </param>
/// <param name="Relief">Relief of the flank; null for none.</param>
public sealed record TipForm(double Round = 0, double Chamfer = 0, TipRelief? Relief = null)
{
    internal static TipForm Plain { get; } = new();
}
