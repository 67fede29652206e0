using GearBlanks.Curves;

namespace GearBlanks.Tests.Curves;

/// <summary>What every kind of curve promises, against differences and sums of its own points.</summary>
public sealed class CurveTests
{
    private static readonly Motion Somewhere = Motion.Turn(2.3).Then(Motion.Shift(new Vector(-4, 7)));
    private static readonly Motion Mirrored = Motion.MirrorInX.Then(Motion.Turn(-0.7)).Then(Motion.Shift(new Vector(3, 2)));

    private static readonly Dictionary<string, Curve> Samples = new()
    {
        ["line"] = new Line(new Point(1, 2), new Point(-3, 5)),
        ["arc, counter-clockwise"] = new Arc(new Point(1, -2), 3, 0.4, 2.5),
        ["arc, clockwise over the cut of atan2"] = new Arc(new Point(1, -2), 3, -2.8, -1.5),
        ["whole circle"] = Arc.FullCircle(new Circle(new Point(2, 2), 1.5)),
        ["involute"] = new Involute(10, 0.2, 0.9, Motion.None),
        ["involute, placed"] = new Involute(10, 0.2, 0.9, Somewhere),
        ["involute, mirrored"] = new Involute(10, 0.2, 0.9, Mirrored),
        ["involute, backwards"] = new Involute(10, 0.9, 0.2, Somewhere),
        ["involute, mirrored backwards"] = new Involute(10, 0.9, 0.2, Mirrored),
        ["fillet, centre below the rolling line"] = new Trochoid(10, -0.9, 0.38, 0, 1.22, Motion.None),
        ["fillet, placed"] = new Trochoid(10, -0.9, 0.38, 0.1, 1.22, Somewhere),
        ["fillet, mirrored"] = new Trochoid(10, -0.9, 0.38, 0.1, 1.22, Mirrored),
        ["fillet, mirrored backwards"] = new Trochoid(10, -0.9, 0.38, 1.22, 0.1, Mirrored),
        ["fillet, centre on the rolling line"] = new Trochoid(10, 0, 0.38, 0, 1.22, Somewhere),
        ["fillet, centre above the rolling line"] = new Trochoid(4, 0.6, 0.38, 0, 1.22, Somewhere),
        ["fillet, sharp corner"] = new Trochoid(10, -1.25, 0, 0, 1.22, Somewhere),
    };

    public static TheoryData<string> Names() => [.. Samples.Keys];

    private static double At(Curve curve, double share) => curve.Start + ((curve.End - curve.Start) * share);

    private static IEnumerable<double> Inside(Curve curve) => Enumerable.Range(1, 19).Select(i => At(curve, i / 20.0));

    private static void Near(Point expected, Point actual, double within = 1e-12) => Assert.Equal(0, expected.DistanceTo(actual), within);

    private static void Near(Vector expected, Vector actual, double within = 1e-12) => Assert.Equal(0, (expected - actual).Length, within);

    [Theory]
    [MemberData(nameof(Names))]
    public void Tangent_is_the_direction_of_travel(string name)
    {
        Curve curve = Samples[name];
        double step = (curve.End - curve.Start) * 1e-6;
        Assert.All(Inside(curve), t =>
        {
            Near((curve.PointAt(t + step) - curve.PointAt(t - step)).Unit, curve.TangentAt(t), 1e-8);
            Assert.Equal(1, curve.TangentAt(t).Length, 1e-14);
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Curvature_is_the_tangents_turn_over_the_length(string name)
    {
        Curve curve = Samples[name];
        double step = (curve.End - curve.Start) * 1e-5;
        Assert.All(Inside(curve), t =>
        {
            (Vector before, Vector after) = (curve.TangentAt(t - step), curve.TangentAt(t + step));
            double turn = Math.Atan2(before.Cross(after), before.Dot(after));
            double curvature = turn / curve.PointAt(t - step).DistanceTo(curve.PointAt(t + step));
            Assert.Equal(curvature, curve.CurvatureAt(t), 1e-6 * (1 + Math.Abs(curvature)));
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Length_is_the_sum_of_short_chords(string name)
    {
        Curve curve = Samples[name];
        double Chords(double from, double to, int n) =>
            Enumerable.Range(0, n).Sum(i => curve.PointAt(from + ((to - from) * i / n)).DistanceTo(curve.PointAt(from + ((to - from) * (i + 1) / n))));

        // Chords fall short with the square of their length.
        double Sum(double from, double to) => Chords(from, to, 2000) + ((Chords(from, to, 2000) - Chords(from, to, 1000)) / 3);
        Assert.Equal(Sum(curve.Start, curve.End), curve.Length, 1e-8);
        (double a, double b) = (At(curve, 0.3), At(curve, 0.65));
        Assert.Equal(Sum(a, b), curve.LengthBetween(a, b), 1e-8);
        Assert.Equal(-curve.LengthBetween(a, b), curve.LengthBetween(b, a), 1e-14);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Reversed_has_the_same_points_the_other_way(string name)
    {
        Curve curve = Samples[name];
        Curve back = curve.Reversed();
        Assert.Equal(curve.GetType(), back.GetType());
        Near(curve.EndPoint, back.StartPoint);
        Near(curve.StartPoint, back.EndPoint);
        Assert.Equal(curve.Length, back.Length, 1e-12);
        Assert.All(Enumerable.Range(0, 11).Select(i => i / 10.0), share =>
        {
            (double t, double u) = (At(curve, share), At(back, 1 - share));
            Near(curve.PointAt(t), back.PointAt(u));
            Near(-curve.TangentAt(t), back.TangentAt(u));
            Assert.Equal(curve.CurvatureAt(t), -back.CurvatureAt(u), 1e-9);
        });
        Near(curve.PointAt(At(curve, 0.3)), back.Reversed().PointAt(At(back.Reversed(), 0.3)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Moved_is_the_motion_of_each_point(string name)
    {
        Curve curve = Samples[name];
        foreach (Motion motion in (Motion[])[Somewhere, Mirrored, Motion.MirrorInX, Motion.Turn(3), Motion.Shift(new Vector(1, 1)), Mirrored.Then(Somewhere)])
        {
            Curve moved = curve.Moved(motion);
            Assert.Equal(curve.GetType(), moved.GetType());
            Assert.All(Enumerable.Range(0, 11).Select(i => i / 10.0), share =>
            {
                (double t, double u) = (At(curve, share), At(moved, share));
                Near(motion.Apply(curve.PointAt(t)), moved.PointAt(u));
                Near(motion.Apply(curve.TangentAt(t)), moved.TangentAt(u));
                Assert.Equal(curve.CurvatureAt(t) * (motion.IsMirrored ? -1 : 1), moved.CurvatureAt(u), 1e-9);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Between_is_the_part_travelled_from_the_first_to_the_second(string name)
    {
        Curve curve = Samples[name];
        (double a, double b) = (At(curve, 0.2), At(curve, 0.7));
        Curve part = curve.Between(a, b);
        Curve back = curve.Between(b, a);
        Near(curve.PointAt(a), part.StartPoint);
        Near(curve.PointAt(b), part.EndPoint);
        Near(curve.PointAt(b), back.StartPoint);
        Near(curve.PointAt(a), back.EndPoint);
        Near(curve.TangentAt(a), part.TangentAt(part.Start));
        Near(-curve.TangentAt(a), back.TangentAt(back.End));
        Assert.Equal(curve.LengthBetween(a, b), part.Length, 1e-12);
        Assert.Equal(part.Length, back.Length, 1e-12);
        Near(curve.PointAt(At(curve, 0.45)), part.PointAt(At(part, 0.5)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Parallel_stands_off_to_the_right_with_the_same_tangents(string name)
    {
        Curve curve = Samples[name];
        foreach (double distance in (double[])[-0.1, -0.03, 0, 0.02, 0.09])
        {
            if (curve is Trochoid { TipRadius: 0 } && distance != 0)
            {
                continue;
            }

            Curve parallel = curve.Parallel(distance);
            Assert.Equal(curve.GetType(), parallel.GetType());
            Assert.All(Inside(curve), t =>
            {
                double u = t + (parallel.Start - curve.Start);
                u = curve is Line ? t : u;
                Near(curve.TangentAt(t), parallel.TangentAt(u));
                Near(curve.PointAt(t) + (curve.TangentAt(t).TurnedRight * distance), parallel.PointAt(u));
            });
        }
    }

    [Fact]
    public void A_parallel_that_folds_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Arc(default, 2, 0, 1).Parallel(-2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Arc(default, 2, 1, -1).Parallel(2.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Involute(10, 0.2, 0.9, Motion.None).Parallel(-2.01));
        _ = new Involute(10, 0.2, 0.9, Motion.None).Parallel(-1.99);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Involute(10, 0.9, 0.2, Mirrored).Parallel(-2.01));

        // A fillet folds beyond its least radius of curvature, rho + vc^2 / (r - vc), on its right (the gap's side).
        var fillet = new Trochoid(10, -0.9, 0.38, 0, 1.22, Somewhere);
        double least = 0.38 + (0.81 / 10.9);
        Assert.Equal(-1 / least, fillet.CurvatureAt(0), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => fillet.Parallel(least + 1e-6));
        Assert.Throws<ArgumentOutOfRangeException>(() => fillet.Reversed().Parallel(-least - 1e-6));
        Curve beyondTheCentrePath = fillet.Parallel(least - 1e-6);
        Assert.True(((Trochoid)beyondTheCentrePath).TipRadius < 0);
    }

    [Theory]
    [InlineData(4, 0.6, 0.38, 1.3)]
    [InlineData(2, 0.63, 0.38, 1.31)]
    [InlineData(10, -0.9, 0.38, 1.22)]
    [InlineData(2, 0.63, 0.1, 1.2)]
    public void A_fillets_parallel_exists_exactly_while_it_does_not_fold(double r, double vc, double rho, double end)
    {
        var fillet = new Trochoid(r, vc, rho, 0, end, Motion.None);
        for (double distance = -8; distance < 2; distance += 0.05)
        {
            // Folded where the parallel of nearby points runs against the tangent.
            bool folds = Enumerable.Range(0, 2001).Select(i => end * i / 2000).Any(t => 1 + (fillet.CurvatureAt(t) * distance) < -1e-3);
            bool stands = Enumerable.Range(0, 2001).Select(i => end * i / 2000).All(t => 1 + (fillet.CurvatureAt(t) * distance) > 1e-3);
            if (folds)
            {
                Assert.Throws<ArgumentOutOfRangeException>(() => fillet.Parallel(distance));
            }
            else if (stands)
            {
                _ = fillet.Parallel(distance);
            }
        }
    }

    [Theory]
    [InlineData(4, 0.6, 0.38)]
    [InlineData(2, 0.63, 0.38)]
    [InlineData(10, 1.2, 0.1)]
    [InlineData(10, -0.9, 0.38)]
    [InlineData(10, 0, 0.38)]
    public void Curvature_is_monotone_between_the_extrema(double r, double vc, double rho)
    {
        foreach (Curve curve in (Curve[])[new Trochoid(r, vc, rho, 0, 1.4, Motion.None), new Trochoid(r, vc, rho, 1.4, 0, Mirrored)])
        {
            double[] bounds = [curve.Start, .. curve.CurvatureExtrema, curve.End];
            Assert.Equal(vc > 0 ? 1 : 0, curve.CurvatureExtrema.Count);
            foreach ((double from, double to) in bounds.Zip(bounds.Skip(1)))
            {
                double[] values = [.. Enumerable.Range(0, 401).Select(i => curve.CurvatureAt(from + ((to - from) * i / 400)))];
                int[] signs = [.. values.Zip(values.Skip(1), (a, b) => Math.Abs(b - a) < 1e-12 ? 0 : Math.Sign(b - a)).Where(sign => sign != 0).Distinct()];
                Assert.True(signs.Length <= 1);
            }

            // They are extrema: the curvature turns there.
            Assert.All(curve.CurvatureExtrema, t => Assert.True(
                (curve.CurvatureAt(t) - curve.CurvatureAt(t - 0.01)) * (curve.CurvatureAt(t + 0.01) - curve.CurvatureAt(t)) < 0));
        }
    }

    [Fact]
    public void Radius_and_polar_angle_of_a_fillet_are_those_of_its_points()
    {
        var fillet = new Trochoid(10, -0.9, 0.38, 0, 1.22, Motion.None);
        Assert.All(Inside(fillet), t =>
        {
            Assert.Equal(fillet.PointAt(t).Radius, fillet.RadiusAt(t), 1e-12);
            Assert.Equal(fillet.PointAt(t).Angle, fillet.PolarAngleAt(t), 1e-12);
        });
    }

    [Fact]
    public void The_roll_angle_reaches_its_radius()
    {
        var involute = new Involute(7, 0, 2, Motion.None);
        Assert.All((double[])[7, 7.0000001, 8, 12, 15], radius =>
            Assert.Equal(radius, involute.PointAt(Involute.RollAt(7, radius)).Radius, 1e-13));
    }
}
