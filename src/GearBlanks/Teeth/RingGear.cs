using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>
/// A ring gear: involute teeth that point inward, rounded into the root circle by arcs of a stated radius, inside a round rim. Its tooth is the gap of
/// an external gear: it widens outward.
/// </summary>
public sealed record RingGear : Gear
{
    private RingGear(RingData data, RingForm form)
        : base(data, form.Sides, form.Tip, form.Circles)
    {
        Data = data;
        RootFillet = form.RootFillet;
        Flank = form.Sides.Side(form.FormRadius, form.Tip.FormRadius);
    }

    /// <inheritdoc/>
    public override RingData Data { get; }

    /// <summary>Radius of the round between flank and root circle, mm; 0 for a sharp corner.</summary>
    public double RootFilletRadius => RootFillet.Radius;

    /// <summary>Outer radius of the rim, mm.</summary>
    public double RimRadius => Data.RimDiameter / 2;

    /// <summary>The flank at the clockwise side of the tooth on +X, from the form circle inward to where the nominal involute ends.</summary>
    public Involute Flank { get; }

    /// <summary>The round at the clockwise side of the tooth on +X; of radius 0 for a sharp corner.</summary>
    internal Circle RootFillet { get; }

    /// <summary>Builds the ring.</summary>
    /// <exception cref="GearGeometryException">No such ring exists: the exception names the case and what would work.</exception>
    public static RingGear Create(RingData data)
    {
        GearRanges.Require(data);
        RingForm form;
        try
        {
            form = RingForm.Of(data);
        }
        catch (GearGeometryException e) when (e.Remedy is null)
        {
            throw RingRemedy.For(e, data);
        }

        form.RequireRim();
        return new RingGear(data, form);
    }

    /// <inheritdoc/>
    private protected override double FilletAngleAt(double radius)
    {
        double centre = RootFillet.Centre.Radius;
        double outward = Math.Min(radius, RootRadius) - centre;
        double square = (RootFilletRadius - outward) * (RootFilletRadius + outward) / (4 * (centre + outward) * centre);
        return RootFillet.Centre.Angle + (2 * Math.Asin(Math.Sqrt(Math.Max(0, square))));
    }

    /// <inheritdoc/>
    private protected override (Curve[] Rising, double RootHalfAngle) ClockwiseSide()
    {
        if (RootFilletRadius == 0)
        {
            return ([Flank, .. Tip.Side()], (Math.PI / Teeth) - HalfAngleAt(RootRadius));
        }

        double rootEnd = RootFillet.Centre.Angle;
        double contact = (Flank.StartPoint - RootFillet.Centre).Angle;
        var fillet = new Arc(RootFillet.Centre, RootFilletRadius, rootEnd, contact - rootEnd);
        return ([fillet, Flank, .. Tip.Side()], (Math.PI / Teeth) + rootEnd);
    }
}
