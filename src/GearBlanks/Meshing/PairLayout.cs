using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// How two toothings stand to one another: what distance, working angle and backlash make of one another, from their numbers alone.
/// Source of the relations: ISO 21771:2007, clauses 5 and 7; from memory.
/// </summary>
/// <param name="Module">Module, mm.</param>
/// <param name="PressureAngle">Pressure angle of the rack, rad.</param>
/// <param name="BasePitch">Base pitch, mm: m pi cos alpha.</param>
/// <param name="ShiftSum">Sum of the generating shifts, xE1 + xE2: positive takes backlash away in every kind of pair.</param>
internal abstract record PairLayout(double Module, double PressureAngle, double BasePitch, double ShiftSum)
{
    // The base pitches may differ by rounding only.
    private const double BasePitchAgreement = 1e-9;

    /// <summary>1 where play grows with the distance, -1 where it shrinks: a ring's.</summary>
    public abstract int Sense { get; }

    /// <summary>The least distance with a line of action, mm.</summary>
    public abstract double LeastDistance { get; }

    /// <summary>The distance without backlash, mm; null where no distance is without.</summary>
    public abstract double? ClosedDistance { get; }

    /// <exception cref="GearGeometryException">The two cannot mesh, whatever their distance.</exception>
    public static PairLayout Of(ToothData first, ToothData second) => Objection(first, second) is { } objection
        ? throw objection
        : (first, second) switch
        {
            (RackBarData rack, GearData gear) => new RackLayout(gear, rack),
            (GearData gear, RackBarData rack) => new RackLayout(gear, rack),
            (RingData ring, GearData pinion) => RoundLayout.InRing(pinion, ring),
            (GearData pinion, RingData ring) => RoundLayout.InRing(pinion, ring),
            _ => RoundLayout.Outside((GearData)first, (GearData)second),
        };

    /// <summary>Why the two cannot mesh, whatever their distance; null where they can.</summary>
    public static GearGeometryException? Objection(ToothData first, ToothData second) => OtherPitch(first, second) ?? (first, second) switch
    {
        (RingData, RingData) => Refused("two-rings", "Two rings do not mesh; rings in the pair"),
        (RackBarData, RackBarData) => Refused("two-racks", "Two racks do not mesh; racks in the pair"),
        (RingData, RackBarData) or (RackBarData, RingData) => Refused("ring-with-rack", "A ring and a rack do not mesh; rings and racks in the pair"),
        (RingData ring, GearData pinion) => TooSmall(pinion, ring),
        (GearData pinion, RingData ring) => TooSmall(pinion, ring),
        _ => null,
    };

    /// <summary>The working pressure angle at a distance, rad.</summary>
    public abstract double WorkingAngleAt(double distance);

    /// <summary>The circumferential backlash at the working circle, mm (arc); negative where the teeth overlap.</summary>
    public abstract double BacklashAt(double distance);

    /// <summary>The distance, mm, with a circumferential backlash.</summary>
    /// <exception cref="GearGeometryException">No distance gives this backlash.</exception>
    public abstract double DistanceFor(double backlash);

    /// <summary>How much backlash at the working circle each mm of thinning on the reference circle makes.</summary>
    public abstract double BacklashOfThinning(double distance);

    /// <exception cref="GearGeometryException">There is no line of action at this distance.</exception>
    public void RequireLineOfAction(double distance)
    {
        if (!(distance >= LeastDistance) || double.IsInfinity(distance))
        {
            throw NoLineOfAction(distance);
        }
    }

    protected abstract GearGeometryException NoLineOfAction(double distance);

    protected static double PitchOf(ToothData data) => Math.PI * data.Module * Math.Cos(data.Rack.PressureAngle);

    private static GearGeometryException Refused(string shapeCase, string what) => new(shapeCase, what, 2, 1, "make one of them an external gear");

    private static GearGeometryException? TooSmall(GearData pinion, RingData ring) => ring.Teeth > pinion.Teeth
        ? null
        : new GearGeometryException(
            "ring-too-small", "The ring has no more teeth than the pinion in it; teeth of the ring", ring.Teeth, pinion.Teeth,
            FormattableString.Invariant($"use a ring of more than {pinion.Teeth} teeth"));

    private static GearGeometryException? OtherPitch(ToothData first, ToothData second)
    {
        (double one, double other) = (PitchOf(first), PitchOf(second));
        return Math.Abs(one - other) > BasePitchAgreement * one || Math.Abs(first.Rack.PressureAngle - second.Rack.PressureAngle) > BasePitchAgreement
            ? new GearGeometryException(
                "pitch-mismatch",
                FormattableString.Invariant($"Gears of module {first.Module:0.####} at {first.Rack.PressureAngle * 180 / Math.PI:0.##} degrees and module {second.Module:0.####} at {second.Rack.PressureAngle * 180 / Math.PI:0.##} degrees do not mesh; base pitch, mm"),
                other, one, "give both gears one module and one pressure angle")
            : null;
    }
}
