using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;
using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold between the keys of the stack.</summary>
internal static class StackChecks
{
    private static readonly string[] OfRooms = ["length", "width", "height", "thickness"];

    public static void Check(Entries file, NamedItems axes, NamedItems sandwiches, ProblemList problems)
    {
        CheckSpindles(file, sandwiches, problems);
        CheckColumns(file, problems);
        CheckPlates(file, problems);
        CheckArms(file, axes, sandwiches, problems);
        foreach (Entries hand in file.Tables("hands"))
        {
            CheckHand(hand, problems);
        }
    }

    /// <summary>Checks what a layer says of its height and its bore.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="bore">Its bore's diameter, of its own or from the defaults; null for none.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static void CheckLayer(Entries layer, double? bore, ProblemList problems)
    {
        CheckClass(layer, "bore-class", isHole: true, bore, problems);
        foreach (string key in (string[])["bore-class", "measured-bore"])
        {
            if (layer.Has(key) && bore is null or 0 && (!layer.Has("bore") || layer.Number("bore") == 0))
            {
                layer.Refuse(problems, key, "There is no round bore to give this to", "bore together with it");
            }
        }

        if (layer.Has("diameter") && !layer.Has("washer"))
        {
            layer.Refuse(problems, "diameter", "Only a washer has this: a gear's follows from its teeth", "washer together with diameter, or tip-diameter");
        }

        if (layer.Number("diameter") is { } diameter && layer.Number("bore") >= diameter)
        {
            layer.Refuse(problems, "bore", "The bore is as wide as the washer", "a bore smaller than diameter");
        }

        if (layer.Table("screws") is { } screws)
        {
            CheckScrews(screws, problems);
        }
    }

    private static void CheckScrews(Entries screws, ProblemList problems)
    {
        Need(screws, "length", "thread", "A screw's length tells nothing without its thread", problems);
        Need(screws, "socket", "length", "A socket's depth tells nothing without the screw's length", problems);
        Need(screws, "grip", "length", "A grip tells nothing without the screw's length", problems);
        if (screws.Number("thread") is { } thread && screws.Number("hole") is { } hole && thread > hole)
        {
            screws.Refuse(problems, "thread", "The thread does not go through its hole", "a thread at most as wide as hole", Key.Written(hole));
        }
    }

    private static void Need(Entries table, string key, string other, string message, ProblemList problems)
    {
        if (table.Has(key) && !table.Has(other))
        {
            table.Refuse(problems, key, message, $"{key} together with {other}");
        }
    }

    private static void CheckSpindles(Entries file, NamedItems sandwiches, ProblemList problems)
    {
        var names = new NamedItems("spindle", problems);
        foreach (Entries axis in file.Tables("axes"))
        {
            foreach (Entries spindle in axis.Tables("spindles"))
            {
                names.Add(spindle, "name");
                CheckSpan(spindle, problems);
                CheckTurnsWith(spindle, axis.Text("name"), file, sandwiches, problems);
                CheckClass(spindle, "class", isHole: false, spindle.Number("diameter"), problems);
                CheckClass(spindle, "bore-class", isHole: true, spindle.Number("bore"), problems);
                Need(spindle, "bore-class", "bore", "There is no bore to give this to", problems);
                Need(spindle, "measured-bore", "bore", "There is no bore to give this to", problems);
                if (spindle.Number("diameter") is { } diameter && spindle.Number("bore") >= diameter)
                {
                    spindle.Refuse(problems, "bore", "The bore is as wide as the tube", "a bore smaller than diameter");
                }
            }
        }
    }

    private static void CheckColumns(Entries file, ProblemList problems)
    {
        var names = new NamedItems("column", problems);
        foreach (Entries column in file.Tables("columns"))
        {
            names.Add(column, "name");
            CheckSpan(column, problems);
        }
    }

    private static void CheckPlates(Entries file, ProblemList problems)
    {
        const string Ways = "either diameter, or length with width";
        var names = new NamedItems("plate", problems);
        foreach (Entries plate in file.Tables("plates"))
        {
            names.Add(plate, "name");
            bool isRectangle = plate.Has("length") || plate.Has("width");
            if (plate.Has("diameter") && (isRectangle || plate.Has("direction")))
            {
                plate.Refuse(problems, "diameter", "The plate is a disc and a rectangle at once", Ways);
            }
            else if (!plate.Has("diameter") && !(plate.Has("length") && plate.Has("width")))
            {
                plate.Refuse(problems, plate.Has("length") ? "width" : "length", "The plate's size is missing", Ways);
            }
        }
    }

    private static void CheckArms(Entries file, NamedItems axes, NamedItems sandwiches, ProblemList problems)
    {
        var names = new NamedItems("arm", problems);
        foreach (Entries arm in file.Tables("arms"))
        {
            names.Add(arm, "name");
            axes.Check(arm, "from");
            if (axes.Check(arm, "to") && arm.Text("to") == arm.Text("from"))
            {
                arm.Refuse(problems, "to", "The arm ends at the axis where it begins", "the name of another axis");
            }

            CheckTurnsWith(arm, arm.Text("from"), file, sandwiches, problems);
        }
    }

    private static void CheckTurnsWith(Entries item, string? axis, Entries file, NamedItems sandwiches, ProblemList problems)
    {
        if (sandwiches.Check(item, "turns-with")
            && file.Tables("sandwiches").FirstOrDefault(sandwich => sandwich.Text("name") == item.Text("turns-with"))?.Text("axis") is { } other
            && axis is not null && other != axis)
        {
            item.Refuse(problems, "turns-with", $"This sandwich turns on another axis, \"{ProblemList.Shown(other)}\"", $"a sandwich on the axis \"{ProblemList.Shown(axis)}\"");
        }
    }

    private static void CheckSpan(Entries item, ProblemList problems)
    {
        if (item.Number("bottom") is { } bottom && item.Number("top") <= bottom)
        {
            item.Refuse(problems, "top", "The upper end is not above the lower one", "a height over bottom");
        }
    }

    // Either all of what makes a hand a body, or none.
    private static void CheckHand(Entries hand, ProblemList problems)
    {
        string[] given = [.. StackKeys.OfHands.Select(key => key.Name).Where(hand.Has)];
        if (given.Length > 0 && OfRooms.FirstOrDefault(key => !hand.Has(key)) is { } missing)
        {
            hand.Refuse(problems, missing, $"The hand has \"{given[0]}\" but no \"{missing}\"", "length, width, height and thickness together, or none of them");
        }
    }

    private static void CheckClass(Entries table, string key, bool isHole, double? size, ProblemList problems)
    {
        if (table.Text(key) is not { } text)
        {
            return;
        }

        if (ToleranceClass.Read(text) is not { } tolerance || tolerance.IsHole != isHole)
        {
            string nearest = isHole ? text.ToUpperInvariant() : text.ToLowerInvariant();
            table.Refuse(
                problems, key, isHole ? "This is no tolerance class of a hole" : "This is no tolerance class of a shaft", StackKeys.Classes(isHole),
                ToleranceClass.Read(nearest)?.IsHole == isHole ? nearest : null);
        }
        else if (size is > 0 and (< ToleranceClass.LeastSize or > ToleranceClass.GreatestSize))
        {
            table.Refuse(problems, key, "Tolerance classes do not go for this size here", StackKeys.Classes(isHole));
        }
    }
}
