using System.Collections.Immutable;
using GearBlanks.Meshing;

namespace GearBlanks.Mechanisms;

/// <summary>
/// How much each gear is thinned: what the job says, else what its meshes need for their wanted backlash at their real distance, split
/// between the two gears. A gear in several meshes takes the greatest, and its mates then give up what it has thinned for them; where the
/// distance alone gives the backlash nothing is thinned.
/// </summary>
internal static class Thinning
{
    // In modules, common practice, no source: a tooth that would need more has a wrong distance, and the check says so.
    private const double MostThinning = 0.25;

    // In mm: less than this is rounding, not thinning to give up.
    private const double Rounding = 1e-9;

    public static ImmutableDictionary<string, double> Of(IEnumerable<GearPlan> gears, ImmutableArray<MeshPlan> meshes)
    {
        GearPlan[] all = [.. gears.OrderBy(gear => gear.Name, StringComparer.Ordinal)];
        Dictionary<string, double> thinning = all.ToDictionary(gear => gear.Name, gear => gear.GivenThinning ?? 0);
        foreach (MeshPlan mesh in meshes)
        {
            double total = Total(mesh);
            double rest = Math.Max(0, total - (mesh.First.GivenThinning ?? 0) - (mesh.Second.GivenThinning ?? 0));
            double ofFirst = mesh.Second.GivenThinning is null ? mesh.ShareOfFirst : 1;
            Raise(mesh.First, mesh.First.GivenThinning is null ? rest * ofFirst : 0);
            Raise(mesh.Second, rest - (mesh.First.GivenThinning is null ? rest * ofFirst : 0));
        }

        foreach (GearPlan gear in all.Where(gear => gear.GivenThinning is null))
        {
            double needed = meshes
                .Where(mesh => mesh.First == gear || mesh.Second == gear)
                .Select(mesh => Total(mesh) - thinning[(mesh.First == gear ? mesh.Second : mesh.First).Name])
                .DefaultIfEmpty(0)
                .Max();
            if (needed < thinning[gear.Name] - Rounding)
            {
                thinning[gear.Name] = Math.Max(0, needed);
            }
        }

        return thinning.ToImmutableDictionary();

        static double Total(MeshPlan mesh) => Thickness.TotalThinningFor((Teeth.GearData)mesh.First.Data(0), (Teeth.GearData)mesh.Second.Data(0), mesh.Distance, mesh.WantedBacklash);

        void Raise(GearPlan gear, double needed)
        {
            if (gear.GivenThinning is null)
            {
                thinning[gear.Name] = Math.Max(thinning[gear.Name], Math.Min(needed, MostThinning * gear.Module));
            }
        }
    }
}
