using GearBlanks.Teeth;

namespace GearBlanks.Meshing;

/// <summary>
/// The clockwise side of an external gear's tooth. The foot of a point on the fillet is found in the frame of the rack that generated it: there the normal
/// at angle t from the line of centres goes through the round's centre, at (r + vc, -vc tan t) once the gear has rolled by -vc tan t.
/// </summary>
internal sealed class ExternalSide : ToothSide
{
    // Of the fillet's parameter: the room is least at the foot, so that its square is all that is lost.
    private const double FootAccuracy = 1e-10;

    // A corner that crosses the form circle is on it but for rounding: there the fillet answers, as it does just below.
    private const double Rounding = 1e-12;

    // A guard against a hang only: halving alone takes under forty steps.
    private const int MaxSteps = 100;

    private readonly ExternalGear _gear;
    private readonly double _sideAtPitchPoint;
    private readonly double _gapMiddle;
    private readonly double _radius;
    private readonly double _height;
    private readonly double _round;
    private readonly double _end;
    private readonly double _form;
    private double _foot;

    public ExternalSide(ExternalGear gear, double workingRadius)
    {
        _gear = gear;
        _sideAtPitchPoint = -gear.HalfAngleAt(workingRadius);
        _gapMiddle = gear.RootHalfAngle - (Math.PI / gear.Teeth);
        _radius = gear.Fillet.RollingRadius;
        _height = gear.Fillet.CentreHeight;
        _round = gear.Fillet.TipRadius;
        _end = Math.Tan(gear.Fillet.EndNormal);
        _form = gear.FormRadius * (1 + Rounding);
    }

    /// <inheritdoc/>
    /// <remarks>An involute's parallel is the same involute turned, so its distance is the turn times the base radius.</remarks>
    public override double Room(Corner corner)
    {
        double radius = corner.Radius;
        double angle = Math.Atan2(corner.Y, corner.X) - corner.Turn + _sideAtPitchPoint;
        return radius > _form
            ? (-_gear.HalfAngleAt(radius) - angle) * _gear.BaseRadius
            : RoomAtFillet(radius, angle - _gapMiddle);
    }

    private double RoomAtFillet(double radius, double angle)
    {
        // At the fillet's deepest point its normal is the radius.
        if (Math.Sin(angle) <= 0)
        {
            return radius - _gear.RootRadius;
        }

        (double along, double room, _) = Past(radius, angle, _end);
        if (along >= 0)
        {
            return room;
        }

        // Newton's steps from the last foot, kept inside a bracket: beside its foot a point lies ahead, beyond it behind.
        (double low, double high, double foot) = (0, _end, _foot > 0 && _foot < _end ? _foot : _end / 2);
        for (int i = 0; i < MaxSteps; i++)
        {
            (along, room, double rate) = Past(radius, angle, foot);
            (low, high) = along > 0 ? (foot, high) : (low, foot);
            double next = foot - (along / rate);
            next = next > low && next < high ? next : (low + high) / 2;
            bool found = Math.Abs(next - foot) < FootAccuracy;
            foot = next;
            if (found)
            {
                break;
            }
        }

        _foot = foot;
        return room;
    }

    // Of a point, seen from the fillet's at the angle with this tangent: the way along its tangent, the way out along its normal, and how fast the former
    // changes with the parameter.
    private (double Along, double Room, double Rate) Past(double radius, double angle, double tangent)
    {
        double secantSquare = 1 + (tangent * tangent);
        double cosine = 1 / Math.Sqrt(secantSquare);
        double sine = tangent * cosine;
        (double y, double x) = Math.SinCos(angle - (_height * tangent / _radius));
        double dx = (radius * x) - _radius - _height;
        double dy = (radius * y) + (_height * tangent);
        double room = (dx * cosine) - (dy * sine) + _round;
        double turn = 1 - (_height * secantSquare / _radius);
        double length = (_round * turn) + (_height * _height * secantSquare / cosine / _radius);
        return ((dx * sine) + (dy * cosine), room, ((turn * room) - length) / secantSquare);
    }
}
