using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// A piece of a tooth's side on which the radius only grows or only falls: the angle is a function of the radius, exact from the curve. Of a rack the height
/// stands for the radius, and the way against its X axis for the angle.
/// </summary>
/// <param name="from">Radius at one end, mm.</param>
/// <param name="to">Radius at the other end, mm.</param>
internal abstract class SidePiece(double from, double to)
{
    /// <summary>The least radius, mm.</summary>
    public double Least { get; } = Math.Min(from, to);

    /// <summary>The greatest radius, mm.</summary>
    public double Greatest { get; } = Math.Max(from, to);

    /// <summary>The angle at a radius within the piece, rad counter-clockwise from +X, never wrapped within the piece; of a rack mm.</summary>
    public abstract double AngleAt(double radius);

    /// <summary>The direction of growing radius along the piece, as its radial and its counter-clockwise part; length 1.</summary>
    public abstract Vector SlopeAt(double radius);

    /// <summary>The piece that a monotone curve is, seen from the origin.</summary>
    public static SidePiece Round(Curve curve) => curve switch
    {
        Line line => new LinePiece(line),
        Arc arc => new ArcPiece(arc),
        Involute involute when InvolutePiece.IsCentred(involute) => new InvolutePiece(involute),
        Trochoid fillet when TrochoidPiece.IsCentred(fillet) => new TrochoidPiece(fillet),
        _ => new CurvePiece(curve),
    };

    /// <summary>The piece that a monotone curve of a rack is.</summary>
    public static SidePiece Straight(Curve curve) => curve is Arc arc ? new RackArcPiece(arc) : new RackLinePiece(curve.StartPoint, curve.EndPoint);
}
