using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold between the keys of a job, beyond each key's own range.</summary>
internal static class JobChecks
{
    // Files that stand beside the gears' own, in the same folder.
    private static readonly string[] TakenFileNames = ["overview", "manifest"];

    public static void Check(Entries file, ProblemList problems)
    {
        var axes = new NamedItems("axis", problems);
        var sandwiches = new NamedItems("sandwich", problems);
        foreach (var axis in file.Tables("axes"))
        {
            axes.Add(axis, "name");
        }

        foreach (var sandwich in file.Tables("sandwiches"))
        {
            sandwiches.Add(sandwich, "name");
            axes.Check(sandwich, "axis");
            SlidingChecks.CheckLayers(sandwich, problems);
        }

        CheckDefaults(file, problems);
        AxisChecks.Check([.. file.Tables("axes")], axes, problems);
        MeshChecks.Check([.. file.Tables("meshes")], Gears(file, problems), problems);
        ArmChecks.Check(file, sandwiches, problems);
        DriveChecks.Check(file, sandwiches, problems);
        StackChecks.Check(file, axes, sandwiches, problems);
        ConditionsChecks.Check(file, problems);
    }

    /// <summary>Two keys that say the same thing in two ways.</summary>
    public static void CheckModule(Entries table, ProblemList problems)
    {
        if (table.Has("module") && table.Has("diametral-pitch"))
        {
            table.Refuse(problems, "diametral-pitch", "The module is given already: one of the two is too many", "either module or diametral-pitch");
        }
    }

    private static void CheckDefaults(Entries file, ProblemList problems)
    {
        if (file.Table("defaults") is { } defaults)
        {
            CheckModule(defaults, problems);
            BoreChecks.Check(defaults, null, problems);
        }
    }

    private static GearNames Gears(Entries file, ProblemList problems)
    {
        var gears = new GearNames(problems);
        var hasModule = file.Table("defaults") is { } defaults ? defaults.Has("module") || defaults.Has("diametral-pitch") : file.Has("defaults");
        foreach (var sandwich in file.Tables("sandwiches"))
        {
            var layers = sandwich.Tables("layers").ToList();
            var isOnly = layers.Count(IsGear) == 1;
            foreach (var layer in layers)
            {
                LayerChecks.Check(layer, file.Table("defaults"), hasModule, problems);
                if (IsGear(layer))
                {
                    AddGear(gears, layer, sandwich, isOnly, problems);
                }
            }
        }

        return gears;
    }

    // A layer that is written as both is told, and taken for the gear that meshes may name.
    private static bool IsGear(Entries layer) => layer.Has("teeth") || !layer.Has("washer");

    private static void AddGear(GearNames gears, Entries layer, Entries sandwich, bool isOnly, ProblemList problems)
    {
        if (!layer.Has("gear") && !isOnly)
        {
            layer.Refuse(problems, "gear", "A gear needs its own name where its sandwich has several", NameRules.Allowed);
            gears.AddUnsure(sandwich.Text("name"));
        }
        else if (JobBuilder.GearName(layer, sandwich) is { } name)
        {
            gears.Add(layer, name, sandwich.Text("axis"));
            if (TakenFileNames.Contains(NameRules.Fold(name)))
            {
                layer.Refuse(problems, "gear", $"A gear cannot be called \"{name}\": its file would take the name of another one", "any other name");
            }
        }
    }
}
