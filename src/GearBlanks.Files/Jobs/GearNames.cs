using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>The gears of a job and the axes they turn on.</summary>
internal sealed class GearNames(ProblemList problems)
{
    private readonly NamedItems _names = new("gear", problems);
    private readonly Dictionary<string, string?> _axes = new(StringComparer.Ordinal);

    public void Add(Entries layer, string name, string? axis)
    {
        _names.Add(layer, "gear", name);
        _axes.TryAdd(name, axis);
    }

    /// <summary>Takes up a name that a gear without one may have been meant to have.</summary>
    public void AddUnsure(string? name) => _names.AddUnsure(name);

    /// <summary>True where a mesh's item names one of these gears; told where it does not.</summary>
    public bool Check(Entries mesh, Entry item) => _names.Check(mesh, "gears", item);

    /// <summary>The axis of a gear; null where it is not known.</summary>
    public string? AxisOf(string gear) => _axes.GetValueOrDefault(gear);
}
