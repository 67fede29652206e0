using System.Xml;

namespace GearBlanks.Files.Drawings;

/// <summary>
/// Reads the shapes of an SVG file, Y upward, mm. Nothing outside the file is looked for: scripts, references to other files and document types, which
/// may hold entities, are refused.
/// </summary>
internal sealed class SvgContent
{
    private const int MostDepth = 100;
    private const int MostVertices = 2_000_000;

    // No shapes, or shapes that are not drawn where they stand.
    private static readonly HashSet<string> Passed =
        ["defs", "clipPath", "mask", "symbol", "marker", "pattern", "metadata", "title", "desc", "linearGradient", "radialGradient", "filter", "namedview", "text", "style"];

    private readonly XmlReader _reader;
    private readonly SortedSet<string> _omitted = new(StringComparer.Ordinal);
    private int _vertices;

    private SvgContent(XmlReader reader) => _reader = reader;

    public List<Stroke> Strokes { get; } = [];

    public IReadOnlyCollection<string> Omitted => _omitted;

    public string? Remark { get; private set; }

    private int Line => ((IXmlLineInfo)_reader).LineNumber;

    /// <exception cref="DrawingException">It cannot be read, or holds what is refused.</exception>
    public static SvgContent Of(string text)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreWhitespace = true };
        try
        {
            using var reader = XmlReader.Create(new StringReader(text), settings);
            var content = new SvgContent(reader);
            content.Read();
            return content;
        }
        catch (XmlException e)
        {
            throw text.Contains("<!DOCTYPE", StringComparison.OrdinalIgnoreCase)
                ? new DrawingException(e.LineNumber, "DOCTYPE", "This file has a document type, which may hold entities without end: it is not read", "the drawing saved as plain SVG")
                : new DrawingException(e.LineNumber, null, "This is not an SVG drawing: its XML is broken", "a drawing saved as DXF (ASCII) or SVG");
        }
    }

    private void Read()
    {
        while (_reader.Read())
        {
            RefuseInstruction();
            if (_reader.NodeType == XmlNodeType.Element)
            {
                if (_reader.LocalName != "svg")
                {
                    throw new DrawingException(Line, _reader.LocalName, "This is not an SVG drawing: its first element is another one", "a drawing saved as DXF (ASCII) or SVG");
                }

                RefuseReferences();
                Affine placement = Page();
                ReadChildren(placement, "", 0);
            }
        }
    }

    // Pixels of 1/96 inch where the file gives no size, as CSS has them.
    private Affine Page()
    {
        string? view = _reader.GetAttribute("viewBox");
        (string? width, string? height) = (_reader.GetAttribute("width"), _reader.GetAttribute("height"));
        List<double> box = view is null ? [] : SvgNumbers.All(view, Line);
        if (view is not null && !(box is [_, _, > 0, > 0]))
        {
            throw new DrawingException(Line, view, "This viewBox cannot be read", "four numbers, the last two above 0");
        }

        (double? wide, double? high) = (DrawnUnits.OfSvg(width), DrawnUnits.OfSvg(height));
        if ((wide ?? high) is null)
        {
            Remark = "The drawing does not say its size: a unit is taken for 1/96 inch.";
        }

        const double Pixel = 25.4 / 96;
        if (box.Count == 0)
        {
            return Affine.Scale(Pixel, -Pixel);
        }

        double across = wide / box[2] ?? high / box[3] ?? Pixel;
        double upward = high / box[3] ?? across;
        double even = Math.Min(across, upward);
        (across, upward) = _reader.GetAttribute("preserveAspectRatio")?.Trim() == "none" ? (across, upward) : (even, even);
        return across > 0 && upward > 0
            ? Affine.Scale(across, -upward)
            : throw new DrawingException(Line, width, "The drawing has no size", "a width and a height above 0");
    }

    private void ReadChildren(Affine placement, string layer, int depth)
    {
        if (_reader.IsEmptyElement)
        {
            return;
        }

        if (depth > MostDepth)
        {
            throw new DrawingException(Line, null, "Groups stand in groups without end", $"at most {MostDepth} deep");
        }

        while (_reader.Read() && _reader.NodeType != XmlNodeType.EndElement)
        {
            RefuseInstruction();
            if (_reader.NodeType == XmlNodeType.Element)
            {
                ReadElement(placement, layer, depth);
            }
        }
    }

    private void ReadElement(Affine placement, string layer, int depth)
    {
        RefuseReferences();
        string name = _reader.LocalName;
        if (Passed.Contains(name) || IsHidden())
        {
            Pass(name);
            return;
        }

        Affine placed = placement.After(SvgTransform.Of(_reader.GetAttribute("transform"), Line));
        if (name is "g" or "a" or "switch")
        {
            ReadChildren(placed, _reader.GetAttribute("id") ?? layer, depth + 1);
            return;
        }

        string own = Colour() is { } colour ? $"{layer} {colour}".TrimStart() : layer;
        if (!SvgShapes.Read(_reader, name, placed, Line, (stroke, isClosed) => Keep(stroke, isClosed, own)))
        {
            throw new DrawingException(Line, name, "Elements of this kind are not read", "path, circle, ellipse, rect, line, polyline, polygon and groups of them: turn this one into a path");
        }

        ReadChildren(placed, layer, depth + 1);
    }

    // What is passed over is still looked through for what is refused.
    private void Pass(string name)
    {
        if (name == "text")
        {
            _omitted.Add(name);
        }

        if (_reader.IsEmptyElement)
        {
            return;
        }

        int depth = _reader.Depth;
        while (_reader.Read() && _reader.Depth > depth)
        {
            RefuseInstruction();
            if (_reader.NodeType == XmlNodeType.Element)
            {
                RefuseReferences();
            }
            else if (name == "style" && _reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
            {
                RefuseStyle(_reader.Value);
            }
        }
    }

    // Programs that know no layers keep the colours that told them apart.
    private string? Colour()
    {
        const string Key = "stroke:";
        string style = _reader.GetAttribute("style") ?? "";
        int at = style.IndexOf(Key, StringComparison.Ordinal);
        return at < 0 ? _reader.GetAttribute("stroke") : style[(at + Key.Length)..].Split(';')[0].Trim();
    }

    private bool IsHidden() => _reader.GetAttribute("display") == "none"
        || (_reader.GetAttribute("style") ?? "").Replace(" ", "", StringComparison.Ordinal).Contains("display:none", StringComparison.Ordinal);

    private void RefuseInstruction()
    {
        if (_reader.NodeType == XmlNodeType.ProcessingInstruction)
        {
            throw new DrawingException(Line, _reader.Name, "This file refers to another one, which is not looked for", "the drawing saved as plain SVG");
        }
    }

    private void RefuseReferences()
    {
        if (_reader.LocalName is "script" or "foreignObject" or "handler")
        {
            throw new DrawingException(Line, _reader.LocalName, "This drawing holds a script or foreign content: it is not read", "the drawing saved as plain SVG");
        }

        if (!_reader.HasAttributes)
        {
            return;
        }

        for (bool more = _reader.MoveToFirstAttribute(); more; more = _reader.MoveToNextAttribute())
        {
            (string name, string value) = (_reader.LocalName, _reader.Value.Trim());
            if (name.StartsWith("on", StringComparison.OrdinalIgnoreCase) || value.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase))
            {
                throw new DrawingException(Line, name, "This drawing holds a script: it is not read", "the drawing saved as plain SVG");
            }

            if (name == "href" && !value.StartsWith('#'))
            {
                throw new DrawingException(Line, value, "This drawing refers to another file, which is not looked for", "a drawing with everything in it");
            }

            if (_reader.NamespaceURI != "http://www.w3.org/2000/xmlns/")
            {
                RefuseStyle(value);
            }
        }

        _reader.MoveToElement();
    }

    private void RefuseStyle(string style)
    {
        int at = style.IndexOf("url(", StringComparison.OrdinalIgnoreCase);
        if (style.Contains("@import", StringComparison.OrdinalIgnoreCase)
            || (at >= 0 && !style[(at + 4)..].TrimStart(' ', '"', '\'').StartsWith('#')))
        {
            throw new DrawingException(Line, style, "This drawing refers to another file, which is not looked for", "a drawing with everything in it");
        }
    }

    private void Keep(StrokeBuilder stroke, bool isClosed, string layer)
    {
        _vertices += stroke.Vertices.Count;
        if (_vertices > MostVertices)
        {
            throw new DrawingException(Line, null, "This drawing is too large to be a gear's", "a file with one part");
        }

        Strokes.Add(new Stroke(stroke.Vertices, isClosed, layer, Line));
    }
}
