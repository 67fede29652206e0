using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>A tip corner taken off by a straight line at 45 degrees to the radius through its start on the flank.</summary>
internal sealed record ChamferedTip(ToothFlank Flank, double TipRadius, double Height) : TipEdge(Flank, TipRadius)
{
    /// <inheritdoc/>
    public override double FlankEnd => TipRadius - (Flank.Sense * Height);

    /// <inheritdoc/>
    public override double LandHalfAngle => Land(HalfAngleAt(TipRadius));

    /// <inheritdoc/>
    public override ImmutableArray<TipCorner> Corners =>
        [new TipCorner(FlankEnd, Flank.HalfAngleAt(FlankEnd), 0), new TipCorner(TipRadius, LandHalfAngle, 0)];

    /// <summary>True where the flank itself leans so much that no such chamfer takes anything off.</summary>
    public bool IsTooSteep => Flank.ProfileAngleAt(FlankEnd) >= (Math.PI / 4) - LeastAngle;

    /// <inheritdoc/>
    public override double HalfAngleAt(double radius)
    {
        double reach = Math.Clamp(Flank.Sense * radius, Flank.Sense * FlankEnd, Flank.Sense * TipRadius) * Flank.Sense;
        double start = FlankEnd;

        // With equal steps t outward and across: (start + t)^2 + t^2 = reach^2; of a ring inward. A ring's chamfer may pass the tip circle by: no land.
        double square = (2 * reach * reach) - (start * start);
        double step = (reach - start) * (reach + start) / (start + Math.Sqrt(square));
        return square < 0 ? double.NegativeInfinity : Flank.HalfAngleAt(start) - Math.Atan2(Math.Abs(step), start + step);
    }

    /// <inheritdoc/>
    public override Curve Side() =>
        new Line(Point.Polar(FlankEnd, -Flank.HalfAngleAt(FlankEnd)), Point.Polar(TipRadius, -LandHalfAngle));
}
