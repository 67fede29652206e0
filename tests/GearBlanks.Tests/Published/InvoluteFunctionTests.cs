using GearBlanks.Teeth;

namespace GearBlanks.Tests.Published;

/// <summary>Tables of the involute function. The exact values come from an independent calculation with 40 digits.</summary>
public sealed class InvoluteFunctionTests
{
    private const string Buckingham =
        "McGraw-Hill (E. Buckingham), Analytical Mechanics of Gears, 1949, table of involute functions; the same in Vogel, Involutometry and Trigonometry, Michigan Tool Co. 1945; from memory";

    private const string Agma = "AGMA, Manual of Gear Design, 1980s, worked example as quoted at mathhelpforum.com/trigonometry/133298";
    private const string Commonly = "commonly quoted 8-place value, no source; from memory";
    private const string Khk = "Kohara Gear Industry Co. (KHK), Gear Technical Reference, 3010 and later, Table 4.3; from memory";
    private const string Sdp = "Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, Table ";

    [Theory]
    [InlineData(10, "0.0017941", 0.001794055509032015778721, Buckingham)]
    [InlineData(14.5, "0.0055448", 0.005544842816712493223066, Buckingham)]
    [InlineData(15, "0.0061498", 0.006149804631973269934000, Buckingham)]
    [InlineData(20, "0.0149044", 0.01490438386733644596631, Buckingham)]
    [InlineData(25, "0.0299753", 0.02997534515641619859908, Buckingham)]
    [InlineData(30, "0.0537515", 0.05375149359132689143204, Buckingham)]
    [InlineData(40, "0.1409679", 0.1409679303795481809937, Buckingham)]
    [InlineData(45, "0.2146018", 0.2146018366025516903843, Buckingham)]
    [InlineData(20, "0.01490438", 0.01490438386733644596631, Commonly)]
    [InlineData(14.5, "0.00554", 0.005544842816712493223066, Agma)]
    public void Involute_tables_are_met(double degrees, string printed, double exact, string source)
    {
        Assert.NotEmpty(source);
        double involute = InvoluteFunction.Inv(TestRacks.Radians(degrees));
        Printed.Shows(printed, involute);

        // One ulp of the angle moves tan t - t by tan^2 t times as much; the subtraction adds an ulp of the angle.
        Printed.Agrees(exact, involute, 2e-14);
    }

    [Theory]
    [InlineData(0.0999, 0.0003336663939089039169)]
    [InlineData(0.08, 0.0001711047080725571288)]
    [InlineData(0.05, 0.0000417083755387889191)]
    public void Small_angles_lose_no_digits(double angle, double exact)
    {
        // Exact values of the same doubles from an independent calculation with 50 digits.
        Printed.Agrees(exact, InvoluteFunction.Inv(angle), 1e-15);
    }

    [Fact]
    public void Where_memory_and_calculation_differ_the_calculation_holds()
    {
        // Buckingham's table at 22.5 degrees is remembered as 0.0215144; the exact value rounds to 0.0215145.
        double involute = InvoluteFunction.Inv(TestRacks.Radians(22.5));
        Printed.Agrees(0.02151448067437089399386, involute, 2e-14);
        Printed.Shows("0.0215145", involute);
    }

    [Theory]
    [InlineData(0.034316, "26.0886", 26.08853244797157796192, 0.0000005, Khk)]
    [InlineData(0.060401, "31.0937", 31.09367372682398168999, 0.0000005, Sdp + "5-1; from memory")]
    [InlineData(0.0268197, "24.1350", 24.13500000103878842996, 0.00000005, Sdp + "10-13; from memory")]
    [InlineData(0.0089467, "16.9521", 16.95203904449226127295, 0.00000005, Sdp + "10-16; from memory")]
    public void Inverse_involutes_are_met(double involute, string printed, double exact, double halfDigit, string source)
    {
        Assert.NotEmpty(source);
        Printed.Agrees(exact, TestRacks.Degrees(InvoluteFunction.Inverse(involute)), 1e-14);

        // The sources computed the angle from an involute with more digits than they print: the rounding allows an interval.
        double low = TestRacks.Degrees(InvoluteFunction.Inverse(involute - halfDigit));
        double high = TestRacks.Degrees(InvoluteFunction.Inverse(involute + halfDigit));
        double angle = double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(angle, low - 0.00005, high + 0.00005);
    }

    [Fact]
    public void A_single_involute_drives_another_through_a_full_turn()
    {
        // The Fellows Gear Shaper Co., Design of Involute Gear Teeth (reprint in Gear Technology), Fig. 1: tan phi = pi, base diameter 1.5 in,
        // phi 72 deg 21 min. The roll angle is tan phi, so inv phi is pi - phi.
        double phi = Math.Atan(Math.PI);
        double again = InvoluteFunction.Inverse(Math.PI - phi);
        Printed.Agrees(72.34321284858714152118, TestRacks.Degrees(again));
        Assert.Equal(21, (int)Math.Round((TestRacks.Degrees(again) - 72) * 60));
        double circularPitch = 1.5 * Math.PI / Math.Cos(again);
        Printed.Shows("0.2022", Math.PI / circularPitch);

        // Printed 15.537; the base diameter is garbled in the copy read, and 1.5 in gives one unit less in the last digit.
        Printed.Agrees(15.53631438691160564127, circularPitch, 1e-14);
    }

    [Fact]
    public void Small_angles_follow_the_reverted_series()
    {
        // H. H. Cheng, ASME 1992, explicit series for the inverse involute, as quoted at meshingwithgears.com/wwwboard/messages/9179.html.
        foreach (double involute in (double[])[1e-12, 1e-9, 1e-7, 1e-5])
        {
            double q = Math.Cbrt(involute);
            double series = (Math.Cbrt(3) * q) - (0.4 * q * q * q) + (9 * Math.Cbrt(9) / 175 * Math.Pow(q, 5))
                - (2 * Math.Cbrt(3) / 175 * Math.Pow(q, 7)) - (144.0 / 67375 * Math.Pow(q, 9)) + (3258 * Math.Cbrt(9) / 3128125 * Math.Pow(q, 11));
            Printed.Agrees(series, InvoluteFunction.Inverse(involute), 1e-14);
        }
    }

    [Theory]
    [InlineData(-1e-300)]
    [InlineData(-0.1)]
    [InlineData(Math.PI / 2)]
    [InlineData(2.0)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NaN)]
    public void Angles_outside_a_quarter_turn_are_refused(double angle) =>
        Assert.Equal("angle", Assert.Throws<ArgumentOutOfRangeException>(() => InvoluteFunction.Inv(angle)).ParamName);

    [Theory]
    [InlineData(-1e-300)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NaN)]
    public void Values_that_no_angle_has_are_refused(double involute) =>
        Assert.Equal("involute", Assert.Throws<ArgumentOutOfRangeException>(() => InvoluteFunction.Inverse(involute)).ParamName);

    [Fact]
    public void Both_ends_of_the_range_are_reached()
    {
        Assert.Equal(0, InvoluteFunction.Inv(0));
        Assert.Equal(0, InvoluteFunction.Inverse(0));
        double last = Math.BitDecrement(Math.PI / 2);
        Printed.Agrees(Math.Tan(last), InvoluteFunction.Inv(last), 1e-14);
    }
}
