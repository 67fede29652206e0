using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>The nearest changes of a group without an answer that give it one: a distance, a tooth count, the module.</summary>
internal static class NearestClosing
{
    // Distances and modules in hundredths of a millimetre, in modules at most; tooth counts by a few.
    private const double DistanceStep = 0.01;
    private const double MostDistance = 1.0;
    private const double ModuleStep = 0.005;
    private const double MostModule = 0.15;
    private const int MostTeeth = 3;

    /// <summary>Sentences, each a change that is enough by itself.</summary>
    /// <param name="task">The task.</param>
    /// <param name="sums">The group.</param>
    /// <param name="closes">Whether a changed task closes.</param>
    public static IEnumerable<string> Of(ClosingTask task, ShiftSums sums, Func<ClosingTask, bool> closes)
    {
        ClosingTask group = Only(task, sums);
        double module = task.Gears[sums.Gears[0]].Data.Module;
        foreach (string axes in group.Meshes.Select(mesh => mesh.Axes).Distinct())
        {
            if (Least(steps => Moved(group, axes, steps * DistanceStep), (int)(MostDistance * module / DistanceStep)) is { } steps)
            {
                ClosingMesh mesh = group.Meshes.First(one => one.Axes == axes);
                yield return FormattableString.Invariant($"distance of {axes}: {mesh.Distance + (steps * DistanceStep):0.###} mm ({steps * DistanceStep:+0.00;-0.00})");
            }
        }

        foreach (int gear in sums.Gears.Where(gear => task.Gears[gear] is { Data: GearData, IsHeld: false }))
        {
            if (Least(steps => Toothed(group, gear, steps), MostTeeth) is { } steps)
            {
                yield return FormattableString.Invariant($"{task.Gears[gear].Name} with {((GearData)task.Gears[gear].Data).Teeth + steps} teeth");
            }
        }

        if (Least(steps => OfModule(group, sums, steps * ModuleStep), (int)(MostModule * module / ModuleStep)) is { } ofModule)
        {
            yield return FormattableString.Invariant($"module {module + (ofModule * ModuleStep):0.####} mm for these gears");
        }

        int? Least(Func<int, ClosingTask> changed, int most)
        {
            for (int size = 1; size <= most; size = size < 4 ? size + 1 : (size * 5 / 4) + 1)
            {
                foreach (int sign in (int[])[1, -1])
                {
                    if (Works(changed(sign * size)))
                    {
                        return sign * size;
                    }
                }
            }

            return null;
        }

        bool Works(ClosingTask changed)
        {
            try
            {
                return closes(changed);
            }
            catch (GearGeometryException)
            {
                return false;
            }
        }
    }

    // Gears keep their places; the others have no mesh left.
    private static ClosingTask Only(ClosingTask task, ShiftSums sums) => task with { Meshes = [.. sums.Meshes.Select(mesh => task.Meshes[mesh])] };

    private static ClosingTask Moved(ClosingTask task, string axes, double by) =>
        task with { Meshes = [.. task.Meshes.Select(mesh => mesh.Axes == axes ? mesh with { Distance = mesh.Distance + by } : mesh)] };

    private static ClosingTask Toothed(ClosingTask task, int gear, int by) => WithData(task, (at, data) =>
        at == gear && data is GearData round ? round with { Teeth = round.Teeth + by } : data);

    private static ClosingTask OfModule(ClosingTask task, ShiftSums sums, double by) => WithData(task, (at, data) =>
        sums.Gears.Contains(at) ? data with { Module = data.Module + by } : data);

    private static ClosingTask WithData(ClosingTask task, Func<int, ToothData, ToothData> changed) =>
        task with { Gears = [.. task.Gears.Select((gear, at) => gear with { Data = changed(at, gear.Data) })] };
}
