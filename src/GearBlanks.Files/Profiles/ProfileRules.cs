using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Profiles;

/// <summary>What must hold between the keys of a profile, beyond each key's own range.</summary>
internal static class ProfileRules
{
    private static readonly string[] Bounds = ["fails-below", "tight-below", "tight-above", "fails-above"];

    public static void Check(ProfileKind kind, Entries file, ProblemList problems)
    {
        if (kind == ProfileKind.Machine && file.Table("layers") is { } layers)
        {
            CheckLayers(layers, problems);
        }

        if (kind != ProfileKind.Limits)
        {
            return;
        }

        foreach (var table in ProfileKeys.Limits.Keys.Select(k => file.Table(k.Name)).OfType<Entries>())
        {
            CheckBounds(table, problems);
        }

        if (file.Table("backlash") is { } backlash)
        {
            Shares.Check(backlash, problems);
        }
    }

    // Two operations on one layer could not be told apart by the machine.
    private static void CheckLayers(Entries layers, ProblemList problems)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var key in ProfileKeys.MachineLayers.Keys)
        {
            if (layers.Text(key.Name) is { } name && !names.Add(name))
            {
                layers.Refuse(problems, key.Name, "Another operation has this layer already", "a layer for each operation");
            }
        }
    }

    private static void CheckBounds(Entries table, ProblemList problems)
    {
        var given = Bounds.Where(b => table.Number(b) is not null).ToList();
        if (given.Count == 0 && !Bounds.Any(table.Has))
        {
            table.Refuse(problems, Bounds[0], "This limit has no bound at all", "one bound at least: " + string.Join(", ", Bounds));
        }

        for (var i = 1; i < given.Count; i++)
        {
            if (table.Number(given[i]) < table.Number(given[i - 1]))
            {
                table.Refuse(problems, given[i], $"This is less than \"{given[i - 1]}\"", "bounds that do not fall in the order " + string.Join(", ", Bounds));
            }
        }
    }
}
