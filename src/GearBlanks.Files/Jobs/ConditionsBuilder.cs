using GearBlanks.Files.Keys;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Files.Jobs;

/// <summary>Makes conditions from entries in which no problem was found.</summary>
internal static class ConditionsBuilder
{
    public static JobConditions Conditions(Entries table) => new(table.Place)
    {
        CentreDistanceTolerance = table.Number("centre-distance-tolerance") ?? 0,
        PostTilt = table.Number("post-tilt") ?? 0,
        PostParallelism = table.Number("post-parallelism") ?? 0,
        SheetTolerance = table.Number("sheet-tolerance") ?? 0,
        Gears = Gear(table),
        Sandwiches = Sandwich(table),
        IsOutsideStandard = table.Flag("outside-standard") ?? false,
        FrameMaterial = table.Text("frame-material"),
        Climate = Climate(table),
        Builds = Builds(table),
    };

    public static JobGearConditions Gear(Entries table) => new()
    {
        ThicknessTolerance = table.Number("thickness-tolerance"),
        EdgeTaper = table.Number("edge-taper"),
        Eccentricity = table.Number("eccentricity"),
        Grade = table.Count("grade"),
    };

    public static JobSandwichConditions Sandwich(Entries table) => new()
    {
        BoreClearance = table.Number("bore-clearance"),
        EndPlay = table.Number("end-play"),
    };

    private static JobClimate? Climate(Entries table)
    {
        if (!table.Has("temperature") && !table.Has("humidity"))
        {
            return null;
        }

        double temperature = table.Number("reference-temperature") ?? JobClimate.StandardTemperature;
        double humidity = table.Number("reference-humidity") ?? JobClimate.StandardHumidity;
        (double cold, double warm) = Ends(table, "temperature", temperature);
        (double dry, double damp) = Ends(table, "humidity", humidity);
        return new JobClimate(cold, warm, dry, damp, temperature, humidity);
    }

    private static (double Least, double Greatest) Ends(Entries table, string key, double reference) =>
        table.Items(key) is [{ Value: double least }, { Value: double greatest }] ? (least, greatest) : (reference, reference);

    private static JobBuilds Builds(Entries table) => new()
    {
        Count = table.Count("builds") ?? JobBuilds.DefaultCount,
        Seed = table.Count("seed") ?? 1,
        IsNormal = table.Text("distribution") == "normal",
        MostBinding = table.Number("most-binding"),
        MostRattling = table.Number("most-rattling"),
    };
}
