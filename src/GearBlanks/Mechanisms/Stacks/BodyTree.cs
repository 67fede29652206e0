using System.Collections.Immutable;

namespace GearBlanks.Mechanisms.Stacks;

/// <summary>Finds which bodies come near one another: their boxes halved again and again across the direction in which they spread most.</summary>
internal sealed class BodyTree
{
    private const int FewestToSplit = 8;

    private readonly Box[] _boxes;
    private readonly int[] _order;
    private readonly double[] _middles;
    private readonly List<Node> _nodes = [];
    private readonly Stack<int> _open = [];

    /// <param name="bodies">The bodies.</param>
    /// <param name="aside">Room beside a body that counts as near, mm.</param>
    /// <param name="above">Room above and below a body that counts as near, mm.</param>
    public BodyTree(ImmutableArray<Body> bodies, double aside, double above)
    {
        _boxes = [.. bodies.Select(body => Box.Of(body, aside / 2, above / 2))];
        _order = [.. Enumerable.Range(0, bodies.Length)];
        _middles = new double[bodies.Length];
        if (_order.Length > 0)
        {
            Build(0, _order.Length);
        }
    }

    /// <summary>Every pair whose boxes meet, each once, in the order of the bodies.</summary>
    public IEnumerable<(int First, int Second)> Pairs()
    {
        var near = new List<int>();
        for (int i = 0; i < _boxes.Length; i++)
        {
            near.Clear();
            Find(i, near);
            near.Sort();
            foreach (int other in near)
            {
                yield return (i, other);
            }
        }
    }

    private int Build(int from, int to)
    {
        Box box = _boxes[_order[from]];
        for (int i = from + 1; i < to; i++)
        {
            box = box.With(_boxes[_order[i]]);
        }

        int index = _nodes.Count;
        _nodes.Add(new Node(box, from, to, -1));
        if (to - from >= FewestToSplit)
        {
            int direction = box.Widest;
            for (int i = from; i < to; i++)
            {
                _middles[i] = _boxes[_order[i]].Middle(direction);
            }

            Array.Sort(_middles, _order, from, to - from);
            int middle = (from + to) / 2;
            Build(from, middle);
            _nodes[index] = _nodes[index] with { Upper = Build(middle, to) };
        }

        return index;
    }

    private void Find(int body, List<int> near)
    {
        _open.Push(0);
        while (_open.TryPop(out int at))
        {
            Node node = _nodes[at];
            if (!node.Box.Meets(_boxes[body]))
            {
                continue;
            }

            if (node.Upper >= 0)
            {
                // The lower half stands right behind its parent.
                _open.Push(at + 1);
                _open.Push(node.Upper);
                continue;
            }

            foreach (int other in _order.AsSpan(node.From, node.To - node.From))
            {
                if (other > body && _boxes[other].Meets(_boxes[body]))
                {
                    near.Add(other);
                }
            }
        }
    }

    private readonly record struct Node(Box Box, int From, int To, int Upper);

    private readonly record struct Box(double Left, double Right, double Front, double Back, double Low, double High)
    {
        public int Widest => High - Low > Math.Max(Right - Left, Back - Front) ? 2 : Back - Front > Right - Left ? 1 : 0;

        public static Box Of(Body body, double aside, double above) => new(
            body.Shape.Left - aside, body.Shape.Right + aside, body.Shape.Front - aside, body.Shape.Back + aside,
            body.Heights.Least - above, body.Heights.Greatest + above);

        public double Middle(int direction) => direction switch
        {
            0 => Left + Right,
            1 => Front + Back,
            _ => Low + High,
        };

        public Box With(Box other) => new(
            Math.Min(Left, other.Left), Math.Max(Right, other.Right), Math.Min(Front, other.Front), Math.Max(Back, other.Back),
            Math.Min(Low, other.Low), Math.Max(High, other.High));

        public bool Meets(Box other) =>
            Left <= other.Right && other.Left <= Right && Front <= other.Back && other.Front <= Back && Low <= other.High && other.Low <= High;
    }
}
