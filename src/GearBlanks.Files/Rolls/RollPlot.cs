using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Files.Svg.Overview;
using GearBlanks.Rolling;

namespace GearBlanks.Files.Rolls;

/// <summary>The roll as a picture, SVG: transmission error and backlash over the turn, the distance without play, and the worst contact magnified.</summary>
public static class RollPlot
{
    private const double DegreesInARadian = 180 / Math.PI;
    private const double ArcsecondsInARadian = 3600 * DegreesInARadian;
    private const double MicrometresInAMillimetre = 1000;

    // mm
    private const double Sheet = 190;
    private const double Edge = 22;
    private const double PanelHeight = 42;
    private const double PanelPitch = 66;
    private const double ViewSize = 80;

    private const string Blue = "#1f5f8b";
    private const string Orange = "#c0561f";

    /// <summary>The whole file; the same roll gives the same bytes anywhere.</summary>
    /// <param name="report">The roll.</param>
    /// <param name="name">What was rolled.</param>
    public static byte[] Write(RollReport report, string name)
    {
        ImmutableArray<Shape>.Builder shapes = ImmutableArray.CreateBuilder<Shape>();
        double top = 0;
        shapes.Add(Lettered.At(Words(report, name), 3, new Point(Edge, -6), new Ink(Look.Dark, 0.35)));
        foreach ((string title, (string, string, double[])[] lines) in Panels(report))
        {
            top -= PanelPitch;
            shapes.AddRange(new PlotPanel(Edge, top, Sheet - Edge - 6, PanelHeight).Draw(
                title, $"turn of {report.Request.First.Name}, degrees", [.. report.Track.Select(point => point.Turn * DegreesInARadian)], lines));
        }

        top -= ViewSize + 22;
        shapes.AddRange(WorstContact.Draw(report, new Point(Edge, top), ViewSize));
        var sheet = new Extent(0, top - 8, Sheet, 2);
        var figure = new Figure(name, shapes.ToImmutable(), sheet);
        return PictureWriter.Write(new Picture(Words(report, name), sheet, [new PictureLayer("roll", [Paper(sheet), figure])]));
    }

    private static Figure Paper(Extent sheet) => new(
        "paper",
        [new Shape([new ArcPath([new(new Point(sheet.Left, sheet.Bottom), 0), new(new Point(sheet.Right, sheet.Bottom), 0), new(new Point(sheet.Right, sheet.Top), 0), new(new Point(sheet.Left, sheet.Top), 0)], true)], new Ink(null, 0, Look.Paper))],
        sheet);

    private static string Words(RollReport report, string name) => string.Create(
        CultureInfo.InvariantCulture, $"roll: {name}, distance {report.Request.Distance:0.####} mm");

    private static IEnumerable<(string Title, (string, string, double[])[] Lines)> Panels(RollReport report)
    {
        bool isRack = report.Request.Second.Kind == RollKind.Rack;
        double factor = isRack ? MicrometresInAMillimetre : ArcsecondsInARadian;
        double[] ahead = [.. report.Track.Select(point => point.Leading * factor)];
        double[] behind = [.. report.Track.Select(point => point.Trailing * factor)];
        (double[] left, double[] right) = report.IsLeadingLeft ? (ahead, behind) : (behind, ahead);
        string unit = isRack ? "micrometres of way" : $"arcseconds of {report.Request.Second.Name}";
        yield return ($"transmission error, {unit}", [("left flanks", Blue, Centred(left)), ("right flanks", Orange, Centred(right))]);
        yield return ("circumferential backlash, mm", [("", Blue, [.. report.Track.Select(point => point.Play * report.WorkingRadius)])]);
        if (report.DoubleFlank is not null)
        {
            yield return ("distance without play, mm", [("", Blue, [.. report.Track.Select(point => point.Distance ?? double.NaN)])]);
        }
    }

    // Both about their means: between them lies the backlash, which has a diagram of its own.
    private static double[] Centred(double[] values)
    {
        double mean = values.Where(double.IsFinite).DefaultIfEmpty().Average();
        return [.. values.Select(value => value - mean)];
    }
}
