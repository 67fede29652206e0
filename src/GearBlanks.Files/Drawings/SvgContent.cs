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
        ["defs", "clipPath", "mask", "symbol", "marker", "pattern", "metadata", "title", "desc", "linearGradient", "radialGradient", "filter", "namedview", "text", "style", "image"];

    // Drawn, but no contours.
    private static readonly HashSet<string> Told = ["text", "image"];

    private readonly SvgUses _uses;
    private readonly LeftOut _omitted = new("they are no contours");
    private readonly LeftOut _hidden = new("they are not displayed");
    private readonly SvgStyles _styles = new();
    private readonly List<string> _remarks = [];
    private XmlReader _reader;
    private int _vertices;

    private SvgContent(string text, XmlReader reader) => (_reader, _uses) = (reader, new SvgUses(() => Open(text)));

    private readonly record struct Surroundings(Affine Placement, SvgView View, string Layer, IReadOnlyList<string> Groups, int Depth, int Uses, bool IsInvisible);

    public List<Stroke> Strokes { get; } = [];

    /// <summary>What there is to say of what was read, and of what was not.</summary>
    public IEnumerable<string> Remarks => _remarks.Concat(_omitted.Remarks()).Concat(_hidden.Remarks());

    private int Line => ((IXmlLineInfo)_reader).LineNumber;

    /// <exception cref="DrawingException">It cannot be read, or holds what is refused.</exception>
    public static SvgContent Of(string text)
    {
        try
        {
            using XmlReader reader = Open(text);
            var content = new SvgContent(text, reader);
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

    private static XmlReader Open(string text) => XmlReader.Create(
        new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreWhitespace = true });

    private void Read()
    {
        while (_reader.Read())
        {
            SvgRefusals.Require(_reader);
            if (_reader.NodeType == XmlNodeType.Element)
            {
                if (_reader.LocalName != "svg")
                {
                    throw new DrawingException(Line, _reader.LocalName, "This is not an SVG drawing: its first element is another one", "a drawing saved as DXF (ASCII) or SVG");
                }

                (SvgView page, string? remark) = SvgView.OfPage(_reader);
                _remarks.AddRange(remark is null ? [] : [remark]);
                ReadChildren(new Surroundings(page.Placement, page, "", [], 0, 0, false));
            }
        }
    }

    private void ReadChildren(Surroundings around)
    {
        if (_reader.IsEmptyElement)
        {
            return;
        }

        if (around.Depth > MostDepth)
        {
            throw new DrawingException(Line, null, "Groups stand in groups without end", $"at most {MostDepth} deep");
        }

        while (_reader.Read() && _reader.NodeType != XmlNodeType.EndElement)
        {
            SvgRefusals.Require(_reader);
            if (_reader.NodeType == XmlNodeType.Element)
            {
                ReadElement(around);
            }
        }
    }

    private void ReadElement(Surroundings around)
    {
        string name = _reader.LocalName;
        if (Passed.Contains(name) || IsHidden())
        {
            Pass(name, around.Layer);
            return;
        }

        Surroundings placed = around with { Placement = around.Placement.After(SvgTransform.Of(_reader.GetAttribute("transform"), Line)), IsInvisible = IsInvisible(around.IsInvisible) };
        switch (name)
        {
            case "g" or "a" or "switch":
                ReadChildren(Within(placed));
                break;
            case "svg":
                ReadChildren(Within(Shown(placed, SvgLength.Of(_reader, "width"), SvgLength.Of(_reader, "height"), Shift())));
                break;
            case "use":
                Use(placed);
                ReadChildren(placed with { Depth = placed.Depth + 1 });
                break;
            default:
                ReadShape(name, placed);
                break;
        }
    }

    private void ReadShape(string name, Surroundings placed)
    {
        if (placed.IsInvisible)
        {
            Pass(name, placed.Layer);
            return;
        }

        // Programs that know no layers keep the colours that told them apart.
        string own = Property("stroke") is { } colour ? $"{placed.Layer} {colour}".TrimStart() : placed.Layer;
        if (!SvgShapes.Read(_reader, name, placed.Placement, Line, (stroke, isClosed) => Keep(stroke, isClosed, name, own, placed.Groups)))
        {
            throw new DrawingException(
                Line, name, "Elements of this kind are not read", "path, circle, ellipse, rect, line, polyline, polygon, use and groups of them: turn this one into a path");
        }

        ReadChildren(placed with { Depth = placed.Depth + 1 });
    }

    private Surroundings Within(Surroundings around)
    {
        string[] names = [.. new[] { _reader.GetAttribute("id"), _reader.GetAttribute("label", "http://www.inkscape.org/namespaces/inkscape") }.OfType<string>()];
        return around with { Layer = _reader.GetAttribute("id") ?? around.Layer, Groups = names.Length == 0 ? around.Groups : [.. around.Groups, .. names], Depth = around.Depth + 1 };
    }

    private Affine Shift() => Affine.Shift(SvgLength.Of(_reader, "x") ?? 0, SvgLength.Of(_reader, "y") ?? 0);

    private Surroundings Shown(Surroundings around, double? width, double? height, Affine shift)
    {
        SvgView view = SvgView.Of(_reader, width, height, around.View);
        return around with { Placement = around.Placement.After(shift).After(view.Placement), View = view };
    }

    // What is used is read where it is used; what a reader finds on its way there stays where it is.
    private void Use(Surroundings placed)
    {
        string? reference = _reader.GetAttribute("href") ?? _reader.GetAttribute("href", "http://www.w3.org/1999/xlink");
        if (reference is null)
        {
            return;
        }

        (double? width, double? height, Affine shift) = (SvgLength.Of(_reader, "width"), SvgLength.Of(_reader, "height"), Shift());
        Surroundings inside = placed with { Placement = placed.Placement.After(shift), Uses = placed.Uses + 1, Depth = placed.Depth + 1 };
        XmlReader before = _reader;
        using XmlReader used = _uses.Find(reference.Trim(), inside.Uses, Line);
        _reader = used;
        SvgRefusals.Require(_reader);
        if (_reader.LocalName == "symbol" && !IsHidden())
        {
            ReadChildren(Within(Shown(inside, width, height, Affine.None)));
        }
        else
        {
            ReadElement(inside);
        }

        _reader = before;
    }

    // What is passed over is still looked through for what is refused.
    private void Pass(string name, string layer)
    {
        if (Told.Contains(name))
        {
            _omitted.Add(name, Line, layer);
        }
        else if (!Passed.Contains(name))
        {
            _hidden.Add(name, Line, layer);
        }

        if (_reader.IsEmptyElement)
        {
            return;
        }

        int depth = _reader.Depth;
        while (_reader.Read() && _reader.Depth > depth)
        {
            SvgRefusals.Require(_reader);
            if (name == "style" && _reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
            {
                ReadStyle(_reader.Value);
            }
        }
    }

    private void ReadStyle(string sheet)
    {
        SvgRefusals.RequireStyle(sheet, Line);
        if (!_styles.Add(sheet))
        {
            _remarks.Add(FormattableString.Invariant($"The style sheet in line {Line} hides something by more than a class, an id or an element's kind: that is read all the same."));
        }
    }

    // An element's own style says it before a sheet does, a sheet before an attribute.
    private string? Property(string name) =>
        SvgStyles.Value(_reader.GetAttribute("style") ?? "", name)
        ?? _styles.Of(_reader.LocalName, _reader.GetAttribute("id"), _reader.GetAttribute("class"), name)
        ?? _reader.GetAttribute(name)?.Trim();

    private bool IsHidden() => Property("display") == "none";

    private bool IsInvisible(bool around) => Property("visibility") is { } own && own != "inherit" ? own is "hidden" or "collapse" : around;

    private void Keep(StrokeBuilder stroke, bool isClosed, string name, string layer, IReadOnlyList<string> groups)
    {
        _vertices += stroke.Vertices.Count;
        if (_vertices > MostVertices)
        {
            throw new DrawingException(Line, null, "This drawing is too large to be a gear's", "a file with one part");
        }

        if (!stroke.Vertices.TrueForAll(StrokeBuilder.IsWithinReach))
        {
            throw new DrawingException(Line, name, "This element lies farther out than can be computed with", StrokeBuilder.ReachInWords);
        }

        Strokes.Add(new Stroke(stroke.Vertices, isClosed, layer, Line) { Kind = name, Groups = groups });
    }
}
