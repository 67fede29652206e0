using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Files.Svg.Overview;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Reach;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Svg.Reach;

/// <summary>
/// A sheet with a gear in the left, what stays uncut in its gaps filled, and one gap magnified in the right: the material, what stays uncut, the nominal outline
/// as a thin line over it and the cutter where it gets stuck; under them the figures.
/// </summary>
internal sealed class ReachPicture
{
    private const double Margin = 8;
    private const double PanelWidth = 90;
    private const double PanelHeight = 80;
    private const double Gutter = 10;
    private const double Lettering = 2.6;
    private const double LineStep = 4.6;

    // Of the sheet, mm: what the eye does not see.
    private const double SheetTolerance = 0.01;

    private const string Material = "#d9e3ea";
    private const string Uncut = "#c2571a";

    private readonly GearReach _reach;

    private ReachPicture(GearReach reach) => _reach = reach;

    public static Picture Of(GearReach reach) => new ReachPicture(reach).Draw();

    private Picture Draw()
    {
        var left = new Extent(0, 0, PanelWidth, PanelHeight);
        var right = new Extent(PanelWidth + Gutter, 0, (2 * PanelWidth) + Gutter, PanelHeight);
        Figure whole = Whole(left, out double wholeScale);
        Figure gap = Gap(right, out double gapScale);
        var words = new List<Shape>();
        double line = -LineStep;
        foreach (string text in Words(wholeScale, gapScale).SelectMany(text => Lettered.Wrap(text, Lettering, right.Right)))
        {
            words.Add(Lettered.At(text, Lettering, new Point(0, line - Lettering), new Ink(Look.Dark, 0.25)));
            line -= LineStep;
        }

        line -= Lettering;
        words.AddRange(Legend(line));
        return new Picture(
            $"{_reach.Name}: reach of a tool of {Mm(_reach.Tool)}",
            new Extent(0, line - LineStep, right.Right, PanelHeight).Grown(Margin),
            [
                new PictureLayer("gear", [whole]),
                new PictureLayer("gap", [gap]),
                new PictureLayer("words", [new Figure("figures", [.. words], left)]),
            ]);
    }

    private Figure Whole(Extent panel, out double scale)
    {
        ArcPath nominal = OutlineFit.Fit(_reach.Teeth.Outline(), 0.01 * _reach.Teeth.Module);
        ArcPath[] rim = _reach.Teeth is RingGear ring ? [SvgPaths.InQuarters(new Circle(default, ring.RimRadius))] : [];
        Extent all = rim.Append(nominal).Aggregate(Extent.Nothing, (extent, path) => extent.With(Extent.Of(path)));
        scale = Math.Min(panel.Width / all.Width, panel.Height / all.Height);
        var view = new View(all, panel, scale);
        return new Figure(
            $"{_reach.Name}, nominal",
            [
                new Shape([.. rim.Append(nominal).Select(view.Of)], new Ink(Look.Dark, 0.12, Material)),
                new Shape([.. _reach.Uncut.Select(contour => view.Of(OutlineFit.Fit(contour, 0.003 * _reach.Teeth.Module)))], new Ink(Uncut, 0.12, Uncut)),
            ],
            panel);
    }

    // The gap upright: its middle line up, two half teeth beside it.
    private Figure Gap(Extent panel, out double scale)
    {
        GapView shown = _reach.Gap;
        double tolerance = SheetTolerance * _reach.Teeth.Module / 20;
        ArcPath material = Fitted(shown.Nominal, tolerance);
        Extent all = Extent.Of(material);
        scale = Math.Min(panel.Width / all.Width, panel.Height / all.Height);
        var view = new View(all, panel, scale);
        ImmutableArray<Shape>.Builder shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new Shape([view.Of(material)], new Ink(null, 0, Material)));
        shapes.Add(new Shape([.. shown.Uncut.Select(contour => view.Of(Fitted(contour, tolerance)))], new Ink(null, 0, Uncut)));
        shapes.Add(new Shape([.. shown.Cutters.Select(cutter => view.Of(SvgPaths.InQuarters(cutter)))], new Ink("#5a6670", 0.2)));
        shapes.Add(new Shape([view.Of(material)], new Ink(Look.Dark, 0.25)));
        return new Figure("one gap, magnified", shapes.ToImmutable(), panel);
    }

    private static ArcPath Fitted(Outline outline, double tolerance) => OutlineFit.Fit(outline, Math.Max(tolerance, OutlineFit.LeastTolerance));

    private IEnumerable<string> Words(double wholeScale, double gapScale)
    {
        LargestCutters largest = _reach.Largest;
        yield return $"{_reach.Name}: tool {Mm(_reach.Tool)}. Left at scale {Scale(wholeScale)}, right {Scale(gapScale)}.";
        yield return $"Uncut: at most {Mm(_reach.UncutDepth)} deep, {Findings.Words.Figure(_reach.UncutAreaPerGap, "mm2")} a gap, {Findings.Words.Figure(_reach.UncutArea, "mm2")} in all.";
        yield return $"Largest tools: touches the root {Mm(largest.RootTouching)}, follows the whole fillet {Mm(largest.WholeFillet)},";
        yield return largest.RunningFree is { } free ? $"leaves the mates running free {Mm(free)}." : $"leaves the mates running free: not known, {largest.WhyNot}.";
        foreach (Finding finding in _reach.Findings.Where(finding => finding.Level == Level.Fails))
        {
            yield return $"CHECK FAILS: {finding.Name}, {finding.Place}";
        }
    }

    // Told in words beside a sample of each, so that it needs no colour.
    private static IEnumerable<Shape> Legend(double line)
    {
        (string Text, Ink Ink)[] items =
        [
            ("nominal outline and material, holes left out", new Ink(Look.Dark, 0.25, Material)),
            ("stays uncut", new Ink(null, 0, Uncut)),
            ("the tool where it gets stuck", new Ink("#5a6670", 0.2)),
        ];
        double left = 0;
        foreach ((string text, Ink ink) in items)
        {
            var box = new Extent(left, line - Lettering, left + (2 * Lettering), line);
            yield return new Shape([Boxed(box)], ink);
            yield return Lettered.At(text, Lettering, new Point(box.Right + Lettering, line - Lettering), new Ink(Look.Dark, 0.25));
            left = box.Right + (2.5 * Lettering) + Lettered.Width(text, Lettering);
        }
    }

    private static ArcPath Boxed(Extent box) => new(
        [new(new Point(box.Left, box.Bottom), 0), new(new Point(box.Right, box.Bottom), 0), new(new Point(box.Right, box.Top), 0), new(new Point(box.Left, box.Top), 0)], true);

    private static string Mm(double length) => Findings.Words.Mm(length);

    private static string Scale(double scale) => scale >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{scale:0.##} : 1")
        : string.Create(CultureInfo.InvariantCulture, $"1 : {1 / scale:0.##}");

    /// <summary>Where a part of the plane is shown on the sheet.</summary>
    private readonly record struct View(Extent From, Extent Panel, double Scale)
    {
        public ArcPath Of(ArcPath path)
        {
            View view = this;
            return path with { Vertices = [.. path.Vertices.Select(vertex => new PathVertex(view.Of(vertex.Point), vertex.Bulge))] };
        }

        private Point Of(Point point) => new(
            Middle(Panel.Left, Panel.Right) + (Scale * (point.X - Middle(From.Left, From.Right))),
            Middle(Panel.Bottom, Panel.Top) + (Scale * (point.Y - Middle(From.Bottom, From.Top))));

        private static double Middle(double one, double other) => (one + other) / 2;
    }
}
