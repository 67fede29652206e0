namespace GearBlanks.Curves.Fitting;

/// <summary>One of two curves that share a tangent where they join.</summary>
/// <param name="Own">The curve by itself, growing with its parameter.</param>
/// <param name="AtEnd">True where the joint is at the curve's end, in its own sense.</param>
/// <param name="IsMirrored">True where the outline holds the curve's mirror image.</param>
/// <param name="OtherTurn">Turn of the arcs' tangent at the curve's other end: 0, or null where it is free.</param>
internal readonly record struct Side(Curve Own, bool AtEnd, bool IsMirrored, double? OtherTurn);
