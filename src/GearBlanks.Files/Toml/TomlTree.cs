using System.Globalization;
using GearBlanks.Mechanisms;
using Tomlyn.Syntax;

namespace GearBlanks.Files.Toml;

/// <summary>
/// Puts the pieces of a TOML file together: headers, dotted keys and tables in braces become one tree. Duplicates are
/// told here, beside all other problems, rather than by the parser, which would stop at them.
/// </summary>
internal sealed class TomlTree(string file, string text, ProblemList problems)
{
    public TomlTable Build(DocumentSyntax document)
    {
        var root = new TomlTable(new Place(file, 0, 0), "", isInline: false);
        foreach (var pair in document.KeyValues)
        {
            Add(root, pair, "");
        }

        foreach (var header in document.Tables)
        {
            if (Open(root, header) is { } table)
            {
                var path = string.Join('.', Parts(header.Name!).Select(p => p.Name));
                foreach (var pair in header.Items)
                {
                    Add(table, pair, path);
                }
            }
        }

        return root;
    }

    private TomlTable? Open(TomlTable root, TableSyntaxBase header)
    {
        var parts = Parts(header.Name!);
        var parent = Descend(root, parts.AsSpan(..^1), "", isDotted: false);
        if (parent is null)
        {
            return null;
        }

        var (name, keyPlace) = parts[^1];
        var place = PlaceOf(header);
        var found = parent.Find(name);
        return (found?.Value, header) switch
        {
            (null, TableSyntax) => Headed(parent, name, place),
            (null, _) => Item(NewArray(parent, name, place), place),
            (TomlTable { IsInline: false, HasHeader: false, IsDotted: false } table, TableSyntax) => Marked(table),
            (TomlArray { IsOfHeaders: true } array, TableArraySyntax) => Item(array, place),
            (TomlArray { IsOfHeaders: true }, TableSyntax) => Repeated(
                keyPlace, parts, found!, $"The table \"{name}\" is a list here: each of its headers has double brackets, [[{name}]]"),
            (TomlTable { IsInline: false } table, TableSyntax) => Merged(table, keyPlace, parts, found!),
            _ => Repeated(keyPlace, parts, found!, null),
        };
    }

    // A table that stands twice is told, and read on as one, so that its keys are not told as missing.
    private TomlTable Merged(TomlTable table, Place place, (string Name, Place Place)[] parts, TomlEntry first)
    {
        Repeated(place, parts, first, null);
        return table;
    }

    private static TomlTable Headed(TomlTable parent, string name, Place place)
    {
        var table = new TomlTable(place, $"[{name}]", isInline: false) { HasHeader = true };
        parent.Add(new TomlEntry(name, place, table));
        return table;
    }

    private static TomlTable Marked(TomlTable table)
    {
        table.HasHeader = true;
        return table;
    }

    private static TomlArray NewArray(TomlTable parent, string name, Place place)
    {
        var array = new TomlArray(place, $"[[{name}]]", isOfHeaders: true);
        parent.Add(new TomlEntry(name, place, array));
        return array;
    }

    private static TomlTable Item(TomlArray array, Place place)
    {
        var table = new TomlTable(place, array.Written, isInline: false) { HasHeader = true };
        array.Items.Add(table);
        return table;
    }

    private void Add(TomlTable table, KeyValueSyntax pair, string path)
    {
        var parts = Parts(pair.Key!);
        var parent = Descend(table, parts.AsSpan(..^1), path, isDotted: true);
        if (parent is null)
        {
            return;
        }

        var (name, place) = parts[^1];
        if (parent.Find(name) is { } found)
        {
            Repeated(place, parts, found, null, path, Slice(pair.Value!));
            return;
        }

        parent.Add(new TomlEntry(name, place, Value(pair.Value!, Join(path, parts))));
    }

    // The table that the leading parts of a header or of a dotted key lead to, made where it does not exist.
    private TomlTable? Descend(TomlTable table, ReadOnlySpan<(string Name, Place Place)> parts, string path, bool isDotted)
    {
        foreach (var (name, place) in parts)
        {
            var found = table.Find(name);
            switch (found?.Value)
            {
                case null:
                    var made = new TomlTable(place, name, isInline: false) { IsDotted = isDotted };
                    table.Add(new TomlEntry(name, place, made));
                    table = made;
                    break;
                case TomlTable { IsInline: false } inner when inner.IsDotted || !isDotted:
                    table = inner;
                    break;
                case TomlArray { IsOfHeaders: true } array when !isDotted:
                    table = (TomlTable)array.Items[^1];
                    break;
                default:
                    Repeated(place, [(name, place)], found!, null, path);
                    return null;
            }
        }

        return table;
    }

    private TomlTable? Repeated(
        Place place, (string Name, Place Place)[] parts, TomlEntry first, string? message, string path = "", string? written = null)
    {
        var line = first.Place.Line.ToString(CultureInfo.InvariantCulture);
        problems.Add(
            place, Join(path, parts), written, message is null ? $"\"{first.Key}\" is given already in line {line}" : $"{message} (line {line})",
            "each key and each table once");
        return null;
    }

    private TomlNode Value(ValueSyntax value, string path)
    {
        var (place, written) = (PlaceOf(value), Slice(value));
        switch (value)
        {
            case StringValueSyntax s:
                return new TomlText(place, written, s.Value ?? "");
            case IntegerValueSyntax i:
                return new TomlNumber(place, written, i.Value, isWhole: true);
            case FloatValueSyntax f:
                return new TomlNumber(place, written, f.Value, isWhole: false);
            case BooleanValueSyntax b:
                return new TomlFlag(place, written, b.Value);
            case ArraySyntax a:
                var array = new TomlArray(place, written, isOfHeaders: false);
                foreach (var item in a.Items)
                {
                    array.Items.Add(Value(item.Value!, path));
                }

                return array;
            case InlineTableSyntax t:
                var table = new TomlTable(place, written, isInline: false);
                foreach (var item in t.Items)
                {
                    Add(table, item.KeyValue!, path);
                }

                return Closed(table);
            default:
                return new TomlDate(place, written);
        }
    }

    // Dotted keys may build a table in braces up; once its brace is closed nothing can be added.
    private static TomlTable Closed(TomlTable table)
    {
        var closed = new TomlTable(table.Place, table.Written, isInline: true);
        foreach (var entry in table.Entries)
        {
            closed.Add(entry);
        }

        return closed;
    }

    private (string Name, Place Place)[] Parts(KeySyntax key)
    {
        var parts = new List<(string, Place)> { (NameOf(key.Key!), PlaceOf(key.Key!)) };
        foreach (var item in key.DotKeys)
        {
            parts.Add((NameOf(item.Key!), PlaceOf(item.Key!)));
        }

        return [.. parts];
    }

    private static string NameOf(BareKeyOrStringValueSyntax key) => key switch
    {
        BareKeySyntax bare => bare.Key?.Text ?? "",
        StringValueSyntax quoted => quoted.Value ?? "",
        _ => "",
    };

    private static string Join(string path, (string Name, Place Place)[] parts)
    {
        var key = string.Join('.', parts.Select(p => p.Name));
        return path.Length == 0 ? key : $"{path}.{key}";
    }

    private Place PlaceOf(SyntaxNodeBase node) => new(file, node.Span.Start.Line + 1, node.Span.Start.Column + 1);

    private string Slice(SyntaxNodeBase node)
    {
        var start = Math.Clamp(node.Span.Start.Offset, 0, text.Length);
        var end = Math.Clamp(node.Span.End.Offset + 1, start, text.Length);
        return text[start..end];
    }
}
