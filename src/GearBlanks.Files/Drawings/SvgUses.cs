using System.Xml;
using System.Xml.Linq;

namespace GearBlanks.Files.Drawings;

/// <summary>Finds what stands elsewhere in the file and is to be drawn again.</summary>
internal sealed class SvgUses(Func<XmlReader> open)
{
    /// <summary>The deepest that uses may stand in uses.</summary>
    public const int Deepest = 16;

    // Few lines that use one another can ask for any number of shapes.
    private const int Most = 10_000;

    private Dictionary<string, XElement>? _elements;
    private int _count;

    /// <summary>A reader that stands on the element.</summary>
    /// <exception cref="DrawingException">There is no such element, or uses have no end.</exception>
    public XmlReader Find(string reference, int depth, int line)
    {
        if (depth > Deepest || ++_count > Most)
        {
            throw new DrawingException(
                line, reference, "Uses of elements stand in uses without end", FormattableString.Invariant($"at most {Deepest} deep, {Most} in all"))
            { Key = "href" };
        }

        _elements ??= Elements();
        if (!reference.StartsWith('#') || !_elements.TryGetValue(reference[1..], out XElement? found))
        {
            throw new DrawingException(line, reference, "There is no element of this name in the file", "the id of an element of this drawing")
            {
                Key = "href",
                Nearest = reference.Length > 1 && Keys.Nearest.To(reference[1..], _elements.Keys) is { } near ? "#" + near : null,
            };
        }

        XmlReader reader = found.CreateReader();
        reader.Read();
        return reader;
    }

    private Dictionary<string, XElement> Elements()
    {
        using XmlReader reader = open();
        var elements = new Dictionary<string, XElement>(StringComparer.Ordinal);
        foreach (XElement element in XDocument.Load(reader, LoadOptions.SetLineInfo).Descendants())
        {
            if (element.Attribute("id") is { } id)
            {
                elements.TryAdd(id.Value, element);
            }
        }

        return elements;
    }
}
