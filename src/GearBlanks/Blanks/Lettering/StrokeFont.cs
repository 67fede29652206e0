using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Text;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>
/// Single-stroke lettering for engraving and for notes: printable ASCII, α, °, ± and Ø. Any other character is drawn as an empty
/// box. Heights are those of a capital; small letters stand 0.7 of it, and tails hang 0.3 of it under the baseline.
/// </summary>
public static class StrokeFont
{
    /// <summary>How far tails hang under the baseline, as a share of the height.</summary>
    public const double Descent = 0.3;

    // Read on first use, so that a start without lettering pays nothing.
    private static readonly ConcurrentDictionary<int, StrokeGlyph> Read = new();

    /// <summary>The strokes of a text on a straight baseline.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="height">Height of a capital, mm; positive.</param>
    /// <param name="start">Where the baseline begins.</param>
    /// <param name="direction">Direction of the baseline, rad counter-clockwise from +X.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height is not positive and finite.</exception>
    public static ImmutableArray<ArcPath> Lay(string text, double height, Point start, double direction = 0)
    {
        RequirePositive(height, nameof(height));
        Vector along = Vector.AtAngle(direction) * height;
        ImmutableArray<ArcPath>.Builder strokes = ImmutableArray.CreateBuilder<ArcPath>();
        foreach ((StrokeGlyph glyph, double offset) in Spaced(text))
        {
            strokes.AddRange(Drawn(glyph, start + (along * offset), along));
        }

        return strokes.ToImmutable();
    }

    /// <summary>
    /// The strokes of a text along a circle, read clockwise from outside: each letter's baseline touches the circle under the
    /// letter's middle, and its top points away from the centre.
    /// </summary>
    /// <param name="text">One line of text.</param>
    /// <param name="height">Height of a capital, mm; positive.</param>
    /// <param name="centre">Centre of the circle.</param>
    /// <param name="radius">Radius of the baseline, mm; positive.</param>
    /// <param name="middleAngle">Where the middle of the text stands, rad counter-clockwise from +X.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height or the radius is not positive and finite.</exception>
    public static ImmutableArray<ArcPath> LayOnCircle(string text, double height, Point centre, double radius, double middleAngle)
    {
        RequirePositive(height, nameof(height));
        RequirePositive(radius, nameof(radius));
        double middle = WidthOf(text, height) / 2;
        ImmutableArray<ArcPath>.Builder strokes = ImmutableArray.CreateBuilder<ArcPath>();
        foreach ((StrokeGlyph glyph, double offset) in Spaced(text))
        {
            double half = glyph.Advance / 2 * height;
            Vector outward = Vector.AtAngle(middleAngle + ((middle - half - (offset * height)) / radius));
            Vector along = outward.TurnedRight;
            strokes.AddRange(Drawn(glyph, centre + (outward * radius) - (along * half), along * height));
        }

        return strokes.ToImmutable();
    }

    /// <summary>Length of baseline that a text takes, mm, with the small gaps before its first and after its last letter.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="height">Height of a capital, mm; positive.</param>
    public static double WidthOf(string text, double height) => Glyphs(text).Sum(glyph => glyph.Advance) * height;

    /// <summary>The box that a text's strokes fill at height 1 from a start at the origin; null where it has none.</summary>
    internal static (Point Least, Point Most)? InkOf(string text)
    {
        (Point Least, Point Most)? ink = null;
        foreach ((StrokeGlyph glyph, double offset) in Spaced(text))
        {
            if (glyph.Ink is { } own)
            {
                (Point least, Point most) = ink ?? (new Point(double.PositiveInfinity, double.PositiveInfinity), new Point(double.NegativeInfinity, double.NegativeInfinity));
                ink = (new Point(Math.Min(least.X, offset + own.Least.X), Math.Min(least.Y, own.Least.Y)),
                    new Point(Math.Max(most.X, offset + own.Most.X), Math.Max(most.Y, own.Most.Y)));
            }
        }

        return ink;
    }

    private static IEnumerable<StrokeGlyph> Glyphs(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            yield return Read.GetOrAdd(rune.Value, static character => StrokeGlyph.Read(StrokeGlyphs.LineOf(character)));
        }
    }

    private static IEnumerable<(StrokeGlyph Glyph, double Offset)> Spaced(string text)
    {
        double offset = 0;
        foreach (StrokeGlyph glyph in Glyphs(text))
        {
            yield return (glyph, offset);
            offset += glyph.Advance;
        }
    }

    private static IEnumerable<ArcPath> Drawn(StrokeGlyph glyph, Point origin, Vector along)
    {
        Vector up = along.TurnedLeft;
        foreach (ImmutableArray<Point> stroke in glyph.Strokes)
        {
            var vertices = new PathVertex[stroke.Length];
            for (int i = 0; i < vertices.Length; i++)
            {
                vertices[i] = new PathVertex(origin + (along * stroke[i].X) + (up * stroke[i].Y), 0);
            }

            yield return new ArcPath(ImmutableCollectionsMarshal.AsImmutableArray(vertices), false);
        }
    }

    private static void RequirePositive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "Must be positive and finite.");
        }
    }
}
