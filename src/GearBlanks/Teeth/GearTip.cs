using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>A round gear's tooth from where its nominal involute ends to the middle of its tip.</summary>
internal sealed record GearTip
{
    // In modules: what is shorter than this is neither cut nor drawn.
    private const double LeastLength = 1e-9;

    private readonly ToothFlank _nominal;
    private readonly TipEdge _edge;
    private readonly double? _reliefStart;

    private GearTip(ToothFlank nominal, double? reliefStart, TipEdge edge)
    {
        _nominal = nominal;
        _reliefStart = reliefStart;
        _edge = edge;
    }

    /// <summary>Where the nominal involute ends, mm.</summary>
    public double FormRadius => _reliefStart ?? _edge.FlankEnd;

    /// <summary>Half the angle of the land on the tip circle, rad.</summary>
    public double LandHalfAngle => _edge.LandHalfAngle;

    /// <summary>Where others touch the tip, from the flank inward.</summary>
    public ImmutableArray<TipCorner> Corners => _edge.Corners;

    /// <summary>Works the tip out.</summary>
    /// <param name="flank">The nominal flank.</param>
    /// <param name="formRadius">Where it begins at the fillet, mm.</param>
    /// <param name="tipRadius">The tip circle as cut, mm.</param>
    /// <param name="data">The numbers.</param>
    /// <exception cref="GearGeometryException">The tip's form does not fit on the tooth.</exception>
    public static GearTip Of(ToothFlank flank, double formRadius, double tipRadius, ToothData data)
    {
        GearTip Build(TipForm form, double diameter) => Built(flank, formRadius, diameter / 2, form, LeastLength * data.Module);
        TipForm asked = data.Tip ?? TipForm.Plain;
        try
        {
            return Build(asked, 2 * tipRadius);
        }
        catch (GearGeometryException e) when (e.Remedy is null)
        {
            var remedy = new TipRemedy(asked, 2 * formRadius, 2 * tipRadius, "diameter", (form, diameter) => _ = Build(form, diameter));
            throw remedy.For(e);
        }
    }

    /// <summary>Half the tooth's angle at a radius, rad, with what has been taken off.</summary>
    public double HalfAngleAt(double radius) =>
        !_nominal.Nearer(radius, FormRadius) ? _nominal.HalfAngleAt(radius)
        : _nominal.Nearer(radius, _edge.FlankEnd) ? _edge.HalfAngleAt(radius)
        : _edge.Flank.HalfAngleAt(radius);

    /// <summary>What follows the nominal flank up to the land, at the clockwise side of the tooth on +X.</summary>
    public IEnumerable<Curve> Side()
    {
        if (_reliefStart is { } start)
        {
            yield return _edge.Flank.Side(start, _edge.FlankEnd);
        }

        if (_edge.Side() is { } edge)
        {
            yield return edge;
        }
    }

    private static GearTip Built(ToothFlank nominal, double formRadius, double tipRadius, TipForm form, double least)
    {
        TipRelief? relief = form.Relief?.Amount > least ? form.Relief : null;
        ToothFlank flank = relief is null ? nominal : Relieved(nominal, formRadius, tipRadius, relief, least);
        var edge = TipEdge.Of(flank, tipRadius, form, least);
        var tip = new GearTip(nominal, relief?.Start / 2, edge);
        tip.RequireFlank(formRadius, least);
        RequireLand(edge, form);
        return tip;
    }

    private static ToothFlank Relieved(ToothFlank nominal, double formRadius, double tipRadius, TipRelief relief, double least)
    {
        double start = relief.Start / 2;
        bool isBelow = !nominal.Nearer(start, formRadius, least);
        if (isBelow || !nominal.Nearer(tipRadius, start, least))
        {
            throw TipRefusal.ReliefOutOfRange("diameter", relief.Start, 2 * (isBelow ? formRadius : tipRadius), isBelow);
        }

        ToothFlank? flank = nominal.Relieved(start, tipRadius, relief.Amount);
        return flank is { } relieved && relieved.HalfAngleAt(tipRadius) * tipRadius > -least
            ? relieved
            : throw TipRefusal.ReliefTooDeep(relief.Amount);
    }

    private static void RequireLand(TipEdge edge, TipForm form)
    {
        if (edge is ChamferedTip { IsTooSteep: true } chamfer)
        {
            throw TipRefusal.ChamferTooSteep(edge.Flank.ProfileAngleAt(chamfer.FlankEnd));
        }

        if (edge.LandHalfAngle < 0)
        {
            throw edge is RoundedTip
                ? TipRefusal.RoundTooWide(form.Round)
                : TipRefusal.ChamferTooWide(form.Chamfer);
        }
    }

    private void RequireFlank(double formRadius, double least)
    {
        if (!_nominal.Nearer(_edge.FlankEnd, formRadius, least) && _edge.FlankEnd != _edge.TipRadius)
        {
            throw TipRefusal.NoFlank("diameter", 2 * _edge.FlankEnd, 2 * formRadius);
        }

        if (_reliefStart is { } start && !_nominal.Nearer(_edge.FlankEnd, start, least))
        {
            throw TipRefusal.ReliefOutOfRange("diameter", 2 * start, 2 * _edge.FlankEnd, false);
        }
    }
}
