using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Makes the bodies of a stack. What a sandwich carries takes the room that it sweeps in a whole turn about its axis.</summary>
internal sealed class BodyBuilder(
    ImmutableArray<StackSandwich> sandwiches, ImmutableDictionary<string, Axis> axes, ImmutableDictionary<string, string> carriers)
{
    private readonly Dictionary<string, Axis> _axisOf = sandwiches.ToDictionary(sandwich => sandwich.Name, sandwich => sandwich.Axis);

    public ImmutableArray<Body> Of(Job job, ImmutableArray<StackSpindle> spindles) =>
    [
        .. sandwiches.Where(sandwich => sandwich.HasHeights).SelectMany(OfSandwich)
            .Concat(job.Hands.Where(hand => hand.Shape is not null).Select(hand => Hand(hand, hand.Shape!, _axisOf[hand.Sandwich])))
            .Concat(job.Frame.Arms.Select(Arm))
            .Concat(spindles.Select(Spindle))
            .Concat(job.Frame.Columns.Select(column => new Body(
                column.Name, BodyKind.Column, null, null, PlanShape.Ring(column.Position, 0, column.Diameter / 2), new Heights(column.Bottom, column.Top, 0, 0))))
            .Concat(job.Frame.Plates.Select(Plate))
            .Select(Carried),
    ];

    // On an axis that an arm carries, a body sweeps a ring about the arm's axis; that one may be carried in its turn.
    private Body Carried(Body body)
    {
        PlanShape shape = body.Shape;
        var arms = new List<string>();
        for (string? axis = body.Axis; axis is not null && carriers.TryGetValue(axis, out string? arm) && !arms.Contains(arm); axis = _axisOf[arm].Name)
        {
            arms.Add(arm);
            shape = shape.Swept(_axisOf[arm].Position);
        }

        return arms.Count == 0 || body.Arm is not null ? body with { Shape = shape } : body with { Shape = shape, Arm = arms[0], OnArm = body.Shape };
    }

    private static IEnumerable<Body> OfSandwich(StackSandwich sandwich)
    {
        foreach (StackLayer layer in sandwich.Layers)
        {
            if (Shape(layer, sandwich.Axis) is { } shape)
            {
                yield return new Body(layer.Name, layer.Gear is null ? BodyKind.Washer : BodyKind.Gear, sandwich.Name, sandwich.Axis.Name, shape, layer.Heights);
            }

            foreach (Body body in Screws(layer, sandwich))
            {
                yield return body;
            }
        }
    }

    private static PlanShape? Shape(StackLayer layer, Axis axis) => layer.Gear?.Toothing switch
    {
        ExternalGear gear => PlanShape.Ring(axis.Position, layer.Bore is { } bore ? bore.Nominal / 2 : layer.Gear!.Blank.Cutouts.Bore?.OuterRadius ?? 0, gear.TipRadius),
        RingGear ring => PlanShape.Ring(axis.Position, ring.TipRadius, ring.RimRadius),
        RackBar rack => PlanShape.Box(axis.Position, layer.Gear!.Turned, -rack.Length / 2, rack.Length / 2, -rack.Data.BackHeight, rack.TipHeight),
        _ => layer.Job.Stack.Diameter is { } diameter
            ? PlanShape.Ring(axis.Position, (layer.Bore?.Nominal ?? 0) / 2, diameter / 2)
            : null,
    };

    private static IEnumerable<Body> Screws(StackLayer layer, StackSandwich sandwich)
    {
        if ((layer.Job as JobGear)?.Screws?.Depth is not { } depth || layer.Gear!.Blank.Cutouts.Screws is not { } screws)
        {
            yield break;
        }

        if (depth.HeadHeight is > 0 and { } height)
        {
            yield return new Body(
                layer.Name, BodyKind.ScrewHeads, sandwich.Name, sandwich.Axis.Name, Heads(screws, Math.Max(screws.HeadDiameter ?? 0, screws.HoleDiameter), sandwich.Axis),
                Beyond(layer.Heights, !depth.HeadsDown, 0, height));
        }

        // What reaches beyond the gear on the far side; within its own sandwich the screws' own checks look at it.
        if (depth is { Length: { } length, Thread: { } thread } && length - layer.Thickness is > 0 and { } beyond)
        {
            yield return new Body(
                layer.Name, BodyKind.ScrewEnds, sandwich.Name, sandwich.Axis.Name, Heads(screws, thread, sandwich.Axis),
                Beyond(layer.Heights, depth.HeadsDown, 0, beyond));
        }
    }

    private static Heights Beyond(Heights heights, bool above, double from, double to) => above
        ? new Heights(heights.Top + from, heights.Top + to, heights.TopTolerance, heights.TopTolerance)
        : new Heights(heights.Bottom - to, heights.Bottom - from, heights.BottomTolerance, heights.BottomTolerance);

    private static PlanShape Heads(ScrewCircle screws, double diameter, Axis axis) =>
        PlanShape.Ring(axis.Position, Math.Max(0, (screws.CircleDiameter - diameter) / 2), (screws.CircleDiameter + diameter) / 2);

    private static Body Hand(JobHand hand, JobHandShape shape, Axis axis) => new(
        hand.Name, BodyKind.Hand, hand.Sandwich, axis.Name,
        PlanShape.Ring(axis.Position, shape.Bore / 2, Swept(Math.Max(shape.Length, shape.Tail), shape.Width)),
        new Heights(shape.Height, shape.Height + shape.Thickness, 0, 0));

    private Body Arm(JobArm arm)
    {
        (Point from, Point to) = (axes[arm.From].Position, axes[arm.To].Position);
        PlanShape bar = PlanShape.Bar(from, to, arm.Width) with { Holes = arm.Bore > 0 ? [new Circle(from, arm.Bore / 2)] : [] };
        var body = new Body(arm.Name, BodyKind.Arm, arm.TurnsWith, arm.From, bar, new Heights(arm.Bottom, arm.Bottom + arm.Thickness, 0, arm.ThicknessTolerance));
        return arm.TurnsWith is null ? body : body with { Shape = bar.Swept(from), Arm = arm.TurnsWith, OnArm = bar };
    }

    private static Body Spindle(StackSpindle spindle) => new(
        spindle.Name, BodyKind.Spindle, spindle.Job.TurnsWith, spindle.Axis.Name,
        PlanShape.Ring(spindle.Axis.Position, spindle.Job.Bore / 2, spindle.Job.Diameter / 2), spindle.Heights);

    private static Body Plate(JobPlate plate)
    {
        PlanShape shape = plate.Diameter is { } diameter
            ? PlanShape.Ring(plate.Position, 0, diameter / 2)
            : PlanShape.Box(plate.Position, plate.Direction, -plate.Length / 2, plate.Length / 2, -plate.Width / 2, plate.Width / 2);
        return new Body(
            plate.Name, BodyKind.Plate, null, null, shape with { Holes = plate.Holes },
            new Heights(plate.Bottom, plate.Bottom + plate.Thickness, 0, plate.ThicknessTolerance));
    }

    // The corners of a straight hand's end are the farthest.
    private static double Swept(double length, double width) => Math.Sqrt((length * length) + (width * width / 4));
}
