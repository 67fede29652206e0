using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Tests.Mechanisms.Fits;

/// <summary>Tolerance classes against published values and the standard's formulas.</summary>
public sealed class ToleranceClassTests
{
    private static readonly double[] Ends = [1, 3, 6, 10, 18, 30, 50, 80, 120];

    /// <summary>Size, class, lower and upper deviation in micrometres.</summary>
    public static TheoryData<double, string, double, double> Published => new()
    {
        // deepri.com, "ISO Tolerances", tables of internal and external tolerance zones.
        { 2, "H7", 0, 10 },
        { 5, "H7", 0, 12 },
        { 14, "H7", 0, 18 },
        { 25, "H7", 0, 21 },

        // ISO 286-2:2010, tables of holes and shafts; from memory.
        { 4, "H8", 0, 18 },
        { 4, "f7", -22, -10 },
        { 4, "g6", -12, -4 },
        { 4, "h6", -8, 0 },
        { 4, "k6", 1, 9 },
        { 4, "m6", 4, 12 },
        { 4, "p6", 12, 20 },
        { 4, "r6", 15, 23 },
        { 4, "G7", 4, 16 },
        { 4, "F8", 10, 28 },
        { 4, "K7", -9, 3 },
        { 4, "M7", -12, 0 },
        { 4, "N7", -16, -4 },
        { 4, "P7", -20, -8 },
        { 2, "P7", -16, -6 },
        { 8, "P7", -24, -9 },
        { 8, "N9", -36, 0 },
        { 25, "S7", -48, -27 },
        { 25, "js7", -10.5, 10.5 },
        { 40, "JS7", -12.5, 12.5 },
        { 60, "h11", -190, 0 },
        { 60, "r6", 41, 60 },
        { 70, "r6", 43, 62 },
        { 90, "s6", 71, 93 },
        { 110, "s6", 79, 101 },
        { 120, "d9", -207, -120 },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public void Deviations_are_the_published_ones(double size, string name, double lower, double upper)
    {
        (double least, double greatest) = ToleranceClass.Read(name)!.Deviations(size);
        Assert.Equal((lower, upper), (Math.Round(least * 1000, 6), Math.Round(greatest * 1000, 6)));
    }

    // i = 0.45 D^(1/3) + 0.001 D at the geometric mean of the range (1 to 3 for the first), 7, 10, 16, 25, 40, 64 and 100 times (ISO 286-1); the standard rounds by rules
    // of its own, so that its tables stay within 15 % (9 % above 6 mm) of the formula.
    [Fact]
    public void Standard_tolerances_follow_the_formula()
    {
        double[] factors = [7, 10, 16, 25, 40, 64, 100];
        for (int range = 1; range < Ends.Length; range++)
        {
            double mean = Math.Sqrt(Ends[range - 1] * Ends[range]);
            double unit = (0.45 * Math.Cbrt(mean)) + (0.001 * mean);
            for (int grade = 5; grade <= 11; grade++)
            {
                double formula = factors[grade - 5] * unit;
                (double _, double upper) = ToleranceClass.Read($"H{grade}")!.Deviations(Ends[range]);
                Assert.InRange(upper * 1000, formula * (range < 3 ? 0.85 : 0.91) - 0.5, (formula * (range < 3 ? 1.15 : 1.09)) + 0.5);
            }
        }
    }

    [Fact]
    public void Fits_loosen_from_letter_to_letter_and_widen_from_grade_to_grade()
    {
        string[] letters = ["s", "r", "p", "n", "m", "k", "h", "g", "f", "e", "d"];
        foreach (double size in (double[])[1, 2.5, 3.1, 6, 7, 12, 20, 40, 55, 75, 85, 120])
        {
            for (int grade = 5; grade <= 11; grade++)
            {
                double[] uppers = [.. letters.Select(letter => ToleranceClass.Read($"{letter}{grade}")!.Deviations(size).Upper)];
                Assert.Equal(uppers.OrderDescending(), uppers);
                (double lower, double upper) = ToleranceClass.Read($"js{grade}")!.Deviations(size);
                Assert.Equal(0, lower + upper, 1e-12);
                Assert.True(grade == 5 || upper > ToleranceClass.Read($"js{grade - 1}")!.Deviations(size).Upper);
            }
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("H")]
    [InlineData("7")]
    [InlineData("H4")]
    [InlineData("H12")]
    [InlineData("Hh7")]
    [InlineData("jS7")]
    [InlineData("Js7")]
    [InlineData("Q7")]
    [InlineData("H07")]
    [InlineData("H7 ")]
    [InlineData("H-7")]
    [InlineData("K9")]
    [InlineData("h99999999999")]
    public void What_is_no_class_is_not_read(string text) => Assert.Null(ToleranceClass.Read(text));

    [Fact]
    public void Sizes_out_of_range_are_refused()
    {
        ToleranceClass h7 = ToleranceClass.Read("H7")!;
        Assert.True(h7.IsHole);
        Assert.False(ToleranceClass.Read("h7")!.IsHole);
        Assert.Equal("JS6", ToleranceClass.Read("JS6")!.ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => h7.Deviations(0.99));
        Assert.Throws<ArgumentOutOfRangeException>(() => h7.Deviations(120.1));
    }
}
