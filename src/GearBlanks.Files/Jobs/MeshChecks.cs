using GearBlanks.Files.Keys;
using GearBlanks.Files.Toml;

namespace GearBlanks.Files.Jobs;

/// <summary>What must hold of meshes: two known gears on two axes, each pair once.</summary>
internal static class MeshChecks
{
    public static void Check(IReadOnlyList<Entries> meshes, GearNames gears, ProblemList problems)
    {
        var names = new NamedItems("mesh", problems);
        var pairs = new Dictionary<(string, string), int>();
        foreach (var mesh in meshes)
        {
            Shares.Check(mesh, problems);
            if (JobBuilder.MeshName(mesh) is { } name && CheckPair(mesh, gears, pairs, problems))
            {
                names.Add(mesh, "name", name);
            }
        }
    }

    private static bool CheckPair(Entries mesh, GearNames gears, Dictionary<(string, string), int> pairs, ProblemList problems)
    {
        if (mesh.Items("gears") is not [{ Value: string } first, { Value: string } second])
        {
            return true;
        }

        var (one, other) = ((string)first.Value!, (string)second.Value!);
        if (one == other)
        {
            gears.Check(mesh, first);
            mesh.Refuse(problems, "gears", second, "A gear cannot mesh with itself", "two different gears");
            return false;
        }

        // Both are checked, so that both are told.
        if (!(gears.Check(mesh, first) & gears.Check(mesh, second)))
        {
            return false;
        }

        if (gears.AxisOf(one) is { } axis && axis == gears.AxisOf(other))
        {
            mesh.Refuse(problems, "gears", $"Both gears turn on the axis \"{axis}\", so they cannot mesh", "gears on two axes");
        }

        var pair = string.CompareOrdinal(one, other) < 0 ? (one, other) : (other, one);
        if (!pairs.TryAdd(pair, mesh.Place.Line))
        {
            mesh.Refuse(problems, "gears", $"This mesh exists already (line {Key.Written(pairs[pair])})", "each pair of gears once");
            return false;
        }

        return true;
    }
}
