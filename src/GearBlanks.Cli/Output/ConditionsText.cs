using System.Globalization;
using GearBlanks.Mechanisms.Conditions;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>What conditions make of each mesh, for people.</summary>
internal static class ConditionsText
{
    public const string NotChecked =
        "Not checked under these conditions: strength, torque, friction, unbalance of hands, burrs, sag, wear.";

    public static void Write(Terminal console, ConditionsReport report)
    {
        console.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"Under the job's conditions: backlash in mm, bounds that no build passes; {report.Builds} random builds, {(report.IsNormal ? "normal within the limits" : "uniform")}, seed {report.Seed}:"
            + $" {Share(report.BindingShare)} bind somewhere, {Share(report.RattlingShare)} rattle.{(report.Standard is { } standard ? $" Tolerance classes: {standard}." : "")}"));
        Table table = Tables.Make("mesh", "least", "drawn", "greatest", "mean and 3 deviations", "binds", "rattles", "takes most");
        foreach (MeshConditions mesh in report.Meshes)
        {
            table.AddRow(
                Markup.Escape(mesh.Mesh), Tables.Figure(mesh.Least, 4), Tables.Figure(mesh.AsDrawn, 4), Tables.Figure(mesh.Greatest, 4),
                $"{Tables.Figure(mesh.Mean, 4)} ± {Tables.Figure(mesh.ThreeDeviations, 4)}", Share(mesh.BindingShare), Share(mesh.RattlingShare), Most(mesh));
        }

        console.Say(table);
        console.Say(NotChecked);
    }

    private static string Share(double share) => Tables.Figure(100 * share, 2) + " %";

    private static string Most(MeshConditions mesh) => mesh.Contributions.MaxBy(one => one.Takes) is { Takes: > 0 } most
        ? Markup.Escape($"{most.Name} {Tables.Figure(most.Takes, 4)}")
        : "-";
}
