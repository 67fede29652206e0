using System.Globalization;

namespace GearBlanks.Tests.Published;

/// <summary>Compares a computed value with the digits a source prints.</summary>
internal static class Printed
{
    /// <summary>The value, rounded to as many decimals as are printed, shows the printed digits.</summary>
    public static void Shows(string printed, double value)
    {
        int decimals = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        string rounded = Math.Round((decimal)value, decimals, MidpointRounding.AwayFromZero).ToString("F" + decimals, CultureInfo.InvariantCulture);
        Assert.Equal(printed, rounded);
    }

    /// <summary>The value agrees with an independent calculation to a few units in the last place of a double.</summary>
    public static void Agrees(double expected, double value, double relative = 2e-15) =>
        Assert.True(Math.Abs(value - expected) <= relative * Math.Abs(expected), $"expected {expected:R}, got {value:R}");
}
