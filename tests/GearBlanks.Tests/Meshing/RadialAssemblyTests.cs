using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>The least ring that lets a pinion in along the line of centres.</summary>
public sealed class RadialAssemblyTests
{
    /// <summary>
    /// A pinion with the addendum of a cutter, 1.25 modules. Stock Drive Products / Sterling Instrument, Elements of Metric Gear Technology, D785/D805, Table 5-3a.
    /// </summary>
    [Theory]
    [InlineData(20, 38)]
    [InlineData(30, 48)]
    [InlineData(40, 58)]
    [InlineData(50, 68)]
    public void Rings_are_as_published(int pinionTeeth, int ringTeeth)
    {
        var pinion = ExternalGear.Create(new GearData(pinionTeeth, 1, TestRacks.A, 0, 0, pinionTeeth + 2.5));
        RingGear ring = RingGear.Create(new RingData(pinionTeeth + 20, 1, TestRacks.A, pinionTeeth + 40, 0, 0, 0, pinionTeeth + 20 - 2));
        var pair = (RingPair)GearPair.At(pinion, ring, 10);
        Assert.Equal(0, pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(ringTeeth, RadialAssembly.LeastRingTeeth(pair));
    }

    /// <summary>With play to spare between wide gaps a ring may be smaller.</summary>
    [Fact]
    public void Play_lets_a_smaller_ring_take_it_in()
    {
        var pinion = ExternalGear.Create(new GearData(30, 1, TestRacks.A, 0, 0, 32.5));
        int? At(double thinning) => RadialAssembly.LeastRingTeeth((RingPair)GearPair.At(pinion, RingGear.Create(new RingData(50, 1, TestRacks.A, 70, 0, 0, thinning, 48)), 10));
        Assert.Equal(48, At(0));
        Assert.True(At(0.5) < 48, $"{At(0.5)}");
    }
}
