using System.Collections.Concurrent;
using GearBlanks.Curves;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace GearBlanks.Tests.Teeth;

/// <summary>The exact outline against an independent simulation of generating by a rack.</summary>
public sealed class GeneratingSimulationTests
{
    private const double Allowed = 0.002;

    private static readonly int[] ToothCounts = [6, 8, 11, 17, 40, 97];
    private static readonly double[] Shifts = [-0.5, -0.2, 0, 0.3, 0.8];

    public static TheoryData<char, double, double> Families()
    {
        var rows = new TheoryData<char, double, double>();
        foreach (char type in TestRacks.Types)
        {
            foreach (double degrees in (double[])[14.5, 20, 25])
            {
                rows.Add(type, degrees, 0.3);
                rows.Add(type, degrees, 3);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void The_exact_outline_agrees_with_the_simulation_or_the_gear_is_refused_by_name(char type, double degrees, double module)
    {
        BasicRack rack = TestRacks.Iso(type, degrees);
        var failures = new ConcurrentQueue<string>();
        Parallel.ForEach(ToothCounts.SelectMany(_ => Shifts, (z, x) => (z, x)), combination =>
        {
            var data = new GearData(combination.z, module, rack, combination.x);
            if (Judge(data) is { } failure)
            {
                failures.Enqueue(FormattableString.Invariant($"{type} at {degrees}, m {module}, z {data.Teeth}, x {data.ProfileShift}: {failure}"));
            }
        });
        Assert.True(failures.IsEmpty, string.Join('\n', failures));
    }

    [Fact]
    public void The_refusals_among_these_combinations_are_known()
    {
        var refused = Families()
            .SelectMany(_ => ToothCounts, (row, z) => (Type: row.Data.Item1, Degrees: row.Data.Item2, Module: row.Data.Item3, Teeth: z))
            .SelectMany(_ => Shifts, (c, x) => (c.Type, c.Degrees, c.Teeth, x, Case: Answer(new GearData(c.Teeth, c.Module, TestRacks.Iso(c.Type, c.Degrees), x)).Refusal))
            .Where(c => c.Case is not null)
            .ToLookup(c => c.Case!);
        Assert.Equal(["rack-round-too-wide", "severed"], refused.Select(group => group.Key).Order());
        Assert.All(refused["rack-round-too-wide"], c => Assert.True(c.Degrees == 25 && c.Type is 'A' or 'D'));
        Assert.Equal(2 * 2 * 30, refused["rack-round-too-wide"].Count());
        Assert.Equal([('D', 14.5, 6, -0.5, "severed"), ('D', 14.5, 6, -0.5, "severed")], refused["severed"]);
    }

    [Fact]
    public void The_simulation_itself_is_fine_enough()
    {
        // Steps and chords that leave an eighth of the error move the boundary by less than 0.0005 mm.
        var data = new GearData(8, 3, TestRacks.A, -0.2);
        GeneratingSimulation simulation = SimulationOf(data);
        Geometry usual = simulation.Cut();
        Geometry finer = (simulation with { Fineness = simulation.Fineness / 8 }).Cut();
        var distance = new IndexedFacetDistance(finer.Boundary);
        Assert.True(usual.Coordinates.Max(p => distance.Distance(usual.Factory.CreatePoint(p))) < 0.0005);
    }

    [Theory]
    [InlineData(0.002, 0)]
    [InlineData(0, 0.003)]
    public void A_slightly_different_gear_is_told_apart(double shift, double fillet)
    {
        var data = new GearData(17, 3, TestRacks.A, 0.3);
        Geometry cut = SimulationOf(data).Cut();
        BasicRack other = TestRacks.A with { FilletRadius = TestRacks.A.FilletRadius - fillet };
        Assert.Null(Disagreement(ExternalGear.Create(data), cut));
        Assert.NotNull(Disagreement(ExternalGear.Create(data with { ProfileShift = 0.3 + shift, Rack = other }), cut));
    }

    private static GeneratingSimulation SimulationOf(GearData data) => new(
        data.Teeth, data.Module, data.Rack.PressureAngle, data.Rack.Addendum, data.Rack.Dedendum, data.Rack.FilletRadius, data.ProfileShift);

    private static string? Judge(GearData data)
    {
        (ExternalGear? gear, string? refusal) = Answer(data);
        GeneratingSimulation simulation = SimulationOf(data);
        if (simulation.RackLand < 0)
        {
            return refusal == "rack-round-too-wide" ? null : $"the rack's round is too wide, but the answer is {refusal ?? "a gear"}";
        }

        Geometry cut = simulation.Cut();
        if (Parts(cut, data.Module) > 1)
        {
            return refusal == "severed" ? null : $"the rack cuts the tooth off, but the answer is {refusal ?? "a gear"}";
        }

        return gear is null ? $"the tooth stands, but it is refused as {refusal}" : Disagreement(gear, cut);
    }

    private static (ExternalGear? Gear, string? Refusal) Answer(GearData data)
    {
        try
        {
            return (ExternalGear.Create(data), null);
        }
        catch (GearGeometryException e)
        {
            return (null, e.ShapeCase);
        }
    }

    // Slivers between two positions of the rack are not parts.
    private static int Parts(Geometry cut, double module) =>
        Enumerable.Range(0, cut.NumGeometries).Count(i => cut.GetGeometryN(i).Area > 0.001 * module * module);

    private static string? Disagreement(ExternalGear gear, Geometry cut)
    {
        LineString exact = HalfGap(gear);
        var exactDistance = new IndexedFacetDistance(exact);
        double fromExact = Farthest(exact, cut);
        double fromCut = cut.Coordinates.Where(p => IsBoundary(p, gear)).Max(p => exactDistance.Distance(exact.Factory.CreatePoint(p)));
        return fromExact < Allowed && fromCut < Allowed
            ? null
            : FormattableString.Invariant($"exact to cut {fromExact:0.00000} mm, cut to exact {fromCut:0.00000} mm");
    }

    private static double Farthest(LineString line, Geometry from)
    {
        var distance = new IndexedFacetDistance(from.Boundary);
        return line.Coordinates.Max(p => distance.Distance(line.Factory.CreatePoint(p)));
    }

    // The sector's straight sides are not the gear's.
    private static bool IsBoundary(Coordinate p, ExternalGear gear)
    {
        double radius = Math.Sqrt((p.X * p.X) + (p.Y * p.Y));
        double angle = Math.Atan2(p.Y, p.X);
        return radius > gear.RootRadius * 0.9 && angle * radius > 1e-9 && ((Math.PI / gear.Teeth) - angle) * radius > 1e-9;
    }

    // Root, fillet, flank and tip of the half gap clockwise of the tooth on +X, turned so that the gap's centre line is +X.
    private static LineString HalfGap(ExternalGear gear)
    {
        double half = Math.PI / gear.Teeth;
        var curves = new List<Curve>();
        if (gear.RootHalfAngle > 0)
        {
            curves.Add(new Arc(default, gear.RootRadius, -half, gear.RootHalfAngle));
        }

        curves.Add(gear.Fillet);
        curves.Add(gear.Flank);
        if (!gear.IsPointed)
        {
            double tip = gear.HalfAngleAt(gear.TipRadius);
            curves.Add(new Arc(default, gear.TipRadius, -tip, tip));
        }

        var turn = Motion.Turn(half);
        return new GeometryFactory().CreateLineString([.. curves
            .SelectMany(curve => Enumerable.Range(0, 401).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / 400))))
            .Select(turn.Apply)
            .Select(p => new Coordinate(p.X, p.Y))]);
    }
}
