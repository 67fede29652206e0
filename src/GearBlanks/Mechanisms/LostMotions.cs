using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Findings;

namespace GearBlanks.Mechanisms;

/// <summary>
/// Lost motion at the hands. A slip of one mesh by its backlash turns the hand by what the train's equations make of it: in a plain train the angular
/// backlash over the ratio from there on. Of meshes that close a loop one way round counts, which is not less than what the loop leaves.
/// </summary>
internal static class LostMotions
{
    private const double DegreesInATurn = 360;
    private const double SecondsInAMinute = 60;

    public static LostMotion? Of(Hand hand, MechanismTrain train)
    {
        if (train.SpeedOf(hand.Sandwich) is null)
        {
            return null;
        }

        ImmutableArray<MeshPlay> plays = [.. train.SlipsOf(hand.Sandwich).Select(slip => new MeshPlay(
            slip.Mesh.Name, DegreesInATurn * Math.Abs(slip.TurnsPerTooth.ToDouble()) * Math.Max(0, slip.Mesh.Pair.CircumferentialBacklash) / slip.Mesh.WorkingPitch))];
        return new LostMotion(
            plays.Sum(play => play.Degrees), Math.Sqrt(plays.Sum(play => play.Degrees * play.Degrees)), plays,
            hand.Turn.ToDouble() / DegreesInATurn / SecondsInAMinute);
    }

    public static IEnumerable<Finding> Judge(HandReport report, MechanismTrain train)
    {
        if (report.Timing is not null && report.LostMotion is { } lost)
        {
            yield return Check.Of(
                "lost-motion", Places.Hand(report.Hand.Name), lost.WorstCase, train.Mechanism.Limits.LostMotion, "degrees",
                $"Lost motion of the hand, all backlash on its way together ({Words.Figure(lost.WorstCaseMinutes, "minutes")} of dial time; {Words.Figure(lost.RootSumSquare, "degrees")} as a root of squares),",
                bound => Advice(lost, bound, train));
        }
    }

    // The backlash of all meshes times one factor, which is rounded down so that it is enough.
    private static string Advice(LostMotion lost, double bound, MechanismTrain train)
    {
        double factor = Math.Floor(bound / lost.WorstCase * 1000) / 1000;
        MeshPlay[] meshes = [.. lost.Meshes.Where(play => play.Degrees > 0)];
        bool isWithinLimits = meshes.All(play => factor * Backlash(play) >= (train.Mechanism.Limits.Backlash.TightBelow ?? 0));
        string names = Words.List([.. meshes.Select(play => play.Mesh)]);
        return isWithinLimits
            ? $"Make the backlash of {names} {factor.ToString("0.###", CultureInfo.InvariantCulture)} times what it is."
            : $"No backlash within its own limits is small enough: take meshes off the hand's way, or give it greater wheels ({meshes.MaxBy(play => play.Degrees).Mesh} adds most).";

        double Backlash(MeshPlay play)
        {
            Mesh mesh = train.Meshes.First(mesh => mesh.Name == play.Mesh);
            return mesh.Pair.CircumferentialBacklash / mesh.Pair.First.Module;
        }
    }
}
