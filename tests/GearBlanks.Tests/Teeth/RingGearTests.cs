using CsCheck;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using Point = GearBlanks.Curves.Point;

namespace GearBlanks.Tests.Teeth;

/// <summary>What must hold for every ring, and rings against the external gears that fill their gaps.</summary>
public sealed class RingGearTests
{
    private const int Rings = 2000;

    // Chords leave less than this.
    private const double Fineness = 2e-5;

    [Fact]
    public void Outlines_close_run_counter_clockwise_and_keep_their_radii() => RandomRings.Legal.Sample(
        ring =>
        {
            Outline outline = ring.Outline();
            List<Point> points = [.. outline.Pattern.SelectMany(curve => Along(curve, 24))];
            double twiceArea = points.Zip(points.Skip(1), (a, b) => (a.X * b.Y) - (a.Y * b.X)).Sum();
            double least = points.Min(p => p.Radius);
            double most = points.Max(p => p.Radius);
            Assert.InRange(twiceArea * ring.Teeth / Math.PI, least * least * 2 * 0.9, most * most * 2);
            Assert.Equal(ring.TipRadius, least, 1e-11 * (1 + ring.RootRadius));
            Assert.Equal(ring.RootRadius, most, 1e-11 * (1 + ring.RootRadius));
            Assert.True(ring.BaseRadius <= ring.TipRadius && ring.TipRadius < ring.FormRadius && ring.FormRadius <= ring.RootRadius && ring.RootRadius < ring.RimRadius);
            Assert.All(outline.Pattern, curve => Assert.True(curve.Length > 0));
            ArcPath path = OutlineFit.Fit(outline, 0.001 * ring.Module);
            Assert.All(path.Vertices, v => Assert.True(double.IsFinite(v.Point.X + v.Point.Y + v.Bulge)));
        },
        iter: Rings);

    [Fact]
    public void The_root_round_is_tangent_and_the_side_falls_steadily_in_its_half_pitch() => RandomRings.Legal.Sample(
        ring =>
        {
            double half = Math.PI / ring.Teeth;
            Curve[] rising = [.. ring.Outline().Pattern.TakeWhile(curve => curve != ring.Flank), ring.Flank];
            List<Point> side = [.. rising.SelectMany(curve => Along(curve, 40))];
            Assert.All(side, p => Assert.InRange(p.Angle, -half - 1e-10, 1e-10));
            Assert.All(side.Zip(side.Skip(1)), pair => Assert.True(pair.Second.Radius <= pair.First.Radius + (1e-10 * ring.RootRadius)));
            Assert.All(side.Where(p => p.Radius < ring.RootRadius * (1 - 1e-7)), p => Assert.Equal(p.Angle, ring.SideAngleAt(p.Radius), 1e-7));
            Assert.Equal(ring.RootFilletRadius > 0 ? 2 : 1, rising.Length);
            if (rising is [Arc round, var flank])
            {
                double slack = 1e-9 + (1e-14 * ring.RootRadius / round.Radius);
                Assert.Equal(0, round.TangentAt(round.End).Cross(flank.TangentAt(flank.Start)), slack);
                Assert.True(round.TangentAt(round.End).Dot(flank.TangentAt(flank.Start)) > 0);
                Assert.Equal(0, round.TangentAt(round.Start).Dot(Vector.AtAngle(round.StartPoint.Angle)), slack);
            }
        },
        iter: Rings);

    [Fact]
    public void Thickness_on_the_reference_circle_is_the_formula_where_the_involute_crosses_it() => RandomRings.Legal.Sample(
        ring =>
        {
            RingData d = ring.Data;
            double thickness = (d.Module * ((Math.PI / 2) + (2 * d.ProfileShift * Math.Tan(d.Rack.PressureAngle)))) - d.Thinning;
            Assert.Equal(thickness, ring.ToothThickness, 1e-12 * ring.ReferenceRadius);
            if (ring.ReferenceRadius < ring.FormRadius && ring.ReferenceRadius > ring.TipRadius)
            {
                Point p = ring.Flank.PointAt(Math.Tan(ring.PressureAngle));
                Assert.Equal(ring.ReferenceRadius, p.Radius, 1e-12 * ring.ReferenceRadius);
                Assert.Equal(thickness, -2 * p.Angle * p.Radius, 1e-12 * ring.ReferenceRadius);
            }

            Assert.Equal(ring.IsPointed ? 0 : -2 * ring.Flank.EndPoint.Angle * ring.TipRadius, ring.TipThickness, 1e-10 * ring.RootRadius);
        },
        iter: Rings);

    // The sign of x is ISO 21771's: positive thickens the ring's teeth, so the gear that fills its gaps is thinner: its x has the other sign.
    [Theory]
    [InlineData(40, 20, 0, 0)]
    [InlineData(60, 20, 0.4, 0)]
    [InlineData(60, 20, -0.5, 0)]
    [InlineData(100, 25, 0.3, 0.1)]
    [InlineData(80, 14.5, 0, 0.2)]
    [InlineData(45, 30, -0.2, 0.05)]
    public void A_sharp_ring_is_the_complement_of_an_external_gear_turned_by_half_a_pitch(int teeth, double degrees, double x, double thinning)
    {
        BasicRack rack = new("ring", TestRacks.Radians(degrees), 0.5, 1.1, 0);
        var ring = RingGear.Create(new RingData(teeth, 2, rack, 2 * (teeth + 10), 0, x, thinning));
        double generating = x - (thinning / (4 * Math.Tan(rack.PressureAngle)));
        Geometry Filled(double shift)
        {
            var gear = ExternalGear.Create(new GearData(teeth, 2, rack with { Addendum = 1.1, FilletRadius = 0.05 }, shift));
            Assert.True(gear.FormRadius < ring.TipRadius);
            return Polygons.Union(Polygons.Disc(ring.TipRadius), Polygons.Of(gear.Outline().Moved(Motion.Turn(Math.PI / teeth))));
        }

        Assert.InRange(Polygons.Apart(Polygons.Of(ring.Outline()), Filled(-generating)), 0, Fineness);
        Assert.True(Polygons.Apart(Polygons.Of(ring.Outline()), Filled(-generating + 0.001)) > 5 * Fineness);
    }

    [Theory]
    [InlineData(40, 20, 0, 0.3)]
    [InlineData(60, 25, 0.4, 0.5)]
    [InlineData(100, 14.5, -0.3, 0.7)]
    public void A_root_round_is_what_shrinking_and_growing_the_gap_leaves(int teeth, double degrees, double x, double round)
    {
        BasicRack rack = new("ring", TestRacks.Radians(degrees), 0.8, 1.1, 0);
        var data = new RingData(teeth, 2, rack, 2 * (teeth + 10), 0, x);
        Geometry sharp = Polygons.Of(RingGear.Create(data).Outline());
        Geometry rounded = Polygons.Of(RingGear.Create(data with { RootFilletRadius = round }).Outline());
        Assert.InRange(Polygons.Apart(rounded, Polygons.RoundedOutside(sharp, round)), 0, Fineness);
    }

    [Theory]
    [InlineData(false, 0.3)]
    [InlineData(false, 0.5)]
    [InlineData(true, 0.3)]
    [InlineData(true, 0.7)]
    public void A_tip_round_is_what_shrinking_and_growing_the_teeth_leaves(bool isRing, double round)
    {
        BasicRack rack = TestRacks.A with { Addendum = 0.8, FilletRadius = 0.38 };
        GearData data = isRing ? new RingData(60, 2, rack, 140, 0.8) : new GearData(30, 2, rack);
        Geometry sharp = Polygons.Of(Gear.Of(data).Outline());
        Geometry rounded = Polygons.Of(Gear.Of(data with { Tip = new TipForm(round) }).Outline());
        Assert.InRange(Polygons.Apart(rounded, isRing ? Polygons.RoundedInside(sharp, round) : Polygons.RoundedOutside(sharp, round)), 0, Fineness);
        Assert.True(Polygons.Apart(rounded, sharp) > 5 * Fineness);
    }

    [Fact]
    public void A_sharp_root_has_no_round_and_the_widest_one_no_root_circle()
    {
        var data = new RingData(60, 2, TestRacks.A, 140, 0);
        var sharp = RingGear.Create(data);
        Assert.Equal(sharp.RootRadius, sharp.FormRadius);
        Assert.Equal(4, sharp.Outline().Pattern.Length);
        var e = Assert.Throws<GearGeometryException>(() => RingGear.Create(data with { RootFilletRadius = 3 }));
        Assert.Equal("root-round-too-wide", e.ShapeCase);
        var full = RingGear.Create(data with { RootFilletRadius = e.Limit * (1 - 1e-12) });
        Outline outline = full.Outline();
        Assert.DoesNotContain(outline.Pattern, curve => curve is Arc { Length: > 1e-6 } arc && Math.Abs(arc.Radius - full.RootRadius) < 1e-9);
    }

    // Where the flanks meet exactly on the root circle nothing is left to bracket.
    [Fact]
    public void The_deepest_root_is_found_by_halving_and_always_answered()
    {
        (double low, double high) = (1.25, 3);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            Exception? e = Record.Exception(() => RingGear.Create(new RingData(40, 1, TestRacks.A with { Dedendum = middle }, 60, 0, -0.5)));
            Assert.True(e is null or GearGeometryException { ShapeCase: "no-root" });
            (low, high) = e is null ? (middle, high) : (low, middle);
        }

        Assert.InRange(low, 1.5, 2.9);
    }

    [Fact]
    public void Gear_data_of_a_ring_makes_a_ring()
    {
        GearData data = new RingData(60, 2, TestRacks.A, 140);
        Assert.IsType<RingGear>(Gear.Of(data));
        Assert.IsType<ExternalGear>(Gear.Of(new GearData(60, 2, TestRacks.A)));
    }

    private static IEnumerable<Point> Along(Curve curve, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
}
