namespace GearBlanks.Tests.Properties;

/// <summary>Assertions that write their message only where they fail: they are made a hundred million times.</summary>
internal static class Require
{
    public static void AtMost(double value, double most, string what)
    {
        if (!(value <= most))
        {
            Assert.Fail(FormattableString.Invariant($"{what}: {value:R}, at most {most:R}"));
        }
    }

    public static void Near(double expected, double actual, double within, string what)
    {
        if (!(Math.Abs(expected - actual) <= within))
        {
            Assert.Fail(FormattableString.Invariant($"{what}: {actual:R} instead of {expected:R}"));
        }
    }
}
