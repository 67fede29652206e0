using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>
/// A round spur gear, external or a ring, centred on the origin with a tooth's centre line on +X. All radii are positive; the teeth of a
/// ring point inward, so its tip circle is the smallest. Source of the sizes: ISO 21771:2007, clauses 4 and 5; from memory.
/// </summary>
public abstract record Gear : Toothing
{
    private readonly ToothFlank _flank;

    private protected Gear(GearData data, ToothFlank flank, GearTip tip, GearCircles circles)
    {
        (RootRadius, FormRadius, TipRadius, NominalTipRadius) = circles;
        _flank = flank;
        Tip = tip;
        ReferenceRadius = data.ReferenceDiameter / 2;
        BaseRadius = data.BaseRadius;
    }

    /// <inheritdoc/>
    public abstract override GearData Data { get; }

    /// <inheritdoc/>
    public override int Teeth => Data.Teeth;

    /// <summary>Radius of the reference circle, mm.</summary>
    public double ReferenceRadius { get; }

    /// <summary>Radius of the base circle, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Radius of the root circle, mm. With a full round, the deepest point of the gap.</summary>
    public double RootRadius { get; }

    /// <summary>Radius of the form circle, mm: where the involute begins at the fillet.</summary>
    public double FormRadius { get; }

    /// <summary>Radius of the tip circle as it is cut, mm: the pointed radius where the tip circle would lie beyond it.</summary>
    public double TipRadius { get; }

    /// <summary>Radius of the tip circle asked for, mm.</summary>
    public double NominalTipRadius { get; }

    /// <summary>
    /// Radius where the nominal involute ends at the tip, mm: where relief, round or chamfer starts, else the tip circle's. Under light load a relieved piece
    /// does not touch, so contact ratios by this radius are on the safe side.
    /// </summary>
    public double TipFormRadius => Tip.FormRadius;

    /// <inheritdoc/>
    public override bool IsPointed => TipRadius != NominalTipRadius;

    /// <inheritdoc/>
    public override double TipThickness => 2 * TipRadius * Tip.LandHalfAngle;

    /// <summary>What others touch first at the tip, from the flank to the land.</summary>
    internal ImmutableArray<TipCorner> TipCorners => Tip.Corners;

    private protected GearTip Tip { get; }

    private protected override double NominalTip => 2 * NominalTipRadius;

    /// <summary>
    /// Half the angle of the tooth between its nominal involutes at a radius, rad: s / (2 r) + inv alpha - inv alpha_y, of a ring
    /// s / (2 r) - inv alpha + inv alpha_y.
    /// </summary>
    /// <param name="radius">Radius, mm, between the form and the tip circle.</param>
    public double HalfAngleAt(double radius) => _flank.HalfAngleAt(radius);

    /// <summary>
    /// Angle of the clockwise side of the tooth on +X at a radius, rad, as it is cut: fillet, flank, relief, chamfer or round; negative where it lies
    /// clockwise of +X.
    /// </summary>
    /// <param name="radius">Radius, mm. Beyond the root circle the fillet's first point answers; beyond the tip circle a round or chamfer answers for it, a sharp flank goes on.</param>
    public double SideAngleAt(double radius) => _flank.Nearer(FormRadius, radius) ? FilletAngleAt(radius) : -Tip.HalfAngleAt(radius);

    /// <summary>The same below the form circle.</summary>
    private protected abstract double FilletAngleAt(double radius);

    /// <inheritdoc/>
    internal override IEnumerable<Curve> GapToTip()
    {
        (Curve[] rising, double rootHalfAngle) = ClockwiseSide();
        if (rootHalfAngle > 0)
        {
            yield return new Arc(default, RootRadius, -Math.PI / Teeth, rootHalfAngle);
        }

        foreach (Curve curve in rising)
        {
            yield return curve;
        }

        if (Tip.LandHalfAngle > 0)
        {
            yield return new Arc(default, TipRadius, -Tip.LandHalfAngle, Tip.LandHalfAngle);
        }
    }

    /// <summary>The clockwise side of the tooth on +X from root to land, and half the angle of the root circle's piece in one gap, rad.</summary>
    private protected abstract (Curve[] Rising, double RootHalfAngle) ClockwiseSide();

    /// <inheritdoc/>
    /// <remarks>One tooth repeated; it begins at the root, clockwise of the tooth on +X. Of a ring it is the inside.</remarks>
    public override Outline Outline()
    {
        (Curve[] rising, double rootHalfAngle) = ClockwiseSide();
        ImmutableArray<Curve>.Builder tooth = ImmutableArray.CreateBuilder<Curve>((2 * rising.Length) + 2);
        tooth.AddRange(rising);
        double tipHalf = Tip.LandHalfAngle;
        if (tipHalf > 0)
        {
            tooth.Add(new Arc(default, TipRadius, -tipHalf, 2 * tipHalf));
        }

        for (int i = rising.Length - 1; i >= 0; i--)
        {
            tooth.Add(rising[i].Moved(Motion.MirrorInX).Reversed());
        }

        if (rootHalfAngle > 0)
        {
            tooth.Add(new Arc(default, RootRadius, (Math.PI / Teeth) - rootHalfAngle, 2 * rootHalfAngle));
        }

        return new Outline(tooth.ToImmutable(), Teeth);
    }

    /// <summary>Builds the gear that the numbers define: a ring from <see cref="RingData"/>, else an external one.</summary>
    /// <exception cref="GearGeometryException">No such gear exists: the exception names the case and the nearest that works.</exception>
    public static Gear Of(GearData data) => data is RingData ring ? RingGear.Create(ring) : ExternalGear.Create(data);
}
