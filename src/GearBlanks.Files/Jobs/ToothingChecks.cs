using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold between the keys that say what kind of teeth a layer has: a gear's, a ring's or a rack's.</summary>
internal static class ToothingChecks
{
    private static readonly string[] OfRings = ["rim-diameter", "root-fillet"];

    private static readonly string[] NotOfRings = ["bore", "bore-shape", "crossings"];

    // A bar has no middle to bore, and slides: nothing of it lies on circles.
    private static readonly string[] NotOfRacks = ["teeth", "ring", "tip-diameter", "bore", "bore-shape", "crossings", "screws"];

    public static void Check(Entries layer, ProblemList problems)
    {
        CheckTip(layer, problems);
        CheckMeasured(layer, problems);
        if (layer.Has("rack-length"))
        {
            CheckRack(layer, problems);
            return;
        }

        if (!layer.Has("teeth"))
        {
            layer.Refuse(
                problems, "teeth", "This layer has neither \"teeth\" nor \"rack-length\" nor \"washer\"",
                "teeth for a gear, rack-length for a rack, washer for a washer");
        }

        if (layer.Has("back-height"))
        {
            layer.Refuse(problems, "back-height", "Only a rack has a back", "back-height together with rack-length");
        }

        CheckRing(layer, problems);
    }

    private static void CheckMeasured(Entries layer, ProblemList problems)
    {
        const string Ways = "measured-span together with span-teeth, or measured-tooth-thickness";
        if (layer.Has("measured-span") && layer.Has("measured-tooth-thickness"))
        {
            layer.Refuse(problems, "measured-span", "The teeth's measure is given already", Ways);
        }

        if (layer.Has("measured-span") != layer.Has("span-teeth"))
        {
            layer.Refuse(
                problems, layer.Has("span-teeth") ? "span-teeth" : "measured-span", "A base tangent length needs the number of teeth that it goes over, and the other way round", Ways);
        }

        if (layer.Has("measured-span") && (layer.Flag("ring") == true || layer.Has("rack-length")))
        {
            layer.Refuse(problems, "measured-span", "A base tangent is measured over the teeth of an external gear only", "measured-tooth-thickness");
        }
    }

    private static void CheckTip(Entries layer, ProblemList problems)
    {
        if (layer.Number("tip-round") > 0 && layer.Number("tip-chamfer") > 0)
        {
            layer.Refuse(problems, "tip-chamfer", "The tips have a round already", "either tip-round or tip-chamfer");
        }

        if (layer.Table("tip-relief") is { } relief)
        {
            var (wanted, other) = layer.Has("rack-length") ? ("start-height", "start-diameter") : ("start-diameter", "start-height");
            if (relief.Has(other))
            {
                relief.Refuse(problems, other, "A rack's relief starts at a height, a gear's at a diameter", wanted);
            }
            else if (!relief.Has(wanted))
            {
                relief.Refuse(problems, wanted, $"The key \"{wanted}\" is missing", $"{wanted} together with amount");
            }
        }
    }

    private static void CheckRing(Entries layer, ProblemList problems)
    {
        bool isRing = layer.Flag("ring") == true;
        if (isRing && !layer.Has("rim-diameter"))
        {
            layer.Refuse(problems, "rim-diameter", "A ring needs the outer diameter of its rim", "rim-diameter together with ring = true");
        }

        foreach (string key in OfRings.Where(key => !isRing && layer.Has(key)))
        {
            layer.Refuse(problems, key, "Only a ring has this", $"{key} together with ring = true");
        }

        foreach (string key in NotOfRings.Where(key => isRing && layer.Has(key)))
        {
            layer.Refuse(problems, key, "A ring's middle is open: it has no bore and no arms", "a ring without it");
        }
    }

    private static void CheckRack(Entries layer, ProblemList problems)
    {
        if (!layer.Has("back-height"))
        {
            layer.Refuse(problems, "back-height", "A rack needs the distance of its back from the reference line", "back-height together with rack-length");
        }

        foreach (string key in NotOfRacks.Concat(OfRings).Where(layer.Has))
        {
            layer.Refuse(problems, key, "A straight rack does not take this key", "rack-length and back-height without it");
        }
    }
}
