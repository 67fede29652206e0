using System.Xml;

namespace GearBlanks.Files.Drawings;

/// <summary>A part of the page with units of its own: the page, a drawing within it, a symbol.</summary>
/// <param name="Placement">From its units to those around it.</param>
/// <param name="Width">Its width in its own units.</param>
/// <param name="Height">Its height.</param>
internal readonly record struct SvgView(Affine Placement, double Width, double Height)
{
    // The size of what says none, as CSS has it; nothing depends on it but shares of it.
    private const double Wide = 300;
    private const double High = 150;

    /// <summary>The page, Y upward, mm; and what is to be said of its size.</summary>
    /// <exception cref="DrawingException">Its size cannot be read.</exception>
    public static (SvgView View, string? Remark) OfPage(XmlReader element)
    {
        (double? width, double? height) = (SvgLength.Of(element, "width"), SvgLength.Of(element, "height"));
        string? remark = (width ?? height) is null ? "The drawing does not say its size: a unit is taken for 1/96 inch." : null;
        SvgView view = Of(element, width, height, null);

        // The origin stays where the drawing has it, so that places in it are told as it counts them.
        return (view with { Placement = Affine.Scale(SvgLength.Pixel, -SvgLength.Pixel).After(view.Placement with { X = 0, Y = 0 }) }, remark);
    }

    /// <summary>What an element within the page shows, whose size is given here.</summary>
    /// <exception cref="DrawingException">Its size cannot be read.</exception>
    public static SvgView Of(XmlReader element, double? width, double? height, SvgView? around)
    {
        int line = ((IXmlLineInfo)element).LineNumber;
        string? written = element.GetAttribute("viewBox");
        if (written is null)
        {
            return new SvgView(Affine.None, width ?? around?.Width ?? Wide, height ?? around?.Height ?? High);
        }

        if (SvgNumbers.All(written, line, "viewBox") is not [var left, var top, > 0 and var wide, > 0 and var high])
        {
            throw new DrawingException(line, written, "This viewBox cannot be read", "four numbers, the last two above 0") { Key = "viewBox" };
        }

        (width, height) = (width ?? (height is null ? around?.Width : null), height ?? (width is null ? around?.Height : null));
        double across = width / wide ?? height / high ?? 1;
        double upward = height / high ?? across;
        if (!(across > 0 && upward > 0))
        {
            throw new DrawingException(line, element.GetAttribute("width"), "The drawing has no size", "a width and a height above 0") { Key = "width" };
        }

        string fit = element.GetAttribute("preserveAspectRatio")?.Trim() ?? "";
        double even = fit.EndsWith("slice", StringComparison.Ordinal) ? Math.Max(across, upward) : Math.Min(across, upward);
        (double x, double y) = fit == "none" ? (across, upward) : (even, even);
        Affine shift = Affine.Shift(
            ((across - x) * wide * Share(fit, "xMin", "xMax")) - (left * x), ((upward - y) * high * Share(fit, "YMin", "YMax")) - (top * y));
        return new SvgView(shift.After(Affine.Scale(x, y)), wide, high);
    }

    private static double Share(string fit, string least, string most) =>
        fit.Contains(least, StringComparison.Ordinal) ? 0 : fit.Contains(most, StringComparison.Ordinal) ? 1 : 0.5;
}
