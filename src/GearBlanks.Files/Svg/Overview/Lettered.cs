using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Words as strokes.</summary>
internal static class Lettered
{
    public static Shape At(string text, double height, Point start, Ink ink) => new(StrokeFont.Lay(text, height, start), ink);

    public static Shape Centred(string text, double height, Point middle, Ink ink) =>
        At(text, height, middle - new Vector(StrokeFont.WidthOf(text, height) / 2, height / 2), ink);

    public static double Width(string text, double height) => StrokeFont.WidthOf(text, height);

    /// <summary>The text in lines no wider than a width, mm: broken between words, and within a word only where it fills a line alone.</summary>
    public static ImmutableArray<string> Wrap(string text, double height, double width)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (Width(longer, height) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (Width(line, height) > width && line.Length > 1)
            {
                int kept = line.Length - 1;
                while (kept > 1 && Width(line[..kept], height) > width)
                {
                    kept--;
                }

                lines.Add(line[..kept]);
                line = line[kept..];
            }
        }

        lines.Add(line);
        return lines.ToImmutable();
    }
}
