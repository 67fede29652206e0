using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Toml;

/// <summary>A value in a TOML file, with its place and the text that was written.</summary>
internal abstract class TomlNode(Place place, string written)
{
    public Place Place { get; } = place;

    public string Written { get; } = written;
}

internal sealed class TomlText(Place place, string written, string value) : TomlNode(place, written)
{
    public string Value { get; } = value;
}

internal sealed class TomlNumber(Place place, string written, double value, bool isWhole) : TomlNode(place, written)
{
    public double Value { get; } = value;

    /// <summary>True where it is written without a point or an exponent.</summary>
    public bool IsWhole { get; } = isWhole;
}

internal sealed class TomlFlag(Place place, string written, bool value) : TomlNode(place, written)
{
    public bool Value { get; } = value;
}

/// <summary>A date or a time of day: TOML has them, no key here takes one.</summary>
internal sealed class TomlDate(Place place, string written) : TomlNode(place, written);

/// <summary>A list in brackets, or the tables under one double-bracketed header.</summary>
internal sealed class TomlArray(Place place, string written, bool isOfHeaders) : TomlNode(place, written)
{
    public List<TomlNode> Items { get; } = [];

    /// <summary>True where its items are written as double-bracketed headers, so that more may follow.</summary>
    public bool IsOfHeaders { get; } = isOfHeaders;
}

internal sealed class TomlTable(Place place, string written, bool isInline) : TomlNode(place, written)
{
    private readonly Dictionary<string, int> _index = new(StringComparer.Ordinal);
    private readonly List<TomlEntry> _entries = [];

    /// <summary>In the order of the file.</summary>
    public IReadOnlyList<TomlEntry> Entries => _entries;

    /// <summary>True for a table in braces, to which nothing can be added.</summary>
    public bool IsInline { get; } = isInline;

    /// <summary>True once it has a header of its own.</summary>
    public bool HasHeader { get; set; }

    /// <summary>True where dotted keys made it: only dotted keys can add to it.</summary>
    public bool IsDotted { get; init; }

    public TomlEntry? Find(string key) => _index.TryGetValue(key, out var at) ? _entries[at] : null;

    public void Add(TomlEntry entry)
    {
        _index.Add(entry.Key, _entries.Count);
        _entries.Add(entry);
    }
}

/// <summary>A key with its value.</summary>
internal sealed record TomlEntry(string Key, Place Place, TomlNode Value);
