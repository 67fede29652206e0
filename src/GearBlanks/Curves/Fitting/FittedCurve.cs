namespace GearBlanks.Curves.Fitting;

/// <summary>A curve's pieces in order of travel, and whether the surer way with more of them had to be taken.</summary>
internal readonly record struct FittedCurve(Piece[] Pieces, bool IsFallback = false);
