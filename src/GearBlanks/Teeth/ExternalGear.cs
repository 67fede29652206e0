using System.Collections.Immutable;
using GearBlanks.Curves;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>
/// An external spur gear as a basic rack generates it. One that exists is a gear that can exist. It is centred on the origin with a
/// tooth's centre line on +X. Source of the sizes: ISO 21771:2007, clauses 4 and 5; from memory.
/// </summary>
public sealed record ExternalGear
{
    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    // In modules: a sharp-cornered rack whose corner runs on the pitch line leaves a corner, not a fillet. Less than the gap an outline may have.
    private const double LeastLength = 1e-11;

    private readonly double _halfToothAtBase;

    private ExternalGear(GearData data, ToothForm form)
    {
        Data = data;
        BaseRadius = form.BaseRadius;
        RootRadius = form.RootRadius;
        FormRadius = form.FormRadius;
        TipRadius = form.TipRadius;
        NominalTipRadius = form.NominalTipRadius;
        Undercut = form.Undercut;
        NeckThickness = form.NeckThickness;
        _halfToothAtBase = form.HalfToothAtBase;
        Fillet = form.Fillet;
        Flank = form.Flank;
        RootHalfAngle = form.RootHalfAngle;
    }

    /// <summary>The numbers that define it.</summary>
    public GearData Data { get; }

    /// <summary>Tooth count z.</summary>
    public int Teeth => Data.Teeth;

    /// <summary>Module m, mm.</summary>
    public double Module => Data.Module;

    /// <summary>Pressure angle of the rack, rad.</summary>
    public double PressureAngle => Data.Rack.PressureAngle;

    /// <summary>Radius of the reference circle, mm.</summary>
    public double ReferenceRadius => Data.ReferenceDiameter / 2;

    /// <summary>Radius of the base circle, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Radius of the root circle, mm. With a full round, the deepest point of the gap.</summary>
    public double RootRadius { get; }

    /// <summary>Radius of the form circle, where the involute begins, mm.</summary>
    public double FormRadius { get; }

    /// <summary>Radius of the tip circle as it is cut, mm: the pointed radius where the tip circle would lie beyond it.</summary>
    public double TipRadius { get; }

    /// <summary>Radius of the tip circle asked for, mm.</summary>
    public double NominalTipRadius { get; }

    /// <summary>True where the flanks meet before the tip circle asked for.</summary>
    public bool IsPointed => TipRadius < NominalTipRadius;

    /// <summary>Tooth thickness on the reference circle, thinned, mm (arc).</summary>
    public double ToothThickness => Data.ToothThickness;

    /// <summary>Tooth thickness on the tip circle, mm (arc); 0 for a pointed tooth.</summary>
    public double TipThickness => IsPointed ? 0 : 2 * TipRadius * HalfAngleAt(TipRadius);

    /// <summary>Least thickness of the tooth between root and form circle, mm (arc) at its own radius.</summary>
    public double NeckThickness { get; }

    /// <summary>How far the flank is undercut; null where it is not.</summary>
    public Undercut? Undercut { get; }

    /// <summary>The fillet at the clockwise side of the tooth on +X, from the root circle outward.</summary>
    public Trochoid Fillet { get; }

    /// <summary>The flank at the clockwise side of the tooth on +X, from the form circle outward.</summary>
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
            throw new GearGeometryException(e.ShapeCase, e.What, e.Value, e.Limit, NearestShift.Advice(data));
        }
    }

    /// <summary>
    /// Half the angle of the tooth at a radius on the involute, rad: s / (2 r) + inv alpha - inv alpha_y.
    /// </summary>
    /// <param name="radius">Radius, mm, from the form to the tip circle.</param>
    public double HalfAngleAt(double radius) =>
        _halfToothAtBase - InvoluteFunction.Inv(Math.Acos(Math.Clamp(BaseRadius / radius, 0, 1)));

    /// <summary>
    /// Angle of the clockwise side of the tooth on +X, flank or fillet, at a radius, rad: negative where the side lies clockwise of +X.
    /// </summary>
    /// <param name="radius">Radius, mm; below the root circle the fillet's first point answers.</param>
    public double SideAngleAt(double radius)
    {
        if (radius >= FormRadius)
        {
            return -HalfAngleAt(radius);
        }

        double normal = radius <= Fillet.RadiusAt(Fillet.Start) ? Fillet.Start : FilletNormalAt(radius);
        return Fillet.PolarAngleAt(normal) + RootHalfAngle - (Math.PI / Teeth);
    }

    /// <summary>The fillet's parameter at a radius between root and form circle, mm.</summary>
    internal double FilletNormalAt(double radius) =>
        Fillet.RadiusAt(Fillet.End) <= radius
            ? Fillet.End
            : Brent.FindRoot(t => Fillet.RadiusAt(t) - radius, Fillet.Start, Fillet.End, 1e-14 * radius, MaxSteps);

    /// <summary>The exact outline, counter-clockwise, one tooth repeated; it begins at the root, clockwise of the tooth on +X.</summary>
    public Outline Outline()
    {
        ImmutableArray<Curve>.Builder tooth = ImmutableArray.CreateBuilder<Curve>(6);
        double tipHalf = IsPointed ? 0 : HalfAngleAt(TipRadius);
        Curve[] rising = Fillet.Length < LeastLength * Module ? [Flank] : [Fillet, Flank];
        tooth.AddRange(rising);
        if (tipHalf > 0)
        {
            tooth.Add(new Arc(default, TipRadius, -tipHalf, 2 * tipHalf));
        }

        tooth.AddRange(rising.Reverse().Select(curve => curve.Moved(Motion.MirrorInX).Reversed()));
        if (RootHalfAngle > 0)
        {
            tooth.Add(new Arc(default, RootRadius, (Math.PI / Teeth) - RootHalfAngle, 2 * RootHalfAngle));
        }

        return new Outline(tooth.ToImmutable(), Teeth);
    }
}
