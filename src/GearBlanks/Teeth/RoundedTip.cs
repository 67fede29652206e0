using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>A tip corner taken off by a round that is tangent to flank and tip circle.</summary>
internal sealed record RoundedTip(ToothFlank Flank, double TipRadius, double Round) : TipEdge(Flank, TipRadius)
{
    /// <inheritdoc/>
    public override double FlankEnd => Flank.BaseRadius * Math.Sqrt(1 + (Corner.ContactRoll * Corner.ContactRoll));

    /// <inheritdoc/>
    /// <remarks>An external tooth's round shrinks to the base circle at most: further in there is no involute to touch.</remarks>
    public override double LandHalfAngle =>
        Corner.CentreRadius < Flank.BaseRadius ? double.NegativeInfinity : Land(Flank.Sense * Corner.CentreHalfAngle);

    /// <inheritdoc/>
    public override ImmutableArray<TipCorner> Corners => [new TipCorner(Corner.CentreRadius, LandHalfAngle, Round)];

    // A ring's round lies beyond the tip circle and beyond the flank: a round of negative radius.
    private RoundedCorner Corner => RoundedCorner.Of(Flank.BaseRadius, Flank.HalfAtBase, TipRadius, Flank.Sense * Round);

    /// <inheritdoc/>
    public override double HalfAngleAt(double radius)
    {
        double centre = Corner.CentreRadius;
        double reach = Math.Clamp(Flank.Sense * radius, Flank.Sense * FlankEnd, Flank.Sense * TipRadius) * Flank.Sense;
        double outward = reach - centre;

        // The law of cosines, by half angles: it keeps its digits for a small round far out.
        double square = (Round - outward) * (Round + outward) / (4 * reach * centre);
        return LandHalfAngle + (2 * Math.Asin(Math.Sqrt(Math.Max(0, square))));
    }

    /// <inheritdoc/>
    public override Curve Side()
    {
        Point centre = Point.Polar(Corner.CentreRadius, -LandHalfAngle);
        double start = (Point.Polar(FlankEnd, -Flank.HalfAngleAt(FlankEnd)) - centre).Angle;
        double end = -LandHalfAngle + (Flank.Sense > 0 ? 0 : Math.PI);
        return new Arc(centre, Round, start, Math.IEEERemainder(end - start, 2 * Math.PI));
    }
}
