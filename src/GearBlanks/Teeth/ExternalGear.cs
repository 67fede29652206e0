using GearBlanks.Curves;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>An external spur gear as a basic rack generates it.</summary>
public sealed record ExternalGear : Gear
{
    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    // In modules: a sharp-cornered rack whose corner runs on the pitch line leaves a corner, not a fillet. Less than the gap an outline may have.
    private const double LeastLength = 1e-11;

    private ExternalGear(GearData data, ToothForm form)
        : base(data, form.Sides, form.Tip, form.Circles)
    {
        Data = data;
        Undercut = form.Undercut;
        NeckThickness = form.NeckThickness;
        Fillet = form.Fillet;
        Flank = form.Flank;
        RootHalfAngle = form.RootHalfAngle;
    }

    /// <inheritdoc/>
    public override GearData Data { get; }

    /// <summary>Least thickness of the tooth between root and form circle, mm (arc) at its own radius.</summary>
    public double NeckThickness { get; }

    /// <summary>How far the flank is undercut; null where it is not.</summary>
    public Undercut? Undercut { get; }

    /// <summary>The fillet at the clockwise side of the tooth on +X, from the root circle outward.</summary>
    public Trochoid Fillet { get; }

    /// <summary>The flank at the clockwise side of the tooth on +X, from the form circle to where the nominal involute ends.</summary>
    public Involute Flank { get; }

    /// <summary>Half the angle of the root circle's piece in one gap, rad; 0 for a full round.</summary>
    public double RootHalfAngle { get; }

    /// <summary>Builds the gear.</summary>
    /// <exception cref="GearGeometryException">No such gear exists: the exception names the case and the nearest that works.</exception>
    public static ExternalGear Create(GearData data)
    {
        GearRanges.Require(data);
        try
        {
            return new ExternalGear(data, ToothForm.Of(data));
        }
        catch (GearGeometryException e) when (e.Remedy is null)
        {
            throw new GearGeometryException(e.ShapeCase, e.What, e.Value, e.Limit, NearestShift.Advice(data.ProfileShift, x => ToothForm.Of(data with { ProfileShift = x }).IsPointed));
        }
    }

    /// <summary>The fillet's parameter at a radius between root and form circle, mm.</summary>
    internal double FilletNormalAt(double radius) =>
        Fillet.RadiusAt(Fillet.End) <= radius
            ? Fillet.End
            : Brent.FindRoot(t => Fillet.RadiusAt(t) - radius, Fillet.Start, Fillet.End, 1e-14 * radius, MaxSteps);

    /// <inheritdoc/>
    private protected override double FilletAngleAt(double radius)
    {
        double normal = radius <= Fillet.RadiusAt(Fillet.Start) ? Fillet.Start : FilletNormalAt(radius);
        return Fillet.PolarAngleAt(normal) + RootHalfAngle - (Math.PI / Teeth);
    }

    /// <inheritdoc/>
    private protected override (Curve[] Rising, double RootHalfAngle) ClockwiseSide() =>
        (Fillet.Length < LeastLength * Module ? [Flank, .. Tip.Side()] : [Fillet, Flank, .. Tip.Side()], RootHalfAngle);
}
