using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>What is said of one axis beside the plan: its name, and its gears from top to bottom.</summary>
internal sealed record Callout
{
    // Between a gear's name and its tooth count, and between the rule and the words, in capital heights.
    private const double ColumnGap = 1.2;
    private const double Padding = 0.8;
    private const double SmallText = 0.85;

    private readonly ImmutableArray<(string Name, string Teeth)> _rows;
    private readonly Look _look;
    private readonly double _teethAt;

    public Callout(Axis axis, IEnumerable<MountedGear> gears, Look look)
    {
        Axis = axis;
        _look = look;
        _rows = [.. GearFigures.Upward(gears).Reverse().Select(gear => (gear.Name, FormattableString.Invariant($"z {gear.Toothing.Teeth}")))];
        double small = SmallText * look.Height;
        _teethAt = _rows.Select(row => Lettered.Width(row.Name, small)).DefaultIfEmpty(0).Max() + (ColumnGap * look.Height);
        double rows = _rows.Select(row => _teethAt + Lettered.Width(row.Teeth, small)).DefaultIfEmpty(0).Max();
        Width = Math.Max(rows, Lettered.Width(axis.Name, look.Height)) + (2 * Padding * look.Height);
        Height = (_rows.Length * look.Line) + look.Height + (2 * Padding * look.Height);
    }

    /// <summary>The axis.</summary>
    public Axis Axis { get; }

    /// <summary>Its width, mm.</summary>
    public double Width { get; }

    /// <summary>Its height, mm.</summary>
    public double Height { get; }

    /// <summary>The callout in its box.</summary>
    public Figure Figure(Extent box)
    {
        double small = SmallText * _look.Height;
        var line = new Point(box.Left + (Padding * _look.Height), box.Top - ((Padding + 1) * _look.Height));
        List<Shape> shapes = [Lettered.At(Axis.Name, _look.Height, line, _look.BoldText)];
        foreach ((string name, string teeth) in _rows)
        {
            line -= new Vector(0, _look.Line);
            shapes.Add(Lettered.At(name, small, line, _look.Text));
            shapes.Add(Lettered.At(teeth, small, line + new Vector(_teethAt, 0), _look.Text));
        }

        return new Figure(string.Join("; ", _rows.Select(row => $"{row.Name} {row.Teeth}").Prepend($"axis {Axis.Name}")), [.. shapes], box);
    }
}
