namespace GearBlanks.Findings;

/// <summary>The bounds that a figure is held against, all in the figure's unit; a missing bound never bites.</summary>
/// <param name="FailsBelow">Smaller figures fail.</param>
/// <param name="TightBelow">Smaller figures are tight.</param>
/// <param name="TightAbove">Greater figures are tight.</param>
/// <param name="FailsAbove">Greater figures fail.</param>
/// <param name="Source">Where the bounds come from.</param>
public sealed record Limit(double? FailsBelow, double? TightBelow, double? TightAbove, double? FailsAbove, string Source)
{
    /// <summary>A figure that equals its bound but for this much is not beyond it; far below anything that can be made or measured.</summary>
    internal const double Rounding = 1e-9;

    /// <summary>The same bounds in another unit: each multiplied by a factor.</summary>
    public Limit Times(double factor) =>
        new(FailsBelow * factor, TightBelow * factor, TightAbove * factor, FailsAbove * factor, Source);

    /// <summary>The bound that a figure beyond one is to be brought back to: the comfortable one on its side, so that nothing is left to say.</summary>
    internal double Comfortable(double figure) =>
        (figure < (TightBelow ?? FailsBelow) ? TightBelow ?? FailsBelow : TightAbove ?? FailsAbove)!.Value;

    /// <summary>The verdict on a figure, and the bound that decided it: for an ok figure the nearer of the tight ones.</summary>
    public (Level Level, double? Bound) Judge(double figure)
    {
        if (double.IsNaN(figure))
        {
            throw new ArgumentException("A figure that is not a number cannot be judged.", nameof(figure));
        }

        return figure < FailsBelow - Rounding ? (Level.Fails, FailsBelow)
            : figure > FailsAbove + Rounding ? (Level.Fails, FailsAbove)
            : figure < TightBelow - Rounding ? (Level.Tight, TightBelow)
            : figure > TightAbove + Rounding ? (Level.Tight, TightAbove)
            : (Level.Ok, TightBelow ?? FailsBelow ?? TightAbove ?? FailsAbove);
    }
}
