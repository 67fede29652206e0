using System.Collections.Immutable;
using Fractions;
using GearBlanks.Files.Toml;
using GearBlanks.Mechanisms;
using GearBlanks.Trains;

namespace GearBlanks.Files.Keys;

/// <summary>One value that was read: null where it was refused, and then a problem is told already.</summary>
internal sealed record Entry(Place Place, string Written, object? Value);

/// <summary>A table that was read and checked by its declaration.</summary>
internal sealed class Entries(Place place, KeyTable declared)
{
    private readonly Dictionary<string, Entry> _entries = new(StringComparer.Ordinal);

    private readonly HashSet<string> _misspelt = new(StringComparer.Ordinal);

    public Place Place { get; } = place;

    /// <summary>True where the key is written, even where it is misspelt or its value was refused.</summary>
    public bool Has(string key) => _entries.ContainsKey(key) || _misspelt.Contains(key);

    /// <summary>Takes up what a misspelt key was most likely meant to be, so that it is not told as missing too.</summary>
    public void AddMisspelt(string key) => _misspelt.Add(key);

    public Entry? Find(string key) => _entries.GetValueOrDefault(key);

    public void Set(string key, Entry entry) => _entries[key] = entry;

    public string? Text(string key) => Find(key)?.Value as string;

    public bool? Flag(string key) => Find(key)?.Value as bool?;

    public int? Count(string key) => Find(key)?.Value as int?;

    /// <summary>A number, a length in mm or an angle in rad.</summary>
    public double? Number(string key) => Find(key)?.Value as double?;

    /// <summary>A time, in seconds.</summary>
    public Fraction? Time(string key) => Find(key)?.Value as Fraction?;

    /// <summary>A date.</summary>
    public Moment? Date(string key) => Find(key)?.Value as Moment;

    /// <summary>An angle in degrees, exactly.</summary>
    public Fraction? ExactAngle(string key) => Find(key)?.Value as Fraction?;

    public Entries? Table(string key) => Find(key)?.Value as Entries;

    /// <summary>The items of a pair or a list; none where the key is missing or was refused.</summary>
    public ImmutableArray<Entry> Items(string key) => Find(key)?.Value is ImmutableArray<Entry> items ? items : [];

    /// <summary>The tables of a list of tables.</summary>
    public IEnumerable<Entries> Tables(string key) => Items(key).Select(i => i.Value).OfType<Entries>();

    /// <summary>Tells a problem at a key, or at the table where the key is not written.</summary>
    public void Refuse(ProblemList problems, string key, string message, string? allowed = null, string? nearest = null)
    {
        var entry = Find(key);
        problems.Add(entry?.Place ?? Place, declared.Full(key), entry?.Written, message, allowed, nearest);
    }

    /// <summary>Tells a problem at one item of a list.</summary>
    public void Refuse(ProblemList problems, string key, Entry item, string message, string? allowed = null, string? nearest = null) =>
        problems.Add(item.Place, declared.Full(key), item.Written, message, allowed, nearest);
}
