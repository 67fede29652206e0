using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks.Lettering;

/// <summary>Finds where lettering fits on a gear's face.</summary>
public static class LetteringLayout
{
    /// <summary>What parts a text into pieces that may stand on lines of their own.</summary>
    public const string Break = " | ";

    private const double HeightStep = 0.5;
    private const double TurnStep = Math.PI / 36;

    // The tidiest first: a tidy small text reads better than a large one strewn between holes.
    private static readonly Way[] Ways =
    [
        (parts, height, face) => FirstFit(LetteringRings.Shapes(parts, height, face), face, Math.PI),
        (parts, height, face) => FirstFit(LetteringLines.Shapes(parts, height, face), face, 0),
        LetteringRings.BetweenHoles,
        (parts, height, face) => FirstFit(LetteringLines.Shapes(parts, height, face), face, Math.PI / 2),
    ];

    /// <summary>
    /// Places a text along a circle, else on upright lines, else in pieces between the holes, else on slanted lines, each as large as it
    /// goes. The same input finds the same place.
    /// </summary>
    /// <param name="text">The text, with <see cref="Break"/> where a new line may begin.</param>
    /// <param name="face">Where strokes may run.</param>
    /// <param name="leastHeight">Least height of a capital, mm; positive.</param>
    /// <param name="mostHeight">Greatest height of a capital, mm; at least <paramref name="leastHeight"/>.</param>
    /// <returns>The lettering, or null where no place was found even at the least height.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The heights are not positive or not in order.</exception>
    public static PlacedLettering? Place(string text, LetteringFace face, double leastHeight = 2, double mostHeight = 3)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(leastHeight);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostHeight, leastHeight);
        ImmutableArray<string> parts =
            [.. text.Split(Break, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (parts.IsEmpty)
        {
            return new PlacedLettering([], mostHeight);
        }

        foreach (Way way in Ways)
        {
            foreach (double height in Heights(leastHeight, mostHeight))
            {
                if (way(parts, height, face) is { } strokes)
                {
                    return new PlacedLettering(strokes, height);
                }
            }
        }

        return null;
    }

    private delegate ImmutableArray<ArcPath>? Way(ImmutableArray<string> parts, double height, LetteringFace face);

    private static ImmutableArray<ArcPath>? FirstFit(IEnumerable<StrokeSet> shapes, LetteringFace face, double mostTurn)
    {
        foreach (StrokeSet shape in shapes.Where(face.HoldsInRing))
        {
            foreach (double turn in Turns(mostTurn))
            {
                if (face.IsClearOfHoles(shape, turn))
                {
                    return shape.Turned(turn);
                }
            }
        }

        return null;
    }

    private static IEnumerable<double> Heights(double least, double most)
    {
        for (int step = 0; most - (step * HeightStep) > least; step++)
        {
            yield return most - (step * HeightStep);
        }

        yield return least;
    }

    // The smallest turns first, so that lettering stays near the top.
    private static IEnumerable<double> Turns(double most)
    {
        yield return 0;
        for (int step = 1; step * TurnStep <= most; step++)
        {
            yield return -step * TurnStep;
            yield return step * TurnStep;
        }
    }
}
