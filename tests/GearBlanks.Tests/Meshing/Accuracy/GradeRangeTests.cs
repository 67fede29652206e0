using GearBlanks.Meshing.Accuracy;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing.Accuracy;

/// <summary>The ranges of ISO 1328-1:2013, clause 1 (as read in a public catalogue's abstract), at their bounds and a hair beyond.</summary>
public sealed class GradeRangeTests
{
    [Theory]
    [InlineData(5, 2, 4, null, 0)]
    [InlineData(1000, 15, 1200, null, 0)]
    [InlineData(10, 0.5, 4, null, 0)]
    [InlineData(300, 50, 1200, null, 0)]
    [InlineData(4, 2, 4, "tooth count", 5)]
    [InlineData(9, 0.5, 4, "reference diameter", 5)]
    [InlineData(301, 50, 10, "reference diameter", 15000)]
    [InlineData(20, 0.499, 4, "module", 0.5)]
    [InlineData(20, 1, 3.999, "face width", 4)]
    [InlineData(20, 1, 1200.1, "face width", 1200)]
    public void A_gear_is_covered_or_its_miss_is_named(int teeth, double module, double face, string? quantity, double bound)
    {
        GradeMiss? miss = GradeRange.Of(ExternalGear.Create(new GearData(teeth, module, TestRacks.A, teeth < 12 ? 0.5 : 0)), face);
        Assert.Equal((quantity, bound), (miss?.Quantity, miss?.Bound ?? 0));
        if (miss is not null)
        {
            Assert.Contains(miss.Value < bound ? "below" : "above", miss.ToString(), StringComparison.Ordinal);
        }
    }
}
