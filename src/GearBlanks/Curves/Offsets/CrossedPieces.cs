namespace GearBlanks.Curves.Offsets;

/// <summary>The raw pieces of one pattern with all their crossings, those with the pieces of neighbouring patterns included.</summary>
internal sealed class CrossedPieces
{
    private readonly int _side;
    private readonly List<Crossing>[] _crossings;

    /// <param name="pieces">The pieces of one pattern.</param>
    /// <param name="repeats">How often it stands around the origin; at least 3, or 1.</param>
    /// <param name="side">1 where the beam runs to the right of travel, -1 to the left.</param>
    public CrossedPieces(List<RawPiece> pieces, int repeats, int side)
    {
        Pieces = pieces;
        Repeats = repeats;
        _side = side;
        _crossings = [.. pieces.Select(_ => new List<Crossing>())];
        Cross();
        foreach (List<Crossing> crossings in _crossings)
        {
            crossings.Sort((a, b) => a.At.CompareTo(b.At));
        }
    }

    public List<RawPiece> Pieces { get; }

    public int Repeats { get; }

    /// <summary>The crossings of a piece, in order of travel.</summary>
    public IReadOnlyList<Crossing> On(int piece) => _crossings[piece];

    private void Cross()
    {
        Curve[] next = Repeats == 1 ? [] : [.. Pieces.Select(piece => piece.Curve.Moved(Motion.TurnStep(1, Repeats)))];
        Curve[] all = [.. Pieces.Select(piece => piece.Curve), .. next];
        Box[] boxes = [.. all.Select(curve => Span.Of(curve).Box)];
        var index = new BoxIndex(boxes);
        for (int i = 0; i < Pieces.Count; i++)
        {
            foreach (int j in index.Meeting(boxes[i]).Where(j => j > i && !IsSmoothlyJoined(i, j)))
            {
                foreach ((double first, double second) in Crossings.Of(all[i], all[j]))
                {
                    Add(i, j, all, first, second);
                }
            }
        }
    }

    // Two pieces that touch where one passes into the other, and together turn by less than half a turn, do not meet again.
    private bool IsSmoothlyJoined(int i, int j)
    {
        int count = Pieces.Count;
        bool follows = (j == i + 1 && Pieces[i].IsJoined) || (Repeats == 1 && i == 0 && j == count - 1 && Pieces[j].IsJoined);
        return follows && Math.Abs(Turn(Pieces[i].Curve)) + Math.Abs(Turn(Pieces[j % count].Curve)) < Math.PI;
    }

    private static double Turn(Curve curve) => curve.TurnBetween(curve.Start, curve.End);

    private void Add(int i, int j, Curve[] all, double first, double second)
    {
        int count = Pieces.Count;
        (double one, double other) = (Share(all[i], first), Share(all[j], second));
        if (IsTheirJoint(i, j % count, one, other))
        {
            return;
        }

        // Covered is what lies to the left of the other piece's travel, or to the right where the beam is on the left.
        bool isEntry = _side * all[j].TangentAt(second).Cross(all[i].TangentAt(first)) > 0;
        int shift = j / count;
        _crossings[i].Add(new Crossing(one, j % count, shift, other, isEntry));
        _crossings[j % count].Add(new Crossing(other, i, -shift, one, !isEntry));
    }

    private bool IsTheirJoint(int i, int j, double one, double other)
    {
        const double Near = 1e-7;
        bool iFirst = Pieces[i].IsJoined && (i + 1) % Pieces.Count == j && one > 1 - Near && other < Near;
        bool jFirst = Pieces[j].IsJoined && (j + 1) % Pieces.Count == i && other > 1 - Near && one < Near;
        return iFirst || jFirst;
    }

    private static double Share(Curve curve, double parameter) => (parameter - curve.Start) / (curve.End - curve.Start);
}
