using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>One tooth of a rack worked out, its centre line on the Y axis. Its gap has the shape of the generating rack's tooth.</summary>
internal sealed record RackForm
{
    // In modules: a land that is nothing but rounding is none.
    public const double LeastLand = 1e-9;

    private const int MostTeeth = 1000;

    private readonly RackBarData _data;
    private readonly GeneratingRack _gap;
    private readonly RackFlank _flank;

    private RackForm(RackBarData data)
    {
        _data = data;
        _gap = new GeneratingRack(data);
        _flank = new RackFlank(data.ToothThickness / 2, Math.Tan(data.Rack.PressureAngle));
        Teeth = (int)Math.Min(MostTeeth, Math.Floor((data.Length / (Math.PI * data.Module)) + LeastLand));
        NominalTipHeight = data.TipHeight ?? ((data.Rack.Addendum + data.ProfileShift) * data.Module);
        FormHeight = RootHeight + (_gap.TipRound * (1 - Math.Sin(data.Rack.PressureAngle)));
        TipHeight = Math.Min(NominalTipHeight, _flank.HalfAtReference / _flank.Tangent);
        RequireFlank();
        Tip = RackTip.Of(_flank, FormHeight, TipHeight, data);
        RequireBar();
    }

    public int Teeth { get; }

    public double NominalTipHeight { get; }

    public double TipHeight { get; }

    public double RootHeight => _gap.TipHeight;

    public double FormHeight { get; }

    public RackTip Tip { get; }

    private Point FilletCentre => new((Math.PI * _data.Module / 2) - _gap.CentreOffset, _gap.CentreHeight);

    public static RackForm Of(RackBarData data) => new(data);

    /// <summary>Half the tooth's thickness at a height over the reference line, mm, as cut.</summary>
    public double SideAt(double height)
    {
        if (height >= FormHeight)
        {
            return Tip.HalfThicknessAt(height);
        }

        double below = Math.Min(_gap.TipRound, FilletCentre.Y - height);
        return FilletCentre.X - Math.Sqrt((_gap.TipRound - below) * (_gap.TipRound + below));
    }

    /// <summary>The tooth from the end of the root line on its right to the one on its left.</summary>
    public ImmutableArray<Curve> Tooth()
    {
        Curve[] rising = [.. Rising()];
        ImmutableArray<Curve>.Builder tooth = ImmutableArray.CreateBuilder<Curve>();
        tooth.AddRange(rising);
        if (Tip.HalfLand > 0)
        {
            tooth.Add(new Line(new Point(Tip.HalfLand, TipHeight), new Point(-Tip.HalfLand, TipHeight)));
        }

        var mirror = Motion.MirrorInX.Then(Motion.Turn(Math.PI));
        tooth.AddRange(rising.Reverse().Select(curve => curve.Moved(mirror).Reversed()));
        return tooth.ToImmutable();
    }

    /// <summary>Half the tooth with half the gap at its right.</summary>
    public IEnumerable<Curve> GapToTip()
    {
        Curve[] rising = [.. Rising()];
        var middle = new Point(Math.PI * _data.Module / 2, RootHeight);
        if (rising[0].StartPoint.DistanceTo(middle) > LeastLand * _data.Module)
        {
            yield return new Line(middle, rising[0].StartPoint);
        }

        foreach (Curve curve in rising)
        {
            yield return curve;
        }

        if (Tip.HalfLand > 0)
        {
            yield return new Line(new Point(Tip.HalfLand, TipHeight), new Point(0, TipHeight));
        }
    }

    // The right side from the root upward: the rack's own fillet is an arc.
    private IEnumerable<Curve> Rising()
    {
        if (_gap.TipRound > 0)
        {
            yield return new Arc(FilletCentre, _gap.TipRound, -Math.PI / 2, _data.Rack.PressureAngle - (Math.PI / 2));
        }

        yield return new Line(RackTip.On(_flank, FormHeight), RackTip.On(_flank, Tip.FormHeight));
        foreach (Curve curve in Tip.Side())
        {
            yield return curve;
        }
    }

    private void RequireFlank()
    {
        if (TipHeight - FormHeight <= LeastLand * _data.Module)
        {
            throw new GearGeometryException(
                "no-flank", "No straight flank is left between the fillet and the tip of the rack; height of the tip over the reference line, mm",
                TipHeight, FormHeight,
                FormattableString.Invariant($"use a tip height of at least {(Math.Floor((FormHeight * 1000) + 0.001) + 1) / 1000:0.###} mm"));
        }
    }

    private void RequireBar()
    {
        double pitch = Math.PI * _data.Module;
        if (Teeth < 1 || _data.Length > MostTeeth * pitch * (1 + LeastLand))
        {
            throw new GearGeometryException(
                "no-tooth", "The rack's length takes less than one tooth or more than 1000; length, mm", _data.Length, Teeth < 1 ? pitch : MostTeeth * pitch,
                FormattableString.Invariant($"use a length from {Math.Ceiling(pitch * 1000) / 1000:0.###} to {Math.Floor(MostTeeth * pitch):0.###} mm"));
        }

        if (-RootHeight >= _data.BackHeight)
        {
            throw new GearGeometryException(
                "no-back", "The gaps reach the back of the rack; distance of the back from the reference line, mm", _data.BackHeight, -RootHeight,
                FormattableString.Invariant($"use a distance of at least {(Math.Floor((-RootHeight * 1000) + 0.001) + 1) / 1000:0.###} mm"));
        }
    }
}
