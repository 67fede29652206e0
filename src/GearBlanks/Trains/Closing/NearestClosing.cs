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
    private const int ModuleDecimals = 4;
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

        if (Module(task, sums, closes) is { } other)
        {
            yield return FormattableString.Invariant($"module {other:0.####} mm for these gears");
        }

        int? Least(Func<int, ClosingTask> changed, int most) => NearestSteps(changed, most, closes);
    }

    /// <summary>The module nearest to the gears' own, mm, with which a group closes; null where none near does, or one of its gears is to stay as it is.</summary>
    /// <inheritdoc cref="Of"/>
    public static double? Module(ClosingTask task, ShiftSums sums, Func<ClosingTask, bool> closes)
    {
        double module = task.Gears[sums.Gears[0]].Data.Module;
        double At(int steps) => Math.Round(module + (steps * ModuleStep), ModuleDecimals);
        return sums.Gears.All(gear => !task.Gears[gear].IsHeld)
            && NearestSteps(steps => OfModule(Only(task, sums), sums, At(steps)), (int)(MostModule * module / ModuleStep), closes) is { } steps
            ? At(steps)
            : null;
    }

    /// <summary>The task with another module for the gears of a group, mm.</summary>
    public static ClosingTask OfModule(ClosingTask task, ShiftSums sums, double module) => WithData(task, (at, data) =>
        sums.Gears.Contains(at) ? data with { Module = module } : data);

    // The fewest steps either way.
    private static int? NearestSteps(Func<int, ClosingTask> changed, int most, Func<ClosingTask, bool> closes)
    {
        // In growing strides, then one by one within the last of them.
        for ((int before, int size) = (0, 1); size <= most; (before, size) = (size, size + 1 + (size / 4)))
        {
            if (At(size) is { } found)
            {
                return Enumerable.Range(before + 1, size - before - 1).Select(At).FirstOrDefault(nearer => nearer is not null) ?? found;
            }
        }

        return null;

        int? At(int size) => Works(changed(size), closes) ? size : Works(changed(-size), closes) ? -size : null;
    }

    private static bool Works(ClosingTask changed, Func<ClosingTask, bool> closes)
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

    // Gears keep their places; the others have no mesh left.
    private static ClosingTask Only(ClosingTask task, ShiftSums sums) => task with { Meshes = [.. sums.Meshes.Select(mesh => task.Meshes[mesh])] };

    private static ClosingTask Moved(ClosingTask task, string axes, double by) =>
        task with { Meshes = [.. task.Meshes.Select(mesh => mesh.Axes == axes ? mesh with { Distance = mesh.Distance + by } : mesh)] };

    private static ClosingTask Toothed(ClosingTask task, int gear, int by) => WithData(task, (at, data) =>
        at == gear && data is GearData round ? round with { Teeth = round.Teeth + by } : data);

    private static ClosingTask WithData(ClosingTask task, Func<int, ToothData, ToothData> changed) =>
        task with { Gears = [.. task.Gears.Select((gear, at) => gear with { Data = changed(at, gear.Data) })] };
}
