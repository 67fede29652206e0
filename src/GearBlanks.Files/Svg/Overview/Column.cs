using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>A column of the sheet that fills from the top down.</summary>
internal sealed class Column(Point topLeft, double width, Look look)
{
    private readonly List<Figure> _figures = [];
    private double _top = topLeft.Y;

    public IEnumerable<Figure> Figures => _figures;

    public double Left => topLeft.X;

    public double Width => width;

    public double Bottom => _top;

    public void Skip(double height) => _top -= height;

    /// <summary>A text, over as many lines as it needs; the title is the whole text.</summary>
    public void AddText(string text, double height, Ink ink)
    {
        List<Shape> shapes = [];
        double top = _top;
        foreach (string line in Lettered.Wrap(text, height, width))
        {
            shapes.Add(Lettered.At(line, height, new Point(Left, _top - height), ink));
            _top -= height * look.Line / look.Height;
        }

        _figures.Add(new Figure(text, [.. shapes], new Extent(Left, _top, Left + width, top)));
    }

    /// <summary>A row of a height, made by a function of its baseline's start.</summary>
    public void AddRow(string title, double height, Func<Point, IEnumerable<Shape>> make)
    {
        double top = _top;
        _top -= height;
        var baseline = new Point(Left, top - (height / 2) - (look.Height / 2));
        _figures.Add(new Figure(title, [.. make(baseline)], new Extent(Left, _top, Left + width, top)));
    }
}
