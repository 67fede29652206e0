using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Centred lines, the box of their strokes centred on the origin. The box is known before anything is drawn.</summary>
internal sealed class LineBlock
{
    /// <summary>From one baseline to the next, in heights.</summary>
    internal const double Pitch = 1.7;

    private readonly ImmutableArray<string> _lines;
    private readonly double _height;
    private readonly Vector _middle;
    private StrokeBlock? _laid;

    internal LineBlock(ImmutableArray<string> lines, double height)
    {
        _lines = lines;
        _height = height;
        (double left, double bottom, double right, double top) = (double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
        for (int i = 0; i < lines.Length; i++)
        {
            if (StrokeFont.InkOf(lines[i]) is { } ink)
            {
                Vector start = StartOf(i) - default(Point);
                (Point least, Point most) = (Scaled(ink.Least) + start, Scaled(ink.Most) + start);
                (left, bottom) = (Math.Min(left, least.X), Math.Min(bottom, least.Y));
                (right, top) = (Math.Max(right, most.X), Math.Max(top, most.Y));
            }
        }

        bool isEmpty = left > right;
        Half = isEmpty ? default : new Vector(right - left, top - bottom) * 0.5;
        _middle = isEmpty ? default : new Vector(left + right, bottom + top) * 0.5;
    }

    /// <summary>Half the size of the box, mm.</summary>
    internal Vector Half { get; }

    /// <summary>The strokes, drawn on first use.</summary>
    internal StrokeBlock Laid => _laid ??= new StrokeBlock(
        [.. _lines.SelectMany((line, index) => StrokeFont.Lay(line, _height, StartOf(index) - _middle))]);

    private Point StartOf(int index) => new(-StrokeFont.WidthOf(_lines[index], _height) / 2, -index * Pitch * _height);

    private Point Scaled(Point point) => new(point.X * _height, point.Y * _height);
}
