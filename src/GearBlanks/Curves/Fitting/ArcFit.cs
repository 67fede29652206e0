namespace GearBlanks.Curves.Fitting;

/// <summary>Close to the fewest arcs for one exact curve within a tolerance; joints and ends lie on the curve.</summary>
internal static class ArcFit
{
    /// <summary>Bulge of a quarter turn, the most of one arc.</summary>
    public static readonly double QuarterTurnBulge = Math.Tan(Math.PI / 8);

    // So many arcs over the first count are tried before the surer way.
    private const int MostExtra = 4;

    /// <summary>A circular piece in equal arcs of at most a quarter turn.</summary>
    public static Piece[] Quarters(Arc arc)
    {
        int count = (int)Math.Ceiling(Math.Abs(arc.Sweep) / (Math.PI / 2 * (1 + 1e-12)));
        double bulge = Math.Tan(arc.Sweep / count / 4);
        var pieces = new Piece[count];
        Point from = arc.StartPoint;
        for (int i = 0; i < count; i++)
        {
            Point to = arc.PointAt(arc.Start + (arc.Sweep * (i + 1) / count));
            pieces[i] = new Piece(from, bulge, to);
            from = to;
        }

        return pieces;
    }

    /// <summary>Fits a curve that grows with its parameter.</summary>
    /// <param name="curve">An involute or a fillet.</param>
    /// <param name="startTurn">Angle from the curve's first tangent to that of the arcs, rad: 0 for the same, null where the arcs may choose.</param>
    /// <param name="endTurn">The same for the last tangent.</param>
    /// <param name="tolerance">Tolerance, mm.</param>
    /// <param name="density">Density of the curve's arcs at that tolerance.</param>
    /// <returns>The arcs; none where given turns other than 0 cannot be met.</returns>
    public static FittedCurve Fit(Curve curve, double? startTurn, double? endTurn, double tolerance, Density density)
    {
        var chain = new ArcChain(curve, startTurn, endTurn, tolerance);
        int first = FirstCount(density.Total, startTurn, endTurn);
        for (int count = first; count <= first + MostExtra; count++)
        {
            if (chain.TryFit(density, count) is { } pieces)
            {
                return new(pieces);
            }
        }

        return startTurn is null or 0 && endTurn is null or 0 ? new(Biarcs.Fit(curve, density, tolerance), true) : default;
    }

    // A given tangent costs a third of an arc.
    private static int FirstCount(double least, double? startTurn, double? endTurn)
    {
        double cost = (startTurn == 0 ? ArcChain.ExactTangentCost : 0) + (endTurn == 0 ? ArcChain.ExactTangentCost : 0);
        return Math.Max(1, (int)Math.Ceiling(least + cost));
    }
}
