using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Meshing;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What a rim that leans on its spindle leaves of the gaps over and under it, and what the play of the bores leaves of the backlash.</summary>
internal static class WobbleCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism)
    {
        Dictionary<string, Wobble> wobbles = Wobble.Of(mechanism.Stack);
        return wobbles.Count == 0 ? [] : Rims(mechanism, wobbles).Concat(mechanism.Meshes.SelectMany(mesh => Play(mesh, mechanism, wobbles)));
    }

    // Of each sandwich that leans, the rim that comes nearest to another body.
    private static IEnumerable<Finding> Rims(Mechanism mechanism, Dictionary<string, Wobble> wobbles)
    {
        ImmutableArray<Body> bodies = mechanism.Stack.Bodies;
        Limit limit = mechanism.Limits.Stack.WobbleRoom;
        double farthest = bodies.Max(body => SwingOf(body, wobbles));
        var nearest = new Dictionary<string, (double Room, Body Rim, Body Other, double Gap)>();
        foreach ((int first, int second) in new BodyTree(bodies, 0, (2 * farthest) + (limit.TightBelow ?? 0)).Pairs())
        {
            (Body one, Body other) = (bodies[first], bodies[second]);
            double gap = one.Heights.LeastGapTo(other.Heights);
            (PlanShape own, PlanShape others) = one.Beside(other);
            if (one.Sandwich == other.Sandwich || gap < 0 || own.DepthIn(others) <= 0)
            {
                continue;
            }

            double room = gap - SwingOf(one, wobbles) - SwingOf(other, wobbles);
            foreach ((Body rim, Body against) in ((Body, Body)[])[(one, other), (other, one)])
            {
                if (SwingOf(rim, wobbles) > 0 && (!nearest.TryGetValue(rim.Sandwich!, out var known) || room < known.Room))
                {
                    nearest[rim.Sandwich!] = (room, rim, against, gap - SwingOf(against, wobbles));
                }
            }
        }

        return mechanism.Stack.Sandwiches.Where(sandwich => nearest.ContainsKey(sandwich.Name)).Select(sandwich =>
        {
            (double room, Body rim, Body other, double gap) = nearest[sandwich.Name];
            return Check.Of(
                "wobble", Places.Sandwich(sandwich.Name), room, limit, "mm",
                $"What a swing of {Words.Mm(SwingOf(rim, wobbles))} at the rim of {rim.Words} leaves of the gap to {other.Words}",
                bound => Advice(wobbles[sandwich.Name], rim, gap - bound));
        });
    }

    private static string Advice(Wobble wobble, Body rim, double allowed) => allowed > 0
        ? $"Make the bearing at least {Words.Mm(Words.RoundedUp(wobble.Clearance * rim.RimRadius / allowed))} long, or its greatest clearance at most {Words.Figure(Math.Floor(allowed * wobble.Length / rim.RimRadius * 1000) / 1000, "mm")}."
        : "Give the two more room in height first: no bearing is stiff enough for this gap.";

    // Only round things lean: a rack's carriage is guided by other means.
    private static double SwingOf(Body body, Dictionary<string, Wobble> wobbles) =>
        body.Sandwich is { } name && body.Shape.Core.Length == 1 && body.Kind != BodyKind.Spindle && wobbles.TryGetValue(name, out Wobble? wobble)
            ? wobble.Swing(body.RimRadius)
            : 0;

    private static IEnumerable<Finding> Play(Mesh mesh, Mechanism mechanism, Dictionary<string, Wobble> wobbles)
    {
        double play = ShiftOf(mesh.First, mechanism, wobbles) + ShiftOf(mesh.Second, mechanism, wobbles);
        if (play <= 0)
        {
            yield break;
        }

        Limit limit = mechanism.Limits.Stack.PlayBacklash.Times(mesh.Pair.First.Module);
        PairLayout layout = mesh.Pair.Layout;
        double closest = Math.Max(layout.LeastDistance, mesh.Pair.CentreDistance - (layout.Sense * play));
        yield return Check.Of(
            "play-backlash", Places.Mesh(mesh.Name), layout.BacklashAt(closest), limit, "mm",
            $"Backlash left where the play of the bores brings the gears {Words.Mm(play)} together",
            bound => PlayAdvice(mesh, bound));
    }

    private static string PlayAdvice(Mesh mesh, double bound)
    {
        double allowed = mesh.Pair.Layout.Sense * (mesh.Pair.CentreDistance - mesh.Pair.Layout.DistanceFor(bound));
        return allowed > 0
            ? $"Take bores whose clearances are together at most {Words.Figure(Math.Floor(allowed * 2000) / 1000, "mm")}, or open the centre distance."
            : "Give the mesh its backlash first.";
    }

    private static double ShiftOf(MountedGear gear, Mechanism mechanism, Dictionary<string, Wobble> wobbles) =>
        wobbles.TryGetValue(gear.Sandwich, out Wobble? wobble) && mechanism.Stack.Layer(gear.Name) is { } layer
            ? wobble.Shift((layer.Heights.Bottom + layer.Heights.Top) / 2)
            : 0;
}
