using GearBlanks.Cutting;
using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Profiles;

/// <summary>What must hold between the keys of a machine, beyond each key's own range.</summary>
internal static class MachineRules
{
    public static void Check(Entries file, ProblemList problems)
    {
        if (file.Table("layers") is { } layers)
        {
            CheckLayers(layers, problems);
        }

        if (file.Flag("compensates") == true && file.Has("kerf"))
        {
            file.Refuse(problems, "kerf", "A shop that compensates takes nominal files, so its kerf is not used", "either \"compensates\" or \"kerf\"");
        }

        CheckPath(file, problems);
        if (file.Table("contour") is { } contour)
        {
            CheckPair(contour, "lead", "lead-length", problems);
            CheckPair(contour, "tabs", "tab-width", problems);
        }

        foreach (var kerf in file.Tables("kerf"))
        {
            CheckKerf(kerf, problems);
        }

        if (file.Table("least-feature") is { } least && !least.Has("thicknesses") && !least.Has("length"))
        {
            least.Refuse(problems, "thicknesses", "This rule says no size", "\"thicknesses\", \"length\" or both");
        }
    }

    private static void CheckPath(Entries file, ProblemList problems)
    {
        bool isCentre = file.Text("path") == "tool-centre";
        if (file.Has("tool-diameter") && file.Flag("compensates") != true && !isCentre)
        {
            file.Refuse(problems, "tool-diameter", "Nothing here makes a mill's path", "compensates = true, or path = \"tool-centre\", beside it");
        }

        if (file.Has("path") && !file.Has("tool-diameter"))
        {
            file.Refuse(problems, "path", "Only a mill's tool has a path", "path together with tool-diameter");
        }

        if (isCentre && (file.Flag("compensates") == true || file.Has("kerf")))
        {
            file.Refuse(problems, "path", "The tool-centre path carries the tool's width already", "path = \"tool-centre\" without \"compensates\" and \"kerf\"");
        }
    }

    private static void CheckPair(Entries table, string key, string length, ProblemList problems)
    {
        if (table.Has(key) != table.Has(length))
        {
            table.Refuse(problems, table.Has(key) ? key : length, $"\"{key}\" and \"{length}\" go together", "both or neither");
        }
    }

    // Two operations on one layer could not be told apart by the machine.
    private static void CheckLayers(Entries layers, ProblemList problems)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var key in ProfileKeys.MachineLayers.Keys.Where(key => key.Kind == KeyKind.LayerName))
        {
            if (layers.Text(key.Name) is { } name && !names.Add(name))
            {
                layers.Refuse(problems, key.Name, "Another operation has this layer already", "a layer for each operation");
            }
        }
    }

    private static void CheckKerf(Entries kerf, ProblemList problems)
    {
        if (Numbers(kerf, "thickness") is [var thinnest, var thickest] && thickest < thinnest)
        {
            kerf.Refuse(problems, "thickness", "The second thickness is less than the first", "the least, then the greatest");
        }

        if (Numbers(kerf, "width") is [var x, var y] && Math.Max(x, y) > Kerf.GreatestRatio * Math.Min(x, y))
        {
            kerf.Refuse(problems, "width", "The two widths are too unlike for one beam", $"at most {Key.Written(Kerf.GreatestRatio)} times as wide one way as the other");
        }
    }

    private static double[] Numbers(Entries table, string key) => [.. table.Items(key).Select(i => i.Value).OfType<double>()];
}
