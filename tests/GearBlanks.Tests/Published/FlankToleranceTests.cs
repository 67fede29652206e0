using GearBlanks.Meshing.Accuracy;

namespace GearBlanks.Tests.Published;

/// <summary>Flank tolerances: the 2013 formulas by their own words, and the step from class to class and the rounding by printed tables of the edition before.</summary>
public sealed class FlankToleranceTests
{
    private const string Tables = "ISO 1328-1:1995 / 1328-2:1997 (JIS B 1702-1:1998 identical), tables; from memory";
    private const string Formulas = "ISO 1328-1:2013, 5.3, and its annex on runout; from memory";

    // What the edition of 1995 prints, classes 5 to 8, micrometres, and its formula in class 5 on the geometric means of its ranges.
    public static TheoryData<string, double, double, double, double, double[]> Printed1995 => new()
    {
        { "single pitch", 5, 20, 0.5, 2, [4.7, 6.5, 9.5, 13] },
        { "single pitch", 20, 50, 0.5, 2, [5.0, 7.0, 10, 14] },
        { "single pitch", 50, 125, 0.5, 2, [5.5, 7.5, 11, 15] },
        { "single pitch", 50, 125, 2, 3.5, [6.0, 8.5, 12, 17] },
        { "cumulative pitch", 5, 20, 0.5, 2, [11, 16, 23, 32] },
        { "cumulative pitch", 20, 50, 0.5, 2, [14, 20, 29, 41] },
        { "cumulative pitch", 50, 125, 0.5, 2, [18, 26, 37, 52] },
        { "cumulative pitch", 50, 125, 2, 3.5, [19, 27, 38, 53] },
        { "profile", 5, 20, 0.5, 2, [4.6, 6.5, 9.0, 13] },
        { "profile", 50, 125, 0.5, 2, [6.0, 8.5, 12, 17] },
    };

    [Theory]
    [MemberData(nameof(Printed1995))]
    public void RoundingAndTheStepOfClassesGiveThePrintedTables(string quantity, double leastD, double mostD, double leastM, double mostM, double[] printed)
    {
        Assert.NotEmpty(Tables);
        (double d, double m) = (Math.Sqrt(leastD * mostD), Math.Sqrt(leastM * mostM));
        double inClass5 = quantity switch
        {
            "single pitch" => (0.3 * (m + (0.4 * Math.Sqrt(d)))) + 4,
            "cumulative pitch" => (0.3 * m) + (1.25 * Math.Sqrt(d)) + 7,
            _ => (3.2 * Math.Sqrt(m)) + (0.22 * Math.Sqrt(d)) + 0.7,
        };
        for (int i = 0; i < printed.Length; i++)
        {
            Assert.Equal(printed[i], FlankTolerances.Rounded(inClass5 * Math.Sqrt(Math.Pow(2, i))), 9);
        }
    }

    [Theory]
    [InlineData(5, 20, 1)]
    [InlineData(9, 20, 1)]
    [InlineData(1, 5, 0.5)]
    [InlineData(11, 400, 4)]
    [InlineData(8, 63.7, 1.25)]
    public void TheFormulasAreThoseOfTheStandard(int grade, double d, double m)
    {
        Assert.NotEmpty(Formulas);
        double step = Math.Pow(Math.Sqrt(2), grade - 5);
        FlankTolerances tolerances = FlankTolerances.Of(grade, d, m);
        IsRounded(((0.001 * d) + (0.4 * m) + 5) * step, tolerances.SinglePitch);
        double cumulative = ((0.002 * d) + (0.55 * Math.Sqrt(d)) + (0.7 * m) + 12) * step;
        IsRounded(cumulative, tolerances.CumulativePitch);
        IsRounded(0.9 * cumulative, tolerances.Runout);
        (double slope, double form) = (((0.4 * m) + (0.001 * d) + 4) * step, ((0.55 * m) + 5) * step);
        IsRounded(slope, tolerances.ProfileSlope);
        IsRounded(form, tolerances.ProfileForm);
        IsRounded(Math.Sqrt((slope * slope) + (form * form)), tolerances.Profile);
    }

    // The two editions agree within a third where both give a value for the same gear: a slip of the memory by a factor would show.
    [Theory]
    [MemberData(nameof(Printed1995))]
    public void TheEditionsAreNotFarApart(string quantity, double leastD, double mostD, double leastM, double mostM, double[] printed)
    {
        FlankTolerances tolerances = FlankTolerances.Of(8, Math.Sqrt(leastD * mostD), Math.Sqrt(leastM * mostM));
        double micrometres = 1000 * quantity switch
        {
            "single pitch" => tolerances.SinglePitch,
            "cumulative pitch" => tolerances.CumulativePitch,
            _ => tolerances.Profile,
        };
        Assert.InRange(micrometres / printed[3], 0.75, 1.75);
    }

    [Theory]
    [InlineData(4.96, 5)]
    [InlineData(4.94, 4.9)]
    [InlineData(5.24, 5)]
    [InlineData(5.26, 5.5)]
    [InlineData(9.76, 10)]
    [InlineData(10, 10)]
    [InlineData(10.4, 10)]
    [InlineData(10.6, 11)]
    public void RoundingChangesItsUnitAtFiveAndTen(double exact, double rounded) => Assert.Equal(rounded, FlankTolerances.Rounded(exact), 9);

    // Half a unit at most: 1 over 10 micrometres, 0.5 from 5, 0.1 below.
    private static void IsRounded(double micrometres, double millimetres)
    {
        double unit = micrometres > 10 ? 1 : micrometres >= 5 ? 0.5 : 0.1;
        Assert.Equal(micrometres, 1000 * millimetres, (unit / 2) + 1e-9);
        double units = 1000 * millimetres / unit;
        Assert.Equal(Math.Round(units), units, 1e-9);
    }
}
