using GearBlanks.Curves;
using GearBlanks.Teeth;
using MathNet.Numerics.RootFinding;

namespace GearBlanks.Meshing;

/// <summary>
/// The path of the mate's tip corner past a gear's side while the two flanks that belong together touch: where it comes nearest to the fillet, and
/// whether it digs in.
/// </summary>
internal static class TipCornerPath
{
    private const int Samples = 96;

    // A guard against a hang only: the bracketed root takes under twenty steps.
    private const int MaxSteps = 200;

    // Flanks that touch on the line of action are found at zero but for rounding.
    private const double Rounding = 1e-7;

    /// <summary>
    /// Least room between the corner and the gear's side below its form circle, mm: negative where they dig in, there or
    /// on the flank; null where the corner stays outside the form circle and free.
    /// </summary>
    public static double? LeastRoom(ExternalGear gear, ExternalGear mate, double distance)
    {
        var path = new Path(gear, mate, distance);
        double? fillet = Least(path, gear.FormRadius);
        double? flank = Least(path, Math.Max(gear.FormRadius, path.WorkingRadius));
        return flank < -Rounding ? Math.Min(flank.Value, fillet ?? 0) : fillet is > -Rounding and < 0 ? 0 : fillet;
    }

    private static double? Least(Path path, double below)
    {
        double reach = path.AngleAt(below);
        if (!(reach > 0))
        {
            return null;
        }

        int best = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i <= Samples; i++)
        {
            double room = path.Room(AngleOf(i));
            (best, least) = room < least ? (i, room) : (best, least);
        }

        return path.Room(Golden(path.Room, AngleOf(Math.Max(0, best - 1)), AngleOf(Math.Min(Samples, best + 1))));

        double AngleOf(int i) => reach * ((2.0 * i / Samples) - 1);
    }

    private static double Golden(Func<double, double> f, double low, double high)
    {
        double shrink = (Math.Sqrt(5) - 1) / 2;
        while (high - low > 1e-10)
        {
            double a = high - (shrink * (high - low));
            double b = low + (shrink * (high - low));
            (low, high) = f(a) < f(b) ? (low, b) : (a, high);
        }

        return (low + high) / 2;
    }

    private sealed class Path
    {
        private readonly ExternalGear _gear;
        private readonly ExternalGear _mate;
        private readonly double _distance;
        private readonly double _cornerAtPitchPoint;
        private readonly double _sideAtPitchPoint;

        public Path(ExternalGear gear, ExternalGear mate, double distance)
        {
            _gear = gear;
            _mate = mate;
            _distance = distance;
            WorkingRadius = distance * gear.Teeth / (gear.Teeth + mate.Teeth);
            double working = Math.Acos(Math.Min(1, (gear.BaseRadius + mate.BaseRadius) / distance));
            double invWorking = InvoluteFunction.Inv(working);

            // Both flanks pass the pitch point at the start; from there they are told by the involute function even where the tooth ends before it.
            _cornerAtPitchPoint = InvoluteFunction.Inv(Math.Acos(mate.BaseRadius / mate.TipRadius)) - invWorking;
            _sideAtPitchPoint = gear.SideAngleAt(gear.TipRadius) - InvoluteFunction.Inv(Math.Acos(gear.BaseRadius / gear.TipRadius)) + invWorking;
        }

        public double WorkingRadius { get; }

        /// <summary>The mate's angle from the line of centres at which its corner passes a radius of the gear; NaN where it does not.</summary>
        public double AngleAt(double radius) => Math.Acos(
            ((_distance * _distance) + (_mate.TipRadius * _mate.TipRadius) - (radius * radius)) / (2 * _distance * _mate.TipRadius));

        /// <summary>Distance of the corner from the gear's side at the mate's angle, mm: negative inside the gear.</summary>
        public double Room(double angle)
        {
            (double sine, double cosine) = Math.SinCos(angle);
            double x = _distance - (_mate.TipRadius * cosine);
            double y = -_mate.TipRadius * sine;
            double radius = Math.Sqrt((x * x) + (y * y));
            double turned = (_cornerAtPitchPoint - angle) * _mate.Teeth / _gear.Teeth;
            double corner = Math.Atan2(y, x) - turned + _sideAtPitchPoint;

            // An involute's parallel is the same involute turned, so its distance is the turn times the base radius.
            return radius >= _gear.FormRadius
                ? (_gear.SideAngleAt(radius) - corner) * _gear.BaseRadius
                : RoomAtFillet(Point.Polar(radius, corner));
        }

        private double RoomAtFillet(Point corner)
        {
            Trochoid fillet = _gear.Fillet;
            double Past(double t) => (corner - fillet.PointAt(t)).Dot(fillet.TangentAt(t));
            if (Past(fillet.Start) <= 0)
            {
                return corner.Radius - _gear.RootRadius;
            }

            double foot = Past(fillet.End) >= 0 ? fillet.End : Brent.FindRoot(Past, fillet.Start, fillet.End, 1e-12, MaxSteps);
            return (corner - fillet.PointAt(foot)).Dot(fillet.TangentAt(foot).TurnedRight);
        }
    }
}
