using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Cutting;

/// <summary>A drawing ready to be written: shapes by layer, in mm, true size.</summary>
/// <param name="Title">What the drawing shows, in words; ASCII.</param>
/// <param name="Layers">Layers in the order in which a machine should take them: inner contours before the outer one.</param>
public sealed record Drawing(string Title, ImmutableArray<DrawingLayer> Layers);

/// <summary>One operation's shapes.</summary>
/// <param name="Name">Letters, digits, <c>-</c> and <c>_</c>.</param>
/// <param name="Operation">What a machine does with it.</param>
/// <param name="Paths">Paths of lines and arcs; closed ones on layers that are cut.</param>
/// <param name="Circles">Full circles.</param>
public sealed record DrawingLayer(string Name, Operation Operation, ImmutableArray<ArcPath> Paths, ImmutableArray<Circle> Circles)
{
    /// <summary>True where contours carry leads or stop for tabs, so that they are open on purpose.</summary>
    public bool IsRouted { get; init; }
}

/// <summary>What a machine does with a layer.</summary>
public enum Operation
{
    /// <summary>Cut through: the outside contour.</summary>
    CutOutside,

    /// <summary>Cut through: holes inside the part.</summary>
    CutHoles,

    /// <summary>Marked on the surface.</summary>
    Engrave,

    /// <summary>For people: never cut or marked.</summary>
    Note,
}
