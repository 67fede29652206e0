using GearBlanks.Files.Keys;

namespace GearBlanks.Files.Jobs;

/// <summary>Items that name one another: found by name, and the circles they form.</summary>
internal static class Chains
{
    /// <summary>The items by name; of those of one name the first.</summary>
    public static Dictionary<string, Entries> ByName(IEnumerable<Entries> items)
    {
        var byName = new Dictionary<string, Entries>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            byName.TryAdd(item.Text("name") ?? "", item);
        }

        return byName;
    }

    /// <summary>Each circle once, from the item that stands first in the file.</summary>
    /// <param name="items">The items.</param>
    /// <param name="next">The item that one names; null where it names none.</param>
    public static IEnumerable<IReadOnlyList<Entries>> Circles(IEnumerable<Entries> items, Func<Entries, Entries?> next)
    {
        var done = new HashSet<Entries>();
        foreach (var start in items)
        {
            var chain = new List<Entries>();
            var onChain = new HashSet<Entries>();
            Entries? item = start;
            while (item is not null && !done.Contains(item) && onChain.Add(item))
            {
                chain.Add(item);
                item = next(item);
            }

            if (item is not null && onChain.Contains(item))
            {
                yield return FromFirst(chain[chain.IndexOf(item)..]);
            }

            done.UnionWith(chain);
        }
    }

    private static List<Entries> FromFirst(List<Entries> circle)
    {
        var at = circle.IndexOf(circle.MinBy(item => (item.Place.Line, item.Place.Column))!);
        return [.. circle[at..], .. circle[..at]];
    }
}
