using System.Collections.Immutable;
using GearBlanks.Meshing;

namespace GearBlanks.Mechanisms;

/// <summary>
/// How much each gear is thinned: what the job says, else what its meshes need for their wanted backlash at their real distance, split
/// between the two gears. A gear in several meshes takes the greatest; where the distance alone gives the backlash nothing is thinned.
/// </summary>
internal static class Thinning
{
    // In modules, common practice, no source: a tooth that would need more has a wrong distance, and the check says so.
    private const double MostThinning = 0.25;

    public static ImmutableDictionary<string, double> Of(IEnumerable<GearPlan> gears, ImmutableArray<MeshPlan> meshes)
    {
        Dictionary<string, double> thinning = gears.ToDictionary(gear => gear.Name, gear => gear.GivenThinning ?? 0);
        foreach (MeshPlan mesh in meshes)
        {
            double total = Thickness.TotalThinningFor(
                mesh.First.Data(0), mesh.Second.Data(0), mesh.Distance, mesh.WantedBacklash);
            double rest = Math.Max(0, total - (mesh.First.GivenThinning ?? 0) - (mesh.Second.GivenThinning ?? 0));
            double ofFirst = mesh.Second.GivenThinning is null ? mesh.ShareOfFirst : 1;
            Raise(mesh.First, mesh.First.GivenThinning is null ? rest * ofFirst : 0);
            Raise(mesh.Second, rest - (mesh.First.GivenThinning is null ? rest * ofFirst : 0));
        }

        return thinning.ToImmutableDictionary();

        void Raise(GearPlan gear, double needed)
        {
            if (gear.GivenThinning is null)
            {
                thinning[gear.Name] = Math.Max(thinning[gear.Name], Math.Min(needed, MostThinning * gear.Module));
            }
        }
    }
}
