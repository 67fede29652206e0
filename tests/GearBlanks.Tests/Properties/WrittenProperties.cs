using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Tests.Properties;

/// <summary>The written path has one and the same tooth all round, crosses itself nowhere, and keeps to the exact outline within the tolerance.</summary>
internal static class WrittenProperties
{
    private const int Samples = 10;
    private const int Refinements = 10;

    public static void Check(Specimen specimen)
    {
        ImmutableArray<PathVertex> vertices = specimen.Written.Vertices;
        Assert.True(specimen.Written.Closed && vertices.Length % specimen.Gear.Teeth == 0);
        int perTooth = vertices.Length / specimen.Gear.Teeth;
        RequireEqualTeeth(vertices, perTooth, specimen.Gear.Teeth);
        PathArc[] tooth = PathArc.AllOf(vertices, 0, perTooth);
        RequireLengths(tooth, specimen);
        RequireSimple(tooth, PathArc.AllOf(vertices, perTooth, 1)[0], specimen);
        RequirePiecesNearCurves(tooth, specimen);
        RequireCurvesNearPieces(tooth, specimen);
        RequireRadii(vertices.AsSpan(0, perTooth), specimen);
        RequireThickness(tooth, specimen);
    }

    private static void RequireEqualTeeth(ImmutableArray<PathVertex> vertices, int perTooth, int teeth)
    {
        for (int i = 0; i < teeth; i++)
        {
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * i / teeth);
            for (int k = 0; k < perTooth; k++)
            {
                (PathVertex first, PathVertex here) = (vertices[k], vertices[(i * perTooth) + k]);
                if (BitConverter.DoubleToInt64Bits(first.Bulge) != BitConverter.DoubleToInt64Bits(here.Bulge))
                {
                    Assert.Fail($"bulge {k} of tooth {i} is not the first tooth's");
                }

                var turned = new Point((cosine * first.Point.X) - (sine * first.Point.Y), (sine * first.Point.X) + (cosine * first.Point.Y));
                Require.AtMost(turned.DistanceTo(here.Point), 1e-9, "a joint is not the first tooth's turned");
            }
        }
    }

    // A piece that has shrunk to a point says nothing and stops machines; a curve that is so short itself is another matter.
    private static void RequireLengths(PathArc[] tooth, Specimen specimen)
    {
        double least = Math.Min(1e-3 * specimen.Tolerance, specimen.Exact.Pattern.Min(curve => curve.Length) / 1000);
        foreach (PathArc piece in tooth)
        {
            Require.AtMost(least, piece.From.DistanceTo(piece.To), "a piece has shrunk");
        }
    }

    // Each tooth keeps between the two rays through its ends, so that only pieces of one tooth can meet.
    private static void RequireSimple(PathArc[] tooth, PathArc next, Specimen specimen)
    {
        Vector before = (tooth[0].From - default(Point)).Unit.TurnedLeft;
        Vector behind = (tooth[^1].To - default(Point)).Unit.TurnedLeft;
        foreach (PathArc piece in tooth)
        {
            Require.AtMost(piece.Reach(-before), specimen.Rounding, "a piece reaches into the tooth before");
            Require.AtMost(piece.Reach(behind), specimen.Rounding, "a piece reaches into the next tooth");
        }

        if (specimen.Gear.NeckThickness > 4 * specimen.Tolerance)
        {
            Assert.True(Apart.Are([.. tooth, next]), "the path meets itself");
        }
    }

    private static void RequirePiecesNearCurves(PathArc[] tooth, Specimen specimen)
    {
        double allowed = specimen.Tolerance + specimen.Rounding;
        var exact = new ExactDistance(specimen.Exact.Pattern, (1e-6 * specimen.Tolerance) + (1e-14 * specimen.Gear.TipRadius));
        foreach (PathArc piece in tooth)
        {
            int at = exact.At;
            (double most, int where) = (0, 0);
            for (int i = 0; i <= Samples; i++)
            {
                double distance = exact.To(piece.PointAt((double)i / Samples));
                (most, where) = distance > most ? (distance, i) : (most, where);
            }

            int next = exact.At;
            most = Math.Max(most, Refined(piece, where, exact, at));
            exact.At = next;
            Require.AtMost(most, allowed, "a piece strays from the exact outline");
        }
    }

    // The greatest distance near a sample, between its neighbours, by thirds.
    private static double Refined(PathArc piece, int where, ExactDistance exact, int at)
    {
        (double low, double high) = (Math.Max(0, where - 1.0) / Samples, Math.Min(Samples, where + 1.0) / Samples);
        double most = 0;
        for (int i = 0; i < Refinements; i++)
        {
            double third = (high - low) / 3;
            (double one, double other) = (Distance(low + third), Distance(high - third));
            most = Math.Max(most, Math.Max(one, other));
            (low, high) = one > other ? (low, high - third) : (low + third, high);
        }

        return most;

        double Distance(double share)
        {
            exact.At = at;
            return exact.To(piece.PointAt(share));
        }
    }

    // Both run the same way from the same point: each point's nearest piece is sought from the last one's on.
    private static void RequireCurvesNearPieces(PathArc[] tooth, Specimen specimen)
    {
        double allowed = specimen.Tolerance + specimen.Rounding;
        int at = 0;
        foreach (Curve curve in specimen.Exact.Pattern)
        {
            int steps = 8 * tooth.Length;
            for (int i = 0; i <= steps; i++)
            {
                Point p = curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps));
                (double least, int nearest) = (double.PositiveInfinity, at);
                for (int k = Math.Max(0, at - 1); k < Math.Min(tooth.Length, at + 6); k++)
                {
                    double distance = tooth[k].DistanceTo(p);
                    (least, nearest) = distance < least ? (distance, k) : (least, nearest);
                }

                Require.AtMost(least, allowed, "the exact outline strays from its pieces");
                at = nearest;
            }
        }
    }

    private static void RequireRadii(ReadOnlySpan<PathVertex> vertices, Specimen specimen)
    {
        (double least, double most) = (double.PositiveInfinity, 0);
        foreach (PathVertex vertex in vertices)
        {
            (least, most) = (Math.Min(least, vertex.Point.Radius), Math.Max(most, vertex.Point.Radius));
        }

        Require.Near(specimen.Gear.RootRadius, least, specimen.Tolerance + specimen.Rounding, "root radius of the path");
        Require.Near(specimen.Gear.TipRadius, most, specimen.Tolerance + specimen.Rounding, "tip radius of the path");
    }

    // A side that strays by the tolerance is crossed by a circle that much farther away, over the cosine of the pressure angle there.
    private static void RequireThickness(PathArc[] tooth, Specimen specimen)
    {
        double middle = (specimen.Gear.FormRadius + specimen.Gear.TipRadius) / 2;
        PathArc[] crossing = [.. tooth.Where(piece => (piece.From.Radius < middle) != (piece.To.Radius < middle))];
        Assert.Equal(2, crossing.Length);
        double measured = middle * (AngleAt(crossing[1], middle) - AngleAt(crossing[0], middle));
        double cosine = Math.Min(1, specimen.Gear.BaseRadius / middle);
        double expected = ExactProperties.FlankThickness(specimen.Gear.Data, middle);
        Require.Near(expected, measured, (2.02 * specimen.Tolerance / cosine) + 1e-9, "thickness of the path's tooth");
    }

    private static double AngleAt(PathArc piece, double radius)
    {
        bool isRising = piece.To.Radius > piece.From.Radius;
        (double low, double high) = isRising ? (0.0, 1.0) : (1.0, 0.0);
        for (int i = 0; i < 54; i++)
        {
            double between = (low + high) / 2;
            (low, high) = piece.PointAt(between).Radius < radius ? (between, high) : (low, between);
        }

        return piece.PointAt(low).Angle;
    }
}
