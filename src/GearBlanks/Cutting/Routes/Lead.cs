using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>The way of a tool to a contour, or away from it, over scrap.</summary>
internal static class Lead
{
    // How far a straight lead leans back from the square, so that the way in and the way out are two.
    private static readonly (double Sine, double Cosine) Lean = Math.SinCos(Math.PI / 6);

    private const int Samples = 24;

    // The least share of its own height over the contour that a lead keeps from everything.
    private const double LeastShare = 0.7;

    /// <summary>A lead in its own sense: its last point is on the contour.</summary>
    /// <param name="at">Where it meets the contour.</param>
    /// <param name="travel">The contour's direction there, away from the lead, of length 1.</param>
    /// <param name="scrap">The side of the scrap, square to it, of length 1.</param>
    /// <param name="form">Its form.</param>
    /// <param name="length">Its length or radius, mm.</param>
    /// <param name="isSquare">True for a straight one that does not lean: beside a tab.</param>
    public static PathPiece To(Point at, Vector travel, Vector scrap, LeadForm form, double length, bool isSquare)
    {
        if (form == LeadForm.Line || isSquare)
        {
            Vector back = isSquare ? scrap : (scrap * Lean.Cosine) - (travel * Lean.Sine);
            return new PathPiece(at + (back * length), at, 0);
        }

        // A quarter of a circle, turning towards the contour's direction.
        Point centre = at + (scrap * length);
        double turn = travel.Cross(scrap) > 0 ? 1 : -1;
        return new PathPiece(centre - (travel * length), at, turn * PathPiece.QuarterBulge);
    }

    /// <summary>True where a lead keeps clear of everything that is cut but for where it meets the contour.</summary>
    /// <param name="lead">The lead.</param>
    /// <param name="scrap">The side of the scrap.</param>
    /// <param name="contours">Every contour of the part, the lead's own among them.</param>
    /// <param name="margin">What is kept from contours where the lead is farther from its own, mm.</param>
    public static bool IsClear(PathPiece lead, Vector scrap, IReadOnlyCollection<Curve> contours, double margin) => Enumerable.Range(0, Samples).All(i =>
    {
        Point point = lead.PointAt((double)i / Samples);
        double wanted = Math.Min(margin, LeastShare * (point - lead.To).Dot(scrap));
        return contours.All(curve => LineArcDistance.From(point, curve) >= wanted);
    });
}
