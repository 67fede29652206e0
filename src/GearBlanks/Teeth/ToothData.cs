namespace GearBlanks.Teeth;

/// <summary>The numbers that define teeth of any kind: external, ring or rack.</summary>
/// <param name="Module">Module m, mm, 0.05 to 50.</param>
/// <param name="Rack">Basic rack.</param>
/// <param name="ProfileShift">Profile shift coefficient x, -1 to 1.5; positive thickens the teeth, of a ring and a rack too.</param>
/// <param name="Thinning">
/// Loss of tooth thickness on the reference circle, mm (arc), 0 or more: made by the generating shift xE, the tip circle stays that of x.
/// </param>
public abstract record ToothData(double Module, BasicRack Rack, double ProfileShift, double Thinning)
{
    /// <summary>What is taken off the tips; null for plain corners.</summary>
    public TipForm? Tip { get; init; }

    /// <summary>Generating profile shift coefficient xE = x - thinning / (2 m tan alpha) (ISO 21771:2007, clause 8; from memory).</summary>
    public double GeneratingShift => ProfileShift - (Thinning / (2 * Module * Math.Tan(Rack.PressureAngle)));

    /// <summary>Tooth thickness on the reference circle (line, of a rack), thinned, mm (arc): m (pi/2 + 2 xE tan alpha).</summary>
    public double ToothThickness => Module * ((Math.PI / 2) + (2 * GeneratingShift * Math.Tan(Rack.PressureAngle)));

    /// <summary>The same numbers with another tip diameter, of a rack tip height, mm.</summary>
    internal abstract ToothData WithTip(double tip);

    /// <summary>The same numbers with another thickness on the reference circle, mm: thinner by thinning, thicker by shift, which moves the tip where it is not given.</summary>
    internal ToothData WithThickness(double thickness)
    {
        double plain = (this with { Thinning = 0 }).ToothThickness;
        return thickness <= plain
            ? this with { Thinning = plain - thickness }
            : this with { Thinning = 0, ProfileShift = ProfileShift + ((thickness - plain) / (2 * Module * Math.Tan(Rack.PressureAngle))) };
    }

    /// <summary>Dedendum of the rack, mm: hfP m and its allowance.</summary>
    internal double RackDedendum => (Rack.Dedendum * Module) + Rack.DedendumAllowance;
}
