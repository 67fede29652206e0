using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Mechanisms.Conditions;

namespace GearBlanks.Tests.Mechanisms.Conditions;

/// <summary>Each finding under conditions bites where it should, and its advice, followed, is enough.</summary>
public sealed class ConditionsFindingsTests
{
    private static readonly JobConditions Distance = new(TestJobs.At(9)) { CentreDistanceTolerance = 0.04, Builds = new JobBuilds { Count = 4000 } };

    [Fact]
    public void WithoutConditionsNothingIsSaidOfThem()
    {
        MechanismReport report = Pair(30.05, null).Report();
        Assert.Null(report.Conditions);
        Assert.DoesNotContain(report.Findings, finding => finding.Name is "backlash-least" or "binding-share" or "approach-share");
    }

    [Fact]
    public void AMeshThatCanBindIsOpenedByTheAdvice()
    {
        Finding finding = Bad(Pair(30.03, Distance), "backlash-least");
        Assert.Equal(Level.Fails, finding.Level);
        Assert.Contains("Most of it: centre distance can take", finding.Advice, StringComparison.Ordinal);
        double further = Advice.Number(finding.Advice, "Open the centre distance by # mm");
        Assert.Equal(Level.Ok, Of(Pair(30.03 + further, Distance), "backlash-least").Level);
        Assert.Equal(Level.Fails, Of(Pair(30.03 + further - 0.002, Distance), "backlash-least").Level);
    }

    [Fact]
    public void AMeshThatCanBindIsThinnedByTheAdvice()
    {
        Finding finding = Bad(Pair(30.03, Distance), "backlash-least");
        double thinner = Advice.Number(finding.Advice, "thin the teeth by # mm in all");
        Assert.Equal(Level.Ok, Of(Pair(30.03, Distance, thinner), "backlash-least").Level);
        Assert.Equal(Level.Fails, Of(Pair(30.03, Distance, thinner - 0.002), "backlash-least").Level);
    }

    [Fact]
    public void AMeshThatCanRattleIsClosedByTheAdvice()
    {
        Finding finding = Bad(Pair(30.5, Distance), "backlash-greatest");
        double nearer = Advice.Number(finding.Advice, "Close the centre distance by # mm");
        Assert.Equal(Level.Ok, Of(Pair(30.5 - nearer, Distance), "backlash-greatest").Level);
        Assert.Equal(Level.Tight, Of(Pair(30.5 - nearer + 0.003, Distance), "backlash-greatest").Level);
    }

    [Fact]
    public void ASpreadThatNoDistanceSuitsIsToldByHowMuch()
    {
        JobConditions wide = Distance with { CentreDistanceTolerance = 0.2 };
        Finding finding = Bad(Pair(30.1, wide), "backlash-least");
        double over = Advice.Number(finding.Advice, "narrow the spread by # mm");
        Assert.Contains("centre distance can take", finding.Advice, StringComparison.Ordinal);

        // The spread is all but two slopes wide for each mm of tolerance; half the rest stays at either side.
        double spread = Of(Pair(30.1, wide), "backlash-greatest").Figure - finding.Figure;
        Assert.Equal(spread - 0.2, over, 2e-3);
    }

    [Fact]
    public void ARackIsRaisedByTheAdvice()
    {
        Job job = ConditionsJobs.RingAndRack() with { Conditions = Distance with { CentreDistanceTolerance = 0.13 } };
        Finding finding = job.Report().Findings.Single(one => one is { Name: "backlash-least", Place: "mesh rack-wheel" });
        double up = Advice.Number(finding.Advice, "Raise the gear by # mm");
        Job raised = job with { Axes = [.. job.Axes.Select(axis => axis.Name == "bar" ? axis with { Position = axis.Position!.Value + new GearBlanks.Curves.Vector(0, -up) } : axis)] };

        // Thinning follows the distance in such a job: what it was before is given.
        ImmutableDictionary<string, double> thinning = job.Resolved().Gears.ToImmutableDictionary(gear => gear.Name, gear => gear.Toothing.Data.Thinning);
        raised = thinning.Aggregate(raised, (all, gear) => all.WithGear(gear.Key, one => one with { Thinning = gear.Value }));
        Assert.Equal(Level.Ok, raised.Report().Findings.Single(one => one is { Name: "backlash-least", Place: "mesh rack-wheel" }).Level);
    }

    [Fact]
    public void TooManyBuildsThatBindAreCounted()
    {
        Assert.Equal(Level.Fails, Bad(Pair(30.03, Distance), "binding-share").Level);
        Assert.Equal(Level.Ok, Of(Pair(30.08, Distance), "binding-share").Level);
        JobConditions lenient = Distance with { Builds = Distance.Builds with { MostBinding = 0.9 } };
        Assert.Equal(Level.Ok, Of(Pair(30.03, lenient), "binding-share").Level);
    }

    [Fact]
    public void TooManyBuildsThatRattleAreCounted()
    {
        Finding finding = Bad(Pair(30.56, Distance), "rattling-share");
        Assert.Equal(Level.Fails, finding.Level);
        JobConditions lenient = Distance with { Builds = Distance.Builds with { MostRattling = 1 } };
        Assert.Equal(Level.Ok, Of(Pair(30.56, lenient), "rattling-share").Level);
    }

    [Fact]
    public void AGearOutsideTheStandardFailsUntilThatIsAskedFor()
    {
        JobConditions graded = Distance with { Gears = new JobGearConditions { Grade = 9 } };
        Finding finding = Bad(Pair(30.08, graded), "grade-range");
        Assert.Contains("face width 2 mm, below 4 mm", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(Pair(30.08, graded).Report().Conditions!.Meshes[0].Contributions, one => one.Name == "profile");

        MechanismReport asked = Pair(30.08, graded with { IsOutsideStandard = true }).Report();
        Finding marked = asked.Findings.First(one => one.Name == "grade-range");
        Assert.Equal((Level.Ok, "outside ISO 1328-1"), (marked.Level, marked.Source));
        Assert.Equal("outside ISO 1328-1", asked.Conditions!.Standard);
        Assert.Contains(asked.Conditions.Meshes[0].Contributions, one => one.Name == "profile");
        Assert.Contains(asked.Conditions.Meshes[0].Contributions, one => one.Name == "single pitch");
        Assert.Contains(asked.Conditions.Meshes[0].Contributions, one => one.Name == "eccentricity");
    }

    [Fact]
    public void InsideTheStandardItIsNamedAndNothingIsFound()
    {
        Job job = Pair(30.08, Distance with { Gears = new JobGearConditions { Grade = 7 } });
        MechanismReport report = (job with { Defaults = job.Defaults with { Thickness = 5 } }).Report();
        Assert.DoesNotContain(report.Findings, finding => finding.Name == "grade-range");
        Assert.Equal("ISO 1328-1:2013", report.Conditions!.Standard);
    }

    [Fact]
    public void AnEccentricityOfItsOwnStandsInPlaceOfTheClasss()
    {
        JobConditions graded = Distance with { Gears = new JobGearConditions { Grade = 9, Eccentricity = 0.001 }, IsOutsideStandard = true };
        var eccentricities = Pair(30.08, graded).Report().Conditions!.Meshes[0].Contributions.Where(one => one.Name == "eccentricity");
        Assert.All(eccentricities, one => Assert.InRange(one.Takes, 0.0005, 0.001));
    }

    [Theory]
    [InlineData("one", true)]
    [InlineData("two", false)]
    public void TheApproachCountsWhereTheLargerGearDrives(string drive, bool isStepUp)
    {
        Job job = Pair(30.08, Distance, 0, (48, 12)) with { Drive = new JobDrive(TestJobs.At(8), drive, 3600) };
        MechanismReport report = job.Report();
        MeshConditions mesh = report.Conditions!.Meshes[0];
        Assert.Equal(isStepUp, mesh.IsStepUp);
        Assert.Equal(isStepUp, report.Findings.Any(finding => finding.Name == "approach-share"));
        Assert.InRange(mesh.ApproachShare!.Value, 0, 1);
    }

    [Fact]
    public void ApproachAndRecessChangePlacesWithTheDriver()
    {
        double Share(string drive) => (Pair(30.08, Distance, 0, (40, 20)) with { Drive = new JobDrive(TestJobs.At(8), drive, 3600) })
            .Report().Conditions!.Meshes[0].ApproachShare!.Value;
        Assert.Equal(1, Share("one") + Share("two"), 12);

        // From the length of each addendum's path alone: sqrt(ra^2 - rb^2) - rw sin alpha_w (ISO 21771:2007, clause 5; from memory).
        var pair = Pair(30.08, Distance, 0, (40, 20)).Resolved().Meshes[0].Pair;
        double angle = pair.WorkingPressureAngle;
        double Path(double teeth) => Math.Sqrt(Math.Pow((teeth / 2) + 1, 2) - Math.Pow(teeth / 2 * Math.Cos(TestRacks.Radians(20)), 2)) - (30.08 * teeth / 60 * Math.Sin(angle));
        Assert.Equal(Path(20) / (Path(20) + Path(40)), Share("one"), 1e-9);
    }

    /// <summary>The two ends are pairs as anybody would make them: thicker teeth by a greater shift, thinner ones by thinning, tips as they were.</summary>
    [Fact]
    public void AtBothEndsTheTeethAreThickestAndThinnest()
    {
        JobConditions conditions = Distance with { Gears = new JobGearConditions { ThicknessTolerance = 0.03 } };
        MeshConditions mesh = Pair(30.08, conditions).Report().Conditions!.Meshes[0];
        double shift = 0.03 / (2 * Math.Tan(TestRacks.Radians(20)));
        GearBlanks.Teeth.Toothing Thick(int teeth) => GearBlanks.Teeth.Toothing.Of(new GearBlanks.Teeth.GearData(teeth, 1, TestRacks.A, shift, 0, teeth + 2));
        GearBlanks.Teeth.Toothing Thin(int teeth) => GearBlanks.Teeth.Toothing.Of(new GearBlanks.Teeth.GearData(teeth, 1, TestRacks.A, 0, 0.03));
        Same(GearBlanks.Meshing.GearPair.At(Thick(24), Thick(36), 30.04), mesh.LeastDistance.Pair!);
        Same(GearBlanks.Meshing.GearPair.At(Thin(24), Thin(36), 30.12), mesh.GreatestDistance.Pair!);
        Assert.Equal(mesh.Least, mesh.LeastDistance.Pair!.CircumferentialBacklash, 1e-9);
        Assert.Equal(mesh.Greatest, mesh.GreatestDistance.Pair!.CircumferentialBacklash, 1e-9);

        static void Same(GearBlanks.Meshing.GearPair expected, GearBlanks.Meshing.GearPair pair)
        {
            Assert.Equal(expected.CentreDistance, pair.CentreDistance, 1e-9);
            Assert.Equal(expected.CircumferentialBacklash, pair.CircumferentialBacklash, 1e-9);
            Assert.Equal(expected.ContactRatio, pair.ContactRatio, 1e-9);
            Assert.Equal(expected.FirstTipClearance, pair.FirstTipClearance, 1e-9);
            Assert.Equal(expected.SecondFormMargin, pair.SecondFormMargin, 1e-9);
        }
    }

    [Fact]
    public void WhatWasMeasuredHasNoToleranceLeft()
    {
        JobConditions conditions = Distance with { Gears = new JobGearConditions { ThicknessTolerance = 0.03 } };
        Job job = Pair(30.08, conditions);
        double Spread(Job of)
        {
            MeshConditions mesh = of.Report().Conditions!.Meshes[0];
            return mesh.Greatest - mesh.Least;
        }

        double thickness = job.Resolved().Meshes[0].First.Toothing.ToothThickness;
        Job oneMeasured = job.WithGear("one", gear => gear with { Measured = new JobMeasuredTeeth(TestJobs.At(1), thickness, null, 0) });
        Job distanceToo = oneMeasured.WithMesh(mesh => mesh with { MeasuredDistance = 30.08 });
        Assert.Equal(Spread(job) - 0.06, Spread(oneMeasured), 1e-3);
        Assert.Equal(0.06, Spread(distanceToo), 1e-3);
        Assert.True(Spread(distanceToo.WithMesh(mesh => mesh with { CentreDistanceTolerance = 0.04 })) > 0.1);
    }

    [Fact]
    public void DistancesEndPlayAndSheetsNarrowWhatIsLeft()
    {
        Job job = Pair(30.5, Distance with { CentreDistanceTolerance = 0.3, SheetTolerance = 0.1, Sandwiches = new JobSandwichConditions { EndPlay = 0.8 } });
        job = job with { Sandwiches = [.. job.Sandwiches.Select(sandwich => sandwich with { Height = 1 })] };
        MechanismReport report = job.Report();
        MeshConditions mesh = report.Conditions!.Meshes[0];
        Assert.Equal(2 - (2 * 0.8) - (2 * 0.1), mesh.LeastFaceOverlap!.Value, 12);
        Assert.Equal(Level.Fails, report.Findings.Single(finding => finding.Name == "face-overlap-least").Level);
        Assert.Equal(30.8, mesh.GreatestDistance.Distance, 1e-12);
        Assert.Equal(GearBlanks.Meshing.GearPair.At(job.Resolved().Meshes[0].Pair.First, job.Resolved().Meshes[0].Pair.Second, 30.8).ContactRatio, mesh.GreatestDistance.Pair!.ContactRatio, 1e-9);
        Assert.True(mesh.LeastDistance.Pair!.FirstTipClearance < mesh.GreatestDistance.Pair.FirstTipClearance);
    }

    [Fact]
    public void AGearsOwnConditionsAndAMeshsStandBeforeTheJobs()
    {
        Job job = Pair(30.08, Distance with { Gears = new JobGearConditions { ThicknessTolerance = 0.001 } })
            .WithGear("one", gear => gear with { Conditions = new JobGearConditions { ThicknessTolerance = 0.02 } })
            .WithMesh(mesh => mesh with { CentreDistanceTolerance = 0.001 });
        var parts = job.Report().Conditions!.Meshes[0].Contributions;
        Assert.InRange(parts.Single(part => part is { Name: "tooth thickness", Of: "one" }).Takes, 0.0195, 0.0205);
        Assert.InRange(parts.Single(part => part is { Name: "tooth thickness", Of: "two" }).Takes, 0.00095, 0.00105);
        Assert.InRange(parts.Single(part => part.Name == "centre distance").Takes, 0.0007, 0.0008);
    }

    [Theory]
    [InlineData("acrylic", "acrylic", null)]
    [InlineData("brass", "steel", "Brass grows in heat")]
    [InlineData("steel", "brass", "Brass grows in heat")]
    [InlineData(null, "steel", "has no material")]
    public void MaterialsMustBeKnownOnlyWhereAClimateIsAskedFor(string? ofGears, string frame, string? told)
    {
        Job job = Pair(30.08, Distance with { FrameMaterial = frame, Climate = new JobClimate(0, 40, 50, 50, 20, 50) });
        job = job with { Defaults = job.Defaults with { Material = ofGears } };
        if (told is null)
        {
            Assert.Contains(job.Report().Conditions!.Meshes[0].Contributions, part => part.Name == "temperature");
            return;
        }

        Assert.Contains(job.Problems(), problem => problem.Message.Contains(told, StringComparison.Ordinal));
        Assert.Empty((job with { Conditions = Distance }).Report().Findings.Where(finding => finding.Name == "temperature"));
    }

    [Fact]
    public void PostsThatLeanNeedHeights()
    {
        Problem problem = Pair(30.08, Distance with { PostTilt = 0.001 }).Problems()[0];
        Assert.Contains("height of the sandwich", problem.Message, StringComparison.Ordinal);
    }

    private static Finding Bad(Job job, string name)
    {
        Finding finding = Of(job, name);
        Assert.NotEqual(Level.Ok, finding.Level);
        Assert.NotNull(finding.Advice);
        return finding;
    }

    private static Finding Of(Job job, string name) => job.Report().Findings.First(finding => finding.Name == name);

    private static Job Pair(double distance, JobConditions? conditions, double thinning = 0, (int One, int Two)? teeth = null) =>
        TestJobs.Pair(TestJobs.Gear("one", teeth?.One ?? 24, thinning: thinning), TestJobs.Gear("two", teeth?.Two ?? 36, thinning: 0), distance) with { Conditions = conditions };
}
