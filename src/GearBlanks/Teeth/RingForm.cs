using GearBlanks.Curves;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Teeth;

/// <summary>One tooth of a ring worked out: where flank, root round, tip and root meet.</summary>
internal sealed record RingForm
{
    // In radians: a root land that is nothing but rounding is none.
    private const double LeastRoot = 1e-12;

    // In modules: a smaller root round is a sharp corner, a narrower gap none.
    private const double LeastLength = 1e-9;

    // A guard against a hang only.
    private const int MaxSteps = 200;

    private readonly RingData _data;

    private RingForm(RingData data)
    {
        _data = data;
        BaseRadius = data.BaseRadius;
        RootRadius = Root(data);
        NominalTipRadius = NominalTip(data);
        HalfToothAtBase = (data.ToothThickness / data.ReferenceDiameter) - InvoluteFunction.Inv(data.Rack.PressureAngle);
    }

    public double BaseRadius { get; }

    public double RootRadius { get; }

    public double NominalTipRadius { get; }

    public double HalfToothAtBase { get; }

    public double TipRadius { get; private set; }

    public double FormRadius { get; private set; }

    public Circle RootFillet { get; private set; }

    public ToothFlank Sides => new(BaseRadius, -HalfToothAtBase, -1);

    public GearTip Tip { get; private set; } = null!;

    public GearCircles Circles => new(RootRadius, FormRadius, TipRadius, NominalTipRadius);

    // A ring's gap is an external tooth: half its angle at the base circle.
    private double HalfGapAtBase => (Math.PI / _data.Teeth) - HalfToothAtBase;

    /// <summary>Radius of the root circle, mm.</summary>
    public static double Root(RingData data) => (data.ReferenceDiameter / 2) + data.RackDedendum - (data.GeneratingShift * data.Module);

    /// <summary>Radius of the tip circle asked for, mm.</summary>
    public static double NominalTip(RingData data) =>
        (data.TipDiameter / 2) ?? ((data.ReferenceDiameter / 2) - ((data.Rack.Addendum + data.ProfileShift) * data.Module));

    /// <summary>Radius of the root round asked for, mm; 0 where it is nothing but rounding.</summary>
    public static double Fillet(RingData data) =>
        (data.RootFilletRadius ?? (data.Rack.FilletRadius * data.Module)) is var round && round < LeastLength * data.Module ? 0 : round;

    /// <summary>The tooth, whatever rim is around it.</summary>
    /// <exception cref="GearGeometryException">No such tooth exists; most cases come without advice.</exception>
    public static RingForm Of(RingData data)
    {
        var form = new RingForm(data);
        form.RequireCircles();
        form.FindTip();
        form.FindFillet();
        form.RequireFlank();
        form.Tip = GearTip.Of(form.Sides, form.FormRadius, form.TipRadius, data);
        return form;
    }

    /// <summary>Requires a rim around the teeth.</summary>
    /// <exception cref="GearGeometryException">There is none.</exception>
    public void RequireRim()
    {
        if (_data.RimDiameter / 2 <= RootRadius)
        {
            throw new GearGeometryException(
                "rim-inside-root", "The rim's outer diameter leaves nothing outside the root circle; rim diameter, mm", _data.RimDiameter, 2 * RootRadius,
                FormattableString.Invariant($"use a rim diameter of at least {(Math.Floor((2000 * RootRadius) + 0.001) + 1) / 1000:0.###} mm"));
        }
    }

    private void RequireCircles()
    {
        if (NominalTipRadius < BaseRadius)
        {
            throw new GearGeometryException(
                "tip-inside-base", "The ring's teeth reach inside the base circle, where there is no involute; tip diameter, mm",
                2 * NominalTipRadius, 2 * BaseRadius, null);
        }

        if (NominalTipRadius >= RootRadius)
        {
            throw new GearGeometryException(
                "tip-below-root", "The ring's tip circle lies outside its root circle; tip diameter, mm", 2 * NominalTipRadius, 2 * RootRadius, null);
        }
    }

    // A ring's tooth narrows inward: it comes to its point where its half angle at the base circle has been used up.
    private void FindTip()
    {
        double pointed = HalfToothAtBase < 0 ? BaseRadius / Math.Cos(InvoluteFunction.Inverse(-HalfToothAtBase)) : 0;
        TipRadius = Math.Max(NominalTipRadius, pointed);
        double atRoot = HalfGapAtBase - InvoluteFunction.Inv(Math.Acos(BaseRadius / RootRadius));
        if (atRoot * RootRadius <= LeastLength * _data.Module)
        {
            throw new GearGeometryException(
                "no-root", "The ring's flanks meet before they reach the root circle; width of the gap there, mm", 2 * RootRadius * atRoot, 0, null);
        }
    }

    private void FindFillet()
    {
        double round = Fillet(_data);
        double widest = WidestRound();
        if (round > widest)
        {
            throw new GearGeometryException(
                "root-round-too-wide", "The root fillet is wider than the ring's gap; root fillet radius, mm", round, widest, null);
        }

        RoundedCorner corner = RoundedCorner.Of(BaseRadius, HalfGapAtBase, RootRadius, round);
        FormRadius = round == 0 ? RootRadius : BaseRadius * Math.Sqrt(1 + (corner.ContactRoll * corner.ContactRoll));
        double half = corner.CentreHalfAngle < LeastRoot ? 0 : corner.CentreHalfAngle;
        RootFillet = new Circle(Point.Polar(corner.CentreRadius, half - (Math.PI / _data.Teeth)), round);
    }

    // The round whose centre lies on the gap's middle line; it shrinks towards the base circle, where rounds end too.
    private double WidestRound()
    {
        double most = RootRadius - BaseRadius;
        double HalfAngle(double share) => RoundedCorner.Of(BaseRadius, HalfGapAtBase, RootRadius, share * most).CentreHalfAngle;
        return HalfAngle(1) >= 0 ? most : most * Brent.FindRoot(HalfAngle, 0, 1, 1e-15, MaxSteps);
    }

    private void RequireFlank()
    {
        if (FormRadius <= TipRadius)
        {
            throw new GearGeometryException(
                "no-flank", "No involute flank is left between the root fillet and the tip of the ring; form diameter, mm", 2 * FormRadius, 2 * TipRadius, null);
        }
    }
}
