using GearBlanks.Meshing;
using GearBlanks.Teeth;
using NetTopologySuite.Geometries;

namespace GearBlanks.Tests.Meshing;

/// <summary>
/// An external gear rolled in a ring or over a rack, as polygons that touch on one side: a tooth is centred in a gap first, which is right by symmetry, and then turned by
/// half the angular backlash. Looks at the tip points of each inside the other.
/// </summary>
internal sealed class RollingPolygons
{
    private readonly GearPair _pair;
    private readonly ExternalGear _gear;
    private readonly Toothing _other;
    private readonly PolygonTeeth _gearTeeth;
    private readonly PolygonTeeth _otherTeeth;
    private readonly double _gearRadius;

    /// <param name="pair">The pair, the gear first.</param>
    public RollingPolygons(GearPair pair)
    {
        _pair = pair;
        _gear = (ExternalGear)pair.First;
        _other = pair.Second;
        _gearTeeth = new PolygonTeeth(_gear);
        _otherTeeth = new PolygonTeeth(_other);
        _gearRadius = pair.FirstWorkingRadius;
    }

    /// <summary>Least room of the other's tips at the gear, of all and of those below a radius of the gear.</summary>
    public (double Anywhere, double Below) AtGear(double below, int steps) => Least(_otherTeeth.Corners, _gearTeeth, true, _gear.TipRadius, below, steps);

    /// <summary>Least room of the gear's tips at the other, of all and of those beyond a radius (below a height) of the other.</summary>
    public (double Anywhere, double Below) AtOther(double beyond, int steps) => Least(_gearTeeth.Corners, _otherTeeth, false, OtherTip, beyond, steps);

    /// <summary>Least room of the gear's tips at a ring while the gear, centred in its backlash, moves in from the ring's middle.</summary>
    public double MovingIn(int phases, int steps)
    {
        double least = double.PositiveInfinity;
        for (int phase = 0; phase < phases; phase++)
        {
            double turn = 2 * Math.PI * phase / phases / _gear.Teeth;
            for (int i = 0; i <= steps; i++)
            {
                (double X, double Y, double Angle) other = Other(turn);
                foreach (Coordinate corner in _gearTeeth.Corners)
                {
                    Coordinate p = Seen(PolygonTeeth.Placed(corner, turn, _pair.CentreDistance * i / steps, 0), other);
                    least = Within(_other, p, OtherTip) ? Math.Min(least, _otherTeeth.Room(p)) : least;
                }
            }
        }

        return least;
    }

    private double OtherTip => _other is RackBar rack ? rack.TipHeight : ((Gear)_other).TipRadius;

    // World: the gear's centre is (a, 0) in a ring about the origin, (0, a) over a rack along X.
    private (double X, double Y, double Angle) Gear(double turn) => _other is RackBar
        ? (0, _pair.CentreDistance, turn - (Math.PI / 2))
        : (_pair.CentreDistance, 0, turn);

    private (double X, double Y, double Angle) Other(double turn) => _other is RackBar rack
        ? (-rack.FirstTooth - ((rack.Teeth / 2) + 0.5) * rack.Pitch + (turn * _gearRadius), 0, 0)
        : (0, 0, (Math.PI / _other.Teeth) + (turn * _gear.Teeth / _other.Teeth));

    private (double Anywhere, double Below) Least(Coordinate[] tips, PolygonTeeth side, bool atGear, double near, double below, int steps)
    {
        (double anywhere, double least) = (double.PositiveInfinity, double.PositiveInfinity);
        double half = _pair.FirstAngularBacklash!.Value / 2;
        Toothing owner = atGear ? _gear : _other;
        for (int i = 0; i < steps; i++)
        {
            double turn = 2 * Math.PI * ((double)i / steps - 0.5) / _gear.Teeth;
            (double X, double Y, double Angle) gear = Gear(turn);
            gear.Angle += half;
            (double X, double Y, double Angle) other = Other(turn);
            foreach (Coordinate tip in tips)
            {
                Coordinate p = atGear ? Seen(Placed(tip, other), gear) : Seen(Placed(tip, gear), other);
                if (Within(owner, p, near))
                {
                    double room = side.Room(p);
                    anywhere = Math.Min(anywhere, room);
                    least = Within(owner, p, below) ? Math.Min(least, room) : least;
                }
            }
        }

        return (anywhere, least);
    }

    private static Coordinate Placed(Coordinate p, (double X, double Y, double Angle) pose) => PolygonTeeth.Placed(p, pose.Angle, pose.X, pose.Y);

    private static Coordinate Seen(Coordinate p, (double X, double Y, double Angle) pose) => PolygonTeeth.Seen(p, pose.Angle, pose.X, pose.Y);

    private static bool Within(Toothing owner, Coordinate p, double limit) => owner switch
    {
        RackBar => p.Y <= limit,
        RingGear => (p.X * p.X) + (p.Y * p.Y) >= limit * limit,
        _ => (p.X * p.X) + (p.Y * p.Y) <= limit * limit,
    };
}
