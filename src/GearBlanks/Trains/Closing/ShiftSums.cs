using System.Collections.Immutable;
using GearBlanks.Meshing;
using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>
/// The profile shifts of connected gears as functions of one number: each mesh fixes the sum of its two, so that every shift is + or - t and a constant.
/// </summary>
/// <param name="Gears">Indices of the gears.</param>
/// <param name="Meshes">Indices of the meshes.</param>
/// <param name="Signs">+1 or -1 for each gear.</param>
/// <param name="Offsets">The constant of each gear.</param>
/// <param name="Fixed">The number, where a loop or a gear that is held decides it; null where it is free.</param>
/// <param name="Contradiction">Why no shifts satisfy all sums; null where some do.</param>
internal sealed record ShiftSums(
    ImmutableArray<int> Gears, ImmutableArray<int> Meshes, ImmutableArray<int> Signs, ImmutableArray<double> Offsets, double? Fixed, string? Contradiction)
{
    // As coefficients: with less, sums that a loop or held gears ask for agree.
    private const double Agreement = 1e-4;

    /// <summary>The groups of gears that meshes connect; gears without a mesh are left out.</summary>
    public static IEnumerable<ShiftSums> Of(ClosingTask task)
    {
        bool[] seen = new bool[task.Gears.Length];
        for (int start = 0; start < task.Gears.Length; start++)
        {
            if (!seen[start] && task.Meshes.Any(mesh => mesh.First == start || mesh.Second == start))
            {
                yield return From(start, task, seen);
            }
        }
    }

    /// <summary>
    /// The sum of the profile shifts with which a mesh has its backlash: by the thinning it would need without shifts, each mm of which is worth
    /// 1 / (2 m tan alpha). Source: ISO 21771:2007, clause 7; from memory.
    /// </summary>
    /// <exception cref="GearGeometryException">The two do not mesh at any distance, or there is no line of action at this one.</exception>
    public static double SumFor(ToothData first, ToothData second, double distance, double backlash)
    {
        PairLayout layout = PairLayout.Of(first with { ProfileShift = 0 }, second with { ProfileShift = 0 });
        layout.RequireLineOfAction(distance);
        return (layout.BacklashAt(distance) - backlash) / layout.BacklashOfThinning(distance) / (2 * first.Module * Math.Tan(first.Rack.PressureAngle));
    }

    /// <summary>The shift of the gear at a place in <see cref="Gears"/>.</summary>
    public double ShiftOf(int place, double t) => (Signs[place] * t) + Offsets[place];

    private static ShiftSums From(int start, ClosingTask task, bool[] seen)
    {
        var gears = new List<int> { start };
        var signs = new List<int> { 1 };
        var offsets = new List<double> { 0 };
        var meshes = new List<int>();
        double? fixedAt = null;
        string? contradiction = null;
        seen[start] = true;
        for (int at = 0; at < gears.Count; at++)
        {
            for (int m = 0; m < task.Meshes.Length; m++)
            {
                ClosingMesh mesh = task.Meshes[m];
                if ((mesh.First != gears[at] && mesh.Second != gears[at]) || meshes.Contains(m))
                {
                    continue;
                }

                meshes.Add(m);
                int other = mesh.First == gears[at] ? mesh.Second : mesh.First;
                double sum = SumFor(task.Gears[mesh.First].Data, task.Gears[mesh.Second].Data, mesh.Distance, mesh.Backlash);
                if (!seen[other])
                {
                    seen[other] = true;
                    gears.Add(other);
                    signs.Add(-signs[at]);
                    offsets.Add(sum - offsets[at]);
                    continue;
                }

                int place = gears.IndexOf(other);
                Require(signs[at] + signs[place], sum - offsets[at] - offsets[place], $"the loop that {mesh.Name} closes");
            }
        }

        for (int i = 0; i < gears.Count; i++)
        {
            if (task.Gears[gears[i]] is { IsHeld: true } held)
            {
                Require(signs[i], held.Data.ProfileShift - offsets[i], $"{held.Name}, which is held");
            }
        }

        return new ShiftSums([.. gears], [.. meshes], [.. signs], [.. offsets], fixedAt, contradiction);

        // factor * t = value.
        void Require(int factor, double value, string by)
        {
            double missing = factor == 0 ? value : fixedAt is { } t ? (factor * t) - value : 0;
            fixedAt ??= factor == 0 ? null : value / factor;
            if (Math.Abs(missing) > Agreement)
            {
                contradiction ??= FormattableString.Invariant($"Through {by}, the sums of profile shifts that the distances ask for contradict one another by {Math.Abs(missing):0.0000}");
            }
        }
    }
}
