using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// A corner of the mate's tip on its way past a gear or rack, as points of the latter's tooth: a gear's on +X with the side that is passed clockwise, a rack's on
/// the Y axis with that side at its right.
/// </summary>
internal sealed class MateCorner
{
    private readonly CornerPath _path;
    private readonly double _aside;
    private readonly bool _isRack;

    private MateCorner(CornerPath path, double round, double aside, bool isRack)
    {
        (_path, Round, _aside, _isRack) = (path, round, aside, isRack);
    }

    /// <summary>Radius of the corner's round, mm, whose centre is followed; 0 for a point.</summary>
    public double Round { get; }

    /// <summary>All corners of the mate that pass one of a pair.</summary>
    /// <param name="pair">The pair.</param>
    /// <param name="isFirst">True for the corners of the second one, which pass the first.</param>
    public static IEnumerable<MateCorner> Past(GearPair pair, bool isFirst)
    {
        (Toothing one, Toothing mate) = isFirst ? (pair.First, pair.Second) : (pair.Second, pair.First);
        double distance = pair.CentreDistance;
        double angle = pair.WorkingPressureAngle;
        return (one, mate) switch
        {
            (RackBar rack, ExternalGear gear) => gear.TipCorners.Select(corner => new MateCorner(
                new OverRackCornerPath(gear, distance, angle, corner), corner.Round, (rack.ToothThickness / 2) - ((distance - gear.ReferenceRadius) * Math.Tan(rack.PressureAngle)), true)),
            (ExternalGear gear, RackBar rack) => rack.TipCorners.Select(corner => Round(gear, new RackCornerPath(gear, rack, distance, corner), corner.Radius)),
            (ExternalGear pinion, RingGear ring) => ring.TipCorners.Select(corner => Round(pinion, RoundCornerPath.OfRing(pinion, ring, distance, angle, corner), corner.Round)),
            (RingGear ring, ExternalGear pinion) => pinion.TipCorners.Select(corner => Round(ring, RoundCornerPath.InRing(ring, pinion, distance, angle, corner), corner.Round)),
            _ => ((ExternalGear)mate).TipCorners.Select(corner => Round(
                (ExternalGear)one, RoundCornerPath.Outside((ExternalGear)one, (ExternalGear)mate, distance, angle, corner), corner.Round)),
        };

        MateCorner Round(Gear gear, CornerPath path, double round) => new(path, round, -gear.HalfAngleAt(gear.BaseRadius / Math.Cos(angle)), false);
    }

    /// <summary>Where the corner, or the centre of its round, is.</summary>
    public Point At(double parameter)
    {
        Corner corner = _path.At(parameter);
        return _isRack ? new Point(corner.X + _aside, corner.Y) : Point.Polar(corner.Radius, Math.Atan2(corner.Y, corner.X) - corner.Turn + _aside);
    }

    /// <summary>The parameter at which it passes a radius (a height, of a rack), mm; NaN where it never does, so far or at all.</summary>
    public double Reach(double limit) => _path.Reach(limit);
}
