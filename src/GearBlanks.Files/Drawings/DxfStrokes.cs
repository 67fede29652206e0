using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Turns the entities of a DXF file into strokes, blocks placed where they are inserted.</summary>
internal sealed class DxfStrokes(DxfContent content)
{
    private const double RadiansInADegree = Math.PI / 180;

    private const int DeepestBlock = 16;

    // Blocks in blocks can ask for any number of shapes with a few lines.
    private const int MostVertices = 2_000_000;

    private const int MostDegree = 10;

    private const int ClosedFlag = 1;

    // No shapes, or shapes that stand for others: left out, and told.
    private static readonly string[] LeftOut =
        ["TEXT", "MTEXT", "ATTDEF", "ATTRIB", "POINT", "DIMENSION", "LEADER", "MULTILEADER", "TOLERANCE", "VIEWPORT", "HATCH", "ACAD_TABLE", "ARC_DIMENSION", "WIPEOUT"];

    private readonly LeftOut _omitted = new("they are no contours");
    private readonly LeftOut _hidden = new("they are not shown, or their layers are off or frozen");
    private readonly LeftOut _fitted = new("they say only which points they pass", "Read as cubics through their points", "Between the points the program that drew them may run otherwise: with control points they are exact");
    private int _vertices;

    public List<Stroke> Strokes { get; } = [];

    /// <summary>What was left out.</summary>
    public IEnumerable<string> Remarks => _omitted.Remarks().Concat(_hidden.Remarks()).Concat(_fitted.Remarks());

    /// <exception cref="DrawingException">An entity cannot be read.</exception>
    public void Read(double unit)
    {
        foreach (DxfEntity entity in content.Entities)
        {
            if (!entity.IsOnPaper)
            {
                Add(entity, Affine.Scale(unit, unit), 0, entity.Layer);
            }
        }
    }

    private void Add(DxfEntity entity, Affine placement, int depth, string layer)
    {
        string own = entity.Layer == "0" ? layer : entity.Layer;
        if (IsHidden(entity, own))
        {
            _hidden.Add(entity.Type, entity.Line, own);
            return;
        }

        Affine placed = OutOfPlane(entity, placement);
        switch (entity.Type)
        {
            case "LINE":
                var line = new StrokeBuilder(placement);
                line.Begin(entity.Point(10));
                line.LineTo(entity.Point(11));
                Keep(line, false, own, entity);
                break;
            case "CIRCLE":
                AddArc(entity, placed, 0, 2 * Math.PI, own);
                break;
            case "ARC":
                double start = entity.Number(50) * RadiansInADegree;
                double sweep = (entity.Number(51) * RadiansInADegree) - start;
                AddArc(entity, placed, start, sweep - (2 * Math.PI * Math.Floor(sweep / (2 * Math.PI))), own);
                break;
            case "LWPOLYLINE":
                AddVertices(entity, LightVertices(entity), placed, own);
                break;
            case "POLYLINE":
                AddPolyline(entity, placed, own);
                break;
            case "ELLIPSE":
                AddEllipse(entity, placement, own);
                break;
            case "SPLINE":
                AddSpline(entity, placement, own);
                break;
            case "INSERT":
                AddBlock(entity, placed, depth, own);
                break;
            default:
                Omit(entity, own);
                break;
        }
    }

    // What stands in a block on a layer of its own is shown even where the block's layer is off, but not where that is frozen.
    private bool IsHidden(DxfEntity entity, string layer) =>
        entity.Whole(60) == 1 || (content.Layers.TryGetValue(layer, out DxfLayer state) && (state.IsFrozen || (state.IsOff && entity.Type != "INSERT")));

    private void Omit(DxfEntity entity, string layer)
    {
        if (!LeftOut.Contains(entity.Type))
        {
            throw new DrawingException(
                entity.Line, entity.Type, "Entities of this type are not read", "LINE, ARC, CIRCLE, LWPOLYLINE, POLYLINE, SPLINE, ELLIPSE, INSERT: explode or redraw this one");
        }

        _omitted.Add(entity.Type, entity.Line, layer);
    }

    // Entities drawn from below are mirrored; other planes are no flat drawing.
    private static Affine OutOfPlane(DxfEntity entity, Affine placement)
    {
        (double x, double y, double z) = (entity.Number(210, 0), entity.Number(220, 0), entity.Number(230, 1));
        return Math.Abs(x) > 1e-6 || Math.Abs(y) > 1e-6 ? throw new DrawingException(entity.Line, entity.Type, "This entity does not lie in the plane of the drawing", "a flat drawing")
            : z < 0 ? placement.After(Affine.Scale(-1, 1)) : placement;
    }

    private void AddArc(DxfEntity entity, Affine placement, double start, double sweep, string layer)
    {
        (Point centre, double radius) = (entity.Point(10), entity.Number(40));
        if (!(radius > 0))
        {
            throw new DrawingException(entity.Line, entity.Type, "Its radius is not greater than 0", "a radius above 0");
        }

        var stroke = new StrokeBuilder(placement);
        stroke.Begin(Point.Polar(radius, start) + (centre - default(Point)));
        stroke.ArcTo(centre, radius, start, sweep == 0 ? 2 * Math.PI : sweep);
        Keep(stroke, entity.Type == "CIRCLE", layer, entity);
    }

    private static List<PathVertex> LightVertices(DxfEntity entity)
    {
        List<PathVertex> vertices = [];
        foreach (DxfGroup group in entity.Groups)
        {
            switch (group.Code)
            {
                case 10:
                    vertices.Add(new PathVertex(new Point(group.Number, 0), 0));
                    break;
                case 20 when vertices.Count > 0:
                    vertices[^1] = vertices[^1] with { Point = vertices[^1].Point with { Y = group.Number } };
                    break;
                case 42 when vertices.Count > 0:
                    vertices[^1] = vertices[^1] with { Bulge = group.Number };
                    break;
            }
        }

        return vertices;
    }

    private void AddPolyline(DxfEntity entity, Affine placement, string layer)
    {
        const int Meshes = 16 + 64;
        const int FrameVertex = 16;
        if ((entity.Whole(70) & Meshes) != 0)
        {
            throw new DrawingException(entity.Line, entity.Type, "This polyline is a mesh in space", "a flat drawing");
        }

        AddVertices(
            entity,
            [.. entity.Parts.Where(vertex => (vertex.Whole(70) & FrameVertex) == 0).Select(vertex => new PathVertex(vertex.Point(10), vertex.Number(42, 0)))],
            placement, layer);
    }

    private void AddVertices(DxfEntity entity, List<PathVertex> vertices, Affine placement, string layer)
    {
        if (vertices.Count < 2)
        {
            throw new DrawingException(entity.Line, entity.Type, "This polyline has fewer than two vertices", "the whole file: save it again");
        }

        bool isClosed = (entity.Whole(70) & 1) != 0;
        var stroke = new StrokeBuilder(placement);
        stroke.Begin(vertices[0].Point);
        for (int i = 1; i < vertices.Count; i++)
        {
            stroke.BulgeTo(vertices[i - 1].Point, vertices[i].Point, vertices[i - 1].Bulge);
        }

        if (isClosed)
        {
            stroke.BulgeTo(vertices[^1].Point, vertices[0].Point, vertices[^1].Bulge);
        }

        Keep(stroke, isClosed, layer, entity);
    }

    private void AddEllipse(DxfEntity entity, Affine placement, string layer)
    {
        Point centre = entity.Point(10);
        var major = new Vector(entity.Number(11), entity.Number(21));
        Vector minor = major.TurnedLeft * (entity.Number(40) * (entity.Number(230, 1) < 0 ? -1 : 1));
        (double start, double end) = (entity.Number(41, 0), entity.Number(42, 2 * Math.PI));
        double sweep = end - start;
        sweep = sweep is > 0 and <= 2 * Math.PI ? sweep : sweep - (2 * Math.PI * Math.Floor(sweep / (2 * Math.PI)));
        Point At(double t) => centre + (major * Math.Cos(t)) + (minor * Math.Sin(t));
        var stroke = new StrokeBuilder(placement);
        stroke.Begin(At(start));
        stroke.CurveTo(At, start, start + sweep);
        Keep(stroke, Math.Abs(sweep - (2 * Math.PI)) < 1e-9, layer, entity);
    }

    private void AddSpline(DxfEntity entity, Affine placement, string layer)
    {
        if (entity.Text(10) is null && entity.Text(11) is not null)
        {
            AddFitSpline(entity, placement, layer);
            return;
        }

        int degree = entity.Whole(71, 3);
        (List<double> knots, List<double> xs, List<double> ys, List<double> weights) = (entity.All(40), entity.All(10), entity.All(20), entity.All(41));
        bool isWhole = degree is >= 1 and <= MostDegree && xs.Count > degree && ys.Count == xs.Count && knots.Count == xs.Count + degree + 1
            && (weights.Count == 0 || weights.Count == xs.Count) && weights.All(weight => weight > 0) && IsRising(knots);
        if (!isWhole)
        {
            throw new DrawingException(
                entity.Line, entity.Type, "The knots, points and weights of this spline do not belong together",
                "a spline with control points and knots: save the drawing again from the program it was drawn with");
        }

        var curve = new NurbsCurve(
            degree, [.. knots], [.. xs.Zip(ys, (x, y) => new Point(x, y))], weights.Count == 0 ? [.. Enumerable.Repeat(1.0, xs.Count)] : [.. weights]);
        double[] joints = [.. curve.Joints()];
        var stroke = new StrokeBuilder(placement);
        stroke.Begin(curve.At(joints[0], joints[0]));
        for (int i = 1; i < joints.Length; i++)
        {
            (double from, double to) = (joints[i - 1], joints[i]);
            if (degree == 1)
            {
                stroke.LineTo(curve.At(to, from));
            }
            else
            {
                stroke.CurveTo(t => curve.At(t, from), from, to);
            }
        }

        Keep(stroke, (entity.Whole(70) & ClosedFlag) != 0, layer, entity);
    }

    private void AddFitSpline(DxfEntity entity, Affine placement, string layer)
    {
        bool isClosed = (entity.Whole(70) & ClosedFlag) != 0;
        List<Point> points = [];
        foreach ((double x, double y) in entity.All(11).Zip(entity.All(21)))
        {
            var point = new Point(x, y);
            if (points.Count == 0 || points[^1] != point)
            {
                points.Add(point);
            }
        }

        if (isClosed && points.Count > 1 && points[^1] == points[0])
        {
            points.RemoveAt(points.Count - 1);
        }

        if (points.Count < (isClosed ? 3 : 2))
        {
            throw new DrawingException(entity.Line, entity.Type, "This spline passes too few points", "two points that differ, of a closed one three");
        }

        var curve = new FitCurve([.. points], Direction(entity, 12), Direction(entity, 13), isClosed);
        var stroke = new StrokeBuilder(placement);
        stroke.Begin(points[0]);
        for (int i = 1; i < curve.Joints.Count; i++)
        {
            int joint = i - 1;
            stroke.CurveTo(t => curve.At(t, joint), curve.Joints[joint], curve.Joints[i]);
        }

        _fitted.Add(entity.Type, entity.Line, layer);
        Keep(stroke, isClosed, layer, entity);
    }

    private static Vector? Direction(DxfEntity entity, int code)
    {
        var direction = new Vector(entity.Number(code, 0), entity.Number(code + 10, 0));
        return direction.Length > 0 ? direction : null;
    }

    private static bool IsRising(List<double> knots)
    {
        for (int i = 1; i < knots.Count; i++)
        {
            if (!(knots[i] >= knots[i - 1]))
            {
                return false;
            }
        }

        return true;
    }

    private void AddBlock(DxfEntity entity, Affine placement, int depth, string layer)
    {
        const int External = 4;
        string name = entity.Text(2) ?? "";
        if (!content.Blocks.TryGetValue(name, out (DxfEntity Head, List<DxfEntity> Entities) block))
        {
            throw new DrawingException(entity.Line, name, "There is no block of this name in the file", "the whole file: save it again");
        }

        if ((block.Head.Whole(70) & External) != 0)
        {
            throw new DrawingException(entity.Line, name, "This block stands in another file, which is not looked for", "a drawing with all its parts in it: bind the reference");
        }

        if (depth >= DeepestBlock)
        {
            throw new DrawingException(entity.Line, name, "Blocks stand in blocks without end", $"at most {DeepestBlock} deep");
        }

        Affine head = placement.After(Affine.Shift(entity.Number(10), entity.Number(20))).After(Affine.Turn(entity.Number(50, 0) * RadiansInADegree));
        Affine tail = Affine.Scale(entity.Number(41, 1), entity.Number(42, 1)).After(Affine.Shift(-block.Head.Number(10, 0), -block.Head.Number(20, 0)));
        (int columns, int rows) = (Math.Max(1, entity.Whole(70, 1)), Math.Max(1, entity.Whole(71, 1)));
        for (long i = 0; i < (long)columns * rows; i++)
        {
            Affine place = head.After(Affine.Shift(i % columns * entity.Number(44, 0), i / columns * entity.Number(45, 0))).After(tail);
            if (!place.IsUsable)
            {
                throw new DrawingException(entity.Line, name, "This block is inserted with a scale of 0", "scales other than 0");
            }

            Count(1, entity);
            foreach (DxfEntity part in block.Entities)
            {
                Add(part, place, depth + 1, layer);
            }
        }
    }

    private void Keep(StrokeBuilder stroke, bool isClosed, string layer, DxfEntity entity)
    {
        Count(stroke.Vertices.Count, entity);
        if (!stroke.Vertices.TrueForAll(StrokeBuilder.IsWithinReach))
        {
            throw new DrawingException(entity.Line, entity.Type, "This entity lies farther out than can be computed with", StrokeBuilder.ReachInWords);
        }

        Strokes.Add(new Stroke(stroke.Vertices, isClosed, layer, entity.Line) { Kind = entity.Type });
    }

    private void Count(int more, DxfEntity entity)
    {
        _vertices += more;
        if (_vertices > MostVertices)
        {
            throw new DrawingException(entity.Line, entity.Type, "With all its blocks this drawing is too large to be a gear's", "a file with one part");
        }
    }
}
