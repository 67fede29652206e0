using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Puts the whole sheet together: title, plan with its callouts, scale bar, table of meshes, remarks.</summary>
internal sealed class Sheet
{
    private const double ScaleBar = 20;

    private readonly MechanismReport _report;
    private readonly ImmutableArray<Figure> _gears;
    private readonly Look _look;
    private readonly ImmutableArray<MeshMark> _marks;
    private readonly ImmutableArray<Figure> _flags;
    private readonly ImmutableArray<PlacedCallout> _callouts;
    private readonly Extent _middle;

    public Sheet(MechanismReport report)
    {
        _report = report;
        Mechanism mechanism = report.Mechanism;
        _gears = GearFigures.Of(mechanism);
        Extent plan = _gears.Select(figure => figure.Box)
            .Concat(mechanism.Axes.Select(axis => new Extent(axis.Position.X, axis.Position.Y, axis.Position.X, axis.Position.Y)))
            .Aggregate(Extent.Nothing, (extent, box) => extent.With(box));
        _look = Look.For(plan, mechanism.Axes.Length, _gears.Length);
        _marks = MarkPlacer.Place(report, _look);
        _flags = [.. _marks.Select(mark => mark.Figure(_look))];
        plan = _flags.Aggregate(plan, (extent, flag) => extent.With(flag.Box));
        _callouts = CalloutLayout.Place(
            [.. mechanism.Axes.Select(axis => new Callout(axis, mechanism.Gears.Where(gear => gear.Axis == axis), _look))],
            plan,
            _marks.SelectMany(mark => new Circle[] { new(mark.Centre, _look.MarkRadius * MarkShapes.Reach), new(mark.PitchPoint, 2 * mark.Mesh.Pair.First.Module) }),
            _look);
        _middle = _callouts.Aggregate(plan, (extent, callout) => extent.With(callout.Box));
    }

    public Picture Draw()
    {
        var table = new MeshTable(_marks, _look);
        double width = new[] { _middle.Width, table.Width, MeshTable.KeyWidth(_look), ScaleBar * 3 }.Max();
        double left = ((_middle.Left + _middle.Right) / 2) - (width / 2);
        Column head = Head(left, width);
        double headHeight = -head.Bottom;
        Column below = Below(new Point(left, _middle.Bottom - _look.Gap), width, table);
        double top = _middle.Top + _look.Gap + headHeight;
        head = Head(left, width, top);
        Extent view = new Extent(left, below.Bottom, left + width, top).Grown(_look.Gap);
        return new Picture(
            _report.Mechanism.Title,
            view,
            [
                new PictureLayer("paper", [Paper(view)]),
                new PictureLayer("gears", _gears),
                new PictureLayer("leaders", [.. _callouts.Select(callout => callout.Leader(_look))]),
                new PictureLayer("axes", [.. _report.Mechanism.Axes.Select(axis => AxisFigures.Of(axis, _look))]),
                new PictureLayer("meshes", _flags),
                new PictureLayer("callouts", [.. _callouts.Select(callout => callout.Callout.Figure(callout.Box))]),
                new PictureLayer("words", [.. head.Figures, .. below.Figures]),
            ]);
    }

    // Dark lines stay legible in programs with a dark background.
    private static Figure Paper(Extent view) => new(
        "paper",
        [
            new Shape(
                [ArcPath.Strokes([new(view.Left, view.Bottom), new(view.Right, view.Bottom), new(view.Right, view.Top), new(view.Left, view.Top)]) with { Closed = true }],
                new Ink(null, 0, Look.Paper)),
        ],
        view);

    private Column Head(double left, double width, double top = 0)
    {
        var column = new Column(new Point(left, top), width, _look);
        column.AddText(_report.Mechanism.Title, 1.7 * _look.Height, new Ink(Look.Dark, 0.2 * _look.Height));
        column.AddText("Plan from above, true size, each gear in mesh. Nominal, kerf not compensated.", _look.Height, _look.Text);
        column.AddText(Remarks.Verdict(_report), _look.Height, _look.BoldText);
        return column;
    }

    private Column Below(Point topLeft, double width, MeshTable table)
    {
        var column = new Column(topLeft, width, _look);
        AddScaleBar(column);
        if (_marks.Length > 0)
        {
            column.Skip(_look.Height);
            MeshTable.AddKeyTo(column, _look);
            table.AddTo(column);
        }

        AddList(column, "Not in phase", Remarks.OutOfPhase(_report.Mechanism));
        AddList(column, "Axes that move, drawn at the setting", Remarks.Carried(_report.Mechanism));
        AddList(column, "Hands", Remarks.Hands(_report));
        AddList(column, "What fails", Remarks.Failing(_report));
        return column;
    }

    private void AddList(Column column, string head, IEnumerable<string> items)
    {
        foreach ((string item, int i) in items.Select((item, i) => (item, i)))
        {
            if (i == 0)
            {
                column.Skip(_look.Height);
                column.AddText(head, _look.Height, _look.BoldText);
            }

            column.AddText(item, _look.Height, _look.Text);
        }
    }

    private void AddScaleBar(Column column) => column.AddRow("scale bar, 20 mm", 2 * _look.Height, start =>
    {
        var end = start + new Vector(ScaleBar, 0);
        var tick = new Vector(0, _look.Height / 2);
        return
        [
            new Shape(
                [
                    ArcPath.Strokes([start, end]),
                    ArcPath.Strokes([start - tick, start + tick]),
                    ArcPath.Strokes([end - tick, end + tick]),
                ],
                _look.Text),
            Lettered.At("20 mm: measure this bar to prove the print", _look.Height, end + new Vector(_look.Height, -_look.Height / 2), _look.Text),
        ];
    });
}
