namespace GearBlanks.Curves.Offsets;

/// <summary>One regular piece of an outline's offset, before pieces are trimmed where they cross.</summary>
/// <param name="Curve">The piece.</param>
/// <param name="Source">Index of the outline's curve that it is the offset of; -1 for an arc about a corner.</param>
/// <param name="IsJoined">True where the next piece begins where it ends.</param>
internal sealed record RawPiece(Curve Curve, int Source, bool IsJoined);
