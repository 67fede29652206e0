namespace GearBlanks.Files.Drawings;

/// <summary>Reads numbers as SVG packs them: with or without commas, signs or points as separators.</summary>
internal sealed class SvgNumbers(string text, int line, string key)
{
    // Letters to either side of a fault that are shown.
    private const int Shown = 24;

    private int _at;

    public bool IsAtEnd
    {
        get
        {
            SkipSpace();
            return _at >= text.Length;
        }
    }

    /// <summary>True where a number comes next.</summary>
    public bool HasNumber
    {
        get
        {
            SkipSpace();
            return _at < text.Length && (char.IsAsciiDigit(text[_at]) || text[_at] is '-' or '+' or '.');
        }
    }

    /// <summary>All numbers of a list.</summary>
    /// <exception cref="DrawingException">Something else stands among them.</exception>
    public static List<double> All(string text, int line, string key)
    {
        var reader = new SvgNumbers(text, line, key);
        List<double> values = [];
        while (!reader.IsAtEnd)
        {
            values.Add(reader.Number());
        }

        return values;
    }

    public char Letter() => text[_at++];

    /// <exception cref="DrawingException">No number stands here.</exception>
    public double Number()
    {
        SkipSpace();
        int start = _at;
        _at += _at < text.Length && text[_at] is '-' or '+' ? 1 : 0;
        SkipDigits();
        if (_at < text.Length && text[_at] == '.')
        {
            _at++;
            SkipDigits();
        }

        if (_at < text.Length && text[_at] is 'e' or 'E' && _at + 1 < text.Length && (char.IsAsciiDigit(text[_at + 1]) || text[_at + 1] is '-' or '+'))
        {
            _at += 2;
            SkipDigits();
        }

        return Numbers.TryParse(text.AsSpan(start, _at - start), out double value) ? value : throw Wrong();
    }

    /// <summary>A flag, which may stand without a separator.</summary>
    /// <exception cref="DrawingException">Neither 0 nor 1 stands here.</exception>
    public bool Flag()
    {
        SkipSpace();
        return _at < text.Length && text[_at] is '0' or '1' ? text[_at++] == '1' : throw Wrong();
    }

    /// <summary>What stands around the fault, and where it is in it.</summary>
    public DrawingException Wrong()
    {
        int at = Math.Min(_at, text.Length);
        (int from, int to) = (Math.Max(0, at - Shown), Math.Min(text.Length, at + Shown));
        string near = $"{(from > 0 ? "..." : "")}{text[from..at]} <here> {text[at..to]}{(to < text.Length ? "..." : "")}";
        return new(line, near.ReplaceLineEndings(" "), "A number is missing or wrong here", "numbers with decimal points") { Key = key };
    }

    private void SkipDigits()
    {
        while (_at < text.Length && char.IsAsciiDigit(text[_at]))
        {
            _at++;
        }
    }

    private void SkipSpace()
    {
        while (_at < text.Length && text[_at] is ' ' or ',' or '\t' or '\r' or '\n' or '\f')
        {
            _at++;
        }
    }
}
