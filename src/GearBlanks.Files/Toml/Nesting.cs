using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Toml;

/// <summary>Looks at a text before it is parsed: a parser that calls itself for every bracket would run out of stack.</summary>
internal static class Nesting
{
    private const int Most = 32;

    public const string MostText = "32";

    /// <summary>Where the nesting becomes too deep; null where it does not.</summary>
    public static Place? TooDeepAt(string text, string file)
    {
        var (depth, line, lineStart) = (0, 1, 0);
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '\n':
                    (line, lineStart) = (line + 1, i + 1);
                    break;
                case '[' or '{':
                    depth++;
                    break;
                case ']' or '}':
                    depth = Math.Max(0, depth - 1);
                    break;
                case '"' or '\'':
                    i = EndOfText(text, i);
                    break;
                case '#':
                    i = EndOfLine(text, i) - 1;
                    break;
            }

            if (depth > Most)
            {
                return new Place(file, line, i - lineStart + 1);
            }
        }

        return null;
    }

    // A text in single-line quotes; of longer ones only brackets count, which errs on the side of too deep. It looks no further than to the text's
    // end: a line of nothing but quotes would otherwise be searched through from each of them.
    private static int EndOfText(string text, int start)
    {
        var i = start + 1;
        while (i < text.Length && text[i] != '\n')
        {
            if (text[i] == text[start])
            {
                return i;
            }

            var isEscape = text[i] == '\\' && text[start] == '"' && i + 1 < text.Length && text[i + 1] != '\n';
            i += isEscape ? 2 : 1;
        }

        return i - 1;
    }

    private static int EndOfLine(string text, int start)
    {
        var end = text.IndexOf('\n', start);
        return end < 0 ? text.Length : end;
    }
}
