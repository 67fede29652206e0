using System.Collections.Immutable;

namespace GearBlanks.Mechanisms;

/// <summary>Works things out on all cores; their order stays, so that nothing depends on how many there are.</summary>
/// <remarks>The library's parallel queries by SelectMany do not compile to a native program without warnings.</remarks>
internal static class SideBySide
{
    /// <summary>What becomes of each item, in the order of the items.</summary>
    public static ImmutableArray<TResult> Select<TItem, TResult>(IEnumerable<TItem> items, Func<TItem, int, TResult> make)
    {
        TItem[] all = [.. items];
        var made = new TResult[all.Length];
        Parallel.For(0, all.Length, i => made[i] = make(all[i], i));
        return [.. made];
    }

    /// <summary>All findings of all items, in the order of the items.</summary>
    public static IEnumerable<TResult> SelectMany<TItem, TResult>(IEnumerable<TItem> items, Func<TItem, IEnumerable<TResult>> make) =>
        Select(items, (item, _) => make(item).ToArray()).SelectMany(made => made);
}
