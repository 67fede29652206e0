using GearBlanks.Curves;

namespace GearBlanks.Rolling;

/// <summary>
/// One side of a tooth, from the root to the tip: its outermost angle at every radius. Pieces whose radii overlap (a round tip, a notch) are looked at together.
/// </summary>
internal sealed class RollSide
{
    // Radii are looked up in at least so many bins, in more where there are more pieces.
    private const int LeastBins = 48;

    // rad: at a corner a side turns by more.
    private const double Sharp = 1e-3;

    // mm: pieces that overlap by less only meet.
    private const double Rounding = 1e-10;

    private readonly SidePiece[] _pieces;
    private readonly double[] _wraps;
    private readonly int _bins;
    private readonly int[] _binStart;
    private readonly int[] _binPieces;
    private readonly double _perBin;
    private readonly double _greatest;
    private readonly int _outside;
    private readonly double[] _joints;

    /// <summary>Makes a side.</summary>
    /// <param name="curves">Its monotone curves from the root to the tip, each travelled that way.</param>
    /// <param name="kind">Whose tooth it is.</param>
    /// <param name="isLeading">True for the counter-clockwise side of the tooth.</param>
    /// <param name="middle">Angle near which the tooth stands, rad.</param>
    public RollSide(Curve[] curves, RollKind kind, bool isLeading, double middle)
    {
        bool isRack = kind == RollKind.Rack;
        Curves = curves;
        _outside = isLeading ? 1 : -1;
        _pieces = [.. curves.Select(curve => isRack ? SidePiece.Straight(curve) : SidePiece.Round(curve))];
        _wraps = [.. _pieces.Select(piece => isRack ? 0 : -2 * Math.PI * Math.Round((piece.AngleAt((piece.Least + piece.Greatest) / 2) - middle) / (2 * Math.PI)))];
        Least = _pieces.Min(piece => piece.Least);
        _greatest = _pieces.Max(piece => piece.Greatest);
        (Root, Tip) = kind == RollKind.Ring ? (_greatest, Least) : (Least, _greatest);
        _bins = Math.Max(LeastBins, 2 * curves.Length);
        _binStart = new int[_bins + 1];
        _perBin = _bins / (_greatest - Least);
        _binPieces = Fill();
        FlankIndex = FindFlank();
        TipAngle = AngleAt(Tip);
        TipSlope = SlopeAt(Tip);
        _joints = [.. Enumerable.Range(0, curves.Length - 1).Where(i => IsCorner(i) || (IsPiece(curves[i]) && IsPiece(curves[i + 1]))).Select(i => isRack ? curves[i].EndPoint.Y : curves[i].EndPoint.Radius)
            .Where(radius => radius > Least && radius < _greatest).Order()];
    }

    /// <summary>Number of the curve that is the side's only involute about the gear's centre and stands alone at its radii; -1 where there is none.</summary>
    public int FlankIndex { get; }

    /// <summary>That involute.</summary>
    public InvolutePiece? Flank => FlankIndex < 0 ? null : (InvolutePiece)_pieces[FlankIndex];

    /// <summary>The curves, from the root to the tip, each travelled that way.</summary>
    public Curve[] Curves { get; }

    /// <summary>Radius of the root end, mm.</summary>
    public double Root { get; }

    /// <summary>Radius of the tip end, mm.</summary>
    public double Tip { get; }

    /// <summary>The least radius, mm.</summary>
    public double Least { get; }

    /// <summary>The angle at the tip end, rad.</summary>
    public double TipAngle { get; }

    /// <summary>Direction of growing radius at the tip end, as <see cref="SlopeAt"/>.</summary>
    public Vector TipSlope { get; }

    /// <summary>The outermost angle at a radius, rad; beyond the ends those of the ends.</summary>
    public double AngleAt(double radius)
    {
        double within = Math.Clamp(radius, Least, _greatest);
        int index = IndexAt(within);
        return AngleOf(index, within);
    }

    /// <summary>True for a point of the gear that lies in the gap beside this side, not in its tooth.</summary>
    public bool IsBeside(Point point)
    {
        double beside = point.Angle - AngleAt(point.Radius);
        return (beside - (2 * Math.PI * Math.Round(beside / (2 * Math.PI)))) * _outside >= 0;
    }

    /// <summary>Direction of growing radius there: its radial and its counter-clockwise part.</summary>
    public Vector SlopeAt(double radius)
    {
        double within = Math.Clamp(radius, Least, _greatest);
        SidePiece piece = _pieces[IndexAt(within)];
        return piece.SlopeAt(Math.Clamp(within, piece.Least, piece.Greatest));
    }

    /// <summary>The radii between two at which its curves join, in order, mm; of exact curves only where they join at a corner.</summary>
    public ReadOnlySpan<double> JointsBetween(double least, double greatest)
    {
        if (_joints.Length == 0 || greatest <= _joints[0] || least > _joints[^1])
        {
            return [];
        }

        (int from, int end) = (IndexOf(least), IndexOf(greatest));
        return _joints.AsSpan(from, Math.Max(0, end - from));

        int IndexOf(double radius) => Array.BinarySearch(_joints, radius) is var found && found < 0 ? ~found : found;
    }

    // Of a drawing: past a row of them one curve may have several contacts.
    private static bool IsPiece(Curve curve) => curve is Line or Arc;

    private bool IsCorner(int joint) => Math.Abs(Curves[joint].TangentAt(Curves[joint].End).Cross(Curves[joint + 1].TangentAt(Curves[joint + 1].Start))) > Sharp;

    private int FindFlank()
    {
        int[] found = [.. Enumerable.Range(0, _pieces.Length).Where(i => _pieces[i] is InvolutePiece)];
        return found.Length == 1 && _pieces.All(other => other == _pieces[found[0]] || other.Greatest <= _pieces[found[0]].Least + Rounding || other.Least >= _pieces[found[0]].Greatest - Rounding)
            ? found[0]
            : -1;
    }

    private double AngleOf(int index, double radius)
    {
        SidePiece piece = _pieces[index];
        return piece.AngleAt(Math.Clamp(radius, piece.Least, piece.Greatest)) + _wraps[index];
    }

    // The piece that holds a radius; of several the outermost there, of none (between two ends, by rounding) the nearest.
    private int IndexAt(double radius)
    {
        int bin = BinOf(radius);
        (int found, int near) = (-1, -1);
        double nearest = double.PositiveInfinity;
        for (int i = _binStart[bin]; i < _binStart[bin + 1]; i++)
        {
            int index = _binPieces[i];
            SidePiece piece = _pieces[index];
            double beyond = Math.Max(piece.Least - radius, radius - piece.Greatest);
            if (beyond <= 0)
            {
                found = found < 0 || (AngleOf(index, radius) - AngleOf(found, radius)) * _outside > 0 ? index : found;
            }
            else if (beyond < nearest)
            {
                (nearest, near) = (beyond, index);
            }
        }

        return found >= 0 ? found : near >= 0 ? near : Nearest(radius);
    }

    private int Nearest(double radius)
    {
        int best = 0;
        for (int i = 1; i < _pieces.Length; i++)
        {
            best = Beyond(_pieces[i], radius) < Beyond(_pieces[best], radius) ? i : best;
        }

        return best;
    }

    private static double Beyond(SidePiece piece, double radius) => Math.Max(piece.Least - radius, radius - piece.Greatest);

    private int BinOf(double radius) => Math.Clamp((int)((radius - Least) * _perBin), 0, _bins - 1);

    private int[] Fill()
    {
        (int From, int To)[] ranges = [.. _pieces.Select(piece => (BinOf(piece.Least), BinOf(piece.Greatest)))];
        foreach ((int from, int to) in ranges)
        {
            for (int bin = from; bin <= to; bin++)
            {
                _binStart[bin + 1]++;
            }
        }

        for (int bin = 0; bin < _bins; bin++)
        {
            _binStart[bin + 1] += _binStart[bin];
        }

        int[] all = new int[_binStart[_bins]];
        int[] next = [.. _binStart];
        for (int i = 0; i < ranges.Length; i++)
        {
            for (int bin = ranges[i].From; bin <= ranges[i].To; bin++)
            {
                all[next[bin]++] = i;
            }
        }

        return all;
    }
}
