using CsCheck;

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
}
