using System.Xml;

namespace GearBlanks.Files.Drawings;

/// <summary>Refuses what reaches out of an SVG file, or runs: scripts and references to other files. Nothing is fetched.</summary>
internal static class SvgRefusals
{
    /// <exception cref="DrawingException">It holds what is refused.</exception>
    public static void Require(XmlReader node)
    {
        switch (node.NodeType)
        {
            case XmlNodeType.ProcessingInstruction:
                throw new DrawingException(Line(node), node.Name, "This file refers to another one, which is not looked for", "the drawing saved as plain SVG");
            case XmlNodeType.Element:
                RequireElement(node);
                break;
        }
    }

    /// <exception cref="DrawingException">A style sheet refers to another file.</exception>
    public static void RequireStyle(string style, int line)
    {
        int at = style.IndexOf("url(", StringComparison.OrdinalIgnoreCase);
        if (style.Contains("@import", StringComparison.OrdinalIgnoreCase) || (at >= 0 && !IsWithin(style[(at + 4)..].TrimStart(' ', '"', '\''))))
        {
            throw new DrawingException(line, style, "This drawing refers to another file, which is not looked for", "a drawing with everything in it");
        }
    }

    private static void RequireElement(XmlReader node)
    {
        if (node.LocalName is "script" or "foreignObject" or "handler")
        {
            throw new DrawingException(Line(node), node.LocalName, "This drawing holds a script or foreign content: it is not read", "the drawing saved as plain SVG");
        }

        if (!node.HasAttributes)
        {
            return;
        }

        for (bool more = node.MoveToFirstAttribute(); more; more = node.MoveToNextAttribute())
        {
            RequireAttribute(node);
        }

        node.MoveToElement();
    }

    private static void RequireAttribute(XmlReader node)
    {
        (string name, string value) = (node.LocalName, node.Value.Trim());
        if (name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || value.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase))
        {
            throw new DrawingException(Line(node), name, "This drawing holds a script: it is not read", "the drawing saved as plain SVG");
        }

        if (name == "href" && !IsWithin(value))
        {
            throw new DrawingException(Line(node), value, "This drawing refers to another file, which is not looked for", "a drawing with everything in it");
        }

        if (node.NamespaceURI != "http://www.w3.org/2000/xmlns/")
        {
            RequireStyle(value, Line(node));
        }
    }

    // A picture written into the file itself is no other file.
    private static bool IsWithin(string reference) => reference.StartsWith('#') || reference.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase);

    private static int Line(XmlReader node) => ((IXmlLineInfo)node).LineNumber;
}
