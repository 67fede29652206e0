using GearBlanks.Rolling;
using GearBlanks.Verbs;
using Spectre.Console;

namespace GearBlanks.Cli.Output;

/// <summary>A roll for people.</summary>
internal static class RollText
{
    private const double DegreesInARadian = 180 / Math.PI;
    private const double ArcsecondsInARadian = 3600 * DegreesInARadian;
    private const double MicrometresInAMillimetre = 1000;

    public static void Write(Terminal console, RollResult result)
    {
        RollReport report = result.Report;
        FindingText.WriteSummary(console, $"roll of {result.Name}", result.Findings);
        console.Say(Flanks(report));
        console.Say(Play(report));
        foreach (string line in result.Remarks.Concat(result.Cautions))
        {
            console.Say(line);
        }

        foreach (string file in result.Files)
        {
            console.Say($"written: {file}");
        }
    }

    private static Table Flanks(RollReport report)
    {
        bool isRack = report.Request.Second.Kind == RollKind.Rack;
        string circle = isRack ? "way" : report.Request.Second.ReferenceRadius is null ? "working circle" : "reference circle";
        Table table = Tables.Make("transmission error, one flank", "left flanks", "right flanks");
        void Add(string name, Func<Deviation, double> figure, double factor, int decimals) =>
            table.AddRow(name, Shown(figure(report.Left) * factor, decimals), Shown(figure(report.Right) * factor, decimals));
        if (!isRack)
        {
            Add($"total, arcseconds of {report.Request.Second.Name}", deviation => deviation.Total, ArcsecondsInARadian, 1);
            Add("tooth to tooth, arcseconds", deviation => deviation.ToothToTooth, ArcsecondsInARadian, 1);
        }

        Add($"total, micrometres, {circle}", deviation => deviation.Total, report.ReferenceRadius * MicrometresInAMillimetre, 2);
        Add($"tooth to tooth, micrometres, {circle}", deviation => deviation.ToothToTooth, report.ReferenceRadius * MicrometresInAMillimetre, 2);
        return table;
    }

    private static Table Play(RollReport report)
    {
        Table table = Tables.Make("backlash and distance", "least", "mean", "greatest");
        void Add(string name, double factor, int decimals) => table.AddRow(
            name, Shown(report.Backlash.Least * factor, decimals), Shown(report.Backlash.Mean * factor, decimals), Shown(report.Backlash.Greatest * factor, decimals));
        Add("circumferential backlash, mm", report.WorkingRadius, 4);
        if (report.Request.Second.Kind != RollKind.Rack)
        {
            Add($"angular backlash of {report.Request.Second.Name}, degrees", DegreesInARadian, 4);
        }

        table.AddRow("distance rolled at, mm", "", Tables.Figure(report.Request.Distance, 4), "");
        if (report.DoubleFlank is { } tight)
        {
            bool isRing = report.Request.First.Kind == RollKind.Ring || report.Request.Second.Kind == RollKind.Ring;
            table.AddRow(isRing ? "greatest distance at which it turns, mm" : "least distance at which it turns, mm", "", Shown(tight.Least, 4), "");
            table.AddRow("radial composite deviation, total, mm", "", Shown(tight.Distance.Total, 4), "");
            table.AddRow("radial composite deviation, tooth to tooth, mm", "", Shown(tight.Distance.ToothToTooth, 4), "");
        }

        return table;
    }

    private static string Shown(double value, int decimals) => double.IsFinite(value) ? Tables.Figure(value, decimals) : "none";
}
