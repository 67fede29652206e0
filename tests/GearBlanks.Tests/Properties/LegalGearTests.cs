using CsCheck;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Properties;

/// <summary>What holds for every gear that can exist, on as many random ones as are asked for.</summary>
public sealed class LegalGearTests
{
    [Fact]
    public void Every_gear_has_an_exact_outline_of_its_sizes_and_a_written_one_within_the_tolerance() => Specimen.Any.Sample(
        specimen =>
        {
            ExactProperties.Check(specimen);
            WrittenProperties.Check(specimen);
        },
        iter: Count.Gears,
        print: specimen => specimen.ToString());

    // Found among a million: two arcs for a flank, of which one had shrunk to a point.
    [Theory]
    [InlineData(90, 0.32947249415469093, 0.1454441043328608, 1.5621833939568215, 1, 0.16342987471250742, 0.8539325842696629, 0.003294724941546909)]
    [InlineData(23, 1, 0.42702790153483206, 0.8519684711247536, 1.0596806800736491, 0.32874868267577906, 0.6587416369741512, 0.00905)]
    [InlineData(49, 1, 0.32310635131198184, 1.289852656326188, 1.5514577810892172, 0.29972820651823356, 1.3705075634040442, 0.00371)]
    public void A_gear_that_once_failed_passes(
        int teeth, double module, double angle, double addendum, double dedendum, double round, double shift, double tolerance) =>
        WrittenProperties.Check(Specimen.Of(
            ExternalGear.Create(new GearData(teeth, module, new BasicRack("once", angle, addendum, dedendum, round), shift)), tolerance));
}
