using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Rolling;

/// <summary>
/// A toothing as its outline has it, ready to be rolled: every side of every tooth as angle over radius, centred on the axis it turns about. What differs from tooth to
/// tooth, an eccentric bore among it, is in the outline.
/// </summary>
public sealed class RollGear
{
    // Of a pitch: teeth that stand wider of an even spacing are no gear's, or some are missing.
    private const double MostUneven = 0.3;

    private RollGear(string name, RollKind kind, RollSide[] sides, Toothing? toothing)
    {
        Name = name;
        Kind = kind;
        Sides = sides;
        Toothing = toothing;
        Teeth = sides.Length / 2;
        bool isRing = kind == RollKind.Ring;
        TipRadius = isRing ? sides.Min(side => side.Tip) : sides.Max(side => side.Tip);
        RootRadius = isRing ? sides.Max(side => side.Root) : sides.Min(side => side.Root);
        double middle = (sides[0].Tip + sides[0].Root) / 2;
        Middles = [.. Enumerable.Range(0, Teeth).Select(i => (sides[2 * i].AngleAt(middle) + sides[(2 * i) + 1].AngleAt(middle)) / 2)];
        FlankEnd.Measure measured = FlankEnd.Of(sides, kind);
        BaseRadius = measured.BaseRadius;
        FormRadius = measured.Radius;
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public RollKind Kind { get; }

    /// <summary>Its teeth, counted.</summary>
    public int Teeth { get; }

    /// <summary>Radius of the farthest tip, of a ring the nearest, mm; of a rack the height over its reference line.</summary>
    public double TipRadius { get; }

    /// <summary>Radius of the deepest root, mm; of a rack the height over its reference line.</summary>
    public double RootRadius { get; }

    /// <summary>Radius of the reference circle, mm; null where the gear is an outline only, and for a rack.</summary>
    public double? ReferenceRadius => (Toothing as Gear)?.ReferenceRadius;

    /// <summary>Base pitch, mm: as designed, else measured on the middle of the flanks.</summary>
    public double BasePitch => Toothing is { } known
        ? Math.PI * known.Module * Math.Cos(known.PressureAngle)
        : Kind == RollKind.Rack ? Pitch * FlankCosine
        : 2 * Math.PI * BaseRadius / Teeth;

    /// <summary>The teeth as designed; null where the gear is an outline only.</summary>
    internal Toothing? Toothing { get; }

    /// <summary>The sides in counter-clockwise order: each tooth's clockwise one first.</summary>
    internal RollSide[] Sides { get; }

    /// <summary>Angle of the middle of each tooth, rad; of a rack its position against the X axis, mm.</summary>
    internal double[] Middles { get; }

    /// <summary>Radius at which flanks end and fillets begin, mm.</summary>
    internal double FormRadius { get; }

    /// <summary>The most that a point of it moves for a rad of turn, mm; 1 for a rack, whose turn is its way.</summary>
    internal double LongestLever => Kind switch { RollKind.Rack => 1, RollKind.Ring => RootRadius, _ => TipRadius };

    /// <summary>Radius of a point, mm; of a rack its height.</summary>
    internal double HeightOf(Point point) => Kind == RollKind.Rack ? point.Y : point.Radius;

    /// <summary>True for a radius (of a rack a height) at which fillets are, not flanks.</summary>
    internal bool IsFillet(double height) => Kind == RollKind.Ring ? height > FormRadius : height < FormRadius;

    /// <summary>Radius of the base circle as the flanks have it, mm; NaN for a rack.</summary>
    private double BaseRadius { get; }

    /// <summary>The pitch of a rack, mm; of a gear the angle, rad.</summary>
    internal double Pitch => Kind == RollKind.Rack ? (Middles[^1] - Middles[0]) / (Teeth - 1) : 2 * Math.PI / Teeth;

    /// <summary>Teeth as designed.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="toothing">The teeth.</param>
    /// <param name="outline">Their contour as it is made, turned about the origin; null for the exact one.</param>
    /// <exception cref="GearGeometryException">The contour has not the teeth that were designed.</exception>
    public static RollGear Of(string name, Toothing toothing, Outline? outline = null)
    {
        RollKind kind = toothing switch { RingGear => RollKind.Ring, RackBar => RollKind.Rack, _ => RollKind.External };
        RollSide[] sides = new RollTeeth(
            (outline ?? toothing.Outline()).Curves(), kind, toothing is RackBar rack ? (rack.RootHeight, rack.TipHeight) : null).Sides();
        return sides.Length == 2 * toothing.Teeth
            ? new RollGear(name, kind, sides, toothing)
            : throw new GearGeometryException("other-teeth", $"The contour of {name} has another number of teeth; teeth", sides.Length / 2, toothing.Teeth, "roll the contour that was made from this gear");
    }

    /// <summary>A contour of any chain of curves.</summary>
    /// <inheritdoc cref="OfPath"/>
    public static RollGear OfOutline(string name, Outline outline, bool isRing = false) => OfCurves(name, outline.Curves(), isRing);

    /// <summary>A contour of lines and arcs, as files carry it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="outline">The contour, counter-clockwise about the axis at the origin.</param>
    /// <param name="isRing">True where the material lies outside.</param>
    /// <exception cref="GearGeometryException">The contour has no teeth, or they do not stand evenly around the origin.</exception>
    public static RollGear OfPath(string name, ArcPath outline, bool isRing = false) =>
        OfCurves(name, CurvesOf(outline), isRing);

    /// <summary>A rack of lines and arcs, as files carry it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="outline">The contour, counter-clockwise, its teeth upward along the X axis.</param>
    /// <param name="root">Height of its roots, mm.</param>
    /// <param name="tip">Height of its tips, mm.</param>
    /// <exception cref="GearGeometryException">It has no teeth, or they do not stand evenly.</exception>
    public static RollGear OfRack(string name, ArcPath outline, double root, double tip) =>
        Even(new RollGear(name, RollKind.Rack, new RollTeeth(CurvesOf(outline), RollKind.Rack, (root, tip)).Sides(), null), "along its line");

    private static IEnumerable<Curve> CurvesOf(ArcPath outline) => Enumerable.Range(0, PathPiece.CountIn(outline)).Select(i => PathPiece.At(outline, i).AsCurve());

    private static RollGear OfCurves(string name, IEnumerable<Curve> curves, bool isRing)
    {
        RollKind kind = isRing ? RollKind.Ring : RollKind.External;
        return Even(new RollGear(name, kind, new RollTeeth(curves, kind, null).Sides(), null), "around its centre");
    }

    private static RollGear Even(RollGear gear, string where)
    {
        double worst = Enumerable.Range(0, gear.Teeth).Max(gear.Unevenness);
        return worst <= MostUneven
            ? gear
            : throw new GearGeometryException(
                "uneven-teeth", $"The teeth of {gear.Name} do not stand evenly {where}; pitches off", worst, MostUneven,
                $"see that the centre is right and that none of the {gear.Teeth} teeth found is broken out or no tooth");
    }

    // Of a rack's flanks against its tooth's middle line, the middle one over all sides.
    private double FlankCosine
    {
        get
        {
            double[] cosines = [.. Sides.Select(side => side.SlopeAt((side.Tip + FormRadius) / 2).X).Order()];
            return cosines[cosines.Length / 2];
        }
    }

    private double Unevenness(int tooth)
    {
        double off = (Middles[tooth] - Middles[0]) / Pitch;
        return Math.Abs(off - (Teeth * Math.Round((off - tooth) / Teeth)) - tooth);
    }
}
