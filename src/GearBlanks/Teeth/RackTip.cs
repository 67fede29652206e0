using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>A rack's tooth, its centre line on the Y axis, from where its nominal flank ends to the middle of its tip.</summary>
internal sealed record RackTip
{
    // In modules: what is shorter than this is neither cut nor drawn, and a land of less than the second is nothing but rounding.
    private const double LeastLength = 1e-9;
    private const double LeastLand = 1e-12;

    private readonly RackFlank _nominal;
    private readonly RackFlank _flank;
    private readonly double? _reliefStart;
    private readonly double _tip;
    private readonly double _round;
    private readonly double _chamfer;

    private RackTip(RackFlank nominal, RackFlank flank, double? reliefStart, double tip, double round, double chamfer)
    {
        (_nominal, _flank, _reliefStart, _tip, _round, _chamfer) = (nominal, flank, reliefStart, tip, round, chamfer);
    }

    /// <summary>Height where the nominal flank ends, mm.</summary>
    public double FormHeight => _reliefStart ?? FlankEnd;

    /// <summary>Half the land on the tip, mm.</summary>
    public double HalfLand { get; private init; }

    /// <summary>What others touch first at the right of the tip, from the flank to the land: points, of radius 0, or the disc of the round.</summary>
    public ImmutableArray<Circle> Corners =>
        _chamfer > 0
            ? [new Circle(new Point(_flank.HalfThicknessAt(FlankEnd), FlankEnd), 0), new Circle(new Point(HalfLand, _tip), 0)]
            : [new Circle(new Point(HalfLand, _tip - _round), _round)];

    // Where the flank, relieved or not, ends.
    private double FlankEnd => _tip - _chamfer - (_round * (1 - Math.Sin(_flank.Angle)));

    /// <summary>Works the tip out.</summary>
    /// <exception cref="GearGeometryException">The tip's form does not fit on the tooth.</exception>
    public static RackTip Of(RackFlank flank, double formHeight, double tipHeight, ToothData data)
    {
        RackTip Build(TipForm form, double tip) => Built(flank, formHeight, tip, form, data.Module);
        TipForm asked = data.Tip ?? TipForm.Plain;
        try
        {
            return Build(asked, tipHeight);
        }
        catch (GearGeometryException e) when (e.Remedy is null)
        {
            throw new TipRemedy(asked, formHeight, tipHeight, "height", (form, tip) => _ = Build(form, tip)).For(e);
        }
    }

    /// <summary>Half the tooth's thickness at a height, mm, with what has been taken off; beyond the tip as at it.</summary>
    public double HalfThicknessAt(double height)
    {
        double at = Math.Min(height, _tip);
        double intoRound = at - _tip + _round;
        return at <= FormHeight ? _nominal.HalfThicknessAt(at)
            : at <= FlankEnd ? _flank.HalfThicknessAt(at)
            : _round > 0 ? HalfLand + Math.Sqrt((_round - intoRound) * (_round + intoRound))
            : HalfLand + _tip - at;
    }

    /// <summary>What follows the nominal flank up to the land, at the right of the tooth.</summary>
    public IEnumerable<Curve> Side()
    {
        if (_reliefStart is { } start)
        {
            yield return new Line(On(_nominal, start), On(_flank, FlankEnd));
        }

        if (_round > 0)
        {
            yield return new Arc(new Point(HalfLand, _tip - _round), _round, _flank.Angle, (Math.PI / 2) - _flank.Angle);
        }
        else if (_chamfer > 0)
        {
            yield return new Line(On(_flank, FlankEnd), new Point(HalfLand, _tip));
        }
    }

    /// <summary>The point of a flank at a height, at the right of the tooth.</summary>
    internal static Point On(RackFlank flank, double height) => new(flank.HalfThicknessAt(height), height);

    private static RackTip Built(RackFlank nominal, double formHeight, double tipHeight, TipForm form, double module)
    {
        double least = LeastLength * module;
        TipRelief? relief = form.Relief?.Amount > least ? form.Relief : null;
        RackFlank flank = relief is null ? nominal : Relieved(nominal, formHeight, tipHeight, relief, least);
        var tip = new RackTip(
            nominal, flank, relief?.Start, tipHeight, form.Round > least ? form.Round : 0, form.Chamfer > least ? form.Chamfer : 0);
        tip.RequireFlank(formHeight, least);
        return tip.WithLand(module);
    }

    private static RackFlank Relieved(RackFlank nominal, double formHeight, double tipHeight, TipRelief relief, double least)
    {
        bool isBelow = relief.Start - formHeight <= least;
        if (isBelow || tipHeight - relief.Start <= least)
        {
            throw TipRefusal.ReliefOutOfRange("height", relief.Start, isBelow ? formHeight : tipHeight, isBelow);
        }

        RackFlank flank = nominal.Relieved(relief.Start, tipHeight, relief.Amount);
        return flank.HalfThicknessAt(tipHeight) > -least ? flank : throw TipRefusal.ReliefTooDeep(relief.Amount);
    }

    private void RequireFlank(double formHeight, double least)
    {
        if (FlankEnd - formHeight <= least && FlankEnd != _tip)
        {
            throw TipRefusal.NoFlank("height", FlankEnd, formHeight);
        }

        if (FlankEnd - _reliefStart <= least)
        {
            throw TipRefusal.ReliefOutOfRange("height", _reliefStart!.Value, FlankEnd, false);
        }
    }

    private RackTip WithLand(double module)
    {
        if (_chamfer > 0 && _flank.Tangent >= 1 - LeastLand)
        {
            throw TipRefusal.ChamferTooSteep(_flank.Angle);
        }

        double land = _flank.HalfThicknessAt(_tip - _round - _chamfer) - _chamfer - (_round / Math.Cos(_flank.Angle));
        if (land < -LeastLand * module)
        {
            throw _chamfer > 0 ? TipRefusal.ChamferTooWide(_chamfer) : TipRefusal.RoundTooWide(_round);
        }

        return this with { HalfLand = Math.Abs(land) < LeastLand * module ? 0 : land };
    }
}
