using GearBlanks.Findings;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Screws within their own sandwich: heads under the next part, thread in its socket, what is left beside the socket.</summary>
internal static class ScrewCheck
{
    public static IEnumerable<Finding> Of(Mechanism mechanism) =>
        from sandwich in mechanism.Stack.Sandwiches
        from i in Enumerable.Range(0, sandwich.Layers.Length)
        where (sandwich.Layers[i].Job as JobGear)?.Screws?.Depth is not null && sandwich.Layers[i].Gear!.Blank.Cutouts.Screws is not null
        from finding in OnScrews(new ScrewSeat(sandwich, i), mechanism.Limits)
        select finding;

    private static IEnumerable<Finding> OnScrews(ScrewSeat seat, Limits limits)
    {
        string place = Places.Gear(seat.Layer.Name);
        if (seat.Depth.HeadHeight is > 0 and { } height && seat.OverHeads() is (var gap, var over))
        {
            yield return Check.Of(
                "head-clearance", place, gap - height, limits.Stack.HeadClearance, "mm", $"Least gap between the screw heads and {over.Name}",
                bound => $"Put {Words.Mm(Words.RoundedUp(height + bound - gap))} more between them, with a washer narrower than {Words.Mm(Math.Floor((seat.Inner(seat.HeadDiameter) * 200) + 1e-8) / 100)}, put the heads on the other face, or sink them.");
        }

        if (seat.Depth is { Length: { } length, Thread: { } thread })
        {
            double engaged = Math.Min(length - seat.GreatestGrip, seat.Socket);
            yield return Check.Of(
                "screw-engagement", place, Math.Max(0, engaged) / thread, limits.Stack.ScrewEngagement, "diameters", "Least engaged length of the screws",
                bound => LengthAdvice(seat, length, bound * thread, limits));
            if (!double.IsInfinity(seat.Socket))
            {
                double room = seat.Socket - (length - seat.LeastGrip);
                yield return Check.Of(
                    "screw-end-room", place, room, limits.Stack.ScrewEndRoom, "mm", "Least room between the screws' ends and the bottom of their sockets",
                    bound => $"Use screws of at most {Words.Mm(Math.Floor(((length + room - bound) * 100) + 1e-8) / 100)}, or sockets deeper by {Words.Mm(Words.RoundedUp(bound - room))}.");
            }

            foreach (Finding finding in SocketWalls(seat, thread, limits))
            {
                yield return finding;
            }
        }
    }

    private static string LengthAdvice(ScrewSeat seat, double length, double engaged, Limits limits)
    {
        double longest = seat.LeastGrip + seat.Socket - (limits.Stack.ScrewEndRoom.TightBelow ?? 0);
        double wanted = Words.RoundedUp(seat.GreatestGrip + engaged);
        string sockets = wanted <= longest ? "" : $" in sockets at least {Words.Mm(Words.RoundedUp(seat.Socket + wanted - longest))} deep";
        return wanted > length ? $"Use screws of at least {Words.Mm(wanted)}{sockets}." : $"Make the sockets at least {Words.Mm(Words.RoundedUp(engaged))} deep.";
    }

    private static IEnumerable<Finding> SocketWalls(ScrewSeat seat, double thread, Limits limits)
    {
        if (seat.Tapped is not { Gear: null, Job.Stack.Diameter: { } diameter } washer)
        {
            yield break;
        }

        double outside = (diameter / 2) - seat.Outer(thread);
        double inside = seat.Inner(thread) - ((washer.Bore?.Nominal ?? 0) / 2);
        yield return Check.Of(
            "wall", washer.Name, Math.Min(outside, inside), limits.Wall.Times(washer.Thickness), "mm",
            $"Least wall beside the sockets of {seat.Layer.Name}, to the {(outside < inside ? "edge" : "bore")},",
            bound => outside < inside
                ? $"Make the diameter of the washer greater by {Words.Mm(2 * Words.RoundedUp(bound - outside))}, or use a smaller screw circle."
                : $"Use a screw circle greater by {Words.Mm(2 * Words.RoundedUp(bound - inside))}, or a smaller bore.");
    }
}
