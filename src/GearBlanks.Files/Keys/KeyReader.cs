using System.Collections.Immutable;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Keys;

/// <summary>Reads a table by its declaration: unknown keys, missing keys, kinds and ranges.</summary>
internal sealed class KeyReader(ProblemList problems)
{
    public Entries Read(TomlTable table, KeyTable declared)
    {
        var entries = new Entries(table.Place, declared);
        foreach (var entry in table.Entries)
        {
            if (declared.Find(entry.Key) is { } key)
            {
                entries.Set(key.Name, Read(entry, key, declared));
            }
            else if (Unknown(entry, declared) is { } nearest)
            {
                entries.AddMisspelt(nearest);
            }
        }

        foreach (var key in declared.Keys.Where(k => k.IsRequired && !entries.Has(k.Name)))
        {
            problems.Add(table.Place, declared.Full(key.Name), null, $"The key \"{key.Name}\" is missing{In(declared)}", key.Allowed);
        }

        return entries;
    }

    private string? Unknown(TomlEntry entry, KeyTable declared)
    {
        var names = declared.Keys.Select(k => k.Name);
        var nearest = Nearest.To(entry.Key, names);
        problems.Add(
            entry.Place, declared.Full(entry.Key), entry.Value.Written, $"There is no such key{In(declared)}",
            "one of " + string.Join(", ", names), nearest);
        return nearest;
    }

    private static string In(KeyTable declared) => declared.Path.Length == 0 ? " at the top of the file" : $" in \"{declared.Path}\"";

    private Entry Read(TomlEntry entry, Key key, KeyTable declared)
    {
        var full = declared.Full(key.Name);
        return key.Shape switch
        {
            KeyShape.One => One(entry.Value, key, full),
            KeyShape.OneOrMore when entry.Value is not TomlArray => new Entry(entry.Value.Place, entry.Value.Written, ImmutableArray.Create(One(entry.Value, key, full))),
            KeyShape.Pair => Many(entry.Value, key, full, 2),
            KeyShape.OneOrPair when entry.Value is not TomlArray => Single(entry.Value, key, full),
            KeyShape.OneOrPair => Many(entry.Value, key, full, 2),
            _ => Many(entry.Value, key, full, null),
        };
    }

    private Entry Single(TomlNode node, Key key, string full)
    {
        var one = One(node, key, full);
        return one with { Value = ImmutableArray.Create(one) };
    }

    private Entry Many(TomlNode node, Key key, string full, int? count)
    {
        if (node is not TomlArray array)
        {
            var message = node is TomlTable && key.Kind == KeyKind.Table
                ? $"This is a single table: write [[{full}]] with double brackets, once for each"
                : "This is not a list";
            return Refuse(node, full, message, key.Allowed);
        }

        if (array.Items.Count == 0)
        {
            return Refuse(node, full, "This list is empty: leave the key out or fill it", key.Allowed);
        }

        if (count is { } wanted && array.Items.Count != wanted)
        {
            return Refuse(node, full, "This list has not exactly two items", key.Allowed);
        }

        return new Entry(node.Place, node.Written, array.Items.Select(i => One(i, key, full)).ToImmutableArray());
    }

    private Entry One(TomlNode node, Key key, string full)
    {
        if (key.Kind != KeyKind.Table)
        {
            return new ValueReader(problems, key, full).Read(node);
        }

        return node switch
        {
            TomlTable table => new Entry(node.Place, node.Written, Read(table, key.Of!)),
            TomlArray => Refuse(node, full, "This is a list, and only one table may stand here", key.Allowed),
            _ => Refuse(node, full, "This is not a table", key.Allowed),
        };
    }

    private Entry Refuse(TomlNode node, string full, string message, string allowed)
    {
        problems.Add(node.Place, full, node.Written, message, allowed);
        return new Entry(node.Place, node.Written, null);
    }
}
