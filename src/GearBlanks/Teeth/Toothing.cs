using GearBlanks.Curves;

namespace GearBlanks.Teeth;

/// <summary>Teeth worked out: an external gear, a ring gear or a rack. One that exists can exist.</summary>
public abstract record Toothing
{
    private protected Toothing()
    {
    }

    /// <summary>The numbers that define it.</summary>
    public abstract ToothData Data { get; }

    /// <summary>Tooth count z; of a rack the teeth that fit on its length.</summary>
    public abstract int Teeth { get; }

    /// <summary>Module m, mm.</summary>
    public double Module => Data.Module;

    /// <summary>Pressure angle of the rack, rad.</summary>
    public double PressureAngle => Data.Rack.PressureAngle;

    /// <summary>Tooth thickness on the reference circle (line, of a rack), thinned, mm (arc).</summary>
    public double ToothThickness => Data.ToothThickness;

    /// <summary>Tooth thickness on the tip circle (line, of a rack), mm (arc); 0 for a pointed tooth.</summary>
    public abstract double TipThickness { get; }

    /// <summary>True where the flanks meet before the tip asked for.</summary>
    public abstract bool IsPointed { get; }

    /// <summary>Builds the teeth that the numbers define.</summary>
    /// <exception cref="GearGeometryException">No such teeth exist: the exception names the case and what would work.</exception>
    public static Toothing Of(ToothData data) => data switch
    {
        RackBarData rack => RackBar.Create(rack),
        GearData gear => Gear.Of(gear),
        _ => throw new ArgumentException("Teeth are external, a ring's or a rack's.", nameof(data)),
    };

    /// <summary>The tip that was asked for: diameter, of a rack height, mm.</summary>
    private protected abstract double NominalTip { get; }

    /// <summary>The same teeth with another thickness on the reference circle and the same tip: made by the generating shift, so that the root follows.</summary>
    /// <param name="thickness">Thickness, mm (arc).</param>
    /// <exception cref="GearGeometryException">No such teeth exist.</exception>
    internal Toothing WithThickness(double thickness) => Of(Data.WithTip(NominalTip).WithThickness(thickness));

    /// <summary>The exact contour that the teeth belong to, counter-clockwise: a gear's or a rack's outside, the inside of a ring.</summary>
    public abstract Outline Outline();

    /// <summary>
    /// Half a tooth with half the gap beside it: from the middle of the gap clockwise of the tooth on +X (of a rack at the right of the tooth on the Y axis)
    /// to the middle of that tooth's tip.
    /// </summary>
    internal abstract IEnumerable<Curve> GapToTip();
}
