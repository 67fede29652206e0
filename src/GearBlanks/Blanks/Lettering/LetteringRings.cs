using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Lettering along a circle about the bore.</summary>
internal static class LetteringRings
{
    private const int Radii = 9;
    private const int Positions = 180;
    private const double PositionStep = 2 * Math.PI / Positions;

    /// <summary>The whole text about the top, on circles from the rim inwards.</summary>
    internal static IEnumerable<StrokeSet> Shapes(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        string text = string.Join(LetteringLines.Gap, parts);
        double room = StrokeFont.WidthOf(text, height) + height;
        return BaselineRadii(height, face)
            .Where(radius => room <= 2 * Math.PI * radius)
            .Select(radius => new StrokeSet(StrokeFont.LayOnCircle(text, height, default, radius, Math.PI / 2)));
    }

    /// <summary>Each part in the next room between holes, clockwise from the left or from the first start that works.</summary>
    internal static ImmutableArray<ArcPath>? BetweenHoles(ImmutableArray<string> parts, double height, LetteringFace face)
    {
        double room = parts.Sum(part => StrokeFont.WidthOf(part, height) + height);
        foreach (double radius in BaselineRadii(height, face).Where(radius => room <= 2 * Math.PI * radius))
        {
            Laid[] laid = [.. parts.Select(part => Lay(part, height, radius, face))];
            for (int start = 0; start < Positions && Array.TrueForAll(laid, part => part.Free.Contains(true)); start++)
            {
                if (Slide(laid, start, height / radius) is { } strokes)
                {
                    return strokes;
                }
            }
        }

        return null;
    }

    private static Laid Lay(string part, double height, double radius, LetteringFace face)
    {
        StrokeSet strokes = new(StrokeFont.LayOnCircle(part, height, default, radius, 0));
        bool holds = face.HoldsInRing(strokes);
        return new Laid(
            strokes,
            StrokeFont.WidthOf(part, height) / 2 / radius,
            [.. Enumerable.Range(0, Positions).Select(index => holds && face.IsClearOfHoles(strokes, AngleOf(index)))]);
    }

    private static double AngleOf(int position) => Math.PI - (PositionStep * position);

    private static ImmutableArray<ArcPath>? Slide(Laid[] parts, int start, double gap)
    {
        List<ArcPath> strokes = [];
        double travelled = 0;
        foreach (Laid part in parts)
        {
            int index = (int)Math.Ceiling((travelled + part.HalfAngle) / PositionStep);
            while (index < Positions && !part.Free[(start + index) % Positions])
            {
                index++;
            }

            travelled = (index * PositionStep) + part.HalfAngle + gap;
            if (travelled > 2 * Math.PI)
            {
                return null;
            }

            strokes.AddRange(part.Strokes.Turned(AngleOf(start + index)));
        }

        return [.. strokes];
    }

    // Not under one height, where neighbouring letters would lean into one another.
    private static IEnumerable<double> BaselineRadii(double height, LetteringFace face)
    {
        double least = Math.Max(face.InnerEdge, height);
        double most = face.OuterEdge - height;
        return least > most ? [] : Enumerable.Range(0, Radii).Select(index => most - ((most - least) * index / (Radii - 1)));
    }

    /// <summary>A part of the text with its middle on the +X axis, and the positions of its middle where it is clear of holes.</summary>
    private sealed record Laid(StrokeSet Strokes, double HalfAngle, ImmutableArray<bool> Free);
}
