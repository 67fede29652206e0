namespace GearBlanks.Curves.Fitting;

/// <summary>Fits each curve once.</summary>
internal sealed class KnownFits(double tolerance, Pieces kind)
{
    private readonly Dictionary<(Curve Own, double? StartTurn, double? EndTurn), FittedCurve> _fits = new(8);
    private readonly Dictionary<Curve, Density> _densities = new(4);
    private readonly Dictionary<(Side Fillet, Side Flank), double> _turns = new(2);

    /// <summary>Tolerance, mm.</summary>
    public double Tolerance => tolerance;

    /// <summary>The pieces of a curve by itself.</summary>
    public FittedCurve Fit(Curve own, double? startTurn, double? endTurn)
    {
        if (!_fits.TryGetValue((own, startTurn, endTurn), out FittedCurve fitted))
        {
            fitted = (own, kind) switch
            {
                (Line, _) => new([new Piece(own.StartPoint, 0, own.EndPoint)]),
                (Arc arc, Pieces.Arcs) => new(ArcFit.Quarters(arc)),
                (_, Pieces.Arcs) => ArcFit.Fit(own, startTurn, endTurn, tolerance, DensityOf(own)),
                _ => new(ChordFit.Fit(own, tolerance)),
            };
            _fits.Add((own, startTurn, endTurn), fitted);
        }

        return fitted;
    }

    /// <summary>How many arcs a curve by itself needs at the least, and where.</summary>
    public Density DensityOf(Curve own)
    {
        if (!_densities.TryGetValue(own, out Density? density))
        {
            density = new Density(own, tolerance, Pieces.Arcs);
            _densities.Add(own, density);
        }

        return density;
    }

    /// <summary>The turn of the tangent, in the outline, that a fillet and a flank share.</summary>
    public double SharedTurn(Side fillet, Side flank)
    {
        // Found for the fillet by itself, so that mirror images agree to the last bit.
        (Side own, Side other) = (fillet with { IsMirrored = false }, flank with { IsMirrored = flank.IsMirrored != fillet.IsMirrored });
        if (!_turns.TryGetValue((own, other), out double turn))
        {
            turn = SharedTangent.Between(own, other, this);
            _turns.Add((own, other), turn);
        }

        return fillet.IsMirrored ? -turn : turn;
    }
}
