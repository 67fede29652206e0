namespace GearBlanks.Curves.Offsets;

/// <summary>What is left of an outline's offset.</summary>
internal enum OffsetLoss
{
    /// <summary>All of it that matters.</summary>
    None,

    /// <summary>A side is lost: the beam does not go through a gap.</summary>
    Side,

    /// <summary>Nothing is left.</summary>
    All,
}

/// <summary>An outline's offset.</summary>
/// <param name="Shape">The offset; null where something is lost.</param>
/// <param name="Loss">What is lost.</param>
/// <param name="Unreached">
/// How far the beam stays off the outline where it is furthest, in half widths of the beam: in corners and rounds that are hollow
/// and sharper than the beam. 0 where it reaches everything.
/// </param>
internal sealed record OffsetOutline(Outline? Shape, OffsetLoss Loss, double Unreached);
