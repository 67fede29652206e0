using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Profiles;

/// <summary>What must hold between the keys of a profile, beyond each key's own range.</summary>
internal static class ProfileRules
{
    private static readonly string[] Bounds = ["fails-below", "tight-below", "tight-above", "fails-above"];

    public static void Check(ProfileKind kind, Entries file, ProblemList problems)
    {
        if (kind == ProfileKind.Machine)
        {
            MachineRules.Check(file, problems);
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
