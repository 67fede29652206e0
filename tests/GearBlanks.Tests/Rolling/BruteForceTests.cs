using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Meshing;
using GearBlanks.Rolling;
using GearBlanks.Teeth;
using GearBlanks.Tests.Meshing;

namespace GearBlanks.Tests.Rolling;

/// <summary>
/// The solver against a search that knows no directions and no brackets: every side of every tooth as thousands of points, and for each the turn at which it meets the other gear's
/// points at that radius, between which is interpolated.
/// </summary>
public sealed class BruteForceTests
{
    private const int Points = 1500;

    [Theory]
    [InlineData(20, 40, 30.0, 0)]
    [InlineData(13, 31, 22.1, 0)]
    [InlineData(9, 27, 18.25, 0)]
    [InlineData(20, 40, 30.0, 0.01)]
    [InlineData(15, 15, 15.55, 0.002)]
    public void Both_stops_are_those_of_dense_points(int first, int second, double distance, double tolerance)
    {
        (Outline one, Outline other) = (Outline(first), Outline(second));
        (RollGear a, RollGear b) = tolerance == 0
            ? (RollGear.OfOutline("a", one), RollGear.OfOutline("b", other))
            : (RollGear.OfPath("a", OutlineFit.Fit(one, tolerance)), RollGear.OfPath("b", OutlineFit.Fit(other, tolerance)));
        var solver = new ContactSolver(new RollPlacing(a, b));
        for (int i = 0; i < 24; i++)
        {
            double turn = 0.37 * i / first;
            double even = solver.Placing.TurnFor(turn);
            Assert.Equal(Search(a, b, turn, distance, even, true), solver.At(turn, distance, true, even).Limit - even, 2e-6);
            Assert.Equal(Search(a, b, turn, distance, even, false), solver.At(turn, distance, false, even).Limit - even, 2e-6);
        }
    }

    // Few teeth and many, undercut ones too, exact and as lines and arcs: no point comes before the contact, and one comes to it.
    [Fact]
    public void No_point_stops_random_pairs_before_the_contact_that_is_found() => Hold(RandomPairs.Any, 200, null);

    [Fact]
    public void Nor_pairs_whose_tips_dig_into_fillets() => Hold(RandomPairs.LongTippedOftenDigging, 60, null);

    // An undercut's edge against a fillet; two contacts between two samples of rows of arcs.
    [Theory]
    [InlineData("0bV7CadOk0g1")]
    [InlineData("4dQ32CRmt6x1")]
    [InlineData("201wQ8Y34_61")]
    public void Nor_pairs_that_were_once_stopped_too_late(string seed) => Hold(RandomPairs.Any, 1, seed);

    private static void Hold(Gen<ExternalPair> pairs, int count, string? seed) => Gen.Select(pairs, Gen.Bool, Gen.Double[-1, 7]).Sample(
        (pair, isExact, turn) =>
        {
            (RollGear a, RollGear b) = isExact
                ? (RollGear.Of("a", pair.First), RollGear.Of("b", pair.Second))
                : (RollGear.OfPath("a", OutlineFit.Fit(pair.First.Outline(), Fitted)), RollGear.OfPath("b", OutlineFit.Fit(pair.Second.Outline(), Fitted)));
            foreach ((RollGear first, RollGear second, double radius) in ((RollGear, RollGear, double)[])[(a, b, pair.SecondWorkingRadius), (b, a, pair.FirstWorkingRadius)])
            {
                var solver = new ContactSolver(new RollPlacing(first, second));
                double even = solver.Placing.TurnFor(turn);
                foreach (bool isLeading in (bool[])[true, false])
                {
                    Contact found = solver.At(turn, pair.CentreDistance, isLeading, even);
                    double before = (found.Limit - Densest(solver.Placing, turn, pair.CentreDistance, isLeading, found.Limit)) * (isLeading ? 1 : -1) * radius;
                    Assert.True(before is < 1e-7 and > -2e-3, $"{before} mm for {first.Teeth} and {second.Teeth} teeth");
                }
            }
        },
        seed: seed, iter: count, threads: 1);

    private const double Fitted = 0.002;

    // Of dense points of all the first one's sides that face the second one: the first turn at which one of them stops the side that it faces.
    private static double Densest(RollPlacing placing, double turn, double distance, bool isLeading, double near)
    {
        double best = isLeading ? double.PositiveInfinity : double.NegativeInfinity;
        for (int tooth = 0; tooth < placing.First.Teeth; tooth++)
        {
            double towards = Math.IEEERemainder(placing.First.Middles[tooth] + turn, 2 * Math.PI);
            int counted = (int)Math.Round((towards - turn - placing.First.Middles[0]) / placing.First.Pitch);
            RollSide mate = placing.Second.Sides[(2 * placing.ToothIn(isLeading ? counted : counted - 1)!.Value) + (isLeading ? 1 : 0)];
            IEnumerable<Curve> curves = Math.Abs(towards) < 1.2 ? placing.First.Sides[(2 * tooth) + (isLeading ? 1 : 0)].Curves : [];
            foreach (Curve curve in curves)
            {
                for (int i = 0; i <= Points; i++)
                {
                    Point point = curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / Points));
                    Vector away = Point.Polar(point.Radius, point.Angle + turn) - new Point(distance, 0);
                    if (away.Length <= mate.Tip)
                    {
                        double limit = near + Math.IEEERemainder(away.Angle - mate.AngleAt(away.Length) - near, 2 * Math.PI);
                        best = isLeading ? Math.Min(best, limit) : Math.Max(best, limit);
                    }
                }
            }
        }

        return best;
    }

    private static Outline Outline(int teeth) => Toothing.Of(new GearData(teeth, 1, TestRacks.A, teeth < 17 ? 0.3 : 0, 0.05)).Outline();

    private static double Search(RollGear first, RollGear second, double turn, double distance, double even, bool isLeading)
    {
        (double Radius, double Angle)[][] mates = [.. Enumerable.Range(0, second.Teeth).Select(i => Dense(second.Sides[(2 * i) + (isLeading ? 1 : 0)]))];
        double best = isLeading ? double.PositiveInfinity : double.NegativeInfinity;
        for (int tooth = 0; tooth < first.Teeth; tooth++)
        {
            foreach ((double radius, double angle) in Dense(first.Sides[(2 * tooth) + (isLeading ? 1 : 0)]))
            {
                Vector away = Point.Polar(radius, angle + turn) - new Point(distance, 0);
                if (away.Length > second.TipRadius || Math.Abs(Math.IEEERemainder(angle + turn, 2 * Math.PI)) > 1)
                {
                    continue;
                }

                foreach ((double Radius, double Angle)[] mate in mates)
                {
                    double off = Math.IEEERemainder(away.Angle - At(mate, away.Length) - even, 2 * Math.PI);

                    // A tooth of the mate beyond its gap is stopped by another side.
                    if (Math.Abs(off) < 0.45 * second.Pitch)
                    {
                        best = isLeading ? Math.Min(best, off) : Math.Max(best, off);
                    }
                }
            }
        }

        return best;
    }

    private static (double Radius, double Angle)[] Dense(RollSide side)
    {
        List<(double Radius, double Angle)> points = [];
        foreach (Curve curve in side.Curves)
        {
            for (int i = 0; i <= Points / side.Curves.Length; i++)
            {
                Point point = curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / (Points / side.Curves.Length)));
                double angle = point.Angle;
                points.Add((point.Radius, points.Count == 0 ? angle : points[^1].Angle + Math.IEEERemainder(angle - points[^1].Angle, 2 * Math.PI)));
            }
        }

        return [.. points.OrderBy(point => point.Radius)];
    }

    private static double At((double Radius, double Angle)[] side, double radius)
    {
        int low = 0;
        int high = side.Length - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = side[middle].Radius <= radius ? (middle, high) : (low, middle);
        }

        double width = side[high].Radius - side[low].Radius;
        double share = width <= 0 ? 0 : Math.Clamp((radius - side[low].Radius) / width, 0, 1);
        return side[low].Angle + (share * (side[high].Angle - side[low].Angle));
    }
}
