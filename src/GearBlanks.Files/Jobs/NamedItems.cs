using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>The names of one kind of item: told apart, and referred to.</summary>
/// <param name="what">What the items are, for messages: "axis".</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class NamedItems(string what, ProblemList problems)
{
    // More names than this would hide the message.
    private const int MostShown = 12;

    private readonly List<string> _names = [];
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Name, int Line)> _byFold = new(StringComparer.Ordinal);

    /// <summary>Takes up the name that a table gives under a key.</summary>
    public void Add(Entries table, string key)
    {
        // A refused name still counts as known, so that references to it are not told as well.
        var name = table.Text(key) ?? table.Find(key)?.Written.Trim('"', '\'');
        if (name is not null)
        {
            Add(table, key, name);
        }
    }

    /// <summary>Takes up a name that nothing has for sure: references to it are not told.</summary>
    public void AddUnsure(string? name)
    {
        if (name is not null && _known.Add(name))
        {
            _names.Add(name);
        }
    }

    /// <summary>Takes up a name that belongs to a table, written under a key or not.</summary>
    public void Add(Entries table, string key, string name)
    {
        var line = table.Find(key)?.Place.Line ?? table.Place.Line;
        if (_byFold.TryAdd(NameRules.Fold(name), (name, line)))
        {
            AddUnsure(name);
            return;
        }

        var (other, at) = _byFold[NameRules.Fold(name)];
        var message = other == name
            ? $"The {what} \"{ProblemList.Shown(name)}\" exists already (line {Key.Written(at)})"
            : $"The {what} \"{ProblemList.Shown(name)}\" differs from \"{ProblemList.Shown(other)}\" (line {Key.Written(at)}) only by case or by a space for a hyphen: their files could not stand side by side";
        table.Refuse(problems, key, message, "a name of its own for each");
    }

    /// <summary>Checks that a name is one of these, and tells it where not. True where it is.</summary>
    public bool Check(Entries table, string key) => table.Find(key) is { Value: string } entry && Check(table, key, entry);

    /// <summary>Checks one item of a list of names.</summary>
    public bool Check(Entries table, string key, Entry item)
    {
        if (item.Value is not string name || _known.Contains(name))
        {
            return item.Value is string;
        }

        if (_names.Count > 0)
        {
            table.Refuse(problems, key, item, $"There is no {what} of this name", Listed(), problems.WantsAdvice ? Nearest.To(name, _names) : null);
        }

        return false;
    }

    private string Listed() => "one of " + string.Join(", ", _names.Take(MostShown).Select(n => $"\"{ProblemList.Shown(n)}\""))
        + (_names.Count > MostShown ? ", ..." : "");
}
