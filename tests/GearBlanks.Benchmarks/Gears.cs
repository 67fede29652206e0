using GearBlanks.Teeth;

namespace GearBlanks.Benchmarks;

/// <summary>The gear that everything is measured with: module 1, ISO 53 type A, drawn within 0.001 mm.</summary>
internal static class Gears
{
    public const double Tolerance = 0.001;

    // ISO 53:1998, Table 2, type A; from memory.
    public static readonly BasicRack Rack = new("type A", 20 * Math.PI / 180, 1, 1.25, 0.38);

    public static GearData Of(int teeth) => new(teeth, 1, Rack);
}
