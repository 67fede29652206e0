using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>The tip corner of a round mate; the parameter is its angle about the mate's centre from the line of centres, rad.</summary>
internal sealed class RoundCornerPath : CornerPath
{
    private readonly double _centre;
    private readonly double _towards;
    private readonly double _tip;
    private readonly double _atPitchPoint;
    private readonly double _ratio;
    private readonly double _relative;
    private readonly double _pitchPoint;

    private RoundCornerPath(Gear gear, Gear mate, Teeth.TipCorner? corner, double centre, int towards, double atPitchPoint)
    {
        _centre = centre;
        _tip = corner?.Radius ?? mate.TipRadius;
        _towards = towards * _tip;
        _atPitchPoint = atPitchPoint;
        _ratio = (double)mate.Teeth / gear.Teeth;
        _relative = towards - _ratio;
        _pitchPoint = centre * towards / _relative;
    }

    /// <summary>An external mate's corner past an external gear; the sharp one, whatever has been taken off, where none is given.</summary>
    public static RoundCornerPath Outside(ExternalGear gear, ExternalGear mate, double distance, double workingAngle, Teeth.TipCorner? corner = null) =>
        new(gear, mate, corner, distance, -1, -Past(mate, corner, workingAngle));

    /// <summary>A ring's corner past the pinion in it.</summary>
    public static RoundCornerPath OfRing(ExternalGear pinion, RingGear ring, double distance, double workingAngle, Teeth.TipCorner? corner = null) =>
        new(pinion, ring, corner, -distance, 1, Past(ring, corner, workingAngle));

    /// <summary>A pinion's corner past the ring around it.</summary>
    public static RoundCornerPath InRing(RingGear ring, ExternalGear pinion, double distance, double workingAngle, Teeth.TipCorner? corner = null) =>
        new(ring, pinion, corner, distance, 1, -Past(pinion, corner, workingAngle));

    /// <inheritdoc/>
    public override Corner At(double parameter)
    {
        (double sine, double cosine) = Math.SinCos(parameter);
        return new Corner(_centre + (_towards * cosine), _tip * sine, (parameter - _atPitchPoint) * _ratio);
    }

    /// <inheritdoc/>
    public override double RateAt(double parameter)
    {
        Corner corner = At(parameter);
        return double.Hypot(corner.X - _pitchPoint, corner.Y) * Math.Abs(_relative);
    }

    /// <inheritdoc/>
    public override double Reach(double limit) => Math.Acos(Math.Max(
        -1, ((limit * limit) - (_centre * _centre) - (_tip * _tip)) / (2 * _centre * _towards)));

    // How far round its own centre the corner is from where its flank passes the pitch point.
    private static double Past(Gear mate, Teeth.TipCorner? corner, double workingAngle) => corner is { } given
        ? (mate is RingGear ? -1 : 1) * (mate.HalfAngleAt(mate.BaseRadius / Math.Cos(workingAngle)) - given.HalfAngle)
        : InvoluteFunction.Inv(Math.Acos(mate.BaseRadius / mate.TipRadius)) - InvoluteFunction.Inv(workingAngle);
}
