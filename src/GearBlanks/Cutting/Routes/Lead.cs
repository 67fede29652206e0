using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>The way of a tool to a contour, or away from it, over scrap.</summary>
internal static class Lead
{
    // rad: how far a straight lead leans back from the square, so that the way in and the way out are two; in a narrower corner it does not lean.
    private const double Lean = Math.PI / 6;
    private const double LeaningRoom = Math.PI / 4;

    // rad: written arcs meet with such kinks at most where they are meant to be smooth.
    private const double Kink = 0.02;

    // A lead is looked at in parts, each this share of what is left of it: the nearer to the contour, the finer.
    private const double Step = 0.25;

    // The least share of its own height over the contour that a lead keeps from everything.
    private const double LeastShare = 0.7;

    // mm: so near to its contour a lead has arrived.
    private const double Arrived = 1e-5;

    /// <summary>A lead in its own sense, its last point on the contour; null where the corner is too narrow for any of its form.</summary>
    /// <param name="join">Where it meets the contour.</param>
    /// <param name="form">Its form; beside a tab it is straight.</param>
    /// <param name="length">Its length or radius, mm.</param>
    public static PathPiece? To(Join join, LeadForm form, double length)
    {
        if (form == LeadForm.Line || join.IsTabs)
        {
            (double sine, double cosine) = join.IsTabs || join.Opening < LeaningRoom ? (0, 1) : Math.SinCos(Lean);
            return new PathPiece(join.At + (((join.Scrap * cosine) - (join.Travel * sine)) * length), join.At, 0);
        }

        // A quarter of a circle, turning towards the contour's direction.
        Point centre = join.At + (join.Scrap * length);
        double turn = join.Travel.Cross(join.Scrap) > 0 ? 1 : -1;
        return join.Opening < (Math.PI / 2) - Kink ? null : new PathPiece(centre - (join.Travel * length), join.At, turn * PathPiece.QuarterBulge);
    }

    /// <summary>True where all of a lead keeps clear of everything that is cut but for where it meets the contour, so that it never leaves the scrap.</summary>
    /// <param name="lead">The lead.</param>
    /// <param name="join">Where it meets its contour.</param>
    /// <param name="contours">Every contour of the part, the lead's own among them.</param>
    /// <param name="margin">What is kept from contours where the lead is farther from its own, mm.</param>
    public static bool IsClear(PathPiece lead, Join join, IEnumerable<Curve> contours, double margin)
    {
        double reach = lead.From.DistanceTo(lead.To) + margin;
        Curve[] near = [.. contours.Where(curve => LineArcDistance.From(lead.To, curve) <= reach)];
        double share = LeastShare * Math.Sin(Math.Min(join.Opening, Math.PI / 2));
        for (double from = 0; ;)
        {
            double to = from + ((1 - from) * Step);
            double wanted = Math.Min(margin, share * join.HeightOf(lead.PointAt(to))) - Arrived;
            if (wanted <= 0)
            {
                return true;
            }

            Curve part = lead.Part(from, to).AsCurve();
            if (near.Any(curve => LineArcDistance.Between(part, curve) < wanted))
            {
                return false;
            }

            from = to;
        }
    }
}
