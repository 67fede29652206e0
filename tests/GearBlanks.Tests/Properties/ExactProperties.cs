using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Tests.Properties;

/// <summary>
/// The exact outline is closed, simple and counter-clockwise, and has the sizes that its numbers ask for, by formulas written here anew
/// (ISO 21771:2007, clauses 4 and 5; from memory). Simple: each side rises steadily from root to tip and keeps to its own half pitch, so it meets
/// neither itself nor another side.
/// </summary>
internal static class ExactProperties
{
    public static void Check(Specimen specimen)
    {
        (Curve[] rising, Curve[] falling) = Sides(specimen.Exact);
        RequireClosed(specimen);
        RequireMirrored(rising, falling, specimen);
        foreach (Curve curve in rising)
        {
            RequireRising(curve, specimen);
            RequireInHalfPitch(curve, specimen);
            RequireTold(curve, specimen);
        }

        RequireCounterClockwise(specimen);
        RequireRadii(rising, specimen);
        RequireThickness(rising, falling, specimen);
    }

    /// <summary>The two sides of the tooth on +X; between and after them lie arcs of the tip and root circle.</summary>
    private static (Curve[] Rising, Curve[] Falling) Sides(Outline exact)
    {
        Curve[] sides = [.. exact.Pattern.Where(curve => curve is not Arc)];
        Assert.True(sides.Length is 2 or 4);
        return (sides[..(sides.Length / 2)], sides[(sides.Length / 2)..]);
    }

    private static void RequireClosed(Specimen specimen)
    {
        Point at = Motion.TurnStep(1, specimen.Gear.Teeth).Apply(specimen.Exact.Pattern[0].StartPoint);
        foreach (Curve curve in specimen.Exact.Pattern.Reverse())
        {
            Require.AtMost(curve.EndPoint.DistanceTo(at), 10 * specimen.Rounding, "a gap between two curves");
            at = curve.StartPoint;
        }

        Assert.Equal(specimen.Gear.Teeth, specimen.Exact.Repeats);
    }

    private static void RequireMirrored(Curve[] rising, Curve[] falling, Specimen specimen)
    {
        for (int i = 0; i < rising.Length; i++)
        {
            (Curve one, Curve other) = (rising[i], falling[^(i + 1)]);
            for (int k = 0; k <= 4; k++)
            {
                Point p = one.PointAt(one.Start + ((one.End - one.Start) * k / 4));
                Point q = other.PointAt(other.End + ((other.Start - other.End) * k / 4));
                Require.AtMost(new Point(p.X, -p.Y).DistanceTo(q), 10 * specimen.Rounding, "the other side is not the mirror image");
            }
        }
    }

    // An involute's radius grows with its roll angle. Along a fillet dr/dt has the sign of ds/dt, which is a cubic in c = sec t over r:
    // rho r - rho vc c^2 + vc^2 c^3, least at an end or at c = 2 rho / (3 vc).
    private static void RequireRising(Curve curve, Specimen specimen)
    {
        Assert.True(curve.Start >= 0 && curve.End > curve.Start);
        if (curve is Trochoid { RollingRadius: var r, CentreHeight: var vc, TipRadius: var rho })
        {
            double Rate(double c) => (rho * r) - (rho * vc * c * c) + (vc * vc * c * c * c);
            (double first, double last) = (1 / Math.Cos(curve.Start), 1 / Math.Cos(curve.End));
            double least = Math.Clamp(2 * rho / (3 * vc), first, last) is var turning && double.IsNaN(turning) ? first : turning;
            Assert.True(Math.Min(Rate(least), Math.Min(Rate(first), Rate(last))) >= 0, "the fillet turns back");
            Assert.True(curve.End < Math.PI / 2);
        }

        double radius = curve.StartPoint.Radius;
        for (int k = 1; k <= 8; k++)
        {
            double next = curve.PointAt(curve.Start + ((curve.End - curve.Start) * k / 8)).Radius;
            Require.AtMost(radius - next, specimen.Rounding, "the side falls back towards the centre");
            radius = next;
        }
    }

    // Only at a point of the tooth does its side meet the centre line, only in a full round the line between two teeth.
    private static void RequireInHalfPitch(Curve curve, Specimen specimen)
    {
        Vector across = Vector.AtAngle(-specimen.HalfPitch).TurnedLeft;
        double slack = 1e-9 * specimen.Gear.Module;
        Assert.True(Certified.IsPositive(curve, p => -p.Y, slack), "the side crosses the tooth's centre line");
        Assert.True(Certified.IsPositive(curve, p => (p - default(Point)).Dot(across), slack), "the side crosses the middle of the gap");
    }

    // What the gear tells of its side agrees with the curves it consists of.
    private static void RequireTold(Curve curve, Specimen specimen)
    {
        for (int k = 0; k <= 4; k++)
        {
            Point p = curve.PointAt(curve.Start + ((curve.End - curve.Start) * k / 4));
            if (p.Radius > specimen.Gear.RootRadius * (1 + 1e-7))
            {
                Require.Near(p.Angle, specimen.Gear.SideAngleAt(p.Radius), 1e-7, "angle of the side at a radius");
            }
        }
    }

    private static void RequireCounterClockwise(Specimen specimen)
    {
        double area = 0;
        foreach (Curve curve in specimen.Exact.Pattern)
        {
            Point at = curve.StartPoint;
            for (int k = 1; k <= 32; k++)
            {
                Point next = curve.PointAt(curve.Start + ((curve.End - curve.Start) * k / 32));
                area += (at - default(Point)).Cross(next - default(Point)) / 2;
                at = next;
            }
        }

        // Chords leave a little of the circles out.
        double root = specimen.Gear.RootRadius * specimen.Gear.RootRadius * specimen.HalfPitch;
        Assert.InRange(area, 0.99 * root, specimen.Gear.TipRadius * specimen.Gear.TipRadius * specimen.HalfPitch);
    }

    private static void RequireRadii(Curve[] rising, Specimen specimen)
    {
        GearData d = specimen.Gear.Data;
        double reference = d.Module * d.Teeth / 2;
        double xe = d.ProfileShift - (d.Thinning / (2 * d.Module * Math.Tan(d.Rack.PressureAngle)));
        double root = reference + ((xe - d.Rack.Dedendum) * d.Module) - d.Rack.DedendumAllowance;
        double tip = d.TipDiameter / 2 ?? (reference + ((d.Rack.Addendum + d.ProfileShift) * d.Module));
        Require.Near(root, rising[0].StartPoint.Radius, 1e-9, "root radius");
        Arc[] arcs = [.. specimen.Exact.Pattern.OfType<Arc>()];
        Assert.All(arcs, arc => Assert.True(arc.Sweep > 0 && arc.Centre == default));
        Arc? atTip = arcs.FirstOrDefault(arc => arc.Radius > (rising[^1].StartPoint.Radius + rising[^1].EndPoint.Radius) / 2);
        if (atTip is null)
        {
            Require.Near(0, rising[^1].EndPoint.Y, 1e-9, "a tooth without a tip arc ends in a point");
            Assert.Equal(0, specimen.Gear.TipThickness);
            Require.AtMost(rising[^1].EndPoint.Radius, tip + 1e-9, "the point lies beyond the tip circle");
        }
        else
        {
            Require.Near(tip, atTip.Radius, 1e-9, "tip radius");
            Require.Near(tip * atTip.Sweep, specimen.Gear.TipThickness, 1e-9, "tip thickness");
        }
    }

    // Measured between the two sides where a circle crosses them: the reference circle where it does so on the involute, and the flank's middle.
    private static void RequireThickness(Curve[] rising, Curve[] falling, Specimen specimen)
    {
        GearData d = specimen.Gear.Data;
        double reference = d.Module * d.Teeth / 2;
        (double form, double tip) = (rising[^1].StartPoint.Radius, rising[^1].EndPoint.Radius);
        if (reference > form && reference < tip)
        {
            double tangent = Math.Tan(d.Rack.PressureAngle);
            double thickness = (d.Module * ((Math.PI / 2) + (2 * d.ProfileShift * tangent))) - d.Thinning;
            Require.Near(thickness, Measured(reference), 1e-9, "thickness on the reference circle");
            Require.Near(thickness, specimen.Gear.ToothThickness, 1e-9, "thickness told");
        }

        double middle = (form + tip) / 2;
        Require.Near(FlankThickness(d, middle), Measured(middle), 1e-9, "thickness on the flank's middle circle");

        double Measured(double radius) => radius * (AngleAt(falling[0], radius) - AngleAt(rising[^1], radius));
    }

    /// <summary>Thickness of a tooth on a circle that crosses its involutes, mm: r_y (s / r + 2 inv alpha - 2 inv alpha_y).</summary>
    public static double FlankThickness(GearData d, double radius)
    {
        double alpha = d.Rack.PressureAngle;
        double reference = d.Module * d.Teeth / 2;
        double there = Math.Acos(Math.Min(1, reference * Math.Cos(alpha) / radius));
        double thickness = (d.Module * ((Math.PI / 2) + (2 * d.ProfileShift * Math.Tan(alpha)))) - d.Thinning;
        return radius * ((thickness / reference) + (2 * (Math.Tan(alpha) - alpha - Math.Tan(there) + there)));
    }

    // By halving: the radius is monotone along a side.
    private static double AngleAt(Curve side, double radius)
    {
        bool isRising = side.EndPoint.Radius > side.StartPoint.Radius;
        (double low, double high) = isRising ? (side.Start, side.End) : (side.End, side.Start);
        for (int i = 0; i < 54; i++)
        {
            double between = (low + high) / 2;
            (low, high) = side.PointAt(between).Radius < radius ? (between, high) : (low, between);
        }

        return side.PointAt((low + high) / 2).Angle;
    }
}
