using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold between the keys of conditions.</summary>
internal static class ConditionsChecks
{
    private static readonly string[] OnlyWithTable = ["conditions", "centre-distance-tolerance"];

    public static void Check(Entries file, ProblemList problems)
    {
        if (file.Table("conditions") is { } conditions)
        {
            CheckRange(conditions, "temperature", problems);
            CheckRange(conditions, "humidity", problems);
            CheckFrame(conditions, problems);
            return;
        }

        if (!file.Has("conditions"))
        {
            CheckStray(file, problems);
        }
    }

    private static void CheckRange(Entries table, string key, ProblemList problems)
    {
        if (table.Items(key) is [{ Value: double least }, { Value: double greatest } second] && greatest < least)
        {
            table.Refuse(problems, key, second, "The greatest is less than the least", "the least first, then the greatest", Key.Written(least));
        }
    }

    private static void CheckFrame(Entries table, ProblemList problems)
    {
        string? climate = table.Has("temperature") ? "temperature" : table.Has("humidity") ? "humidity" : null;
        if (climate is not null && !table.Has("frame-material"))
        {
            table.Refuse(problems, "frame-material", $"The {climate} changes, and what holds the axes has no material", "frame-material together with temperature or humidity");
        }

        foreach (string reference in (string[])["temperature", "humidity"])
        {
            if (table.Number($"reference-{reference}") is not null && !table.Has(reference))
            {
                table.Refuse(problems, $"reference-{reference}", $"There is no range of {reference} that it could be the reference of", $"reference-{reference} together with {reference}");
            }
        }
    }

    // Conditions of one item alone would be left out of account without a word.
    private static void CheckStray(Entries file, ProblemList problems)
    {
        IEnumerable<Entries> items = file.Tables("sandwiches").Concat(file.Tables("sandwiches").SelectMany(s => s.Tables("layers"))).Concat(file.Tables("meshes"));
        foreach (Entries item in items)
        {
            foreach (string key in OnlyWithTable.Where(item.Has))
            {
                item.Refuse(problems, key, "Conditions are checked only where the job has a [conditions] table", "this key together with [conditions], which may be empty");
            }
        }
    }
}
