using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>The ends of the strokes of a layer, two by two. Stroke i begins at end 2 i and ends at end 2 i + 1.</summary>
internal sealed class ChainEnds
{
    private const int Free = -1;
    private const int Branched = -2;

    // Of a joint: a stroke that goes no farther than this may not close upon itself.
    private const double LeastLoop = 4;

    private readonly Stroke[] _strokes;
    private readonly int[] _mates;

    public ChainEnds(Stroke[] strokes)
    {
        _strokes = strokes;
        _mates = new int[2 * strokes.Length];
        Array.Fill(_mates, Free);
    }

    /// <summary>The end that an end is joined to; negative where there is none.</summary>
    public int MateOf(int end) => _mates[end];

    /// <summary>Joins every two free ends that lie within a joint of one another and of no third one.</summary>
    /// <returns>Places where a third one lies.</returns>
    public List<ChainBranch> Pair(double joint)
    {
        int[] free = [.. Enumerable.Range(0, _mates.Length).Where(end => _mates[end] == Free)];
        ILookup<(long, long), int> cells = free.ToLookup(end => Cell(PointOf(end), joint));
        List<int>[] near = [.. free.Select(end => Near(end, cells, joint))];
        List<ChainBranch> branches = [];
        for (int i = 0; i < free.Length; i++)
        {
            if (near[i].Count > 1)
            {
                _mates[free[i]] = Branched;
                branches.Add(new ChainBranch(PointOf(free[i]), _strokes[free[i] / 2].Line, _strokes[free[i] / 2].Layer));
            }
        }

        for (int i = 0; i < free.Length; i++)
        {
            if (near[i] is [var mate] && _mates[mate] != Branched)
            {
                _mates[free[i]] = mate;
            }
        }

        return branches;
    }

    /// <summary>The end at which the chain through a stroke begins, and whether it comes back to it.</summary>
    public (int Begin, bool IsClosed) BeginOf(int stroke)
    {
        int begin = 2 * stroke;
        while (_mates[begin] >= 0)
        {
            if (_mates[begin] / 2 == stroke)
            {
                return (2 * stroke, true);
            }

            begin = _mates[begin] ^ 1;
        }

        return (begin, false);
    }

    private List<int> Near(int end, ILookup<(long, long), int> cells, double joint)
    {
        Point point = PointOf(end);
        (long column, long row) = Cell(point, joint);
        List<int> near = [];
        for (long x = column - 1; x <= column + 1; x++)
        {
            for (long y = row - 1; y <= row + 1; y++)
            {
                near.AddRange(cells[(x, y)].Where(other => other != end && PointOf(other).DistanceTo(point) <= joint && (other != (end ^ 1) || IsLoop(end / 2, joint))));
            }
        }

        return near;
    }

    private bool IsLoop(int stroke, double joint) => _strokes[stroke].Vertices.Count > 2 && _strokes[stroke].Reach > LeastLoop * joint;

    private Point PointOf(int end) => end % 2 == 0 ? _strokes[end / 2].Start : _strokes[end / 2].End;

    private static (long, long) Cell(Point point, double joint) => ((long)Math.Floor(point.X / joint), (long)Math.Floor(point.Y / joint));
}
