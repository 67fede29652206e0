using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Makes the bodies of a stack. What a sandwich carries takes the room that it sweeps in a whole turn about its axis.</summary>
internal static class BodyBuilder
{
    public static ImmutableArray<Body> Of(
        Job job, ImmutableArray<StackSandwich> sandwiches, ImmutableArray<StackSpindle> spindles, ImmutableDictionary<string, Axis> axes)
    {
        Dictionary<string, Axis> axisOf = sandwiches.ToDictionary(sandwich => sandwich.Name, sandwich => sandwich.Axis);
        return
        [
            .. sandwiches.Where(sandwich => sandwich.HasHeights).SelectMany(OfSandwich),
            .. job.Hands.Where(hand => hand.Shape is not null).Select(hand => Hand(hand, hand.Shape!, axisOf[hand.Sandwich])),
            .. job.Frame.Arms.Select(arm => Arm(arm, axes)),
            .. spindles.Select(Spindle),
            .. job.Frame.Columns.Select(column => new Body(
                column.Name, BodyKind.Column, null, null, PlanShape.Ring(column.Position, 0, column.Diameter / 2), new Heights(column.Bottom, column.Top, 0, 0))),
            .. job.Frame.Plates.Select(Plate),
        ];
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
                layer.Name, BodyKind.ScrewHeads, sandwich.Name, sandwich.Axis.Name, Circle(screws, Math.Max(screws.HeadDiameter ?? 0, screws.HoleDiameter), sandwich.Axis),
                Beyond(layer.Heights, !depth.HeadsDown, 0, height));
        }

        // What reaches beyond the gear on the far side; within its own sandwich the screws' own checks look at it.
        if (depth is { Length: { } length, Thread: { } thread } && length - layer.Thickness is > 0 and { } beyond)
        {
            yield return new Body(
                layer.Name, BodyKind.ScrewEnds, sandwich.Name, sandwich.Axis.Name, Circle(screws, thread, sandwich.Axis),
                Beyond(layer.Heights, depth.HeadsDown, 0, beyond));
        }
    }

    private static Heights Beyond(Heights heights, bool above, double from, double to) => above
        ? new Heights(heights.Top + from, heights.Top + to, heights.TopTolerance, heights.TopTolerance)
        : new Heights(heights.Bottom - to, heights.Bottom - from, heights.BottomTolerance, heights.BottomTolerance);

    private static PlanShape Circle(ScrewCircle screws, double diameter, Axis axis) =>
        PlanShape.Ring(axis.Position, Math.Max(0, (screws.CircleDiameter - diameter) / 2), (screws.CircleDiameter + diameter) / 2);

    private static Body Hand(JobHand hand, JobHandShape shape, Axis axis) => new(
        hand.Name, BodyKind.Hand, hand.Sandwich, axis.Name,
        PlanShape.Ring(axis.Position, shape.Bore / 2, Swept(Math.Max(shape.Length, shape.Tail), shape.Width)),
        new Heights(shape.Height, shape.Height + shape.Thickness, 0, 0));

    private static Body Arm(JobArm arm, ImmutableDictionary<string, Axis> axes)
    {
        (Axis from, Axis to) = (axes[arm.From], axes[arm.To]);
        var heights = new Heights(arm.Bottom, arm.Bottom + arm.Thickness, 0, arm.ThicknessTolerance);
        PlanShape shape = arm.TurnsWith is null
            ? PlanShape.Bar(from.Position, to.Position, arm.Width)
            : PlanShape.Ring(from.Position, arm.Bore / 2, from.Position.DistanceTo(to.Position) + (arm.Width / 2));
        return new Body(arm.Name, BodyKind.Arm, arm.TurnsWith, arm.From, WithHole(shape, arm, from), heights);
    }

    private static PlanShape WithHole(PlanShape shape, JobArm arm, Axis from) =>
        arm is { TurnsWith: null, Bore: > 0 } ? shape with { Holes = [new Curves.Circle(from.Position, arm.Bore / 2)] } : shape;

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
