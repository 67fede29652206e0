namespace GearBlanks.Files.Drawings;

/// <summary>Reads numbers as SVG packs them: with or without commas, signs or points as separators.</summary>
internal sealed class SvgNumbers(string text, int line)
{
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
    public static List<double> All(string text, int line)
    {
        var reader = new SvgNumbers(text, line);
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

    public DrawingException Wrong() => new(
        line, text.Substring(Math.Min(_at, text.Length), Math.Min(30, text.Length - Math.Min(_at, text.Length))), "A number is missing or wrong here", "numbers with decimal points");

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
