using GearBlanks.Files.Keys;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>Checks that each profile a job names exists, while the exact place of its name is at hand.</summary>
internal static class ProfileChecks
{
    private static readonly (string Key, ProfileKind Kind)[] InDefaults =
        [("rack", ProfileKind.Rack), ("material", ProfileKind.Material), ("machine", ProfileKind.Machine), ("limits", ProfileKind.Limits)];

    private static readonly (string Key, ProfileKind Kind)[] InLayers = [("rack", ProfileKind.Rack), ("material", ProfileKind.Material)];

    public static void Check(Entries file, ProfileFinder finder, ProblemList problems)
    {
        if (file.Table("defaults") is { } defaults)
        {
            Check(defaults, JobKeys.Defaults, InDefaults, finder, problems);
        }

        if (file.Table("conditions") is { } conditions)
        {
            Check(conditions, JobKeys.Conditions, [("frame-material", ProfileKind.Material)], finder, problems);
        }

        foreach (var layer in file.Tables("sandwiches").SelectMany(s => s.Tables("layers")))
        {
            Check(layer, JobKeys.Layers, InLayers, finder, problems);
        }
    }

    private static void Check(
        Entries table, KeyTable declared, (string Key, ProfileKind Kind)[] keys, ProfileFinder finder, ProblemList problems)
    {
        foreach (var (key, kind) in keys)
        {
            if (problems.WantsAdvice && table.Text(key) is { } name && !finder.Exists(kind, name))
            {
                var entry = table.Find(key)!;
                problems.Add(finder.Unknown(kind, name, entry.Place) with { Key = declared.Full(key), Value = ProblemList.Shown(entry.Written) });
            }
        }
    }
}
