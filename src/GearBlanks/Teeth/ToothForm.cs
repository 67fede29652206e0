using GearBlanks.Curves;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>
/// One tooth worked out: where flank, fillet, tip and root meet. Methods: the junction without undercut is where the rack's straight flank ends;
/// with undercut the one crossing of fillet and involute, bracketed between the base circle and the end of the straight flank's path.
/// </summary>
internal sealed record ToothForm
{
    // A guard against a hang only: bracketed roots here take under twenty steps.
    private const int MaxSteps = 200;

    // In modules: a root circle that is nothing but rounding is none.
    private const double LeastRoot = 1e-9;

    private readonly GearData _data;
    private readonly GeneratingRack _rack;
    private readonly double _referenceRadius;

    private ToothForm(GearData data)
    {
        _data = data;
        _rack = new GeneratingRack(data);
        _referenceRadius = data.ReferenceDiameter / 2;
        double alpha = data.Rack.PressureAngle;
        BaseRadius = data.BaseRadius;
        RootRadius = _referenceRadius + _rack.TipHeight;
        NominalTipRadius = (data.TipDiameter / 2) ?? (_referenceRadius + ((data.Rack.Addendum + data.ProfileShift) * data.Module));
        HalfToothAtBase = (data.ToothThickness / data.ReferenceDiameter) + InvoluteFunction.Inv(alpha);
        RootHalfAngle = _rack.CentreOffset / _referenceRadius;
        Fillet = new Trochoid(
            _referenceRadius, _rack.CentreHeight, _rack.TipRound, 0, (Math.PI / 2) - alpha,
            Motion.Turn(RootHalfAngle - (Math.PI / data.Teeth)));
        Flank = new Involute(BaseRadius, 0, 0, Motion.Turn(-HalfToothAtBase));
    }

    public double BaseRadius { get; }

    public double RootRadius { get; }

    public double NominalTipRadius { get; }

    public double HalfToothAtBase { get; }

    public double RootHalfAngle { get; }

    public Trochoid Fillet { get; private set; }

    public Involute Flank { get; private set; }

    public double FormRadius { get; private set; }

    public double TipRadius { get; private set; }

    public Undercut? Undercut { get; private set; }

    public double NeckThickness { get; private set; }

    public GearCircles Circles => new(RootRadius, FormRadius, TipRadius, NominalTipRadius);

    public bool IsPointed => TipRadius != NominalTipRadius;

    public ToothFlank Sides => new(BaseRadius, HalfToothAtBase, 1);

    public GearTip Tip { get; private set; } = null!;

    public static ToothForm Of(GearData data)
    {
        var form = new ToothForm(data);
        form.RequireRoot();
        form.FindTip();
        form.FindForm();
        form.RequireNeck();
        form.RequireFlank();
        double startRoll = form.Undercut is null ? form.RollAtStraightFlankEnd() : Involute.RollAt(form.BaseRadius, form.FormRadius);
        form.Tip = GearTip.Of(form.Sides, form.FormRadius, form.TipRadius, data);
        form.Flank = form.Flank with { StartRoll = startRoll, EndRoll = Involute.RollAt(form.BaseRadius, form.Tip.FormRadius) };
        return form;
    }

    private void RequireRoot()
    {
        if (RootRadius <= LeastRoot * _data.Module)
        {
            throw new GearGeometryException("no-root", "The teeth are cut to the gear's centre and beyond; radius of the root circle, mm", RootRadius, 0, null);
        }

        if (HalfToothAtBase <= 0)
        {
            throw new GearGeometryException("no-tooth", "Nothing is left of the teeth; thickness on the reference circle, mm", _data.ToothThickness, 0, null);
        }
    }

    // A tooth comes to its point where inv alpha_y equals its half angle at the base circle.
    private void FindTip()
    {
        double pointed = BaseRadius / Math.Cos(InvoluteFunction.Inverse(HalfToothAtBase));
        TipRadius = Math.Min(NominalTipRadius, pointed);
    }

    private double RollAtStraightFlankEnd()
    {
        (double sine, double cosine) = Math.SinCos(_data.Rack.PressureAngle);
        return ((_referenceRadius * sine) + (_rack.CentreHeight / sine) - _rack.TipRound) / (_referenceRadius * cosine);
    }

    private void FindForm()
    {
        double roll = RollAtStraightFlankEnd();
        if (roll >= 0)
        {
            FormRadius = BaseRadius * Math.Sqrt(1 + (roll * roll));
            return;
        }

        // At the very limit of undercut the straight flank's end lies on the base circle within rounding: nothing to bracket.
        double last = Fillet.EndNormal;
        double atBase = Fillet.RadiusAt(last) <= BaseRadius ? last : Brent.FindRoot(t => Fillet.RadiusAt(t) - BaseRadius, 0, last, 1e-14 * BaseRadius, MaxSteps);
        double crossing = Gain(last) <= 0 || Gain(atBase) >= 0 ? last : Brent.FindRoot(Gain, atBase, last, 1e-15, MaxSteps);
        Fillet = Fillet with { EndNormal = crossing };
        FormRadius = Fillet.RadiusAt(crossing);
        Undercut = new Undercut(Math.Max(0, -Gain(atBase)) * BaseRadius, 2 * FormRadius);
    }

    // How far, as an angle, the fillet lies outside the tooth that the involute alone would bound: negative where it cuts in.
    private double Gain(double normal)
    {
        double radius = Math.Max(BaseRadius, Fillet.RadiusAt(normal));
        double involute = InvoluteFunction.Inv(Math.Acos(BaseRadius / radius)) - HalfToothAtBase;
        return involute - FilletAngle(normal);
    }

    private double FilletAngle(double normal) => Fillet.PolarAngleAt(normal) + RootHalfAngle - (Math.PI / _data.Teeth);

    // The neck is where the fillet's tangent points at the gear's centre: r cos^2 t - rho cos t + vc = 0.
    private void RequireNeck()
    {
        double r = _referenceRadius;
        double rho = _rack.TipRound;
        double discriminant = (rho * rho) - (4 * r * _rack.CentreHeight);
        double cosine = discriminant < 0 ? double.NaN : (rho + Math.Sqrt(discriminant)) / (2 * r);
        double normal = cosine > 0 && cosine < 1 ? Math.Min(Math.Acos(cosine), Fillet.EndNormal) : Fillet.EndNormal;
        normal = FilletAngle(normal) > FilletAngle(Fillet.EndNormal) ? normal : Fillet.EndNormal;
        NeckThickness = -2 * FilletAngle(normal) * Fillet.RadiusAt(normal);
        if (NeckThickness <= 0)
        {
            throw new GearGeometryException("severed", "The fillets cut the tooth through at its neck; thickness there, mm", NeckThickness, 0, null);
        }
    }

    private void RequireFlank()
    {
        if (NominalTipRadius <= RootRadius)
        {
            throw new GearGeometryException(
                "tip-below-root", "The tip circle lies inside the root circle; tip diameter, mm", 2 * NominalTipRadius, 2 * RootRadius,
                FormattableString.Invariant($"use a tip diameter of at least {Math.Ceiling(2000 * FormRadius) / 1000:0.###} mm"));
        }

        if (FormRadius >= TipRadius)
        {
            string? remedy = FormRadius < BaseRadius / Math.Cos(InvoluteFunction.Inverse(HalfToothAtBase))
                ? FormattableString.Invariant($"use a tip diameter of at least {Math.Ceiling(2000 * FormRadius) / 1000:0.###} mm")
                : null;
            throw new GearGeometryException(
                "no-flank", "No involute flank is left between the fillet and the tip; form diameter, mm", 2 * FormRadius, 2 * TipRadius, remedy);
        }
    }
}
