using System.Security;
using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg;

/// <summary>How every SVG file here begins: sizes in mm, one user unit a millimetre, and a title.</summary>
internal static class SvgHead
{
    /// <summary>Adds everything up to the first group.</summary>
    public static void Add(ByteText text, string title, Extent view, int decimals)
    {
        text.Add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\""u8);
        text.Add(view.Width, decimals);
        text.Add("mm\" height=\""u8);
        text.Add(view.Height, decimals);
        text.Add("mm\" viewBox=\""u8);
        SvgPaths.AddPair(text, new Point(view.Left, view.Top), decimals);
        text.Add(" "u8);
        text.Add(view.Width, decimals);
        text.Add(" "u8);
        text.Add(view.Height, decimals);
        text.Add("\">\n"u8);
        AddTitle(text, title);
    }

    /// <summary>Adds a title element, which programs show as a hint.</summary>
    public static void AddTitle(ByteText text, string title)
    {
        text.Add("<title>"u8);
        text.Add(SecurityElement.Escape(title));
        text.Add("</title>\n"u8);
    }
}
