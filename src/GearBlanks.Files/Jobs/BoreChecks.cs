using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>Which keys of a bore go with which form. Sizes that rule each other out are found where the bore is worked out.</summary>
internal static class BoreChecks
{
    /// <summary>Checks the bore of a gear, or that of the defaults.</summary>
    /// <param name="table">The gear or the defaults.</param>
    /// <param name="defaults">What the gear may take its diameter from; null where there is none, and for the defaults themselves.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static void Check(Entries table, Entries? defaults, ProblemList problems)
    {
        if (table.Table("bore-shape") is not { } shape || shape.Text("form") is not { } form)
        {
            return;
        }

        if (form == "keyway")
        {
            CheckKeyway(shape, problems);
        }
        else
        {
            CheckFlats(shape, form, problems);
        }

        CheckDiameter(table, table.Has("bore") ? table : defaults, form, problems);
    }

    private static void CheckKeyway(Entries shape, ProblemList problems)
    {
        const string Ways = "key-width, with either key-depth or across";
        if (!shape.Has("key-width"))
        {
            shape.Refuse(problems, "key-width", "The width of the keyway is missing", Ways);
        }

        if (shape.Has("across") && shape.Has("key-depth"))
        {
            shape.Refuse(problems, "key-depth", "The depth of the keyway is given already: one of the two is too many", Ways);
        }
        else if (!shape.Has("across") && !shape.Has("key-depth"))
        {
            shape.Refuse(problems, "key-depth", "The depth of the keyway is missing", Ways);
        }
    }

    private static void CheckFlats(Entries shape, string form, ProblemList problems)
    {
        if (!shape.Has("across"))
        {
            shape.Refuse(problems, "across", "The size across is missing", $"across, a length, for the form \"{form}\"");
        }

        foreach (var key in (string[])["key-width", "key-depth"])
        {
            if (shape.Has(key))
            {
                shape.Refuse(problems, key, $"The form \"{form}\" has no keyway", "across, corner-radius and angle, or the form \"keyway\"");
            }
        }
    }

    // The bore's diameter stands beside its shape; a gear that gives none takes the default's.
    private static void CheckDiameter(Entries table, Entries? owner, string form, ProblemList problems)
    {
        if (form == "hexagon")
        {
            if (table.Has("bore"))
            {
                table.Refuse(problems, "bore", "A hexagon has no diameter: its size is given across flats", "bore-shape.across alone, or another form");
            }
        }
        else if (owner is null || !owner.Has("bore"))
        {
            table.Refuse(problems, "bore", $"The form \"{form}\" needs the diameter of its round", "a length over 0 as bore beside bore-shape");
        }
        else if (owner.Number("bore") == 0)
        {
            owner.Refuse(problems, "bore", $"There is no bore to give the form \"{form}\" to", "a length over 0, or no bore-shape");
        }
    }
}
