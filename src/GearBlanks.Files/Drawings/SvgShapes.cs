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
        double Place(string attribute) => SvgLength.Of(element, attribute) ?? 0;
        double Size(string attribute) => SvgLength.Of(element, attribute, mayBeNegative: false) ?? 0;
        switch (name)
        {
            case "path":
                SvgPath.Read(element.GetAttribute("d") ?? "", placement, line, keep);
                return true;
            case "circle":
                AddEllipse(new Point(Place("cx"), Place("cy")), Size("r"), Size("r"), placement, keep);
                return true;
            case "ellipse":
                AddEllipse(new Point(Place("cx"), Place("cy")), Size("rx"), Size("ry"), placement, keep);
                return true;
            case "line":
                AddChain([Place("x1"), Place("y1"), Place("x2"), Place("y2")], false, placement, keep);
                return true;
            case "polyline":
            case "polygon":
                AddChain(SvgNumbers.All(element.GetAttribute("points") ?? "", line, "points"), name == "polygon", placement, keep);
                return true;
            case "rect":
                var corner = new Vector(
                    SvgLength.Of(element, "rx", mayBeNegative: false) ?? Size("ry"), SvgLength.Of(element, "ry", mayBeNegative: false) ?? Size("rx"));
                AddRectangle(new Point(Place("x"), Place("y")), new Vector(Size("width"), Size("height")), corner, placement, keep);
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

    // Corners are quarters of an ellipse, as wide as the sides leave room for.
    private static void AddRectangle(Point least, Vector size, Vector corner, Affine placement, Action<StrokeBuilder, bool> keep)
    {
        (double width, double height) = (Math.Min(corner.X, size.X / 2), Math.Min(corner.Y, size.Y / 2));
        (double left, double top, double right, double bottom) = (least.X, least.Y, least.X + size.X, least.Y + size.Y);
        if (!(size.X > 0 && size.Y > 0))
        {
            return;
        }

        if (!(width > 0 && height > 0))
        {
            AddChain([left, top, right, top, right, bottom, left, bottom], true, placement, keep);
            return;
        }

        var stroke = new StrokeBuilder(placement);
        stroke.Begin(new Point(right - width, top));
        Span<Point> middles = [new(right - width, top + height), new(right - width, bottom - height), new(left + width, bottom - height), new(left + width, top + height)];
        for (int i = 0; i < middles.Length; i++)
        {
            Point middle = middles[i];
            double from = (i - 1) * Math.PI / 2;
            Point At(double angle) => middle + new Vector(width * Math.Cos(angle), height * Math.Sin(angle));
            stroke.LineTo(At(from));
            if (width == height)
            {
                stroke.ArcTo(middle, width, from, Math.PI / 2);
            }
            else
            {
                stroke.CurveTo(At, from, from + (Math.PI / 2));
            }
        }

        stroke.LineTo(new Point(right - width, top));
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
