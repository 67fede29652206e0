using GearBlanks.Curves;
using GearBlanks.Cutting;
using SkiaSharp;

namespace GearBlanks.Files.Png;

/// <summary>Where a drawing's points lie in its picture. The longer side is always as long; both directions have one scale.</summary>
internal sealed class PngView
{
    private readonly Extent _extent;
    private readonly double _left;
    private readonly double _top;

    /// <summary>The view of all that an extent surrounds; it has some size in one direction at least.</summary>
    public PngView(Extent extent)
    {
        _extent = extent;
        Scale = (PngWriter.LongEdge - (2 * PngWriter.Margin)) / Math.Max(extent.Width, extent.Height);
        Width = Pixels(extent.Width);
        Height = Pixels(extent.Height);

        // Half of what rounding up to whole pixels adds goes to each side.
        _left = (Width - (extent.Width * Scale)) / 2;
        _top = (Height - (extent.Height * Scale)) / 2;
    }

    /// <summary>Pixels a mm.</summary>
    public double Scale { get; }

    /// <summary>Width, pixels.</summary>
    public int Width { get; }

    /// <summary>Height, pixels.</summary>
    public int Height { get; }

    /// <summary>A point in pixels from the upper left corner.</summary>
    public SKPoint At(Point point) =>
        new((float)(_left + ((point.X - _extent.Left) * Scale)), (float)(_top + ((_extent.Top - point.Y) * Scale)));

    // Rounding must not add a pixel to the longer side.
    private int Pixels(double length) => (int)Math.Ceiling((length * Scale) - 1e-6) + (2 * PngWriter.Margin);
}
