using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold for the marks of one gear.</summary>
internal static class MarkingChecks
{
    // More would go round a small gear.
    private const int LongestPartNumber = 40;

    public static void Check(Entries layer, ProblemList problems)
    {
        CheckTeeth(layer, problems);
        if (layer.Text("part-number") is { Length: > LongestPartNumber } number)
        {
            layer.Refuse(problems, "part-number", "The part number is too long", $"at most {LongestPartNumber} characters", number[..LongestPartNumber].TrimEnd());
        }
    }

    private static void CheckTeeth(Entries layer, ProblemList problems)
    {
        if (layer.Has("mark-tooth") && layer.Flag("mark") == false)
        {
            layer.Refuse(problems, "mark-tooth", "A tooth is to be marked, and \"mark\" says that none is", "mark-tooth, or mark = false");
        }

        var seen = new HashSet<int>();
        foreach (var item in layer.Items("mark-tooth"))
        {
            if (item.Value is not int tooth)
            {
                continue;
            }

            if (layer.Count("teeth") is { } teeth && tooth > teeth)
            {
                layer.Refuse(problems, "mark-tooth", item, "The gear has no tooth of this number", $"a whole number from 1 to {Key.Written(teeth)}", Key.Written(teeth));
            }
            else if (!seen.Add(tooth))
            {
                layer.Refuse(problems, "mark-tooth", item, "This tooth is named already", "each tooth once");
            }
        }
    }
}
