using System.Collections.Immutable;
using CsCheck;
using Fractions;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using static GearBlanks.Tests.Mechanisms.TestJobs;

namespace GearBlanks.Tests.Mechanisms;

/// <summary>From a job as written to a mechanism with everything filled in.</summary>
public sealed class ResolverTests
{
    private static readonly Job Simple = Pair(Gear("a", 20), Gear("b", 40), 30);

    [Fact]
    public void Profiles_left_out_go_by_their_default_names()
    {
        Mechanism mechanism = Simple.Resolved();
        Assert.Equal(DefaultNames.Limits, mechanism.Limits.Name);
        Assert.Equal(DefaultNames.Machine, mechanism.Machine.Name);
        Assert.All(mechanism.Gears, gear => Assert.Equal(DefaultNames.Rack, gear.Blank.Gear.Data.Rack.Name));
        Assert.All(mechanism.Gears, gear => Assert.Null(gear.Material));
    }

    [Fact]
    public void What_an_item_says_goes_before_the_defaults()
    {
        Job job = Simple with
        {
            Defaults = Defaults with { Rack = "other", Machine = "other", Limits = "other", Material = "brass", Bore = 3, Thinning = 0.01, Thickness = 3, Module = 2 },
        };
        job = job.WithGear("a", gear => gear with { Thickness = 1, Bore = 5, Thinning = 0.05 }).Opened(30);
        Mechanism mechanism = job.Resolved();
        (MountedGear a, MountedGear b) = (mechanism.Named("a"), mechanism.Named("b"));
        Assert.Equal(("other", "other"), (mechanism.Limits.Name, mechanism.Machine.Name));
        Assert.Equal((1.0, 5.0, 0.05), (a.Blank.Thickness, ((RoundBore)a.Blank.Cutouts.Bore!).Diameter, a.Blank.Gear.Data.Thinning));
        Assert.Equal((3.0, 3.0, 0.01), (b.Blank.Thickness, ((RoundBore)b.Blank.Cutouts.Bore!).Diameter, b.Blank.Gear.Data.Thinning));
        Assert.Equal((2.0, "other", "brass"), (b.Blank.Gear.Module, b.Blank.Gear.Data.Rack.Name, b.Material?.Name));
    }

    [Fact]
    public void A_bore_of_nought_is_none_even_against_the_default()
    {
        Job job = Simple with { Defaults = Defaults with { Bore = 4 } };
        Mechanism mechanism = job.WithGear("a", gear => gear with { Bore = 0 }).Resolved();
        Assert.Null(mechanism.Named("a").Blank.Cutouts.Bore);
        Assert.Equal(new RoundBore(4), mechanism.Named("b").Blank.Cutouts.Bore);
    }

    [Fact]
    public void A_gear_with_a_bore_of_its_own_does_not_take_the_default_s_shape()
    {
        JobBoreShape flat = new(At(9), BoreForm.D, 2.5, null, null, 0.1, 0.3);
        Job job = Simple with { Defaults = Defaults with { Bore = 3, BoreShape = flat } };
        Assert.Equal(new FlattedBore(3, 1, 2.5, 0.1, 0.3), job.Resolved().Named("a").Blank.Cutouts.Bore);
        Assert.Equal(new RoundBore(5), job.WithGear("a", gear => gear with { Bore = 5 }).Resolved().Named("a").Blank.Cutouts.Bore);
        Assert.Null(job.WithGear("a", gear => gear with { Bore = 0 }).Resolved().Named("a").Blank.Cutouts.Bore);
        JobBoreShape own = new(At(8), BoreForm.Keyway, null, 1, 0.5, 0, 0);
        Assert.Equal(new KeywayBore(3, 1, 0.5), job.WithGear("a", gear => gear with { BoreShape = own }).Resolved().Named("a").Blank.Cutouts.Bore);
        Assert.Equal(
            new KeywayBore(3, 1, 0.5), job.WithGear("a", gear => gear with { BoreShape = own with { KeyDepth = null, Across = 3.5 } }).Resolved().Named("a").Blank.Cutouts.Bore);
        Assert.Equal(
            new FlattedBore(3, 2, 2), job.WithGear("a", gear => gear with { BoreShape = new(At(8), BoreForm.TwoFlats, 2, null, null, 0, 0) }).Resolved().Named("a").Blank.Cutouts.Bore);
        Assert.Equal(
            new HexagonBore(4), job.WithGear("a", gear => gear with { BoreShape = new(At(8), BoreForm.Hexagon, 4, null, null, 0, 0) }).Resolved().Named("a").Blank.Cutouts.Bore);
    }

    [Fact]
    public void A_bore_or_crossings_that_cannot_be_are_told_at_their_own_place()
    {
        JobBoreShape flat = new(At(9), BoreForm.D, 3.5, null, null, 0, 0);
        Problem bore = Assert.Single((Simple with { Defaults = Defaults with { Bore = 3 } }).WithGear("a", gear => gear with { BoreShape = flat }).Problems());
        Assert.Equal((At(9), "bore-shape"), (bore.Place, bore.Key));
        Assert.Contains("flat-outside-bore", bore.Message, StringComparison.Ordinal);
        JobCrossings wide = new(At(7), 5, 100, null, 2, 3, null, 1, 0);
        Problem crossings = Assert.Single(Simple.WithGear("a", gear => gear with { Crossings = wide }).Problems());
        Assert.Equal((At(7), "crossings"), (crossings.Place, crossings.Key));
    }

    [Fact]
    public void A_hub_s_width_counts_from_the_bore_and_arms_are_straight_unless_they_taper()
    {
        JobCrossings crossings = new(At(7), 3, null, 2.5, 1, 1, null, 0.1, 0.4);
        Job job = Simple.WithGear("b", gear => gear with { Bore = 3, Crossings = crossings });
        Assert.Equal(new Crossings(3, 8, 1, 1, 1, 0.1, 0.4), job.Resolved().Named("b").Blank.Cutouts.Crossings);
        job = job.WithGear("b", gear => gear with { Crossings = crossings with { HubWidth = null, HubDiameter = 7, ArmWidthAtRim = 1.5 } });
        Assert.Equal(new Crossings(3, 7, 1, 1, 1.5, 0.1, 0.4), job.Resolved().Named("b").Blank.Cutouts.Crossings);
    }

    [Fact]
    public void Teeth_that_are_named_are_marked_whatever_the_defaults_say_and_the_part_number_leads_the_lettering()
    {
        Job job = Simple with { Defaults = Defaults with { Mark = false, Lettering = true } };
        Blank blank = job.WithGear("a", gear => gear with { MarkTeeth = [5, 7], PartNumber = "TD-12" }).Resolved().Named("a").Blank;
        Assert.Equal([5, 7], blank.MarkedTeeth);
        Assert.Equal("TD-12", blank.PartNumber);
        Assert.StartsWith("TD-12 | a | z", blank.Lettering, StringComparison.Ordinal);
        Assert.Empty(job.Resolved().Named("a").Blank.MarkedTeeth);
    }

    [Fact]
    public void Mark_and_lettering_are_on_unless_switched_off()
    {
        Job job = Simple with { Defaults = Defaults with { Mark = null, Lettering = null } };
        Mechanism mechanism = job.WithGear("b", gear => gear with { Mark = false, Lettering = false }).Resolved();
        Assert.Equal([1], mechanism.Named("a").Blank.MarkedTeeth);
        Assert.StartsWith("a", mechanism.Named("a").Blank.Lettering, StringComparison.Ordinal);
        Assert.Empty(mechanism.Named("b").Blank.MarkedTeeth);
        Assert.Empty(mechanism.Named("b").Blank.Lettering);
    }

    [Fact]
    public void Thinning_gives_exactly_the_wanted_backlash_at_the_measured_distance() =>
        Gen.Select(Gen.Int[17, 60], Gen.Int[17, 60], Gen.Double[-0.1, 0.4], Gen.Double[0.05, 0.2], Gen.Double[-0.1, 0.05], Gen.Double[0, 1]).Sample(
            (z1, z2, shift, wanted, apart, share) =>
            {
                // Close enough that the distance alone does not make the backlash, which a shift of 0.05 and more makes sure of.
                double distance = ((z1 + z2) / 2.0) + shift + apart;
                Job job = Pair(Gear("a", z1, shift + 0.1), Gear("b", z2), 100)
                    .WithMesh(mesh => mesh with { MeasuredDistance = distance, Backlash = wanted, ShareOfFirst = share });
                Mesh mesh = Assert.Single(job.Resolved().Meshes);
                (double first, double second) = (mesh.First.Blank.Gear.Data.Thinning, mesh.Second.Blank.Gear.Data.Thinning);
                if (first < 0.25 && second < 0.25)
                {
                    Assert.Equal(wanted, mesh.Pair.CircumferentialBacklash, 1e-12);
                    Assert.Equal(share, first / (first + second), 1e-9);
                }

                Assert.Equal((100.0, distance, wanted), (mesh.DrawnDistance, mesh.MeasuredDistance, mesh.WantedBacklash));
                Assert.Equal(distance, mesh.Pair.CentreDistance);
            },
            iter: 200, threads: 1);

    [Fact]
    public void Wanted_backlash_comes_from_the_mesh_then_the_defaults_then_the_limits()
    {
        Job job = Simple with { Defaults = Defaults with { Backlash = 0.06 } };
        Assert.Equal(0.1, job.WithMesh(mesh => mesh with { Backlash = 0.1 }).Resolved().Meshes[0].Pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(0.06, job.Resolved().Meshes[0].Pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(0.04, Simple.Resolved().Meshes[0].Pair.CircumferentialBacklash, 1e-12);
        Job large = Pair(Gear("a", 20), Gear("b", 40), 60) with { Defaults = Defaults with { Module = 2 } };
        Assert.Equal(0.08, large.Resolved().Meshes[0].Pair.CircumferentialBacklash, 1e-12);
    }

    [Fact]
    public void Where_the_distance_gives_the_backlash_nothing_is_thinned() =>
        Assert.All(Simple.Opened(0.2).Resolved().Gears, gear => Assert.Equal(0, gear.Blank.Gear.Data.Thinning));

    [Fact]
    public void An_idler_takes_the_greater_of_its_two_thinnings_and_its_mate_gives_up_its_own()
    {
        Job job = Chain([Gear("a", 20), Gear("idler", 40), Gear("b", 30)], [30, 35]);
        job = job with { Meshes = [job.Meshes[0] with { Backlash = 0.04 }, job.Meshes[1] with { Backlash = 0.1 }] };
        foreach (Job either in (Job[])[job, job with { Meshes = [.. job.Meshes.Reverse()] }])
        {
            Mechanism mechanism = either.Resolved();
            Assert.Equal(0.05, mechanism.Named("idler").Blank.Gear.Data.Thinning, 1e-12);
            Assert.Equal(0, mechanism.Named("a").Blank.Gear.Data.Thinning);
            Assert.Equal(0.05, mechanism.Named("b").Blank.Gear.Data.Thinning, 1e-12);
            Assert.Equal(0.05, mechanism.Meshes.Single(mesh => mesh.Name == "a-idler").Pair.CircumferentialBacklash, 1e-12);
            Assert.Equal(0.1, mechanism.Meshes.Single(mesh => mesh.Name == "idler-b").Pair.CircumferentialBacklash, 1e-12);
        }
    }

    [Theory]
    [InlineData("a")]
    [InlineData("b")]
    public void A_given_thinning_stays_and_the_mate_takes_the_rest(string given)
    {
        Mesh mesh = Simple.WithGear(given, gear => gear with { Thinning = 0.01 }).Resolved().Meshes[0];
        Assert.Equal(0.01, (given == "a" ? mesh.First : mesh.Second).Blank.Gear.Data.Thinning);
        Assert.Equal(0.03, (given == "a" ? mesh.Second : mesh.First).Blank.Gear.Data.Thinning, 1e-12);
        Assert.Equal(0.04, mesh.Pair.CircumferentialBacklash, 1e-12);
    }

    [Fact]
    public void Two_given_thinnings_stay_whatever_they_make()
    {
        Mesh mesh = Pair(Gear("a", 20, thinning: 0), Gear("b", 40, thinning: 0.01), 30).Resolved().Meshes[0];
        Assert.Equal(0.01, mesh.Pair.CircumferentialBacklash, 1e-12);
        Assert.Equal(0.04, mesh.WantedBacklash);
    }

    [Fact]
    public void Thinning_stops_at_a_quarter_of_a_module_and_the_backlash_fails()
    {
        Job job = Simple.Opened(-0.9);
        Assert.All(job.Resolved().Gears, gear => Assert.Equal(0.25, gear.Blank.Gear.Data.Thinning));
        Finding backlash = job.Report().Findings.Single(finding => finding.Name == "backlash");
        Assert.Equal(Level.Fails, backlash.Level);
        Assert.True(backlash.Figure < 0);
    }

    [Fact]
    public void Axes_stand_at_a_position_or_from_one_another_in_any_order()
    {
        Job job = Simple with
        {
            Axes =
            [
                new JobAxis(At(3), "axis b", null, "elbow", 10, Math.PI / 2),
                new JobAxis(At(3), "elbow", null, "axis a", 20, -Math.PI / 6),
                Axis("axis a", 1, 2),
            ],
        };
        ImmutableArray<Axis> axes = job.WithMesh(mesh => mesh with { MeasuredDistance = 30 }).Resolved().Axes;
        Assert.Equal(["axis b", "elbow", "axis a"], axes.Select(axis => axis.Name));
        Point elbow = new(1 + (10 * Math.Sqrt(3)), 2 - 10);
        Assert.Equal(0, axes[1].Position.DistanceTo(elbow), 1e-12);
        Assert.Equal(0, axes[0].Position.DistanceTo(elbow + new Vector(0, 10)), 1e-12);
    }

    [Fact]
    public void Ten_thousand_axes_from_one_another_cost_no_stack()
    {
        const int count = 10_000;
        JobAxis[] chain = [.. Enumerable.Range(1, count).Reverse().Select(i => new JobAxis(At(3), $"{i}", null, i == 1 ? "axis a" : $"{i - 1}", 1, 0))];
        Job job = Simple with { Axes = [.. chain, .. Simple.Axes] };
        Assert.Equal(count, job.Resolved().Axes[0].Position.X, 1e-6);
    }

    [Fact]
    public void Layers_pile_up_from_the_sandwich_s_height()
    {
        Job job = Simple.WithSandwich(
            sandwich => sandwich.Name == "a",
            sandwich => sandwich with { Height = 0.5, Layers = [new JobWasher(At(2), 1.5), .. sandwich.Layers, new JobWasher(At(2), 0.3), Gear("top", 25)] });
        Mechanism mechanism = job.Resolved();
        Assert.Equal(2, mechanism.Named("a").Bottom);
        Assert.Equal(4.3, mechanism.Named("top").Bottom!.Value, 1e-12);
        Assert.Null(mechanism.Named("b").Bottom);
    }

    [Fact]
    public void Drive_and_hands_are_taken_over()
    {
        Job job = Simple with { Drive = new JobDrive(At(5), "a", new Fraction(60)), Hands = [Hand("b", new Fraction(120))] };
        Mechanism mechanism = job.Resolved();
        Assert.Equal(new Drive("a", new Fraction(60)), mechanism.Drive);
        Assert.Equal(new Hand("b hand", "b", new Fraction(120)), Assert.Single(mechanism.Hands));
    }

    [Fact]
    public void Missing_sizes_are_told_at_the_gears_that_lack_them_all_at_once()
    {
        Job job = Simple with { Defaults = Defaults with { Module = null, Thickness = null } };
        ImmutableArray<Problem> problems = job.WithGear("a", gear => gear with { Module = 1 }).Problems();
        Assert.Equal(
            [(20, "sandwiches.layers.thickness"), (40, "sandwiches.layers.module"), (40, "sandwiches.layers.thickness")],
            problems.Select(problem => (problem.Place.Line, problem.Key)));
        Assert.Contains("Gear a has no thickness", problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_size_hides_no_gear_that_cannot_be()
    {
        Job job = Chain([Gear("a", 20), Gear("stub", 21, tip: 3), Gear("b", 40)], [21, 31]).WithGear("stub", gear => gear with { Thickness = 1 });
        ImmutableArray<Problem> problems = (job with { Defaults = Defaults with { Thickness = null } }).Problems();
        Assert.Equal([20, 21, 40], problems.Select(problem => problem.Place.Line));
        Assert.Contains("tip-below-root", problems[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Gears_that_cannot_be_are_told_all_at_once_each_at_its_place()
    {
        Job job = Chain([Gear("stub", 21, tip: 3), Gear("fine", 30), Gear("pierced", 22), Gear("low", 5, -1)], [25, 26, 13])
            .WithGear("pierced", gear => gear with { Bore = 30 });
        ImmutableArray<Problem> problems = job.Problems();
        Assert.Equal([5, 21, 22], problems.Select(problem => problem.Place.Line));
        Assert.Contains("tip-below-root", problems[1].Message, StringComparison.Ordinal);
        Assert.Contains("holes-cross", problems[2].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, null)]
    [InlineData(null, "steep")]
    public void Gears_of_different_pitch_are_told_at_their_mesh(int? module, string? rack)
    {
        Problem problem = Assert.Single(Simple.WithGear("b", gear => gear with { Module = module, Rack = rack }).Opened(20).Problems());
        Assert.Equal(At(4), problem.Place);
        Assert.Contains("pitch-mismatch", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(28.1)]
    [InlineData(0)]
    public void Base_circles_that_overlap_are_told_at_their_mesh(double distance)
    {
        Problem problem = Assert.Single(Simple.Opened(distance - 30).Problems());
        Assert.Equal(At(4), problem.Place);
        Assert.Contains("no-line-of-action", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_profiles_are_told_where_they_are_asked_for()
    {
        Job job = Simple with { Defaults = Defaults with { Rack = "none", Limits = "neither", Machine = "nor", Material = "gold" } };
        ImmutableArray<Problem> problems = job.WithGear("b", gear => gear with { Rack = "own" }).Problems();
        Assert.Equal(
            [("gold", 1), ("neither", 1), ("none", 1), ("nor", 1), ("own", 40)],
            problems.Select(problem => (problem.Value!, problem.Place.Line)).Order());
    }
}
