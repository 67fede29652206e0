using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>How a shape is painted.</summary>
/// <param name="Stroke">Colour of its lines; null for none.</param>
/// <param name="Width">Width of its lines, mm.</param>
/// <param name="Fill">Colour of its inside; null for none.</param>
/// <param name="Opacity">How much of the fill covers what lies under it, 0 to 1.</param>
internal sealed record Ink(string? Stroke, double Width, string? Fill = null, double Opacity = 1);

/// <summary>Paths painted as one: where they lie in one another, the inner ones are holes.</summary>
internal sealed record Shape(ImmutableArray<ArcPath> Paths, Ink Ink);

/// <summary>Shapes that belong together.</summary>
/// <param name="Title">What they are, in words.</param>
/// <param name="Shapes">The shapes, lowest first.</param>
/// <param name="Box">The room they take.</param>
internal sealed record Figure(string Title, ImmutableArray<Shape> Shapes, Extent Box);

/// <summary>One kind of figures.</summary>
/// <param name="Name">The name of its group in the file.</param>
/// <param name="Figures">The figures, lowest first.</param>
internal sealed record PictureLayer(string Name, ImmutableArray<Figure> Figures);

/// <summary>A whole picture.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="View">What is shown of the plane, mm.</param>
/// <param name="Layers">Its layers, lowest first.</param>
internal sealed record Picture(string Title, Extent View, ImmutableArray<PictureLayer> Layers);
