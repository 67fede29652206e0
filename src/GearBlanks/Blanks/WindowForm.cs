using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Blanks;

/// <summary>
/// One window worked out, its middle on +X: bounded by the hub, the rim and the near sides of two arms, with an arc in each corner that is
/// tangent to both of its neighbours.
/// </summary>
internal sealed record WindowForm
{
    // rad: what is left of hub and rim between two corners must be more than rounding.
    private const double LeastArc = 1e-9;

    private readonly double _hub;
    private readonly double _rim;
    private readonly double _corner;
    private readonly Vector _along;
    private readonly Vector _inward;
    private readonly double _offset;
    private readonly double _hubAt;
    private readonly double _rimAt;

    private WindowForm(Crossings crossings, double rootRadius)
    {
        _hub = crossings.HubDiameter / 2;
        _rim = rootRadius - crossings.RimWidth;
        _corner = Refusals.Corner(crossings.CornerRadius);

        // The side of the arm that bounds the window clockwise, in the arm's frame, then turned so that the window's middle lies on +X.
        Motion turn = Motion.Turn(-Math.PI / crossings.Arms);
        Point start = turn.Apply(new Point(_hub, crossings.ArmWidth / 2));
        Point end = turn.Apply(new Point(_rim, crossings.ArmWidthAtRim / 2));
        _along = (end - start).Unit;
        _inward = _along.TurnedLeft;
        _offset = (start - default(Point)).Dot(_inward);
        _hubAt = Along(_hub + _corner);
        _rimAt = Along(_rim - _corner);
    }

    /// <summary>The form, or null where its corners do not fit between the arms.</summary>
    public static WindowForm? Of(Crossings crossings, double rootRadius)
    {
        var form = new WindowForm(crossings, rootRadius);
        return form._hubAt < form._rimAt && form.Centre(form._hubAt).Angle < -LeastArc && form.Centre(form._rimAt).Angle < -LeastArc ? form : null;
    }

    public Outline Outline()
    {
        (Point atHub, Point atRim) = (Centre(_hubAt), Centre(_rimAt));
        double outward = _inward.TurnedRight.TurnedRight.Angle;
        Arc[] corners = _corner > 0
            ?
            [
                Corner(atHub, (default(Point) - atHub).Angle, outward),
                Corner(atRim, outward, (atRim - default(Point)).Angle),
            ]
            : [];
        Line side = new(Foot(_hubAt), Foot(_rimAt));
        Curve[] lower = corners.Length > 0 ? [corners[0], side, corners[1]] : [side];
        ImmutableArray<Curve>.Builder curves = ImmutableArray.CreateBuilder<Curve>();
        curves.AddRange(lower);
        curves.Add(new Arc(default, _rim, atRim.Angle, -2 * atRim.Angle));
        curves.AddRange(lower.Reverse().Select(curve => curve.Moved(Motion.MirrorInX).Reversed()));
        curves.Add(new Arc(default, _hub, -atHub.Angle, 2 * atHub.Angle));
        return new Outline(curves.ToImmutable());
    }

    // Where along the side a corner stands whose centre is so far from the origin; NaN where there is none.
    private double Along(double radius) => Math.Sqrt((radius * radius) - ((_offset + _corner) * (_offset + _corner)));

    private Point Centre(double along) => default(Point) + (_inward * (_offset + _corner)) + (_along * along);

    private Point Foot(double along) => default(Point) + (_inward * _offset) + (_along * along);

    // Counter-clockwise, as every inner corner of a counter-clockwise contour.
    private Arc Corner(Point centre, double from, double to)
    {
        double sweep = to - from;
        return new Arc(centre, _corner, from, sweep - (2 * Math.PI * Math.Floor(sweep / (2 * Math.PI))));
    }
}
