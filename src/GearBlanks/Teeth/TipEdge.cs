using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>The corner between a round gear's flank and its tip circle: sharp.</summary>
internal record TipEdge(ToothFlank Flank, double TipRadius)
{
    // In radians: a land that is nothing but rounding is none.
    protected const double LeastAngle = 1e-12;

    /// <summary>Where the flank ends, mm.</summary>
    public virtual double FlankEnd => TipRadius;

    /// <summary>Half the angle of the land that is left on the tip circle, rad; negative where the corners would overlap.</summary>
    public virtual double LandHalfAngle => Land(Flank.HalfAngleAt(TipRadius));

    /// <summary>Where others touch it, from the flank to the land.</summary>
    public virtual ImmutableArray<TipCorner> Corners => [new TipCorner(TipRadius, LandHalfAngle, 0)];

    /// <summary>The corner a form asks for.</summary>
    public static TipEdge Of(ToothFlank flank, double tipRadius, TipForm form, double least) =>
        form.Round > least ? new RoundedTip(flank, tipRadius, form.Round)
        : form.Chamfer > least ? new ChamferedTip(flank, tipRadius, form.Chamfer)
        : new TipEdge(flank, tipRadius);

    /// <summary>Half the tooth's angle at a radius beyond the flank's end, rad; beyond the tip circle the sharp flank goes on.</summary>
    public virtual double HalfAngleAt(double radius) => Flank.HalfAngleAt(radius);

    /// <summary>The curve between flank and land at the clockwise side of the tooth on +X; null for a sharp corner.</summary>
    public virtual Curve? Side() => null;

    protected static double Land(double halfAngle) => Math.Abs(halfAngle) < LeastAngle ? 0 : halfAngle;
}
