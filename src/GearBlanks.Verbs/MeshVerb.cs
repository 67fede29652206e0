using System.Collections.Immutable;
using GearBlanks.Files.Profiles;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>One pair, as a command line gives it. Lists have one item for each gear.</summary>
/// <param name="Numbers">Module and rack.</param>
/// <param name="Teeth">Tooth counts.</param>
/// <param name="ProfileShift">Profile shift coefficients.</param>
/// <param name="Thinning">Losses of tooth thickness on the reference circles, mm.</param>
/// <param name="Distance">Centre distance, mm; null to work it out.</param>
/// <param name="Backlash">Circumferential backlash that the distance is worked out for, mm; null for none at all.</param>
/// <param name="TipDiameters">Tip diameters, mm; null for the rule's.</param>
/// <param name="UsesClearanceRule">True for ha1 = (1 + y - x2) m and ha2 = (1 + y - x1) m.</param>
public sealed record MeshRequest(
    GearNumbers Numbers,
    (int First, int Second) Teeth,
    (double First, double Second) ProfileShift,
    (double First, double Second) Thinning,
    double? Distance,
    double? Backlash,
    (double First, double Second)? TipDiameters,
    bool UsesClearanceRule);

/// <summary>One pair, worked out and judged.</summary>
/// <param name="Pair">The pair.</param>
/// <param name="Findings">Findings on both gears and the mesh, worst first.</param>
public sealed record MeshResult(GearPair Pair, ImmutableArray<Finding> Findings)
{
    /// <summary>The worst level.</summary>
    public Level Verdict => Findings.Select(finding => finding.Level).DefaultIfEmpty(Level.Ok).Max();
}

/// <summary>Works out one pair.</summary>
public static class MeshVerb
{
    private const string FirstName = "gear 1";
    private const string SecondName = "gear 2";

    /// <summary>Runs the verb.</summary>
    public static Outcome<MeshResult> Run(MeshRequest request)
    {
        Outcome<RackChoice> choice = RackChoice.Of(request.Numbers);
        Outcome<Limits> limits = ProfileFinder.BesideJob("").Limits(DefaultNames.Limits, CommandLine.Place);
        ImmutableArray<Problem> problems = [.. choice.Problems, .. limits.Problems, .. Contradictions(request)];
        if (problems.Length > 0)
        {
            return problems;
        }

        try
        {
            return Judge(PairOf(request, choice.Value!), limits.Value!, request.Backlash);
        }
        catch (GearGeometryException e)
        {
            return CommandLine.Problem("mesh", e);
        }
    }

    private static IEnumerable<Problem> Contradictions(MeshRequest request)
    {
        if (request.Distance is not null && request.Backlash is not null)
        {
            yield return CommandLine.Problem("--distance", null, "Both --distance and --backlash are given; each decides the other", "one of the two")[0];
        }

        if (request.TipDiameters is not null && request.UsesClearanceRule)
        {
            yield return CommandLine.Problem("--tip-diameter", null, "Both --tip-diameter and --tip-rule are given", "one of the two")[0];
        }
    }

    private static GearPair PairOf(MeshRequest request, RackChoice choice)
    {
        var first = new GearData(
            request.Teeth.First, choice.Module, choice.Rack, request.ProfileShift.First, request.Thinning.First, request.TipDiameters?.First);
        var second = new GearData(
            request.Teeth.Second, choice.Module, choice.Rack, request.ProfileShift.Second, request.Thinning.Second, request.TipDiameters?.Second);
        double distance = DistanceOf(request, Made(first, FirstName), Made(second, SecondName));
        if (request.UsesClearanceRule)
        {
            (first, second) = TipRule.WithClearance(first, second, distance);
        }

        return GearPair.At(Made(first, FirstName), Made(second, SecondName), distance);
    }

    // Two gears stand on one command line: a shape that cannot exist says which it is.
    private static ExternalGear Made(GearData data, string name)
    {
        try
        {
            return ExternalGear.Create(data);
        }
        catch (GearGeometryException e)
        {
            throw new GearGeometryException(e.ShapeCase, $"{name}: {e.What}", e.Value, e.Limit, e.Remedy);
        }
    }

    private static double DistanceOf(MeshRequest request, ExternalGear first, ExternalGear second) =>
        request.Distance
        ?? (request.Backlash is { } backlash ? GearPair.DistanceFor(first, second, backlash) : GearPair.ZeroBacklashDistance(first, second))
        ?? throw new GearGeometryException(
            "no-closed-distance", "The teeth are so thin that no centre distance is without backlash; sum of profile shifts",
            request.ProfileShift.First + request.ProfileShift.Second, LeastShiftSum(first, second), "give --distance, or a greater profile shift");

    // Where the involute of the working angle without backlash, inv alpha + 2 (xE1 + xE2) tan alpha / (z1 + z2), comes to 0.
    private static double LeastShiftSum(ExternalGear first, ExternalGear second)
    {
        double tangent = Math.Tan(first.PressureAngle);
        return ((first.Data.Thinning + second.Data.Thinning) / (2 * first.Module * tangent))
            - (InvoluteFunction.Inv(first.PressureAngle) * (first.Teeth + second.Teeth) / (2 * tangent));
    }

    private static MeshResult Judge(GearPair pair, Limits limits, double? backlash)
    {
        double wanted = backlash ?? limits.WantedBacklash * pair.First.Module;
        IEnumerable<Finding> findings = ToothCheck.Of((ExternalGear)pair.First, FirstName, limits)
            .Concat(ToothCheck.Of((ExternalGear)pair.Second, SecondName, limits))
            .Concat(PairCheck.Of(pair, FirstName, SecondName, "mesh", limits, wanted));
        return new MeshResult(pair, [.. findings.OrderByDescending(finding => finding.Level)]);
    }
}
