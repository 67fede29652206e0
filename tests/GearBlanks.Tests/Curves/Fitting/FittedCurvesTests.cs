using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;

namespace GearBlanks.Tests.Curves.Fitting;

/// <summary>Single curves in every parametrisation, closed by two lines: parallels, parts, mirror images, either sense of travel.</summary>
public sealed class FittedCurvesTests
{
    private static readonly Gen<Curve> Parts = Gen.Select(RandomGears.Legal, Gen.Bool, Gen.Double[-1, 1], Gen.Double[0, 1], Gen.Double[0, 1])
        .Select((gear, isFlank, offset, from, to) => Part(isFlank ? gear.Flank : gear.Fillet, offset * gear.Module, from, to))
        .Where(curve => curve.Length > 1e-6);

    [Fact]
    public void Parts_and_parallels_keep_to_the_curve() => Gen.Select(Parts, Gen.Double[-5, -1], Gen.Bool).Sample(
        (curve, log, arcs) =>
        {
            double tolerance = Math.Pow(10, arcs ? log : Math.Max(-4, log));
            Outline outline = Closed(curve);
            ArcPath path = OutlineFit.Fit(outline, tolerance, arcs ? Pieces.Arcs : Pieces.Chords);
            double radius = curve.EndPoint.Radius;
            FitChecks.RequireWithin(outline, path, tolerance + (1e-12 * radius));
            if (arcs)
            {
                FitChecks.RequireSmooth(outline, path, radius);
            }
        }, iter: 400);

    [Fact]
    public void An_involute_from_its_foot_keeps_to_the_curve()
    {
        foreach (double radius in (double[])[1, 10, 300])
        {
            foreach (double tolerance in (double[])[1e-6, 1e-3, 0.1])
            {
                Outline outline = Closed(new Involute(radius, 0, 0.8, Motion.None));
                FitChecks.RequireWithin(outline, OutlineFit.Fit(outline, tolerance), tolerance + (1e-12 * radius));
            }
        }
    }

    [Fact]
    public void Mirror_images_and_the_other_sense_share_one_fit() => Parts.Sample(
        curve =>
        {
            double[] bulges = Bulges(curve);
            Motion turn = Motion.Turn(0.7);
            Assert.Equal(bulges, Bulges(curve.Moved(turn)));
            Assert.Equal(bulges.Select(bulge => -bulge), Bulges(curve.Moved(Motion.MirrorInX)));
            Assert.Equal(bulges.Reverse().Select(bulge => -bulge), Bulges(curve.Reversed()));
            Assert.Equal(bulges.Reverse(), Bulges(curve.Moved(Motion.MirrorInX).Reversed()));
        }, iter: 200);

    [Fact]
    public void Both_sides_of_a_tooth_have_the_same_pieces() => RandomGears.Legal.Sample(
        gear =>
        {
            FittedCurve[] fitted = PatternFit.Fit(gear.Outline(), 0.001 * Math.Max(1, gear.Module), Pieces.Arcs);
            Curve[] pattern = [.. gear.Outline().Pattern];
            int[] sides = [.. Enumerable.Range(0, pattern.Length).Where(i => pattern[i] is Involute or Trochoid)];
            for (int i = 0; i < sides.Length; i++)
            {
                Assert.Same(fitted[sides[i]].Pieces, fitted[sides[^(i + 1)]].Pieces);
            }
        }, iter: 200);

    /// <summary>The proof against dense points: it holds wherever they keep the tolerance by a thousandth, and nowhere where they do not.</summary>
    [Fact]
    public void The_proof_agrees_with_dense_points() => Gen.Select(Parts, Gen.Double[-0.3, 0.3], Gen.Double[0.5, 1.5]).Sample(
        (curve, turn, share) =>
        {
            Curve forward = curve.End < curve.Start ? curve.Reversed() : curve;
            double end = Math.Min(forward.End, forward.Start + 0.5);
            Point from = forward.PointAt(forward.Start);
            Point to = forward.PointAt(end);
            double half = Math.Atan2(forward.TangentAt(forward.Start).Cross(to - from), forward.TangentAt(forward.Start).Dot(to - from));
            var piece = new Piece(from, Math.Tan(half * (1 + turn) / 2), to);
            double greatest = Enumerable.Range(1, 1999)
                .Max(i => Math.Abs(piece.DistanceTo(forward.PointAt(forward.Start + ((end - forward.Start) * i / 2000)))));
            if (Math.Abs(piece.Bulge) > 0.4 || greatest < 1e-7)
            {
                return;
            }

            Assert.False(Deviation.IsProved(forward, forward.Start, end, piece, greatest * 0.9999 * Math.Min(1, share)));

            // Below half a radius, and not so small a piece that its ends alone prove it.
            double enough = greatest * 1.001 * Math.Max(1, share);
            Assert.True(Math.Abs(piece.Curvature) * enough > 0.4 || Deviation.IsProved(forward, forward.Start, end, piece, enough));
        }, iter: 2000);

    private static double[] Bulges(Curve curve)
    {
        ArcPath path = OutlineFit.Fit(Closed(curve), 0.001);
        return [.. path.Vertices.Take(path.Vertices.Length - 2).Select(vertex => vertex.Bulge)];
    }

    // By way of a point on the chord's other side, so that no point of the curve comes near the lines but at its ends.
    private static Outline Closed(Curve curve)
    {
        Vector chord = curve.EndPoint - curve.StartPoint;
        double side = Math.Sign(chord.Cross(curve.PointAt((curve.Start + curve.End) / 2) - curve.StartPoint));
        Point apex = curve.StartPoint + (chord * 0.5) - (chord.TurnedLeft * side);
        return new([curve, new Line(curve.EndPoint, apex), new Line(apex, curve.StartPoint)]);
    }

    // Where the parallel folds the curve itself answers; a part too short to tell from rounding is made the whole.
    private static Curve Part(Curve curve, double offset, double from, double to)
    {
        try
        {
            curve = curve.Parallel(offset);
        }
        catch (ArgumentOutOfRangeException)
        {
        }

        (double low, double high) = Math.Abs(to - from) < 0.02 ? (0, 1) : (Math.Min(from, to), Math.Max(from, to));
        double span = curve.End - curve.Start;
        return curve.Between(curve.Start + (span * low), curve.Start + (span * high));
    }
}
