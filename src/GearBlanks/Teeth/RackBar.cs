using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>
/// A straight rack: its reference line on the X axis, its teeth upward, its middle at the origin, as many whole teeth as fit on its
/// length; what is left over stays at root level at both ends, so that a bar of whole pitches continues into the next.
/// </summary>
public sealed record RackBar : Toothing
{
    private RackBar(RackBarData data, RackForm form)
    {
        Data = data;
        Form = form;
    }

    /// <inheritdoc/>
    public override RackBarData Data { get; }

    /// <inheritdoc/>
    public override int Teeth => Form.Teeth;

    /// <summary>Pitch p, mm: pi m.</summary>
    public double Pitch => Math.PI * Module;

    /// <summary>Length of the bar, mm.</summary>
    public double Length => Data.Length;

    /// <summary>Height of the tips over the reference line as cut, mm.</summary>
    public double TipHeight => Form.TipHeight;

    /// <summary>Height of the root line over the reference line, mm; negative below it.</summary>
    public double RootHeight => Form.RootHeight;

    /// <summary>Height over the reference line where the straight flank begins at the fillet, mm.</summary>
    public double FormHeight => Form.FormHeight;

    /// <summary>
    /// Height over the reference line where the nominal flank ends at the tip, mm: where relief, round or chamfer starts, else the tip. Under light load a
    /// relieved piece does not touch, so contact ratios by this height are on the safe side.
    /// </summary>
    public double TipFormHeight => Form.Tip.FormHeight;

    /// <summary>Height of the tips over the reference line asked for, mm.</summary>
    public double NominalTipHeight => Form.NominalTipHeight;

    private protected override double NominalTip => NominalTipHeight;

    /// <inheritdoc/>
    public override bool IsPointed => Form.TipHeight < Form.NominalTipHeight;

    /// <inheritdoc/>
    public override double TipThickness => 2 * Form.Tip.HalfLand;

    /// <summary>Position along X of the first tooth's centre line, mm; the others follow a pitch apart.</summary>
    public double FirstTooth => -(Teeth - 1) * Pitch / 2;

    /// <summary>What others touch first at the right of a tooth's tip, its centre line on the Y axis.</summary>
    internal ImmutableArray<Circle> TipCorners => Form.Tip.Corners;

    private RackForm Form { get; }

    /// <summary>Builds the rack.</summary>
    /// <exception cref="GearGeometryException">No such rack exists: the exception names the case and what would work.</exception>
    public static RackBar Create(RackBarData data)
    {
        GearRanges.Require(data);
        return new RackBar(data, RackForm.Of(data));
    }

    /// <summary>Half a tooth's thickness at a height as it is cut, mm: fillet, flank, relief, chamfer or round.</summary>
    /// <param name="height">Height over the reference line, mm; below the root and beyond the tip those answer.</param>
    public double SideAt(double height) => Form.SideAt(height);

    /// <inheritdoc/>
    /// <remarks>The whole bar: from the left end of its back counter-clockwise, so that its teeth come from right to left.</remarks>
    public override Outline Outline()
    {
        double half = Length / 2;
        (Point left, Point right) = (new Point(-half, -Data.BackHeight), new Point(half, -Data.BackHeight));
        ImmutableArray<Curve> tooth = Form.Tooth();
        Point lastRoot = tooth[0].StartPoint + new Vector(FirstTooth + ((Teeth - 1) * Pitch), 0);
        var corner = new Point(half, RootHeight);
        var contour = new List<Curve> { new Line(left, right), new Line(right, IsLand(corner, lastRoot) ? corner : lastRoot) };
        for (int i = Teeth - 1; i >= 0; i--)
        {
            Motion shift = Motion.Shift(new Vector(FirstTooth + (i * Pitch), 0));
            Curve[] placed = [.. tooth.Select(curve => curve.Moved(shift))];
            AddLine(contour, placed[0].StartPoint);
            contour.AddRange(placed);
        }

        AddLine(contour, new Point(-half, RootHeight));
        contour.Add(new Line(contour[^1].EndPoint, left));
        return new Outline([.. contour]);
    }

    /// <inheritdoc/>
    internal override IEnumerable<Curve> GapToTip() => Form.GapToTip();

    // A bar of whole pitches with a full round has no root land to draw.
    private void AddLine(List<Curve> contour, Point to)
    {
        Point from = contour[^1].EndPoint;
        if (IsLand(from, to))
        {
            contour.Add(new Line(from, to));
        }
    }

    private bool IsLand(Point from, Point to) => from.DistanceTo(to) > RackForm.LeastLand * Module;
}
