using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Reads the data of SVG paths into strokes, one a subpath.</summary>
internal sealed class SvgPath
{
    private readonly SvgNumbers _numbers;
    private readonly Affine _placement;
    private readonly Action<StrokeBuilder, bool> _keep;
    private StrokeBuilder? _stroke;
    private Point _at;
    private Point _start;
    private Point? _handle;
    private char _before;

    private SvgPath(string data, Affine placement, int line, Action<StrokeBuilder, bool> keep)
    {
        (_numbers, _placement, _keep) = (new SvgNumbers(data, line, "d"), placement, keep);
    }

    /// <exception cref="DrawingException">The data cannot be read.</exception>
    public static void Read(string data, Affine placement, int line, Action<StrokeBuilder, bool> keep) => new SvgPath(data, placement, line, keep).Read();

    private void Read()
    {
        char command = '\0';
        while (!_numbers.IsAtEnd)
        {
            if (!_numbers.HasNumber)
            {
                command = _numbers.Letter();
            }
            else if (command is '\0' or 'Z' or 'z')
            {
                throw _numbers.Wrong();
            }

            Do(command);
            _before = char.ToUpperInvariant(command);

            // Further pairs after a move are lines.
            command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
        }

        Finish(false);
    }

    private void Do(char command)
    {
        bool isRelative = char.IsAsciiLetterLower(command);
        Point origin = isRelative ? _at : default;
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                Finish(false);
                (_at, _start) = (Pair(origin), default);
                _start = _at;
                break;
            case 'Z':
                Finish(true);
                _at = _start;
                break;
            case 'L':
                Line(Pair(origin));
                break;
            case 'H':
                Line(new Point(_numbers.Number() + origin.X, _at.Y));
                break;
            case 'V':
                Line(new Point(_at.X, _numbers.Number() + origin.Y));
                break;
            case 'C':
                Cubic(Pair(origin), Pair(origin), Pair(origin));
                break;
            case 'S':
                Cubic(_before is 'C' or 'S' ? Mirrored() : _at, Pair(origin), Pair(origin));
                break;
            case 'Q':
                Quadratic(Pair(origin), Pair(origin));
                break;
            case 'T':
                Quadratic(_before is 'Q' or 'T' ? Mirrored() : _at, Pair(origin));
                break;
            case 'A':
                (double width, double height, double turn) = (_numbers.Number(), _numbers.Number(), _numbers.Number());
                (bool isLarge, bool isPositive) = (_numbers.Flag(), _numbers.Flag());
                Point end = Pair(origin);
                SvgArc.Add(Begun(), _at, end, width, height, turn, isLarge, isPositive);
                _at = end;
                break;
            default:
                throw _numbers.Wrong();
        }
    }

    private Point Pair(Point origin) => new(_numbers.Number() + origin.X, _numbers.Number() + origin.Y);

    private Point Mirrored() => _handle is { } handle ? _at + (_at - handle) : _at;

    private void Line(Point to)
    {
        if (to != _at)
        {
            Begun().LineTo(to);
        }

        _at = to;
    }

    private void Cubic(Point first, Point second, Point end)
    {
        Point from = _at;
        Begun().CurveTo(t => Blend(Blend(Blend(from, first, t), Blend(first, second, t), t), Blend(Blend(first, second, t), Blend(second, end, t), t), t), 0, 1);
        (_at, _handle) = (end, second);
    }

    private void Quadratic(Point control, Point end)
    {
        Point from = _at;
        Begun().CurveTo(t => Blend(Blend(from, control, t), Blend(control, end, t), t), 0, 1);
        (_at, _handle) = (end, control);
    }

    private static Point Blend(Point from, Point to, double share) => from + ((to - from) * share);

    private StrokeBuilder Begun()
    {
        if (_stroke is null)
        {
            _stroke = new StrokeBuilder(_placement);
            _stroke.Begin(_at);
        }

        return _stroke;
    }

    private void Finish(bool isClosed)
    {
        if (_stroke is null)
        {
            return;
        }

        if (isClosed)
        {
            Line(_start);
        }

        _keep(_stroke, isClosed);
        _stroke = null;
    }
}
