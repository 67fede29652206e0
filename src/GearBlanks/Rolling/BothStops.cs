using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>Both stops of the second gear at one position of the first, and what is in the way there.</summary>
/// <param name="Lead">Where it is stopped turning counter-clockwise.</param>
/// <param name="Trail">Where it is stopped turning clockwise.</param>
/// <param name="Turn">Turn of the first one, rad.</param>
internal readonly record struct BothStops(Contact Lead, Contact Trail, double Turn)
{
    // mm: what lies deeper is in the way, and deeper than another; less is the rounding of a touch, and of equal teeth the first one is told.
    private const double Touching = 1e-6;

    /// <summary>The play that flanks leave, rad (of a rack mm): negative where a tooth is wider than its gap. Where fillets alone touch, theirs.</summary>
    public double Play => HasFlanks ? Lead.FlankLimit - Trail.FlankLimit : Lead.Limit - Trail.Limit;

    private bool HasFlanks => double.IsFinite(Lead.FlankLimit) && double.IsFinite(Trail.FlankLimit);

    /// <summary>The deepest interference at this position; null where none is deeper than what is known.</summary>
    /// <param name="solver">The pair.</param>
    /// <param name="distance">Distance of the axes, mm.</param>
    /// <param name="known">Depth that is known already, mm.</param>
    public RollInterference? Deepest(ContactSolver solver, double distance, double known)
    {
        RollInterference? deepest = null;
        double depth = known + Touching;
        if (HasFlanks && -Play * Lead.Lever > depth)
        {
            depth = -Play * Lead.Lever;
            deepest = Told(RollObstacle.Flanks, depth, Lead, (Lead.FlankLimit + Trail.FlankLimit) / 2, solver.PlaceOf(Lead, Turn));
        }

        foreach ((Contact stop, int sense) in (ReadOnlySpan<(Contact, int)>)[(Lead, 1), (Trail, -1)])
        {
            // Where flanks carry; where none do, in the middle of what fillets leave.
            double standing = HasFlanks ? stop.FlankLimit : (Lead.Limit + Trail.Limit) / 2;

            // No point is deeper than its way out by turning: where that is less than what is known, or flanks overlap anyway, nothing is measured.
            if (!(HasFlanks && Play < 0) && (standing - stop.Limit) * sense * solver.Placing.Second.LongestLever > depth
                && TipDepth.Of(solver, stop, Turn, standing, distance) is var fillet && fillet.Depth > depth)
            {
                depth = fillet.Depth;
                deepest = Told(RollObstacle.Fillet, depth, stop with { FirstRadius = fillet.FirstRadius, SecondRadius = fillet.SecondRadius }, standing, fillet.Place);
            }

            if (stop.Sunk > depth)
            {
                depth = stop.Sunk;
                deepest = Told(RollObstacle.Root, depth, stop, standing, solver.PlaceOf(stop, Turn));
            }
        }

        return deepest;
    }

    private RollInterference Told(RollObstacle kind, double depth, in Contact at, double standing, Point place) =>
        new(kind, depth, Turn, at.Tooth + 1, at.FirstRadius, at.SecondRadius) { SecondTurn = standing, Place = place };
}
