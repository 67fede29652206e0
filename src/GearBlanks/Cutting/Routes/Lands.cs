using GearBlanks.Curves;
using GearBlanks.Teeth;

namespace GearBlanks.Cutting.Routes;

/// <summary>The stretches of a written contour of teeth where a cut may begin and a tab may hold: tip lands and root lands, never a flank.</summary>
internal sealed class Lands
{
    // mm: points of one land agree better, and no flank begins or ends a micrometre off one.
    private const double Agreement = 1e-6;

    private readonly ArcPath _path;
    private readonly Func<Point, double> _height;
    private readonly int _outward;
    private readonly double _beam;
    private readonly double _root;

    /// <param name="path">A closed contour.</param>
    /// <param name="teeth">The teeth that it has.</param>
    /// <param name="beam">Radius of the beam or tool whose centre runs on it, mm; 0 where it is the part itself.</param>
    public Lands(ArcPath path, Toothing teeth, double beam)
    {
        // A ring's teeth are cut from inside: their tips are nearest to the centre, and corners that protrude turn the other way.
        (_path, _beam, _outward) = (path, beam, teeth is RingGear ? -1 : 1);
        _height = teeth is RackBar ? point => point.Y : point => _outward * point.Radius;
        _root = teeth is RackBar rack ? rack.RootHeight + beam : path.Vertices.Min(vertex => _height(vertex.Point));
    }

    /// <summary>Tip lands in the order of the contour, with the way round their corners; points where teeth are pointed.</summary>
    public List<Stretch> Tips => [.. At(_path.Vertices.Max(vertex => _height(vertex.Point))).Select(land => Widened(land))];

    /// <summary>Root lands, or the deepest points where there is no land; none where the tool does not reach a rack's root.</summary>
    public List<Stretch> Roots => At(_root);

    private List<Stretch> At(double height)
    {
        int count = _path.Vertices.Length;
        bool On(int i) => Math.Abs(_height(_path.Vertices[Stretch.Wrapped(i, count)].Point) - height) < Agreement;
        var stretches = new List<Stretch>();
        for (int i = 0; i < count; i++)
        {
            if (!On(i) || On(i - 1))
            {
                continue;
            }

            int last = i;
            while (last + 1 < i + count && On(last + 1))
            {
                last++;
            }

            stretches.Add(new Stretch(i, last));
        }

        return stretches;
    }

    // Round a tip's corner the beam touches nothing but the corner.
    private Stretch Widened(Stretch land)
    {
        (int from, int to) = (land.From, land.To);
        while (from < to && IsCorner(from - 1))
        {
            from--;
        }

        while (from < to && IsCorner(to))
        {
            to++;
        }

        return new Stretch(from, to);
    }

    private bool IsCorner(int index)
    {
        PathPiece piece = PathPiece.At(_path, Stretch.Wrapped(index, _path.Vertices.Length));
        return _beam > 0 && piece.Bulge * _outward > 0 && Math.Abs(piece.Radius - _beam) < Agreement;
    }
}

/// <summary>Pieces of a contour from one vertex to another, whose numbers may run on past both ends.</summary>
/// <param name="From">The vertex where it begins.</param>
/// <param name="To">The vertex where it ends; the same one for a point.</param>
internal readonly record struct Stretch(int From, int To)
{
    /// <summary>The vertex that a number which has run past an end stands for.</summary>
    public static int Wrapped(int vertex, int count) => ((vertex % count) + count) % count;
}
