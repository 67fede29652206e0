using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>Meshes between the same two axes must all fit one distance.</summary>
internal static class SharedAxesCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism) => mechanism.Meshes
        .GroupBy(Places.Axes)
        .Where(group => group.Count() > 1)
        .SelectMany(group => OnAxes(group.Key, [.. group], mechanism.Limits));

    private static IEnumerable<Finding> OnAxes(string place, Mesh[] meshes, Limits limits)
    {
        (Mesh near, Mesh far) = (meshes.MinBy(mesh => mesh.Pair.CentreDistance)!, meshes.MaxBy(mesh => mesh.Pair.CentreDistance)!);
        yield return Check.Of(
            "distance-disagreement", place, far.Pair.CentreDistance - near.Pair.CentreDistance, limits.DistanceDisagreement, "mm",
            "Difference between the centre distances that meshes on the same two axes are given",
            _ => $"Two axes have one distance: measure {near.Name} and {far.Name} again.");

        // Teeth so thin that no distance suits them are told at their mesh.
        (Mesh Mesh, double Distance)[] suited = [.. meshes.Where(mesh => mesh.Pair.RadialBacklash is not null).Select(mesh => (mesh, DistanceFor(mesh)))];
        if (suited.Length > 1)
        {
            (Mesh Mesh, double Distance) shortest = suited.MinBy(pair => pair.Distance);
            (Mesh Mesh, double Distance) longest = suited.MaxBy(pair => pair.Distance);
            yield return Check.Of(
                "distance-spread", place, longest.Distance - shortest.Distance, limits.DistanceSpread.Times(shortest.Mesh.Pair.First.Module), "mm",
                "Spread of the distances at which meshes on the same two axes have their wanted backlash", _ => SpreadAdvice(shortest.Mesh, longest.Mesh, longest.Distance));
        }
    }

    private static double DistanceFor(Mesh mesh) => GearPair.DistanceFor(mesh.Pair.First, mesh.Pair.Second, mesh.WantedBacklash);

    // The thickness that the shorter mesh lacks at the longer one's distance, as profile shift.
    private static string SpreadAdvice(Mesh shorter, Mesh longer, double distance)
    {
        ToothData first = shorter.Pair.First.Data;
        ToothData second = shorter.Pair.Second.Data;
        double lacking = first.Thinning + second.Thinning - Thickness.TotalThinningFor(first, second, distance, shorter.WantedBacklash);
        double shift = lacking / (2 * first.Module * Math.Tan(first.Rack.PressureAngle));
        return $"Raise the sum of profile shifts of {shorter.Name} by {shift.ToString("0.000", CultureInfo.InvariantCulture)} to fit the distance of {longer.Name}.";
    }
}
