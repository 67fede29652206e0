using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>The written path against the exact curves, by dense points and by geometry rebuilt here from vertices and bulges.</summary>
public sealed class OutlineFitTests
{
    private static readonly double[] Tolerances = [1e-6, 1e-5, 1e-4, 0.001, 0.01, 0.1];

    private static readonly Dictionary<string, GearData> Gears = new()
    {
        ["usual"] = new GearData(24, 0.8, TestRacks.A, -0.1, 0.016),
        ["undercut"] = new GearData(8, 2, TestRacks.A),
        ["pointed"] = new GearData(9, 3, TestRacks.A, 0.8),
        ["four teeth"] = new GearData(4, 1, TestRacks.A, 0.6),
        ["thousand teeth"] = new GearData(1000, 0.3, TestRacks.Iso('D')),
        ["least module"] = new GearData(17, 0.05, TestRacks.Iso('C')),
        ["greatest module"] = new GearData(30, 50, TestRacks.Iso('B', 14.5), 0.5),
        ["centre on the rolling line"] = new GearData(20, 1, TestRacks.A, 0.87),
        ["centre above the rolling line"] = new GearData(5, 2, TestRacks.A, 1.4),
        ["sharp corner"] = new GearData(20, 1, TestRacks.A with { FilletRadius = 0 }, 1.2),
        ["flank from the base circle"] = new GearData(10, 1, TestRacks.A, 0.42),
    };

    public static TheoryData<string, double> Rows()
    {
        var rows = new TheoryData<string, double>();
        foreach (string name in Gears.Keys)
        {
            foreach (double tolerance in Tolerances)
            {
                rows.Add(name, tolerance);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Arcs_keep_to_the_exact_outline(string name, double tolerance) => Check(ExternalGear.Create(Gears[name]), tolerance, Pieces.Arcs);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Chords_keep_to_the_exact_outline(string name, double tolerance)
    {
        // A nanometre of sag takes thousands of chords a tooth and minutes to check: the finest are tried on one small gear.
        if (tolerance > 2e-6 || name == "usual")
        {
            Check(ExternalGear.Create(Gears[name]), tolerance, Pieces.Chords);
        }
    }

    [Fact]
    public void Random_gears_keep_to_the_exact_outline() =>
        Gen.Select(RandomGears.Legal, Gen.Double[-5.9, -1], Gen.Bool).Sample(
            (gear, log, arcs) => Check(gear, Math.Pow(10, arcs ? log : Math.Max(-4, log)), arcs ? Pieces.Arcs : Pieces.Chords), iter: 300);

    [Theory]
    [InlineData(0)]
    [InlineData(1e-7)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Too_small_a_tolerance_is_refused(double tolerance) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        OutlineFit.Fit(ExternalGear.Create(Gears["usual"]).Outline(), tolerance));

    [Fact]
    public void A_circle_becomes_four_quarters()
    {
        ArcPath path = OutlineFit.Fit(Outline.Of(new Circle(new Point(3, 4), 2.5)), 0.001);
        Assert.Equal(4, path.Vertices.Length);
        Assert.All(path.Vertices, v => Assert.Equal(Math.Tan(Math.PI / 8), v.Bulge, 1e-15));
        Assert.All(path.Vertices, v => Assert.Equal(2.5, v.Point.DistanceTo(new Point(3, 4)), 1e-14));
    }

    private static void Check(ExternalGear gear, double tolerance, Pieces kind)
    {
        Outline outline = gear.Outline();
        ArcPath path = OutlineFit.Fit(outline, tolerance, kind);
        Assert.True(path.Closed);
        Assert.Equal(0, path.Vertices.Length % gear.Teeth);
        int perTooth = path.Vertices.Length / gear.Teeth;
        RequireEqualTeeth(path, perTooth);

        // The path of one tooth and its first vertex of the next.
        List<Rebuilt> pieces = [.. Enumerable.Range(0, perTooth).Select(i => new Rebuilt(path.Vertices[i], path.Vertices[(i + 1) % path.Vertices.Length].Point))];
        double rounding = 1e-12 * gear.TipRadius;
        RequireCurvesNearPieces(outline, pieces, tolerance + rounding);
        RequirePiecesNearCurves(outline, pieces, tolerance + rounding);
        Assert.All(pieces, piece => Assert.True(Math.Abs(piece.Bulge) <= Math.Tan(Math.PI / 8) * (1 + 1e-9)));
        if (kind == Pieces.Arcs)
        {
            RequireSmooth(gear, outline, pieces);
        }
        else
        {
            Assert.All(pieces, piece => Assert.Equal(0, piece.Bulge));
            RequirePointsNearCurves(outline, pieces.Select(piece => piece.From), rounding + 1e-9);
        }
    }

    private static void RequireEqualTeeth(ArcPath path, int perTooth)
    {
        for (int i = perTooth; i < path.Vertices.Length; i++)
        {
            Assert.Equal(BitConverter.DoubleToInt64Bits(path.Vertices[i % perTooth].Bulge), BitConverter.DoubleToInt64Bits(path.Vertices[i].Bulge));
            Assert.Equal(path.Vertices[i % perTooth].Point.Radius, path.Vertices[i].Point.Radius, 1e-13 * (1 + path.Vertices[i].Point.Radius));
        }
    }

    // Both run the same way from the same point: each sample's nearest piece is sought from the last one's on.
    private static void RequireCurvesNearPieces(Outline outline, List<Rebuilt> pieces, double within)
    {
        int at = 0;
        foreach (Point p in outline.Pattern.SelectMany(curve => Dense(curve, Math.Max(200, pieces.Count))))
        {
            double least = double.PositiveInfinity;
            int best = at;
            for (int i = Math.Max(0, at - 1); i < Math.Min(pieces.Count, at + 6); i++)
            {
                double distance = pieces[i].DistanceTo(p);
                (least, best) = distance < least ? (distance, i) : (least, best);
            }

            Assert.True(least <= within, $"{least:R} from the path, allowed {within:R}");
            at = best;
        }
    }

    private static void RequirePiecesNearCurves(Outline outline, List<Rebuilt> pieces, double within) =>
        RequirePointsNearCurves(outline, pieces.SelectMany(piece => Enumerable.Range(0, 8).Select(i => piece.PointAt(i / 8.0))), within);

    // By the foot of the perpendicular, found on the curve itself.
    private static void RequirePointsNearCurves(Outline outline, IEnumerable<Point> points, double within)
    {
        (Curve Curve, double[] Parameters, Point[] Points)[] samples = [.. outline.Pattern.Select(curve =>
            (curve, Enumerable.Range(0, 201).Select(i => curve.Start + ((curve.End - curve.Start) * i / 200)).ToArray(), Dense(curve, 200).ToArray()))];
        foreach (Point p in points)
        {
            double least = samples.Min(s => FromCurve(s.Curve, s.Parameters, s.Points, p, within));
            Assert.True(least <= within, $"{least:R} from the exact outline, allowed {within:R}");
        }
    }

    private static double FromCurve(Curve curve, double[] parameters, Point[] points, Point p, double enough)
    {
        int best = 0;
        for (int i = 1; i < points.Length; i++)
        {
            best = points[i].DistanceTo(p) < points[best].DistanceTo(p) ? i : best;
        }

        (double low, double high) = (parameters[Math.Max(0, best - 1)], parameters[Math.Min(points.Length - 1, best + 1)]);
        for (int i = 0; i < 60 && points[best].DistanceTo(p) > 0; i++)
        {
            double middle = (low + high) / 2;
            double distance = curve.PointAt(middle).DistanceTo(p);
            if (distance <= enough / 2)
            {
                return distance;
            }

            (low, high) = (curve.PointAt(middle) - p).Dot(curve.TangentAt(middle)) < 0 ? (middle, high) : (low, middle);
        }

        return Math.Min(points[best].DistanceTo(p), curve.PointAt(low).DistanceTo(p));
    }

    // Where the exact outline is smooth the arcs are; the corners at the tip and at an undercut crossing are theirs.
    private static void RequireSmooth(ExternalGear gear, Outline outline, List<Rebuilt> pieces)
    {
        List<Point> corners = [.. outline.Pattern.Where((curve, i) => IsCorner(curve, outline.Pattern[(i + 1) % outline.Pattern.Length], gear.Teeth, i == outline.Pattern.Length - 1)).Select(curve => curve.EndPoint)];
        for (int i = 0; i + 1 < pieces.Count; i++)
        {
            if (!corners.Any(corner => corner.DistanceTo(pieces[i].To) < 1e-9 * (1 + gear.TipRadius)))
            {
                double kink = Math.Atan2(pieces[i].EndTangent.Cross(pieces[i + 1].StartTangent), pieces[i].EndTangent.Dot(pieces[i + 1].StartTangent));
                double noise = 1e-14 * gear.TipRadius / Math.Min(pieces[i].Chord, pieces[i + 1].Chord);
                Assert.True(Math.Abs(kink) < 1e-6 + noise, $"a kink of {kink:R} rad at {pieces[i].To} (chords {pieces[i].Chord}, {pieces[i + 1].Chord})");
            }
        }
    }

    private static bool IsCorner(Curve curve, Curve next, int teeth, bool isLast)
    {
        Vector leaving = next.TangentAt(next.Start);
        leaving = isLast ? Motion.TurnStep(1, teeth).Apply(leaving) : leaving;
        return Math.Abs(curve.TangentAt(curve.End).Cross(leaving)) > 1e-7;
    }

    private static IEnumerable<Point> Dense(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));

    /// <summary>A line or arc from its vertex, its bulge and the next vertex, as DXF defines the bulge.</summary>
    private sealed class Rebuilt
    {
        private readonly double _half;
        private readonly Point _centre;
        private readonly double _radius;

        public Rebuilt(PathVertex vertex, Point to)
        {
            (From, To, Bulge) = (vertex.Point, to, vertex.Bulge);
            Vector along = to - From;
            Chord = along.Length;
            _half = 2 * Math.Atan(Bulge);
            _radius = Bulge == 0 ? double.PositiveInfinity : Chord / (2 * Math.Abs(Math.Sin(_half)));

            // The centre lies on the chord's bisector, to the left of a counter-clockwise arc.
            Point middle = From + (along * 0.5);
            _centre = Bulge == 0 ? middle : middle + (along.Unit.TurnedLeft * (Chord / (2 * Math.Tan(_half))));
        }

        public Point From { get; }

        public Point To { get; }

        public double Bulge { get; }

        public double Chord { get; }

        public Vector StartTangent => Turned((To - From).Unit, -_half);

        public Vector EndTangent => Turned((To - From).Unit, _half);

        public Point PointAt(double share)
        {
            if (Bulge == 0)
            {
                return From + ((To - From) * share);
            }

            return _centre + Turned(From - _centre, 2 * _half * share);
        }

        public double DistanceTo(Point p)
        {
            double ends = Math.Min(p.DistanceTo(From), p.DistanceTo(To));
            if (Bulge == 0)
            {
                double along = (p - From).Dot((To - From).Unit);
                return along > 0 && along < Chord ? Math.Abs((p - From).Cross((To - From).Unit)) : ends;
            }

            double turn = Math.Atan2((From - _centre).Cross(p - _centre), (From - _centre).Dot(p - _centre));
            return turn * Math.Sign(_half) >= 0 && Math.Abs(turn) <= Math.Abs(2 * _half) ? Math.Abs(p.DistanceTo(_centre) - _radius) : ends;
        }

        private static Vector Turned(Vector v, double angle) =>
            new((v.X * Math.Cos(angle)) - (v.Y * Math.Sin(angle)), (v.X * Math.Sin(angle)) + (v.Y * Math.Cos(angle)));
    }
}
