using System.Collections.Immutable;
using GearBlanks.Curves;

namespace GearBlanks.Cutting.Routes;

/// <summary>A closed contour by the length along it, mm from its first vertex, round and round.</summary>
internal sealed class Loop
{
    private readonly PathPiece[] _pieces;
    private readonly double[] _starts;
    private readonly Lazy<Contour> _contour;

    /// <param name="path">A closed path.</param>
    public Loop(ArcPath path)
    {
        _contour = new Lazy<Contour>(() => Contour.Of(path));
        _pieces = [.. Enumerable.Range(0, PathPiece.CountIn(path)).Select(i => PathPiece.At(path, i))];
        _starts = new double[_pieces.Length];
        foreach ((int i, PathPiece piece) in _pieces.Index())
        {
            _starts[i] = Length;
            Length += piece.Length;
        }
    }

    /// <summary>Its whole length, mm.</summary>
    public double Length { get; }

    /// <summary>The length at which a stretch begins and how long it is, mm.</summary>
    public (double Start, double Length) Of(Stretch stretch)
    {
        int Index(int vertex) => Stretch.Wrapped(vertex, _pieces.Length);
        return (_starts[Index(stretch.From)], Enumerable.Range(stretch.From, stretch.To - stretch.From).Sum(i => _pieces[Index(i)].Length));
    }

    /// <summary>Its pieces in order, each with the length at which it begins, mm.</summary>
    public IEnumerable<(PathPiece Piece, double Start)> Pieces => _pieces.Zip(_starts);

    /// <summary>The point at a length, mm, of any sign.</summary>
    public Point PointAt(double length)
    {
        double at = length - (Length * Math.Floor(length / Length));
        int i = Array.FindLastIndex(_starts, start => start <= at);
        return _pieces[i].PointAt(Math.Clamp((at - _starts[i]) / _pieces[i].Length, 0, 1));
    }

    /// <summary>True where the contour goes round a point that is not on it.</summary>
    public bool Surrounds(Point point) => _contour.Value.Contains(point);

    /// <summary>The way from one length to a greater one, at most once round; open, its last vertex the end.</summary>
    public ArcPath Between(double from, double to)
    {
        double start = from - (Length * Math.Floor(from / Length));
        double end = start + Math.Min(to - from, Length);
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        int i = Array.FindLastIndex(_starts, at => at <= start);
        Point last = default;
        for (double round = 0; ; i++)
        {
            if (i == _pieces.Length)
            {
                (i, round) = (0, round + Length);
            }

            double at = _starts[i] + round;
            double length = _pieces[i].Length;
            (double a, double b) = (Math.Max(0, (start - at) / length), Math.Min(1, (end - at) / length));

            // A piece that would have no length is left out, so that neighbours stay exactly where they were.
            if ((b - a) * length > ShortestPiece)
            {
                PathPiece part = _pieces[i].Part(a, b);
                vertices.Add(new PathVertex(part.From, part.Bulge));
                last = part.To;
            }

            if (at + length >= end - ShortestPiece)
            {
                break;
            }
        }

        vertices.Add(new PathVertex(last, 0));
        return new ArcPath(vertices.ToImmutable(), false);
    }

    // mm: what files could not tell from nothing.
    private const double ShortestPiece = 2e-6;
}
