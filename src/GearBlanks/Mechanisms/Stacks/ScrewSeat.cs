using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>The screws of one layer among the layers of its sandwich.</summary>
internal sealed class ScrewSeat(StackSandwich sandwich, int index)
{
    // A head that touches a hole's edge but for rounding passes through it.
    private const double Rounding = 1e-9;

    public StackLayer Layer => sandwich.Layers[index];

    public JobScrewDepth Depth => ((JobGear)Layer.Job).Screws!.Depth!;

    public double HeadDiameter => Math.Max(Screws.HeadDiameter ?? 0, Screws.HoleDiameter);

    /// <summary>The layer that the screws go into; null where there is none.</summary>
    public StackLayer? Tapped => Beside(!Depth.HeadsDown ? -1 : 1).FirstOrDefault();

    public double LeastGrip => Depth.Grip ?? Layer.LeastThickness;

    public double GreatestGrip => Depth.Grip ?? Layer.GreatestThickness;

    /// <summary>How deep the screws can go: the socket, or where it is not given what the tapped layer has before another one covers it; else without end.</summary>
    public double Socket
    {
        get
        {
            StackLayer[] layers = [.. Beside(Depth.HeadsDown ? 1 : -1)];
            double solid = layers.Skip(1).Any(layer => Covers(layer, Depth.Thread ?? 0)) ? layers[0].LeastThickness : double.PositiveInfinity;
            return Math.Min(Depth.Socket ?? double.PositiveInfinity, solid);
        }
    }

    private ScrewCircle Screws => Layer.Gear!.Blank.Cutouts.Screws!;

    /// <summary>From the middle to the near edge of the screws' circles of a diameter, mm.</summary>
    public double Inner(double diameter) => (Screws.CircleDiameter - diameter) / 2;

    /// <summary>From the middle to their far edge, mm.</summary>
    public double Outer(double diameter) => (Screws.CircleDiameter + diameter) / 2;

    /// <summary>The next layer that lies over the heads, and the least gap to it, mm; null where nothing does.</summary>
    public (double Gap, StackLayer Over)? OverHeads()
    {
        double gap = 0;
        foreach (StackLayer layer in Beside(Depth.HeadsDown ? -1 : 1))
        {
            if (Covers(layer, HeadDiameter))
            {
                return (gap, layer);
            }

            gap += layer.LeastThickness;
        }

        return null;
    }

    // The layers on one side, the nearest first.
    private IEnumerable<StackLayer> Beside(int step)
    {
        for (int i = index + step; i >= 0 && i < sandwich.Layers.Length; i += step)
        {
            yield return sandwich.Layers[i];
        }
    }

    private bool Covers(StackLayer layer, double diameter)
    {
        (double inner, double outer) = layer.Gear?.Toothing switch
        {
            ExternalGear gear => (layer.Gear!.Blank.Cutouts.Bore?.OuterRadius ?? 0, gear.TipRadius),
            RingGear ring => (ring.TipRadius, ring.RimRadius),
            _ => ((layer.Bore?.Nominal ?? 0) / 2, (layer.Job.Stack.Diameter ?? 0) / 2),
        };
        return outer > Inner(diameter) && inner < Outer(diameter) && !PassesHoles(layer, diameter);
    }

    // Both gears are turned against their sandwich.
    private bool PassesHoles(StackLayer layer, double diameter)
    {
        if (layer.Gear is not { } gear)
        {
            return false;
        }

        Circle[] holes = [.. gear.Blank.Cutouts.Holes.Select(hole => hole with { Centre = Point.Polar(hole.Centre.Radius, hole.Centre.Angle + gear.Turned) })];
        return Screws.Holes(Layer.Gear!.Turned).All(screw => holes.Any(hole => hole.Centre.DistanceTo(screw.Centre) + (diameter / 2) <= hole.Radius + Rounding));
    }
}
