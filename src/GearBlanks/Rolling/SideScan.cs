using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// Looks along a side of the first gear for where it stops a side of the second one: where the two directions are one, at a corner, or at the second one's tip. Each is
/// bracketed between samples, then found on the exact curves.
/// </summary>
/// <param name="placing">The pair.</param>
/// <param name="nodes">Samples of the first one's sides.</param>
/// <param name="view">How the second one sees them.</param>
/// <param name="best">Takes what is found.</param>
internal sealed class SideScan(RollPlacing placing, SideNodes nodes, MateView view, FirstContact best)
{
    // mm along the normal: far below 0.1 arcsecond at any radius.
    private const double Exactness = 1e-10;

    // A guard against a hang only.
    private const int MostSteps = 60;

    // Of a tooth's depth: farther from the second one's tip circle no point below can come inside it.
    private const double Margin = 0.3;

    // mm: beside a corner.
    private const double Beside = 1e-7;

    // Of a chord: a curve between two samples is not longer than so many.
    private const double LongestPerChord = 1.2;

    private readonly double _margin = Margin * Math.Abs(placing.First.TipRadius - placing.First.RootRadius);
    private (int First, int Second) _sides;
    private bool? _isTipFree;

    /// <summary>From the tip down: where a point is out of the mate's reach, those below it are farther still.</summary>
    /// <param name="sides">Numbers of the two sides.</param>
    /// <param name="flank">Number of the curve whose contact with the mate's flank is known in closed form, and of its first node; -1 where none is.</param>
    /// <param name="isBehind">True where no point of that flank can stop the mate's first: it is passed over.</param>
    public void Over((int First, int Second) sides, (int Curve, int Start) flank, bool isBehind)
    {
        (_sides, view.Mate, _isTipFree) = (sides, placing.Second.Sides[sides.Second], null);
        int start = nodes.Starts[sides.First];
        int last = nodes.Starts[sides.First + 1] - 1;
        Reading Full(in Reading reading, int node) => isBehind && nodes.Curve[node] == flank.Curve && IsPastFillet(reading) ? reading : Grown(reading, node);
        Reading above = Full(At(last, flank.Curve), last);
        if (above.IsInside && above.Growth >= 0)
        {
            Offer(above, last);
        }

        best.Sink(view.Sunk(above.Radius));
        for (int i = last - 1; i >= start && view.Beyond(above.Radius) < _margin; i--)
        {
            // On a flank out of reach of the mate's fillet there is nothing to be found down to its end.
            i = isBehind && nodes.Curve[i + 1] == flank.Curve && i >= flank.Start && IsPastFillet(above) ? flank.Start : i;
            Reading here = At(i, flank.Curve);
            if (nodes.Curve[i] != nodes.Curve[i + 1])
            {
                (here, above) = (Full(here, i), Full(above, i + 1));
                if (here.IsInside && here.Growth >= 0 && above.Growth <= 0)
                {
                    Offer(here, i);
                }
            }
            else if (nodes.Curve[i] != flank.Curve || !(isBehind ? IsPastFillet(here) && IsPastFillet(above) : IsOnFlank(here) && IsOnFlank(above)))
            {
                (here, above) = (Grown(here, i), Grown(above, i + 1));
                if (here.IsInside || above.IsInside)
                {
                    Between(i, (nodes.Parameter[i], here), (nodes.Parameter[i + 1], above));
                }
                else if (view.Beyond(here.Radius) + view.Beyond(above.Radius) < LongestPerChord * nodes.Chord[i] && here.Outward < 0 && above.Outward > 0)
                {
                    Dip(i, here, above);
                }
            }

            here = i == start ? Full(here, i) : here;
            if (i == start && here.IsInside && here.Growth <= 0)
            {
                Offer(here, i);
            }

            above = here;
        }
    }

    private bool IsOnFlank(in Reading reading) => IsPastFillet(reading) && reading.Radius <= view.Mate.Flank!.Greatest;

    private bool IsPastFillet(in Reading reading) => reading.Radius >= view.Mate.Flank!.Least;

    // Within a flank whose contact is known in closed form only the radius is needed.
    private Reading At(int node, int flank) => nodes.Curve[node] == flank
        ? view.ReadRadius(nodes.X[node], nodes.Y[node])
        : view.Read(nodes.X[node], nodes.Y[node], nodes.TangentX[node], nodes.TangentY[node]);

    private Reading Grown(in Reading reading, int node) => double.IsNaN(reading.Growth) ? At(node, -1) : reading;

    // Between two places on a curve, in parts where it passes the radius of a joint of the mate's curves and more than one contact may lie between.
    private void Between(int node, in (double Parameter, Reading Reading) low, in (double Parameter, Reading Reading) high)
    {
        ReadOnlySpan<double> joints = view.Mate.JointsBetween(
            Math.Min(low.Reading.Radius, high.Reading.Radius) + Beside, Math.Max(low.Reading.Radius, high.Reading.Radius) - Beside);
        if (joints.IsEmpty || !MayTurnTwice(node, low, high, joints))
        {
            Smoothly(node, low, high);
            return;
        }

        double joint = joints[joints.Length / 2];
        Place place = Find(node, (low.Parameter, low.Reading.Radius - joint), (high.Parameter, high.Reading.Radius - joint), Value.Radius, joint);
        double away = low.Reading.Radius < high.Reading.Radius ? -Beside : Beside;
        (Reading before, Reading after) = (Read(place.Point, place.Tangent, away), Read(place.Point, place.Tangent, -away));
        if (before.Growth >= 0 && after.Growth <= 0)
        {
            Offer(place);
        }

        Between(node, low, (place.Parameter, before));
        Between(node, (place.Parameter, after), high);
    }

    // Along the chord past the joints: whether the growth ends more often than its values at both ends tell.
    private bool MayTurnTwice(int node, in (double Parameter, Reading Reading) low, in (double Parameter, Reading Reading) high, ReadOnlySpan<double> joints)
    {
        double way = high.Reading.Radius - low.Reading.Radius;
        (int turns, double last) = (0, low.Reading.Growth);
        for (int i = 0; i < joints.Length; i++)
        {
            double share = (joints[way > 0 ? i : joints.Length - 1 - i] - low.Reading.Radius) / way;
            double parameter = low.Parameter + (share * (high.Parameter - low.Parameter));
            (double before, double after) = (OnChord(node, parameter, way > 0 ? -Beside : Beside), OnChord(node, parameter, way > 0 ? Beside : -Beside));
            turns += (last > 0 && before < 0 ? 1 : 0) + (before >= 0 && after <= 0 ? 1 : 0);
            last = after;
        }

        turns += last > 0 && high.Reading.Growth < 0 ? 1 : 0;
        return turns > (low.Reading.Growth > 0 && high.Reading.Growth < 0 ? 1 : 0);
    }

    private double OnChord(int node, double parameter, double beside)
    {
        double share = (parameter - nodes.Parameter[node]) / (nodes.Parameter[node + 1] - nodes.Parameter[node]);
        double At(double[] values) => values[node] + (share * (values[node + 1] - values[node]));
        return view.Read(At(nodes.X), At(nodes.Y), At(nodes.TangentX), At(nodes.TangentY), beside).Growth;
    }

    // Between two places on a curve past a part of the mate without a corner.
    private void Smoothly(int node, in (double Parameter, Reading Reading) low, in (double Parameter, Reading Reading) high)
    {
        (Reading lower, Reading higher) = (low.Reading, high.Reading);
        if (lower.IsInside && higher.IsInside)
        {
            if (lower.Growth > 0 && higher.Growth < 0)
            {
                Offer(Find(node, (low.Parameter, lower.Growth), (high.Parameter, higher.Growth), Value.Growth));
            }
        }
        else
        {
            ToTip(node, low, high);
        }
    }

    // Between two samples beyond the mate's tip the curve may dip inside.
    private void Dip(int node, in Reading lower, in Reading higher)
    {
        (double low, double high) = (nodes.Parameter[node], nodes.Parameter[node + 1]);
        Place middle = Find(node, (low, lower.Outward), (high, higher.Outward), Value.Outward);
        if (middle.Reading.IsInside)
        {
            Between(node, (low, lower), (middle.Parameter, middle.Reading));
            Between(node, (middle.Parameter, middle.Reading), (high, higher));
        }
    }

    // From inside the mate's tip circle to outside: the curve stops the mate's tip where it crosses the circle, or its side before.
    private void ToTip(int node, in (double Parameter, Reading Reading) low, in (double Parameter, Reading Reading) high)
    {
        double sign = low.Reading.IsInside ? 1 : -1;
        (Reading inside, Reading outside) = sign > 0 ? (low.Reading, high.Reading) : (high.Reading, low.Reading);
        (bool grows, bool grew) = (inside.Growth * sign > 0, outside.Growth * sign > 0);
        if (grows ? grew && IsTipFree() : !grew || IsTipFree())
        {
            return;
        }

        Place crossing = Find(node, (low.Parameter, view.Beyond(low.Reading.Radius)), (high.Parameter, view.Beyond(high.Reading.Radius)), Value.Beyond);
        if (crossing.Reading.Growth * sign >= 0)
        {
            Offer(crossing, view.TipLever(crossing.Point.X, crossing.Point.Y, crossing.Tangent));
        }
        else if (grows)
        {
            (double Parameter, double Growth) end = (crossing.Parameter, crossing.Reading.Growth);
            Offer(sign > 0
                ? Find(node, (low.Parameter, inside.Growth), end, Value.Growth)
                : Find(node, end, (high.Parameter, inside.Growth), Value.Growth));
        }
    }

    // True where the corner of the mate's tip is still beside the first one's side where it is stopped elsewhere: that side does not stop it before.
    private bool IsTipFree()
    {
        if (_isTipFree is null && best.Slowest is var turn && double.IsFinite(turn))
        {
            _isTipFree = placing.First.Sides[_sides.First].IsBeside(view.TipAt(turn));
        }

        return _isTipFree ?? false;
    }

    private Reading Read(Point point, Vector tangent, double beside) => view.Read(point.X, point.Y, tangent.X, tangent.Y, beside);

    // Between two parameters of a node's curve: where a value is nothing, by the false position, and the middle where one end has stayed too long.
    private Place Find(int node, (double Parameter, double Value) low, (double Parameter, double Value) high, Value value, double radius = 0)
    {
        Curve curve = nodes.Curves[nodes.Curve[node]];
        double speed = nodes.Chord[node] / Math.Abs(nodes.Parameter[node + 1] - nodes.Parameter[node]);
        Place place = default;
        for (int i = 0; i < MostSteps; i++)
        {
            double secant = low.Parameter + ((high.Parameter - low.Parameter) * low.Value / (low.Value - high.Value));
            double parameter = i % 3 == 2 ? (low.Parameter + high.Parameter) / 2 : secant;
            (Point point, Vector tangent) = (curve.PointAt(parameter), curve.TangentAt(parameter));
            place = new Place(parameter, point, tangent, Read(point, tangent, 0));
            double found = value switch
            {
                Value.Growth => place.Reading.Growth,
                Value.Beyond => view.Beyond(place.Reading.Radius),
                Value.Radius => place.Reading.Radius - radius,
                _ => place.Reading.Outward,
            };
            double step = Math.Abs((high.Parameter - low.Parameter) * speed);
            if ((value is Value.Beyond or Value.Radius ? Math.Abs(found) : found * found * step / Math.Abs(low.Value - high.Value)) < Exactness || step < Exactness)
            {
                break;
            }

            if (found * low.Value > 0)
            {
                low = (parameter, found);
            }
            else
            {
                high = (parameter, found);
            }
        }

        return place;
    }

    private void Offer(in Reading reading, int node) => Offer(reading, nodes.X[node], nodes.Y[node], view.Lever(reading.Radius));

    private void Offer(in Place place, double? tipLever = null) => Offer(place.Reading, place.Point.X, place.Point.Y, tipLever ?? view.Lever(place.Reading.Radius));

    private void Offer(in Reading reading, double x, double y, double lever)
    {
        best.Take(_sides, view.AngleOf(x, y) - view.Mate.AngleAt(reading.Radius), Math.Sqrt((x * x) + (y * y)), reading.Radius, lever);
        best.Sink(view.Sunk(reading.Radius));
    }

    private enum Value
    {
        Growth,
        Beyond,
        Radius,
        Outward,
    }

    private readonly record struct Place(double Parameter, Point Point, Vector Tangent, Reading Reading);
}
