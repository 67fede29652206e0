using System.Xml;
using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Reads the shapes of SVG: paths, circles, ellipses, rectangles, lines and chains of lines.</summary>
internal static class SvgShapes
{
    /// <summary>Reads the element that stands there; false where it is no shape.</summary>
    /// <exception cref="DrawingException">Its numbers cannot be read.</exception>
    public static bool Read(XmlReader element, string name, Affine placement, int line, Action<StrokeBuilder, bool> keep)
    {
        double Number(string attribute, double otherwise = 0) => element.GetAttribute(attribute) is not { } text ? otherwise
            : Numbers.TryParse(text.Trim().Replace("px", "", StringComparison.Ordinal), out double value) ? value
            : throw new DrawingException(line, text, $"The {attribute} of this {name} cannot be read", "a number without a unit");
        switch (name)
        {
            case "path":
                SvgPath.Read(element.GetAttribute("d") ?? "", placement, line, keep);
                return true;
            case "circle":
                AddEllipse(new Point(Number("cx"), Number("cy")), Number("r"), Number("r"), placement, keep);
                return true;
            case "ellipse":
                AddEllipse(new Point(Number("cx"), Number("cy")), Number("rx"), Number("ry"), placement, keep);
                return true;
            case "line":
                AddChain([Number("x1"), Number("y1"), Number("x2"), Number("y2")], false, placement, keep);
                return true;
            case "polyline":
            case "polygon":
                AddChain(SvgNumbers.All(element.GetAttribute("points") ?? "", line), name == "polygon", placement, keep);
                return true;
            case "rect" when Number("rx") == 0 && Number("ry") == 0:
                (double x, double y, double width, double height) = (Number("x"), Number("y"), Number("width"), Number("height"));
                AddChain([x, y, x + width, y, x + width, y + height, x, y + height], true, placement, keep);
                return true;
            default:
                return false;
        }
    }

    private static void AddEllipse(Point centre, double width, double height, Affine placement, Action<StrokeBuilder, bool> keep)
    {
        if (!(width > 0 && height > 0))
        {
            return;
        }

        var stroke = new StrokeBuilder(placement);
        stroke.Begin(centre + new Vector(width, 0));
        if (width == height)
        {
            stroke.ArcTo(centre, width, 0, 2 * Math.PI);
        }
        else
        {
            stroke.CurveTo(t => centre + new Vector(width * Math.Cos(t), height * Math.Sin(t)), 0, 2 * Math.PI);
        }

        keep(stroke, true);
    }

    private static void AddChain(List<double> numbers, bool isClosed, Affine placement, Action<StrokeBuilder, bool> keep)
    {
        if (numbers.Count < 4)
        {
            return;
        }

        var stroke = new StrokeBuilder(placement);
        stroke.Begin(new Point(numbers[0], numbers[1]));
        for (int i = 3; i < numbers.Count; i += 2)
        {
            stroke.LineTo(new Point(numbers[i - 1], numbers[i]));
        }

        if (isClosed)
        {
            stroke.LineTo(new Point(numbers[0], numbers[1]));
        }

        keep(stroke, isClosed);
    }
}
