using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>One tooth of a rack worked out, its centre line on the Y axis.</summary>
internal sealed record RackForm
{
    // In modules: a land that is nothing but rounding is none.
    public const double LeastLand = 1e-9;

    private const int MostTeeth = 1000;

    private readonly RackBarData _data;
    private readonly double _tangent;
    private readonly double _round;

    private RackForm(RackBarData data)
    {
        _data = data;
        _tangent = Math.Tan(data.Rack.PressureAngle);
        _round = data.Rack.FilletRadius * data.Module;
        Teeth = (int)Math.Min(MostTeeth, Math.Floor((data.Length / (Math.PI * data.Module)) + LeastLand));
        NominalTipHeight = data.TipHeight ?? ((data.Rack.Addendum + data.ProfileShift) * data.Module);
        RootHeight = (data.GeneratingShift * data.Module) - data.RackDedendum;
        FormHeight = RootHeight + (_round * (1 - Math.Sin(data.Rack.PressureAngle)));
        TipHeight = Math.Min(NominalTipHeight, data.ToothThickness / 2 / _tangent);
    }

    public int Teeth { get; }

    public double NominalTipHeight { get; }

    public double TipHeight { get; }

    public double RootHeight { get; }

    public double FormHeight { get; }

    // Half the root line's piece in one gap.
    private double HalfLand
    {
        get
        {
            double sine = Math.Sin(_data.Rack.PressureAngle);
            double atRoot = (Math.PI * _data.Module / 2) - HalfThicknessAt(RootHeight);
            double land = atRoot - (_round * (1 - sine) / Math.Cos(_data.Rack.PressureAngle));
            return Math.Abs(land) < LeastLand * _data.Module ? 0 : land;
        }
    }

    public static RackForm Of(RackBarData data)
    {
        var form = new RackForm(data);
        form.Require();
        return form;
    }

    /// <summary>Half the tooth's thickness at a height over the reference line, mm.</summary>
    public double HalfThicknessAt(double height) => (_data.ToothThickness / 2) - (height * _tangent);

    /// <summary>The tooth from the end of the root line on its right to the one on its left.</summary>
    public ImmutableArray<Curve> Tooth()
    {
        Curve[] rising = [.. Rising()];
        ImmutableArray<Curve>.Builder tooth = ImmutableArray.CreateBuilder<Curve>();
        tooth.AddRange(rising);
        double tip = HalfThicknessAt(TipHeight);
        if (TipHeight == NominalTipHeight && tip > 0)
        {
            tooth.Add(new Line(new Point(tip, TipHeight), new Point(-tip, TipHeight)));
        }

        var mirror = Motion.MirrorInX.Then(Motion.Turn(Math.PI));
        tooth.AddRange(rising.Reverse().Select(curve => curve.Moved(mirror).Reversed()));
        return tooth.ToImmutable();
    }

    // The right side from the root upward: the rack's own fillet is an arc.
    private IEnumerable<Curve> Rising()
    {
        double alpha = _data.Rack.PressureAngle;
        if (_round > 0)
        {
            var centre = new Point(((Math.PI * _data.Module) / 2) - HalfLand, RootHeight + _round);
            yield return new Arc(centre, _round, -Math.PI / 2, alpha - (Math.PI / 2));
        }

        double tip = TipHeight == NominalTipHeight ? HalfThicknessAt(TipHeight) : 0;
        yield return new Line(new Point(HalfThicknessAt(FormHeight), FormHeight), new Point(tip, TipHeight));
    }

    private void Require()
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
                FormattableString.Invariant($"use a back at more than {Math.Ceiling(-RootHeight * 1000) / 1000:0.###} mm"));
        }

        if (HalfLand < 0)
        {
            throw new GearGeometryException(
                "rack-round-too-wide", $"The root fillets of rack {_data.Rack.Name} are wider than its gap; half the land between them, mm", HalfLand, 0,
                "use a smaller fillet radius, dedendum or profile shift");
        }

        if (TipHeight <= FormHeight)
        {
            throw new GearGeometryException(
                "no-flank", "No straight flank is left between the fillet and the tip of the rack; height of the tip, mm", TipHeight, FormHeight,
                "use a greater tip height or less thinning");
        }
    }
}
