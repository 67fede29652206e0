using System.Xml;

namespace GearBlanks.Files.Drawings;

/// <summary>Reads lengths of SVG in its own units, of which an inch has 96.</summary>
internal static class SvgLength
{
    /// <summary>mm of a unit where the file gives no size, as CSS has it.</summary>
    public const double Pixel = 25.4 / 96;

    private const string Allowed = "a number, alone or with mm, cm, in, pt, pc, Q or px";

    /// <summary>An attribute's length in units; null where it is missing or a share of the page.</summary>
    /// <exception cref="DrawingException">It cannot be read, or is below 0 where it must not be.</exception>
    public static double? Of(XmlReader element, string attribute, bool mayBeNegative = true)
    {
        string? text = element.GetAttribute(attribute)?.Trim();
        if (text is null or "auto" || text.EndsWith('%'))
        {
            return null;
        }

        double? value = Numbers.TryParse(text, out double plain) ? plain : DrawnUnits.OfSvg(text) / Pixel;
        int line = ((IXmlLineInfo)element).LineNumber;
        return value is not { } length ? throw new DrawingException(line, text, $"The {attribute} of this {element.LocalName} cannot be read", Allowed) { Key = attribute }
            : length < 0 && !mayBeNegative ? throw new DrawingException(line, text, $"The {attribute} of this {element.LocalName} is below 0", "0 or more") { Key = attribute }
            : length;
    }
}
