using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Points of all sides of a gear with their directions from root to tip, in flat arrays; every end of a curve is among them, once for each curve.</summary>
internal sealed class SideNodes
{
    /// <summary>A curve keeps within so many times its rise of its chord.</summary>
    public const double SafeRise = 4;

    // A side of so many curves is sampled finely enough by their ends.
    private const int ManyCurves = 10;

    /// <summary>Samples a gear's sides.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="least">How many pieces a side is divided into at least.</param>
    public SideNodes(RollGear gear, int least)
    {
        var nodes = new List<(Point Point, Vector Tangent, int Curve, double Parameter)>();
        var curves = new List<Curve>();
        Flanks = new (int, int)[gear.Sides.Length];
        Starts = new int[gear.Sides.Length + 1];
        for (int i = 0; i < gear.Sides.Length; i++)
        {
            Starts[i] = nodes.Count;
            int flank = gear.Sides[i].FlankIndex is >= 0 and var index ? curves.Count + index : -1;
            Flanks[i] = (flank, nodes.Count);
            double depth = Math.Abs(gear.Sides[i].Tip - gear.Sides[i].Root);
            foreach (Curve curve in gear.Sides[i].Curves)
            {
                Flanks[i] = curves.Count == flank ? (flank, nodes.Count) : Flanks[i];
                double height = Math.Abs(curve.EndPoint.Radius - curve.StartPoint.Radius);
                int steps = Math.Max(gear.Sides[i].Curves.Length < ManyCurves ? 2 : 1, (int)Math.Ceiling(least * height / depth));
                for (int step = 0; step <= steps; step++)
                {
                    double parameter = step == steps ? curve.End : curve.Start + ((curve.End - curve.Start) * step / steps);
                    nodes.Add((curve.PointAt(parameter), curve.TangentAt(parameter), curves.Count, parameter));
                }

                curves.Add(curve);
            }
        }

        Starts[^1] = nodes.Count;
        Curves = [.. curves];
        X = [.. nodes.Select(node => node.Point.X)];
        Y = [.. nodes.Select(node => node.Point.Y)];
        TangentX = [.. nodes.Select(node => node.Tangent.X)];
        TangentY = [.. nodes.Select(node => node.Tangent.Y)];
        Curve = [.. nodes.Select(node => node.Curve)];
        Parameter = [.. nodes.Select(node => node.Parameter)];
        Rise = [.. Enumerable.Range(0, nodes.Count).Select(RiseFrom)];
        Chord = [.. Enumerable.Range(0, nodes.Count).Select(i => i + 1 < nodes.Count ? double.Hypot(X[i + 1] - X[i], Y[i + 1] - Y[i]) : 0)];
    }

    /// <summary>How far the curve rises over the chord from each node to the next, mm; 0 where the next lies on another curve.</summary>
    public double[] Rise { get; }

    /// <summary>Distance from each node to the next, mm.</summary>
    public double[] Chord { get; }

    /// <summary>Number of each side's first node, and of the one after the last.</summary>
    public int[] Starts { get; }

    /// <summary>Number of the curve of each side that is its flank, -1 where there is no exact one, and of that curve's first node.</summary>
    public (int Curve, int Start)[] Flanks { get; }

    public Curve[] Curves { get; }

    public double[] X { get; }

    public double[] Y { get; }

    public double[] TangentX { get; }

    public double[] TangentY { get; }

    /// <summary>Number of the curve that each node lies on.</summary>
    public int[] Curve { get; }

    public double[] Parameter { get; }

    /// <summary>The directions, rad, over which the curves between two nodes stand.</summary>
    /// <param name="from">The first node.</param>
    /// <param name="end">The one after the last.</param>
    /// <param name="near">An angle not half a turn from them, rad.</param>
    public AngleSpan Span(int from, int end, double near)
    {
        AngleSpan span = AngleSpan.None;
        for (int i = from; i < end; i++)
        {
            double angle = new Point(X[i], Y[i]).Angle;
            angle -= 2 * Math.PI * Math.Round((angle - near) / (2 * Math.PI));
            double beside = SafeRise * Rise[i] / new Point(X[i], Y[i]).Radius;
            span = span.With(new AngleSpan(angle - beside, angle + beside));
        }

        return span;
    }

    private double RiseFrom(int node)
    {
        if (node + 1 >= Curve.Length || Curve[node] != Curve[node + 1])
        {
            return 0;
        }

        Vector off = Curves[Curve[node]].PointAt((Parameter[node] + Parameter[node + 1]) / 2) - new Point((X[node] + X[node + 1]) / 2, (Y[node] + Y[node + 1]) / 2);
        return off.Length;
    }
}
