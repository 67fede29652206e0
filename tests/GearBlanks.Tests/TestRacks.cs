using GearBlanks.Teeth;

namespace GearBlanks.Tests;

/// <summary>
/// ISO 53:1998 (JIS B 1701-1 identical), Table 2, basic rack types; from memory. The same proportions are also taken at other pressure angles.
/// </summary>
internal static class TestRacks
{
    public static readonly IReadOnlyList<char> Types = ['A', 'B', 'C', 'D'];

    public static BasicRack A { get; } = Iso('A');

    public static BasicRack Iso(char type, double degrees = 20)
    {
        (double dedendum, double fillet) = type switch
        {
            'A' => (1.25, 0.38),
            'B' => (1.25, 0.30),
            'C' => (1.25, 0.25),
            'D' => (1.40, 0.39),
            _ => throw new ArgumentOutOfRangeException(nameof(type)),
        };
        return new BasicRack($"type {type}", Radians(degrees), 1, dedendum, fillet);
    }

    public static double Radians(double degrees) => degrees * Math.PI / 180;

    public static double Degrees(double radians) => radians * 180 / Math.PI;
}
