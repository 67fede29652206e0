namespace GearBlanks.Teeth;

/// <summary>
/// A round spur gear, external or a ring, centred on the origin with a tooth's centre line on +X. All radii are positive; the teeth of a
/// ring point inward, so its tip circle is the smallest. Source of the sizes: ISO 21771:2007, clauses 4 and 5; from memory.
/// </summary>
public abstract record Gear : Toothing
{
    private protected Gear(GearData data)
    {
        ReferenceRadius = data.ReferenceDiameter / 2;
        BaseRadius = ReferenceRadius * Math.Cos(data.Rack.PressureAngle);
    }

    /// <inheritdoc/>
    public abstract override GearData Data { get; }

    /// <inheritdoc/>
    public override int Teeth => Data.Teeth;

    /// <summary>Radius of the reference circle, mm.</summary>
    public double ReferenceRadius { get; }

    /// <summary>Radius of the base circle, mm.</summary>
    public double BaseRadius { get; }

    /// <summary>Radius of the root circle, mm. With a full round, the deepest point of the gap.</summary>
    public abstract double RootRadius { get; }

    /// <summary>Radius of the form circle, mm: where the involute begins at the fillet.</summary>
    public abstract double FormRadius { get; }

    /// <summary>Radius of the tip circle as it is cut, mm: the pointed radius where the tip circle would lie beyond it.</summary>
    public abstract double TipRadius { get; }

    /// <summary>Radius of the tip circle asked for, mm.</summary>
    public abstract double NominalTipRadius { get; }

    /// <summary>Radius where the involute ends at the tip, mm: the tip circle's where nothing is taken off its corner.</summary>
    public double TipFormRadius => TipRadius;

    /// <inheritdoc/>
    public override bool IsPointed => TipRadius != NominalTipRadius;

    /// <inheritdoc/>
    public override double TipThickness => IsPointed ? 0 : 2 * TipRadius * HalfAngleAt(TipRadius);

    /// <summary>Half the angle of the tooth at a radius on the involute, rad.</summary>
    /// <param name="radius">Radius, mm, between the form and the tip circle.</param>
    public abstract double HalfAngleAt(double radius);
}
