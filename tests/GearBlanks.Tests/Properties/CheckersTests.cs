using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Properties;

/// <summary>The checks of random gears notice what they are for, spoilt on purpose.</summary>
public sealed class CheckersTests
{
    private static readonly Specimen Good = Specimen.Of(ExternalGear.Create(new GearData(24, 0.8, TestRacks.A, -0.1, 0.016)), 0.001);

    [Fact]
    public void A_sound_gear_passes()
    {
        ExactProperties.Check(Good);
        WrittenProperties.Check(Good);
    }

    [Fact]
    public void An_outline_of_other_numbers_is_told_apart()
    {
        GearData data = Good.Gear.Data;
        Assert.All(
            [
                data with { Thinning = data.Thinning + 1e-8 }, data with { ProfileShift = data.ProfileShift + 1e-8 }, data with { TipDiameter = (2 * Good.Gear.TipRadius) + 1e-8 },
                data with { Rack = data.Rack with { Dedendum = data.Rack.Dedendum + 1e-8 } }, data with { Teeth = 25 },
            ],
            other => Refused(() => ExactProperties.Check(Good with { Exact = ExternalGear.Create(other).Outline() })));
    }

    [Fact]
    public void An_outline_run_backwards_is_told_apart() => Refused(() => ExactProperties.Check(Good with { Exact = Good.Exact.Reversed() }));

    [Fact]
    public void A_tolerance_not_kept_is_told_apart() => Refused(() => WrittenProperties.Check(Good with { Tolerance = Good.Tolerance / 3 }));

    [Fact]
    public void A_tooth_unlike_the_first_is_told_apart()
    {
        int last = Good.Written.Vertices.Length - 1;
        PathVertex vertex = Good.Written.Vertices[last];
        Refused(() => WrittenProperties.Check(Good with { Written = new ArcPath(Good.Written.Vertices.SetItem(last, vertex with { Bulge = Math.BitIncrement(vertex.Bulge) }), true) }));
        Refused(() => WrittenProperties.Check(Good with { Written = new ArcPath(Good.Written.Vertices.SetItem(last, vertex with { Point = vertex.Point + new Vector(2e-9, 0) }), true) }));
    }

    [Theory]
    [InlineData(0.0, true)]
    [InlineData(0.09, true)]
    [InlineData(0.11, false)]
    [InlineData(0.5, false)]
    public void A_path_that_meets_itself_is_told_apart(double down, bool isSimple)
    {
        // A hook: along, round a half circle, and back to 0.1 above the first line or beyond it.
        PathArc[] hook =
        [
            new(new Point(0, 0), new Point(10, 0), 0), new(new Point(10, 0), new Point(10, 2), 1), new(new Point(10, 2), new Point(5, 2), 0),
            new(new Point(5, 2), new Point(5, 0.1 - down), 0),
        ];
        Assert.Equal(isSimple, Apart.Are(hook));
    }

    [Fact]
    public void A_curve_that_crosses_a_line_is_told_apart()
    {
        var bow = new Arc(default, 1, 0.1, Math.PI - 0.2);
        Assert.True(Certified.IsPositive(bow, p => p.Y, 0));
        Assert.True(Certified.IsPositive(bow, p => 1.0000001 - p.Y, 0));
        Assert.False(Certified.IsPositive(bow, p => 0.9999999 - p.Y, 0));
    }

    private static void Refused(Action check) => Assert.ThrowsAny<Xunit.Sdk.XunitException>(check);
}
