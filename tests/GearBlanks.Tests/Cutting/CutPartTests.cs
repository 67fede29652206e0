using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;

namespace GearBlanks.Tests.Cutting;

/// <summary>What a beam leaves that runs along the written contour: its disc taken off by a general-purpose library.</summary>
public sealed class CutPartTests
{
    // mm: what the sampled polygons lose, on top of the tolerance of the written pieces.
    private const double Sampling = 1.5e-4;
    private const double Tolerance = 0.001;

    [Theory]
    [InlineData(8, 1.0, 'A', 0.0, 0.2)]
    [InlineData(12, 1.0, 'A', 0.0, 0.3)]
    [InlineData(13, 0.8, 'A', 0.3, 0.15)]
    [InlineData(20, 0.5, 'C', 0.0, 0.25)]
    [InlineData(40, 1.0, 'D', 0.2, 0.5)]
    public void The_beam_gives_back_the_nominal_part_wherever_it_reaches(int teeth, double module, char type, double shift, double kerf)
    {
        Outline nominal = ExternalGear.Create(new GearData(teeth, module, TestRacks.Iso(type), shift)).Outline();
        Polygon drawn = SampledOutline.Polygon(nominal);
        Geometry cut = Cut(nominal, kerf, Tolerance);
        Coordinate[] reached = [.. Reached(nominal, drawn, kerf / 2)];

        // Hollow rounds apart, that is nearly everything.
        Assert.True(reached.Length > 60, $"{reached.Length} points");
        Assert.InRange(SampledOutline.Furthest(reached, cut), 0, Tolerance + Sampling);

        // And nowhere does it take anything of the part.
        Assert.True(SampledOutline.Grown(cut, Tolerance + Sampling).Covers(SampledOutline.Grown(drawn, -1e-6)));
    }

    // The meshes of the tide dial: teeth and profile shifts of both gears, centre distance.
    [Theory]
    [InlineData(24, -0.10, 59, -0.376, 32.8)]
    [InlineData(57, 0.222, 24, 0.30, 32.8)]
    [InlineData(13, 0.30, 87, -0.30, 40.0)]
    [InlineData(19, 0.15, 81, -0.15, 40.0)]
    public void Two_compensated_gears_have_their_nominal_backlash_once_they_are_cut(int z1, double x1, int z2, double x2, double distance)
    {
        const double Fine = 0.0002;
        var pair = GearPair.At(Wheel(z1, x1), Wheel(z2, x2), distance);
        double first = ThicknessAt(Cut(pair.First.Outline(), 0.2, Fine), pair.FirstWorkingRadius);
        double second = ThicknessAt(Cut(pair.Second.Outline(), 0.2, Fine), distance - pair.FirstWorkingRadius);
        double pitch = 2 * Math.PI * pair.FirstWorkingRadius / z1;
        Assert.Equal(pair.CircumferentialBacklash, pitch - first - second, 0.001);

        // Left uncompensated the same beam takes k / cos of the working angle off each tooth.
        double loss = 0.2 / Math.Cos(pair.WorkingPressureAngle);
        double thin = ThicknessAt(SampledOutline.Grown(SampledOutline.Polygon(pair.First.Outline()), -0.1), pair.FirstWorkingRadius);
        Assert.Equal(first - loss, thin, 0.001);
    }

    [Theory]
    [InlineData(24, 0.8, 0.1, 0.2, false)]
    [InlineData(12, 1.0, 0.0, 0.3, true)]
    public void Sizes_are_predicted_as_the_beam_leaves_them(int teeth, double module, double shift, double kerf, bool compensated)
    {
        var gear = ExternalGear.Create(new GearData(teeth, module, TestRacks.A, shift));
        var blank = new Blank("wheel", gear, 2, new Cutouts { Bore = new RoundBore(4) }, []);
        Part part = PartBuilder.Build(blank);
        var width = Kerf.Of(kerf);
        CutSizes sizes = compensated ? CutSizes.Compensated(blank, Compensation.Of(part, width), width) : CutSizes.Uncompensated(blank, width);
        Geometry cut = compensated ? Cut(gear.Outline(), kerf, 1e-4) : SampledOutline.Grown(SampledOutline.Polygon(gear.Outline()), -kerf / 2);
        double[] radii = [.. cut.Coordinates.Select(point => Math.Sqrt((point.X * point.X) + (point.Y * point.Y)))];
        Assert.Equal(2 * radii.Max(), sizes.Tip.Greatest, 5e-4);
        Assert.Equal(2 * radii.Min(), sizes.Root!.Value.Least, 5e-4);
        Assert.Equal(ThicknessAt(cut, gear.ReferenceRadius), sizes.ToothThickness!.Value.Least, 5e-4);
        Assert.Equal(compensated ? 4 : 4 + kerf, sizes.Bore!.Value.Least, 1e-12);
    }

    [Fact]
    public void Roots_that_the_beam_does_not_reach_are_predicted()
    {
        var gear = ExternalGear.Create(new GearData(20, 1, TestRacks.A));
        var blank = new Blank("wheel", gear, 2, Cutouts.None, []);
        var kerf = Kerf.Of(1.5);
        Part part = Compensation.Of(PartBuilder.Build(blank), kerf);
        double root = CutSizes.Compensated(blank, part, kerf).Root!.Value.Greatest;
        double cut = 2 * Cut(gear.Outline(), 1.5, 1e-4).Coordinates.Min(point => Math.Sqrt((point.X * point.X) + (point.Y * point.Y)));
        Assert.True(root > (2 * gear.RootRadius) + 0.05);
        Assert.Equal(cut, root, 5e-4);
        Assert.NotEmpty(part.Remarks);
    }

    private static ExternalGear Wheel(int teeth, double shift) => ExternalGear.Create(new GearData(teeth, 0.8, TestRacks.A, shift, 0.016));

    private static Geometry Cut(Outline nominal, double kerf, double tolerance)
    {
        Part written = Compensation.Of(new Part("part", nominal, [], [], []), Kerf.Of(kerf));
        return SampledOutline.Grown(SampledOutline.Polygon(OutlineFit.Fit(written.Outside, tolerance)), -kerf / 2);
    }

    // Points of the outline at which the beam can stand beside it without taking anything of it.
    private static IEnumerable<Coordinate> Reached(Outline nominal, Polygon drawn, double radius)
    {
        Curve[] curves = [.. nominal.Pattern];
        var points = curves.SelectMany(curve => Enumerable.Range(1, 39).Select(i => curve.Start + ((curve.End - curve.Start) * i / 40)).Select(t => (At: curve.PointAt(t), Beside: curve.PointAt(t) + (curve.TangentAt(t).TurnedRight * radius))));
        var distance = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(drawn.Boundary);
        return points
            .Where(point => distance.Distance(SampledOutline.Factory.CreatePoint(new Coordinate(point.Beside.X, point.Beside.Y))) > radius - 1e-4)
            .Select(point => new Coordinate(point.At.X, point.At.Y));
    }

    // The arc of a circle about the origin within the tooth on +X: where the polygon's edge crosses the circle to either side.
    private static double ThicknessAt(Geometry polygon, double radius)
    {
        Coordinate[] ring = polygon.Coordinates;
        var angles = new List<double>();
        for (int i = 1; i < ring.Length; i++)
        {
            (Coordinate a, Coordinate b) = (ring[i - 1], ring[i]);
            (double ra, double rb) = (Math.Sqrt((a.X * a.X) + (a.Y * a.Y)), Math.Sqrt((b.X * b.X) + (b.Y * b.Y)));
            if (ra < radius != rb < radius && a.X > 0)
            {
                double share = (radius - ra) / (rb - ra);
                angles.Add(Math.Atan2(a.Y + (share * (b.Y - a.Y)), a.X + (share * (b.X - a.X))));
            }
        }

        return radius * (angles.Where(angle => angle > 0).Min() - angles.Where(angle => angle < 0).Max());
    }
}
