using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Meshing.Accuracy;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>Findings on meshes under their conditions.</summary>
internal static class ConditionsFindings
{
    public static IEnumerable<Finding> OnMesh(Mesh mesh, MeshConditions under, MeshBuild build, JobBuilds builds, Limits limits)
    {
        string place = Places.Mesh(mesh.Name);
        double m = mesh.Pair.First.Module;
        ConditionLimits own = limits.Conditions;
        var advice = new ConditionsAdvice(mesh, under, build, own);
        yield return Check.Of(
            "backlash-least", place, under.Least, own.BacklashLeast.Times(m), "mm", "Least backlash of any build", advice.ForLeast);
        yield return Check.Of(
            "backlash-greatest", place, under.Greatest, own.BacklashGreatest.Times(m), "mm", "Greatest backlash of any build", advice.ForGreatest);
        yield return Check.Of(
            "binding-share", place, under.BindingShare, AtMost(own.BindingShare, builds.MostBinding), "",
            $"Share of {builds.Count} random builds in which it binds", _ => advice.ForLeast(advice.LeastWanted));
        yield return Check.Of(
            "rattling-share", place, under.RattlingShare, AtMost(own.RattlingShare, builds.MostRattling), "",
            $"Share of {builds.Count} random builds in which it rattles", _ => advice.ForGreatest(advice.MostWanted));
        foreach (Finding finding in AtDistances(mesh, under, place, limits).Concat(OnFaces(mesh, under, place, limits)))
        {
            yield return finding;
        }

        if (under is { IsStepUp: true, ApproachShare: { } approach })
        {
            yield return Check.Of(
                "approach-share", place, approach, own.ApproachShare, "", "Share of the path of contact before the pitch point, the larger gear driving,",
                _ => "Raise the profile shift of the larger gear and lower the other's by as much: contact moves past the pitch point.");
        }
    }

    public static Finding OnGrade(string gear, GradeMiss miss, bool isAsked) => new(
        "grade-range", Places.Gear(gear), isAsked ? Level.Ok : Level.Fails, miss.Value, miss.Bound, miss.Unit, isAsked ? GradeRange.Outside : "ISO 1328-1:2013, clause 1",
        isAsked ? $"The tolerance class is used {GradeRange.Outside}: {miss}." : $"The standard does not cover this gear: {miss}. Its class is left out of account.",
        isAsked ? null : "Give tolerances of your own in place of the class, or say outside-standard = true.");

    // Every figure of the mesh but the backlash, whose bounds are exact, at the end where it is worse.
    private static IEnumerable<Finding> AtDistances(Mesh mesh, MeshConditions under, string place, Limits limits)
    {
        Limits own = limits with { FilletClearance = limits.Conditions.FilletClearanceLeast };
        IEnumerable<Finding> atEnds = At(under.LeastDistance, "least").Concat(At(under.GreatestDistance, "greatest"));
        foreach (IGrouping<string, Finding> ends in atEnds.GroupBy(finding => finding.Name))
        {
            Finding worst = ends.OrderByDescending(finding => finding.Level).ThenBy(finding => finding.Figure).First();
            yield return worst with { Name = $"{worst.Name}-least" };
        }

        IEnumerable<Finding> At(MeshAtDistance end, string which) => end.Pair is not { } pair
            ? []
            : PairCheck.Of(pair, mesh.First.Name, mesh.Second.Name, place, own, mesh.WantedBacklash)
                .Where(finding => finding.Name != "backlash")
                .Select(finding => finding with
                {
                    Message = $"At the {which} distance of any build: {finding.Message}",
                    Advice = finding.Advice is { } advice ? $"{advice} Or narrow what moves the centres." : null,
                });
    }

    private static IEnumerable<Finding> OnFaces(Mesh mesh, MeshConditions under, string place, Limits limits)
    {
        if (under.LeastFaceOverlap is { } overlap)
        {
            double thinner = Math.Min(mesh.First.Blank.Thickness, mesh.Second.Blank.Thickness);
            yield return Check.Of(
                "face-overlap-least", place, overlap / thinner, limits.FaceOverlap, "", "Least overlap of the faces of any build, as a share of the thinner one,",
                bound => $"Take {Words.Mm(Words.RoundedUp((bound * thinner) - overlap))} of end play and sheet tolerance away, or bring the faces level.");
        }
    }

    private static Limit AtMost(Limit limit, double? most) => most is { } share ? new Limit(null, null, null, share, "the job") : limit;
}
