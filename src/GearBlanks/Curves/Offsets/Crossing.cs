namespace GearBlanks.Curves.Offsets;

/// <summary>A crossing as seen from one of its two pieces.</summary>
/// <param name="At">Share of the piece's parameters where it is: 0 at its start, 1 at its end, or a rounding beyond.</param>
/// <param name="Other">Index of the other piece.</param>
/// <param name="Shift">In which repetition of the pattern the other piece stands, counted from this one.</param>
/// <param name="OtherAt">Share of the other piece's parameters.</param>
/// <param name="IsEntry">True where the way on is covered by the other piece's beam.</param>
internal readonly record struct Crossing(double At, int Other, int Shift, double OtherAt, bool IsEntry);
