using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>An arc of SVG by its ends, as a centre and angles. Source: SVG 1.1, appendix F.6 (arc implementation notes); from memory.</summary>
internal static class SvgArc
{
    public static void Add(StrokeBuilder stroke, Point from, Point to, double width, double height, double degrees, bool isLarge, bool isPositive)
    {
        if (from == to)
        {
            return;
        }

        if (width == 0 || height == 0)
        {
            stroke.LineTo(to);
            return;
        }

        (double rx, double ry) = (Math.Abs(width), Math.Abs(height));
        (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
        Vector half = (from - to) * 0.5;
        var local = new Vector((cosine * half.X) + (sine * half.Y), (cosine * half.Y) - (sine * half.X));
        double size = (local.X * local.X / (rx * rx)) + (local.Y * local.Y / (ry * ry));
        if (size > 1)
        {
            (rx, ry) = (rx * Math.Sqrt(size), ry * Math.Sqrt(size));
        }

        double factor = Math.Sqrt(Math.Max(0, (1 / Math.Min(1, size)) - 1)) * (isLarge == isPositive ? -1 : 1);
        factor = size > 1 ? 0 : factor;
        var off = new Vector(factor * rx * local.Y / ry, -factor * ry * local.X / rx);
        var centre = new Point(
            (cosine * off.X) - (sine * off.Y) + ((from.X + to.X) / 2), (sine * off.X) + (cosine * off.Y) + ((from.Y + to.Y) / 2));
        double start = Math.Atan2((local.Y - off.Y) / ry, (local.X - off.X) / rx);
        double end = Math.Atan2((-local.Y - off.Y) / ry, (-local.X - off.X) / rx);
        double sweep = end - start;
        sweep += isPositive && sweep < 0 ? 2 * Math.PI : !isPositive && sweep > 0 ? -2 * Math.PI : 0;
        if (Math.Abs(rx - ry) <= 1e-9 * rx)
        {
            stroke.ArcTo(centre, rx, (from - centre).Angle, sweep, to);
        }
        else
        {
            stroke.CurveTo(
                t => new Point(
                    centre.X + (cosine * rx * Math.Cos(t)) - (sine * ry * Math.Sin(t)), centre.Y + (sine * rx * Math.Cos(t)) + (cosine * ry * Math.Sin(t))),
                start, start + sweep);
        }
    }
}
