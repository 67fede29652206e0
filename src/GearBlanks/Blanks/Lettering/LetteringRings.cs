using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Lettering along a circle about the bore.</summary>
internal static class LetteringRings
{
    private const int Radii = 9;
    private const int Starts = 12;
    private const double SlideStep = Math.PI / 60;

    /// <summary>The whole text about the top, on circles from the rim inwards.</summary>
    internal static IEnumerable<ImmutableArray<ArcPath>> Shapes(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        string text = string.Join(LetteringLines.Gap, parts);
        double room = StrokeFont.WidthOf(text, height) + height;
        return BaselineRadii(height, face)
            .Where(radius => room <= 2 * Math.PI * radius)
            .Select(radius => StrokeFont.LayOnCircle(text, height, default, radius, Math.PI / 2));
    }

    /// <summary>Each part in the next room between holes, clockwise from one of a few starts, the left one first.</summary>
    internal static ImmutableArray<ArcPath>? BetweenHoles(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        double room = parts.Sum(part => StrokeFont.WidthOf(part, height) + height);
        foreach (double radius in BaselineRadii(height, face).Where(radius => room <= 2 * Math.PI * radius))
        {
            Laid[] laid = [.. parts.Select(part => Lay(part, height, radius))];
            if (!laid.All(part => face.WithoutHoles.Admits(part.Strokes)))
            {
                continue;
            }

            for (int start = 0; start < Starts; start++)
            {
                if (Slide(laid, Math.PI - (2 * Math.PI * start / Starts), height / radius, face) is { } strokes)
                {
                    return strokes;
                }
            }
        }

        return null;
    }

    private static Laid Lay(string part, double height, double radius) =>
        new(StrokeFont.LayOnCircle(part, height, default, radius, 0), StrokeFont.WidthOf(part, height) / 2 / radius);

    private static ImmutableArray<ArcPath>? Slide(Laid[] parts, double start, double gap, LetteringFace face)
    {
        List<ArcPath> strokes = [];
        double travelled = 0;
        foreach (Laid part in parts)
        {
            travelled += part.HalfAngle;
            while (!face.Admits(part.Turned(start - travelled)))
            {
                travelled += SlideStep;
                if (travelled > 2 * Math.PI)
                {
                    return null;
                }
            }

            strokes.AddRange(part.Turned(start - travelled));
            travelled += part.HalfAngle + gap;
        }

        return travelled <= 2 * Math.PI ? [.. strokes] : null;
    }

    // Not under one height, where neighbouring letters would lean into one another.
    private static IEnumerable<double> BaselineRadii(double height, LetteringFace face)
    {
        double least = Math.Max(face.InnerEdge, height);
        double most = face.OuterEdge - height;
        return least > most ? [] : Enumerable.Range(0, Radii).Select(index => most - ((most - least) * index / (Radii - 1)));
    }

    /// <summary>A part of the text with its middle on the +X axis.</summary>
    private sealed record Laid(ImmutableArray<ArcPath> Strokes, double HalfAngle)
    {
        internal IEnumerable<ArcPath> Turned(double angle) => Strokes.Select(stroke => stroke.Moved(Motion.Turn(angle)));
    }
}
