using GearBlanks.Meshing;
using GearBlanks.Meshing.Builds;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing.Builds;

/// <summary>Pairs of every kind, and quantities of every kind on them.</summary>
internal static class BuildPairs
{
    private static readonly Growth Brass = new(20.5e-6, 0);
    private static readonly Growth Acrylic = new(77e-6, 4e-5);
    private static readonly Growth Steel = new(11.7e-6, 0);

    public static GearPair Of(string kind)
    {
        BasicRack rack = TestRacks.A;
        Toothing Round(int teeth, double shift) => Toothing.Of(new GearData(teeth, 0.8, rack, shift, 0.01));
        (Toothing first, Toothing second) = kind switch
        {
            "external" => (Round(24, -0.1), Round(59, 0.2)),
            "small" => (Round(13, 0.3), Round(12, 0.4)),
            "ring" => (Round(20, 0), Toothing.Of(new RingData(60, 0.8, rack, 60, null, 0.1, 0.01))),
            "ring first" => (Toothing.Of(new RingData(60, 0.8, rack, 60, null, 0, 0.01)), Round(22, 0.1)),
            "rack" => (Round(30, 0.1), Toothing.Of(new RackBarData(0.8, rack, 60, 5, 0.05, 0.01))),
            "rack first" => (Toothing.Of(new RackBarData(0.8, rack, 60, 5, 0, 0.01)), Round(30, 0)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
        return GearPair.At(first, second, GearPair.DistanceFor(first, second, 0.04));
    }

    public static TheoryData<string> Kinds => ["external", "small", "ring", "ring first", "rack", "rack first"];

    /// <summary>Everything that can differ, at sizes as a shop has them.</summary>
    public static MeshBuild Build(string kind, bool withClimate = true)
    {
        GearPair pair = Of(kind);
        return new MeshBuild(
            new BacklashEquation(pair), pair.CentreDistance, Steel, Acrylic, Brass,
            [
                new Quantity("centre distance", "", Influence.Distance, -0.02, 0.02),
                new Quantity("bore clearance", "one", Influence.Place, 0, 0.015),
                new Quantity("eccentricity", "one", Influence.Place, 0, 0.01),
                new Quantity("eccentricity", "two", Influence.Place, 0, 0.02),
                new Quantity("crossing", "one", Influence.Crossing, 0, 0.003),
                new Quantity("thickness", "one", Influence.FirstThickness, -0.01, 0.01),
                new Quantity("taper", "two", Influence.SecondThickness, 0, 0.012),
                .. withClimate
                    ? (Quantity[])[new Quantity("temperature", "", Influence.Temperature, -15, 25), new Quantity("humidity", "", Influence.Humidity, -20, 40)]
                    : [],
            ]);
    }
}
