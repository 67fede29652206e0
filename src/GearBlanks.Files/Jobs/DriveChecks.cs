using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold of drives and hands: known sandwiches that turn, each driven once, one setting.</summary>
internal static class DriveChecks
{
    public static void Check(Entries file, NamedItems sandwiches, ProblemList problems)
    {
        if (file.Has("drive") && file.Has("drives"))
        {
            file.Refuse(problems, "drives", "The drive is given already: one of the two is too many", "either [drive] or [[drives]]");
        }

        var driven = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var drive in JobBuilder.Drives(file))
        {
            CheckDrive(drive, file, sandwiches, problems);
            if (drive.Text("sandwich") is { } name && !driven.TryAdd(name, drive.Place.Line))
            {
                drive.Refuse(problems, "sandwich", $"This sandwich is driven already (line {Key.Written(driven[name])})", "each sandwich driven once");
            }
        }

        foreach (var drive in JobBuilder.Drives(file).Where(drive => drive.Has("set")).Skip(1))
        {
            drive.Refuse(problems, "set", "The setting is given already, and all drives share one", "set in one of the drives");
        }

        CheckHands(file, sandwiches, problems);
    }

    private static void CheckDrive(Entries drive, Entries file, NamedItems sandwiches, ProblemList problems)
    {
        sandwiches.Check(drive, "sandwich");
        SlidingChecks.CheckTurns(drive, file, problems);
        if (file.Tables("sandwiches").Any(sandwich => sandwich.Text("name") == drive.Text("sandwich") && sandwich.Flag("fixed") == true))
        {
            drive.Refuse(problems, "sandwich", "This sandwich is fixed: nothing can drive it", "a sandwich without fixed = true");
        }
    }

    private static void CheckHands(Entries file, NamedItems sandwiches, ProblemList problems)
    {
        var hands = new NamedItems("hand", problems);
        foreach (var hand in file.Tables("hands"))
        {
            hands.Add(hand, "name");
            sandwiches.Check(hand, "sandwich");
            SlidingChecks.CheckTurns(hand, file, problems);
        }

        if (file.Has("hands") && !file.Has("drive") && !file.Has("drives"))
        {
            file.Refuse(problems, "hands", "Hands have no speed without a drive: add a [drive] table", "hands together with [drive]");
        }
    }
}
