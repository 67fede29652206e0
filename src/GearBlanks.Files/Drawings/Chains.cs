using GearBlanks.Curves;

namespace GearBlanks.Files.Drawings;

/// <summary>Strokes put together end to end.</summary>
/// <param name="Closed">Chains that close; the first vertex is not repeated.</param>
/// <param name="Open">Chains that stay open.</param>
/// <param name="Branches">Where more than two ends meet.</param>
internal sealed record Chains(List<Stroke> Closed, List<Stroke> Open, List<ChainBranch> Branches)
{
    // mm: ends that lie nearer are meant to be one. Drawings are exact to some micrometres at worst.
    public const double Joint = 0.005;

    // Pieces may be shorter than the widest joint: what meets exactly is joined first.
    private static readonly double[] Joints = [1e-6, 1e-5, 1e-4, 1e-3, Joint];

    /// <summary>Puts strokes together, layer by layer.</summary>
    public static Chains Of(IEnumerable<Stroke> strokes)
    {
        var chains = new Chains([], [], []);
        List<Stroke> open = [];
        foreach (Stroke stroke in strokes)
        {
            (stroke.IsClosed ? chains.Closed : open).Add(stroke.IsClosed ? Whole(stroke) : stroke);
        }

        foreach (IGrouping<string, Stroke> layer in open.GroupBy(stroke => stroke.Layer))
        {
            chains.Join([.. layer]);
        }

        return chains;
    }

    // The last vertex is the first one again: it goes, and where the two differ a little the first one holds.
    private static Stroke Whole(Stroke stroke)
    {
        if (stroke.Vertices.Count > 2 && stroke.Start.DistanceTo(stroke.End) <= Joint)
        {
            stroke.Vertices.RemoveAt(stroke.Vertices.Count - 1);
        }

        return stroke with { IsClosed = true };
    }

    private void Join(Stroke[] strokes)
    {
        var ends = new ChainEnds(strokes);
        foreach (double joint in Joints)
        {
            Branches.AddRange(ends.Pair(joint));
        }

        bool[] used = new bool[strokes.Length];
        for (int i = 0; i < strokes.Length; i++)
        {
            if (used[i])
            {
                continue;
            }

            (int begin, bool isClosed) = ends.BeginOf(i);
            List<PathVertex> vertices = Follow(strokes, ends, begin, used);
            var chain = strokes[i] with { Vertices = vertices, IsClosed = isClosed };
            (isClosed ? Closed : Open).Add(chain);
            if (isClosed)
            {
                vertices.RemoveAt(vertices.Count - 1);
            }
        }
    }

    private static List<PathVertex> Follow(Stroke[] strokes, ChainEnds ends, int begin, bool[] used)
    {
        List<PathVertex> vertices = [];
        for (int end = begin; end >= 0 && !used[end / 2]; end = ends.MateOf(end ^ 1))
        {
            Stroke stroke = strokes[end / 2];
            used[end / 2] = true;
            if (vertices.Count > 0)
            {
                vertices.RemoveAt(vertices.Count - 1);
            }

            vertices.AddRange(end % 2 == 0 ? stroke.Vertices : Turned(stroke.Vertices));
        }

        return vertices;
    }

    private static List<PathVertex> Turned(List<PathVertex> vertices)
    {
        List<PathVertex> turned = [];
        for (int i = vertices.Count - 1; i >= 0; i--)
        {
            turned.Add(new PathVertex(vertices[i].Point, i > 0 ? -vertices[i - 1].Bulge : 0));
        }

        return turned;
    }
}

/// <summary>A place where more than two ends meet.</summary>
internal readonly record struct ChainBranch(Point At, int Line, string Layer);
