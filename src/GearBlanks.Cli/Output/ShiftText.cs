using GearBlanks.Findings;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>Profile shifts for people.</summary>
internal static class ShiftText
{
    public static void Write(Terminal console, ShiftResult result)
    {
        console.Say($"{result.Title}: {Words(result.Verdict)}");
        Table table = Tables.Make("mesh", "gear", "profile shift", "land", "mate", "profile shift", "land", "backlash", "contact ratio");
        foreach (ShiftedMesh mesh in result.Groups.SelectMany(group => group.Meshes))
        {
            table.AddRow(
                Markup.Escape(mesh.Name), Markup.Escape(mesh.First), Shift(mesh.ProfileShift.First), Figure(mesh.Pair?.First.TipThickness, 3),
                Markup.Escape(mesh.Second), Shift(mesh.ProfileShift.Second), Figure(mesh.Pair?.Second.TipThickness, 3),
                Figure(mesh.Pair?.CircumferentialBacklash, 4), Figure(mesh.Pair?.ContactRatio, 3));
        }

        console.Say(table);
        foreach ((string gear, double diameter) in result.Groups.SelectMany(group => group.Tips))
        {
            console.Say($"Tip diameter of {gear}: {Tables.Figure(diameter, 2)} mm");
        }

        foreach (ShiftedGroup group in result.Groups.Where(group => group.Module is not null))
        {
            console.Say($"Module of the gears of {Findings.Words.List([.. group.Meshes.Select(mesh => mesh.Name)])}: {Tables.Figure(group.Module!.Value, 4)} mm, as no profile shifts suit their own.");
        }

        foreach (ShiftedGroup group in result.Groups.Where(group => group.Level == Level.Fails))
        {
            console.Say($"No profile shifts suit {Findings.Words.List([.. group.Meshes.Select(mesh => mesh.Name)])}. In the way: {string.Join("; ", group.Obstacles)}.");
            console.Say(group.Nearest.IsEmpty ? "Nothing near works either." : $"What would work: {string.Join("; or ", group.Nearest)}.");
        }

        console.Say(result.WrittenFile is { } file ? $"Wrote the numbers into {file}." : "Nothing was written.");
    }

    private static string Words(Level verdict) => verdict switch
    {
        Level.Ok => "every mesh has its backlash, within the comfortable bounds",
        Level.Tight => "every mesh has its backlash, but no profile shifts keep the comfortable bounds: tight ones were taken",
        _ => "not every mesh can have its backlash",
    };

    private static string Shift(double value) => Tables.Figure(value, 5);

    private static string Figure(double? value, int decimals) => value is { } number ? Tables.Figure(number, decimals) : "-";
}
