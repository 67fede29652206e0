using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>How deep a tip lies in the other gear's fillet while flanks carry: the way out along the normal, however the gears may turn.</summary>
/// <param name="Depth">Depth of the deepest point of the tip, mm; 0 where none is inside.</param>
/// <param name="FirstRadius">Radius of that point on the first gear, mm.</param>
/// <param name="SecondRadius">Radius on the second gear, mm; of a rack the height.</param>
/// <param name="Place">Where it is.</param>
internal readonly record struct TipDepth(double Depth, double FirstRadius, double SecondRadius, Point Place)
{
    // Of each curve about the tip: the corner itself, or points of a round one that are enough for its deepest.
    private const int TipSteps = 8;

    // A fillet bends once: between so many samples there is one nearest place.
    private const int NearSamples = 6;

    /// <summary>The depth at one position.</summary>
    /// <param name="solver">The pair.</param>
    /// <param name="contact">A stop that a fillet makes.</param>
    /// <param name="turn">Turn of the first one, rad.</param>
    /// <param name="standing">Turn of the second one, rad; of a rack its way, mm.</param>
    /// <param name="distance">Distance of the axes, mm.</param>
    public static TipDepth Of(ContactSolver solver, in Contact contact, double turn, double standing, double distance)
    {
        RollPlacing placing = solver.Placing;
        Motion first = RollPlacing.FirstAt(turn, solver.FirstCentre);
        Motion second = placing.SecondAt(standing, distance, solver.SecondCentre);
        if (!placing.First.IsFillet(contact.FirstRadius))
        {
            TipDepth own = Deepest(placing.First, contact.FirstSide, first.Then(second.Back()), placing.Second, contact.SecondSide);
            return own with { Place = second.Apply(own.Place) };
        }

        TipDepth found = Deepest(placing.Second, contact.SecondSide, second.Then(first.Back()), placing.First, contact.FirstSide);
        return new TipDepth(found.Depth, found.SecondRadius, found.FirstRadius, first.Apply(found.Place));
    }

    private static TipDepth Deepest(RollGear tip, int tipSide, Motion seen, RollGear dug, int dugSide)
    {
        RollSide side = dug.Sides[dugSide];
        int outside = dugSide % 2 == 1 ? 1 : -1;
        TipDepth deepest = default;
        foreach (Curve curve in tip.Sides[tipSide].Curves)
        {
            for (int i = 0; i <= TipSteps; i++)
            {
                Point point = curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / TipSteps));
                if (!tip.IsFillet(tip.HeightOf(point)) && seen.Apply(point) is var place && IsBehind(side, outside, dug, place)
                    && side.Curves.Min(near => DistanceTo(near, place)) is var depth && depth > deepest.Depth)
                {
                    deepest = new TipDepth(depth, tip.HeightOf(point), dug.HeightOf(place), place);
                }
            }
        }

        return deepest;
    }

    private static bool IsBehind(RollSide side, int outside, RollGear gear, Point place)
    {
        double height = gear.HeightOf(place);
        double ahead = gear.Kind == RollKind.Rack
            ? -place.X - side.AngleAt(height)
            : Math.IEEERemainder(place.Angle - side.AngleAt(height), 2 * Math.PI);
        return (gear.Kind == RollKind.Ring ? height >= side.Tip : height <= side.Tip) && ahead * outside < 0;
    }

    private static double DistanceTo(Curve curve, Point place) =>
        LeastValue.Of(parameter => (curve.PointAt(parameter) - place).Length, curve.Start, curve.End, NearSamples).Value;
}
