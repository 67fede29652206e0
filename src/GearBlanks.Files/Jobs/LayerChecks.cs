using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold within one layer.</summary>
internal static class LayerChecks
{
    public static void Check(Entries layer, Entries? defaults, bool hasDefaultModule, ProblemList problems)
    {
        if (layer.Has("washer"))
        {
            CheckWasher(layer, problems);
            StackChecks.CheckLayer(layer, layer.Number("bore"), problems);
            return;
        }

        ToothingChecks.Check(layer, problems);

        JobChecks.CheckModule(layer, problems);
        if (!hasDefaultModule && !layer.Has("module") && !layer.Has("diametral-pitch"))
        {
            layer.Refuse(problems, "module", "The module is given neither here nor in [defaults]", "module or diametral-pitch");
        }

        BoreChecks.Check(layer, defaults, problems);
        MarkingChecks.Check(layer, problems);
        CheckCrossings(layer.Table("crossings"), problems);
        CheckScrews(layer.Table("screws"), problems);
        StackChecks.CheckLayer(layer, BoreOf(layer, defaults), problems);
        foreach (var hole in layer.Tables("holes"))
        {
            CheckHole(hole, problems);
        }
    }

    // Rings and racks have no bore, and one that is not round has no single diameter.
    private static double? BoreOf(Entries layer, Entries? defaults) =>
        layer.Has("bore-shape") || layer.Has("ring") || layer.Has("rack-length") ? null
        : layer.Number("bore") ?? (defaults?.Has("bore-shape") == true ? null : defaults?.Number("bore"));

    private static void CheckWasher(Entries layer, ProblemList problems)
    {
        foreach (var key in JobKeys.Layers.Keys.Where(k => k.Name is not ("washer" or "bore") && !StackKeys.OfLayers.Contains(k) && layer.Has(k.Name)))
        {
            layer.Refuse(problems, key.Name, "A washer takes no other key than those of its size and seat: give the gear a layer of its own", "washer with thickness-tolerance, measured-thickness, diameter, bore, bore-class, measured-bore and seat");
        }
    }

    private static void CheckCrossings(Entries? crossings, ProblemList problems)
    {
        const string Ways = "either hub-diameter or hub-width";
        if (crossings is null)
        {
            return;
        }

        if (crossings.Has("hub-diameter") && crossings.Has("hub-width"))
        {
            crossings.Refuse(problems, "hub-width", "The hub is given already: one of the two is too many", Ways);
        }
        else if (!crossings.Has("hub-diameter") && !crossings.Has("hub-width"))
        {
            crossings.Refuse(problems, "hub-diameter", "The hub is given neither by its diameter nor by its width", Ways);
        }
    }

    private static void CheckScrews(Entries? screws, ProblemList problems)
    {
        if (screws?.Number("head") is { } head && screws.Number("hole") is { } hole && head < hole)
        {
            screws.Refuse(problems, "head", "The heads are smaller than their holes", "a head at least as wide as its hole", Key.Written(hole));
        }
    }

    private static void CheckHole(Entries hole, ProblemList problems)
    {
        const string Ways = "either position, or radius with angle";
        if (hole.Has("position") && (hole.Has("radius") || hole.Has("angle")))
        {
            hole.Refuse(problems, hole.Has("radius") ? "radius" : "angle", "The hole's place is given already", Ways);
        }
        else if (!hole.Has("position") && !hole.Has("radius"))
        {
            hole.Refuse(problems, "position", "The hole's place is missing", Ways);
        }
    }
}
