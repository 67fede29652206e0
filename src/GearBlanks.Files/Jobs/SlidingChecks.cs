using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold of sandwiches with racks, which slide instead of turning.</summary>
internal static class SlidingChecks
{
    public static void CheckLayers(Entries sandwich, ProblemList problems)
    {
        List<Entries> racks = [.. sandwich.Tables("layers").Where(IsRack)];
        foreach (Entries layer in sandwich.Tables("layers").Where(layer => racks.Count > 0 && layer.Has("teeth") && !IsRack(layer)))
        {
            layer.Refuse(problems, "teeth", "A rack slides and a gear turns: they cannot share a sandwich", "a sandwich of its own for the rack");
        }

        foreach (Entries rack in racks.Skip(1).Where(rack => rack.Number("turned") != racks[0].Number("turned")))
        {
            rack.Refuse(problems, "turned", "Racks of one sandwich slide together, so they lie in one direction", "the same turned for all of them");
        }
    }

    /// <summary>Refuses a drive or a hand whose sandwich slides.</summary>
    public static void CheckTurns(Entries item, Entries file, ProblemList problems)
    {
        if (file.Tables("sandwiches").Any(sandwich => sandwich.Text("name") == item.Text("sandwich") && sandwich.Tables("layers").Any(IsRack)))
        {
            item.Refuse(problems, "sandwich", "This sandwich is a rack: it slides and never turns", "a sandwich of gears");
        }
    }

    public static bool IsRack(Entries layer) => layer.Has("rack-length");
}
