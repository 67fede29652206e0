using GearBlanks.Curves;
using GearBlanks.Files.Drawings;
using MathNet.Numerics.Interpolation;

namespace GearBlanks.Files.Tests.Drawings;

/// <summary>Splines by the points that they pass, against a library's cubics over the same lengths of chords.</summary>
public sealed class FitCurveTests
{
    private static readonly Point[] Points = [new(0, 0), new(1, 2), new(4, 2.5), new(5, -1), new(9, 0), new(9.2, 3)];

    [Fact]
    public void Free_ends_are_bent_nowhere() => AssertSame(
        new FitCurve(Points, null, null, false), Points,
        CubicSpline.InterpolateNatural(Chords(Points), Points.Select(point => point.X)), CubicSpline.InterpolateNatural(Chords(Points), Points.Select(point => point.Y)));

    [Fact]
    public void Given_directions_are_kept()
    {
        var (start, end) = (new Vector(3, 4), new Vector(0, -2));
        CubicSpline Bound(Func<Point, double> part, double first, double last) => CubicSpline.InterpolateBoundaries(
            Chords(Points), Points.Select(part), SplineBoundaryCondition.FirstDerivative, first, SplineBoundaryCondition.FirstDerivative, last);
        AssertSame(new FitCurve(Points, start, end, false), Points, Bound(point => point.X, 0.6, 0), Bound(point => point.Y, 0.8, -1));
    }

    // A closed curve is what an open one through the same points, many times around, comes to in its middle.
    [Fact]
    public void A_closed_one_is_smooth_all_around()
    {
        const int Rounds = 21;
        Point[] many = [.. Enumerable.Range(0, Rounds * Points.Length + 1).Select(i => Points[i % Points.Length])];
        double[] chords = Chords(many);
        var (x, y) = (CubicSpline.InterpolateNatural(chords, many.Select(point => point.X)), CubicSpline.InterpolateNatural(chords, many.Select(point => point.Y)));
        var curve = new FitCurve(Points, null, null, true);
        int first = Rounds / 2 * Points.Length;
        for (int joint = 0; joint < Points.Length; joint++)
        {
            for (double share = 0; share <= 1; share += 0.125)
            {
                double at = curve.Joints[joint] + (share * (curve.Joints[joint + 1] - curve.Joints[joint]));
                Point expected = new(x.Interpolate(chords[first] + at), y.Interpolate(chords[first] + at));
                Assert.Equal(0, curve.At(at, joint).DistanceTo(expected), 1e-9);
            }
        }
    }

    [Fact]
    public void Read_from_a_drawing_with_a_word_of_caution()
    {
        Point[] ellipse = [.. Enumerable.Range(0, 240).Select(i => 2 * Math.PI * i / 240).Select(angle => new Point(12 * Math.Cos(angle), 10 * Math.Sin(angle)))];
        string spline = "0\nSPLINE\n8\n0\n70\n1\n71\n3\n" + string.Concat(ellipse.Select(point => Drawn.Text($"11\n{point.X}\n21\n{point.Y}\n")));
        DrawnGear gear = Drawn.Read(Drawn.Dxf(spline + Drawn.Circle(0, 0, 3)));
        Assert.True(gear.Teeth.Vertices.Length >= ellipse.Length);
        Assert.All(gear.Teeth.Vertices, vertex => Assert.Equal(1, new Vector(vertex.Point.X / 12, vertex.Point.Y / 10).Length, 1e-5));
        Assert.Contains("SPLINE (line 16, layer 0). Between the points the program that drew them may run otherwise", Assert.Single(gear.Remarks), StringComparison.Ordinal);
    }

    private static double[] Chords(Point[] points)
    {
        double[] at = new double[points.Length];
        for (int i = 1; i < at.Length; i++)
        {
            at[i] = at[i - 1] + points[i - 1].DistanceTo(points[i]);
        }

        return at;
    }

    private static void AssertSame(FitCurve curve, Point[] points, CubicSpline x, CubicSpline y)
    {
        for (int joint = 0; joint + 1 < points.Length; joint++)
        {
            for (double share = 0; share <= 1; share += 0.125)
            {
                double at = curve.Joints[joint] + (share * (curve.Joints[joint + 1] - curve.Joints[joint]));
                Assert.Equal(0, curve.At(at, joint).DistanceTo(new Point(x.Interpolate(at), y.Interpolate(at))), 1e-12);
            }
        }
    }
}
