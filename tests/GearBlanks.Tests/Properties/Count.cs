using System.Globalization;

namespace GearBlanks.Tests.Properties;

/// <summary>How many random gears are tried: few enough to wait for, or as many as tests/properties asks for.</summary>
internal static class Count
{
    private const string Variable = "GEARBLANKS_GEARS";
    private const int Usual = 20_000;

    public static int Gears { get; } = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } asked
        ? int.Parse(asked, CultureInfo.InvariantCulture)
        : Usual;

    /// <summary>As many fewer or more of something that costs more.</summary>
    public static int Of(int usual) => Math.Max(1, (int)((long)usual * Gears / Usual));
}
