using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Mechanisms;

/// <summary>Finds where axes stand that are given from one another.</summary>
internal static class AxisPlacer
{
    /// <summary>The axes by name. Every chain of references ends at a position; the reader sees to that.</summary>
    public static ImmutableDictionary<string, Axis> Place(ImmutableArray<JobAxis> axes)
    {
        Dictionary<string, JobAxis> written = axes.ToDictionary(axis => axis.Name);
        var placed = new Dictionary<string, Point>();
        foreach (JobAxis axis in axes)
        {
            // Down the chain to what is known, then back up: a long chain costs no stack.
            var chain = new Stack<JobAxis>();
            for (JobAxis? next = axis; next is not null && !placed.ContainsKey(next.Name); next = next.From is null ? null : written[next.From])
            {
                chain.Push(next);
            }

            while (chain.TryPop(out JobAxis? next))
            {
                placed[next.Name] = next.From is null
                    ? next.Position!.Value
                    : placed[next.From] + (Vector.AtAngle(next.Direction) * next.Distance);
            }
        }

        return placed.ToImmutableDictionary(pair => pair.Key, pair => new Axis(pair.Key, pair.Value) { CarriedBy = written[pair.Key].CarriedBy });
    }
}
