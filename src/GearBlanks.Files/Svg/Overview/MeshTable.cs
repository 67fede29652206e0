using System.Globalization;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Meshing;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>The table of meshes: the same marks as in the plan, and the figures.</summary>
internal sealed class MeshTable
{
    private static readonly string[] Heads = ["", "mesh", "verdict", "backlash mm", "contact ratio", "centre distance mm"];

    private readonly IReadOnlyList<MeshMark> _marks;
    private readonly string[][] _rows;
    private readonly Look _look;
    private readonly double[] _starts;

    public MeshTable(IReadOnlyList<MeshMark> marks, Look look)
    {
        _marks = marks;
        _look = look;
        _rows = [.. marks.Select(Row)];
        _starts = new double[Heads.Length + 1];
        _starts[1] = MarkWidth(look);
        for (int i = 1; i < Heads.Length; i++)
        {
            _starts[i + 1] = _starts[i] + (2 * look.Height) + _rows.Append(Heads).Max(row => Lettered.Width(row[i], look.Height));
        }
    }

    /// <summary>The width that the table needs, mm.</summary>
    public double Width => _starts[^1];

    private double RowHeight => HeightOf(_look);

    public void AddTo(Column column)
    {
        if (_marks.Count == 0)
        {
            return;
        }

        column.AddRow("meshes", RowHeight, start => Cells(Heads, start, _look.BoldText));
        for (int i = 0; i < _marks.Count; i++)
        {
            MeshMark mark = _marks[i];
            string[] row = _rows[i];
            column.AddRow($"mesh {mark.Letter}: {string.Join(", ", row.Skip(1))}", RowHeight, start =>
            [
                Rule(start),
                .. MarkAt(mark.Level, mark.Letter, start, _look),
                .. Cells(row, start, _look.Text),
            ]);
        }
    }

    /// <summary>One row that says what the shapes mean.</summary>
    public static void AddKeyTo(Column column, Look look)
    {
        column.AddRow("what the marks mean", HeightOf(look), start =>
        {
            List<Shape> shapes = [];
            foreach ((Level level, string meaning) in Meanings())
            {
                shapes.AddRange(MarkAt(level, "", start, look));
                shapes.Add(Lettered.At(meaning, look.Height, start + new Vector(MarkWidth(look), 0), look.Text));
                start += new Vector(MarkWidth(look) + Lettered.Width(meaning, look.Height) + look.Gap, 0);
            }

            return shapes;
        });
    }

    /// <summary>The width of that row, mm.</summary>
    public static double KeyWidth(Look look) =>
        Meanings().Sum(item => MarkWidth(look) + Lettered.Width(item.Meaning, look.Height) + look.Gap);

    // The tallest mark fits, and its stroke.
    private static double HeightOf(Look look) => 1.65 * MarkShapes.Reach * look.MarkRadius;

    private static double MarkWidth(Look look) => 2.4 * MarkShapes.Reach * look.MarkRadius;

    private static Shape[] MarkAt(Level level, string letter, Point baseline, Look look) => MarkShapes.Of(
        level, letter, baseline + new Vector(MarkWidth(look) / 2, (look.Height / 2) - (MarkShapes.Drop(level) * look.MarkRadius)), look);

    private static (Level Level, string Meaning)[] Meanings() =>
    [
        (Level.Ok, Look.Word(Level.Ok)),
        (Level.Tight, $"{Look.Word(Level.Tight)}: works, with little to spare"),
        (Level.Fails, Look.Word(Level.Fails)),
    ];

    private static string[] Row(MeshMark mark)
    {
        GearPair pair = mark.Mesh.Pair;
        return
        [
            "", mark.Mesh.Name, Look.Word(mark.Level), Fixed(pair.CircumferentialBacklash), Fixed(pair.ContactRatio),
            Fixed(pair.CentreDistance) + (mark.Mesh.MeasuredDistance is null ? "" : " measured"),
        ];
    }

    private static string Fixed(double value) => value.ToString("0.000;-0.000;0.000", CultureInfo.InvariantCulture);

    private IEnumerable<Shape> Cells(string[] row, Point start, Ink ink) =>
        row.Select((cell, i) => Lettered.At(cell, _look.Height, start + new Vector(_starts[i], 0), ink));

    private Shape Rule(Point start)
    {
        var left = start + new Vector(0, (RowHeight + _look.Height) / 2);
        return new Shape([ArcPath.Strokes([left, left + new Vector(Width, 0)])], _look.Hairline);
    }
}
