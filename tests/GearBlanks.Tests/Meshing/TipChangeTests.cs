using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Meshing;

/// <summary>Shorter tips as they are typed in: hundredths of a millimetre on the safe side.</summary>
public sealed class TipChangeTests
{
    private static readonly Toothing Gear = Toothing.Of(new GearData(20, 1, TestRacks.A, 0, 0, 22.004));
    private static readonly Toothing Ring = Toothing.Of(new RingData(60, 1, TestRacks.A, 70, null, 0, 0, 58.006));
    private static readonly Toothing Rack = Toothing.Of(new RackBarData(1, TestRacks.A, 30, 4));

    [Fact]
    public void A_shorter_tip_lies_on_the_grid_and_is_short_enough()
    {
        Assert.Equal(21.9, TipChange.Shortened(Gear, 0.1), 1e-12);
        Assert.Equal(21.99, TipChange.Shortened(Gear, 0.0100), 1e-12);
        Assert.Equal(58.11, TipChange.Shortened(Ring, 0.1), 1e-12);
        Assert.Equal(0.87, TipChange.Shortened(Rack, 0.125), 1e-12);

        // Already on the grid, it takes the next step: what a sum of doubles leaves must not undo it.
        Assert.Equal(0.79, TipChange.Shortened(Rack, 0.2), 1e-12);
    }

    [Theory]
    [InlineData(0.0123, "Lower the tip diameter of a by 0.025 mm.", "Raise the tip diameter of a by 0.025 mm.", "Lower the tip height of a by 0.013 mm.")]
    [InlineData(0.1, "Lower the tip diameter of a by 0.2 mm.", "Raise the tip diameter of a by 0.2 mm.", "Lower the tip height of a by 0.1 mm.")]
    public void A_length_is_told_in_the_words_of_the_kind(double shorter, string ofGear, string ofRing, string ofRack)
    {
        Assert.Equal(ofGear, TipChange.By(Gear, "a", shorter));
        Assert.Equal(ofRing, TipChange.By(Ring, "a", shorter));
        Assert.Equal(ofRack, TipChange.By(Rack, "a", shorter));
    }

    [Theory]
    [InlineData(21.5)]
    [InlineData(21.03)]
    [InlineData(19.64)]
    public void The_longest_tip_with_room_is_found(double longest)
    {
        double Tip(Toothing one) => 2 * ((ExternalGear)one).TipRadius;
        string expected = FormattableString.Invariant($"Lower the tip diameter of a to {longest:0.##} mm");
        Assert.Equal(expected, TipChange.To(Gear, "a", one => longest + 1e-6 - Tip(one)));
        Assert.Null(TipChange.To(Gear, "a", _ => -1));
    }
}
