using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>The remedies that are told are the first two of those that a step-by-step scan of every lever finds.</summary>
public sealed class LeastRemedyScanTests
{
    private const double Wanted = 0.04;

    // Teeth, profile shifts, tip diameters (0 for the rack's), distance of an external pair of module 0.5 or 2.
    [Theory]
    [InlineData(20, 40, 0, 0, 0, 0, 29.97, 1)]
    [InlineData(20, 40, 0, 0, 0, 0, 30.3, 1)]
    [InlineData(13, 57, 0.2, -0.2, 0, 0, 35.02, 1)]
    [InlineData(17, 80, 0, 0, 0, 82.3, 48.53, 1)]
    [InlineData(20, 40, 0, 0, 0, 0, 29.99, 0.5)]
    [InlineData(13, 57, 0.2, -0.2, 0, 0, 35.02, 2)]
    [InlineData(30, 30, 0, 0, 0, 32.5, 30.08, 2)]
    public void They_are_the_least_of_all(int first, int second, double x1, double x2, double tip1, double tip2, double distance, double module)
    {
        Toothing Made(int teeth, double shift, double tip) => Toothing.Of(new GearData(teeth, module, TestRacks.A, shift, 0, tip == 0 ? null : tip * module));
        GearPair pair = GearPair.At(Made(first, x1, tip1), Made(second, x2, tip2), distance * module);
        PairFigure[] bad = [.. PairFigures.OfMesh(pair, TestLimits.Common).Where(figure => figure.Level != Level.Ok)];
        Assert.NotEmpty(bad);
        foreach (PairFigure figure in bad)
        {
            string[] scanned = [.. Levers(pair).Select(lever => (lever.Words, Steps: Scan(pair, lever, figure), lever.Weight)).Where(lever => lever.Steps > 0)
                .OrderBy(lever => lever.Steps * lever.Weight).Take(2).Select(lever => lever.Words(lever.Steps))];
            string sentence = new LeastRemedy(pair, "a", "b", TestLimits.Common, Wanted * module).Sentence(figure);
            string expected = scanned.Length == 0
                ? "No single change of distance, profile shift or tip mends it without worsening another check of this mesh."
                : $"Least that mends it and worsens nothing else in this mesh: {string.Join("; or ", scanned)}.";
            Assert.Equal(expected, sentence);
        }
    }

    // The first step that mends; 0 where it worsens something, or none mends.
    private static int Scan(GearPair pair, (Func<int, GearPair?> Pair, int Most, double Weight, Func<int, string> Words) lever, PairFigure figure)
    {
        for (int steps = 1; steps <= lever.Most; steps++)
        {
            if (lever.Pair(steps) is { } changed
                && PairFigures.OfMesh(changed, TestLimits.Common).Where(other => other.Name == figure.Name && other.Side == figure.Side).All(other => other.Level == Level.Ok))
            {
                return Bad(changed).All(after => Bad(pair).Any(before => before.Name == after.Name && before.Side == after.Side && before.Level >= after.Level)) ? steps : 0;
            }
        }

        return 0;
    }

    private static PairFigure[] Bad(GearPair pair) =>
    [
        .. PairFigures.OfMesh(pair, TestLimits.Common).Concat(PairFigures.OfTeeth(pair, TestLimits.Common))
            .Append(new PairFigure(
                "backlash-miss", 0, Math.Abs(pair.CircumferentialBacklash - (Wanted * pair.First.Module)), TestLimits.Common.BacklashMiss.Times(pair.First.Module), "mm"))
            .Where(figure => figure.Level != Level.Ok),
    ];

    private static IEnumerable<(Func<int, GearPair?> Pair, int Most, double Weight, Func<int, string> Words)> Levers(GearPair pair)
    {
        (GearData one, GearData two, double m) = ((GearData)pair.First.Data, (GearData)pair.Second.Data, pair.First.Module);
        foreach (int sign in (int[])[1, -1])
        {
            yield return (
                steps => Try(one, two, pair.CentreDistance + (sign * steps * 0.001)), (int)(m / 0.001), 0.001 / m,
                steps => $"{(sign > 0 ? "open" : "close")} the centre distance by {Words.Mm(steps * 0.001)}");
            yield return (
                steps => Try(one with { ProfileShift = one.ProfileShift + (sign * steps * 0.001) }, two, pair.CentreDistance), 1000, 0.001, steps => $"shift a by {Signed(sign * steps)}");
            yield return (
                steps => Try(one, two with { ProfileShift = two.ProfileShift + (sign * steps * 0.001) }, pair.CentreDistance), 1000, 0.001, steps => $"shift b by {Signed(sign * steps)}");
        }

        double Tip(Toothing gear, int steps) => Math.Floor((((2 * ((Gear)gear).TipRadius) - (steps * 0.01)) * 100) - 1e-3) / 100;
        yield return (
            steps => Try(one with { TipDiameter = Tip(pair.First, steps) }, two, pair.CentreDistance), (int)(m / 0.01), 0.01 / m, steps => $"lower the tip diameter of a to {Words.Mm(Tip(pair.First, steps))}");
        yield return (
            steps => Try(one, two with { TipDiameter = Tip(pair.Second, steps) }, pair.CentreDistance), (int)(m / 0.01), 0.01 / m, steps => $"lower the tip diameter of b to {Words.Mm(Tip(pair.Second, steps))}");
    }

    private static string Signed(int steps) => (steps * 0.001).ToString("+0.000;-0.000", CultureInfo.InvariantCulture);

    private static GearPair? Try(GearData one, GearData two, double distance)
    {
        try
        {
            return GearPair.At(Toothing.Of(one), Toothing.Of(two), distance);
        }
        catch (GearGeometryException)
        {
            return null;
        }
    }
}
