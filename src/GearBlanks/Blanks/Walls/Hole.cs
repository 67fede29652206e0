using GearBlanks.Curves;

namespace GearBlanks.Blanks.Walls;

/// <summary>What a contour inside a blank is for.</summary>
internal enum HoleKind
{
    /// <summary>The bore.</summary>
    Bore,

    /// <summary>A hole for a screw.</summary>
    ScrewHole,

    /// <summary>A further round hole.</summary>
    Hole,

    /// <summary>A window between two arms.</summary>
    Window,
}

/// <summary>One contour inside a blank.</summary>
internal sealed class Hole(HoleKind kind, Outline outline)
{
    public HoleKind Kind => kind;

    public Outline Outline => outline;

    public Contour Contour { get; } = Contour.Of(outline);

    /// <summary>What it is called, as it follows "two" and "the".</summary>
    public string Name => kind switch
    {
        HoleKind.Bore => "bore",
        HoleKind.ScrewHole => "screw hole",
        HoleKind.Hole => "hole",
        _ => "window",
    };
}
