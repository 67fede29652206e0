using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Cutting;

namespace GearBlanks.Files.Svg.Overview;

/// <summary>Stands callouts around the plan: left and right of it, or above and below, whichever keeps the leaders short and clear.</summary>
internal static class CalloutLayout
{
    // A dozen callouts settle in three or four; a hundred stay good enough.
    private const int MostRounds = 8;

    /// <summary>The callouts in their places.</summary>
    /// <param name="callouts">The callouts.</param>
    /// <param name="plan">What they must stay outside of.</param>
    /// <param name="marks">What leaders should not cross, besides other axes.</param>
    /// <param name="look">Sizes.</param>
    public static ImmutableArray<PlacedCallout> Place(
        ImmutableArray<Callout> callouts, Extent plan, IEnumerable<Circle> marks, Look look)
    {
        var costs = new LeaderCost([.. marks, .. callouts.Select(callout => new Circle(callout.Axis.Position, 0.8 * look.Height))]);
        PlacedCallout[][] ways =
        [
            OnBothSides(callouts, plan, new Vector(1, 0), false, costs, look),
            OnBothSides(callouts, plan, new Vector(1, 0), true, costs, look),
            OnBothSides(callouts, plan, new Vector(0, 1), false, costs, look),
            OnBothSides(callouts, plan, new Vector(0, 1), true, costs, look),
        ];
        return [.. ways.MinBy(way => costs.Of(way) + Around(way, plan))!];
    }

    // A compact sheet is worth some length of leader.
    private static double Around(PlacedCallout[] way, Extent plan)
    {
        Extent all = way.Aggregate(plan, (extent, callout) => extent.With(callout.Box));
        return all.Width + all.Height;
    }

    private static PlacedCallout[] OnBothSides(
        ImmutableArray<Callout> callouts, Extent plan, Vector outward, bool isSwapped, LeaderCost costs, Look look)
    {
        var far = new Side(plan, outward, look.Gap);
        var near = new Side(plan, -outward, look.Gap);

        // Axes on one level go to both sides by turns.
        Callout[] ordered = [.. callouts
            .OrderBy(callout => far.Along(callout.Axis.Position))
            .Select((callout, i) => (Callout: callout, Level: Math.Round(far.Out(callout.Axis.Position), 6), Turn: i % 2 == 0 == isSwapped))
            .OrderBy(item => item.Level).ThenBy(item => item.Turn)
            .Select(item => item.Callout)];
        double half = ordered.Sum(far.Size) / 2;
        double taken = 0;
        int split = ordered.TakeWhile(callout => (taken += far.Size(callout)) <= half).Count();
        return [.. OnSide(ordered[..split], near, costs, look), .. OnSide(ordered[split..], far, costs, look)];
    }

    private static PlacedCallout[] OnSide(Callout[] callouts, Side side, LeaderCost costs, Look look)
    {
        Callout[] order = [.. callouts.OrderBy(callout => side.Along(callout.Axis.Position))];
        PlacedCallout[] best = Stand(order, side, look);
        double cost = costs.Of(best);

        // Swapping neighbours while it helps: each swap lowers the cost, and the count of rounds guards the time.
        bool isBetter = true;
        for (int round = 0; isBetter && round < MostRounds; round++)
        {
            isBetter = false;
            for (int i = 0; i + 1 < order.Length; i++)
            {
                Callout[] swapped = [.. order];
                (swapped[i], swapped[i + 1]) = (swapped[i + 1], swapped[i]);
                PlacedCallout[] other = Stand(swapped, side, look);
                double otherCost = costs.Of(other);
                if (otherCost < cost)
                {
                    (order, best, cost, isBetter) = (swapped, other, otherCost, true);
                }
            }
        }

        return best;
    }

    // Each as near to its axis as those before it allow; then, from the end, back within the side as far as there is room.
    private static PlacedCallout[] Stand(Callout[] order, Side side, Look look)
    {
        double gap = look.Height;
        double[] starts = new double[order.Length];
        double free = side.Start;
        for (int i = 0; i < order.Length; i++)
        {
            starts[i] = Math.Max(free, side.Along(order[i].Axis.Position) - (side.Size(order[i]) / 2));
            free = starts[i] + side.Size(order[i]) + gap;
        }

        double room = order.Sum(side.Size) + (gap * (order.Length - 1));
        double end = Math.Max(side.End, side.Start + room);
        for (int i = order.Length - 1; i >= 0; i--)
        {
            starts[i] = Math.Min(starts[i], end - side.Size(order[i]));
            end = starts[i] - gap;
        }

        double excess = Math.Max(0, room - (side.End - side.Start));
        return [.. order.Select((callout, i) => new PlacedCallout(callout, side, side.Box(callout, starts[i] - (excess / 2))))];
    }
}
