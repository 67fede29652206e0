namespace GearBlanks.Curves.Offsets;

/// <summary>Finds which of many boxes a box may meet, by a grid.</summary>
internal sealed class BoxIndex
{
    private readonly double _cell;
    private readonly Box[] _boxes;
    private readonly Dictionary<(int, int), List<int>> _cells = [];

    public BoxIndex(IEnumerable<Box> boxes)
    {
        _boxes = [.. boxes];
        _cell = Math.Max(1e-6, _boxes.Select(box => Math.Max(box.Right - box.Left, box.Top - box.Bottom)).DefaultIfEmpty(1).Average());
        for (int i = 0; i < _boxes.Length; i++)
        {
            foreach ((int, int) cell in CellsOf(_boxes[i]))
            {
                if (!_cells.TryGetValue(cell, out List<int>? inside))
                {
                    _cells[cell] = inside = [];
                }

                inside.Add(i);
            }
        }
    }

    /// <summary>The boxes that meet a box, in order.</summary>
    public IEnumerable<int> Meeting(Box box) => CellsOf(box)
        .SelectMany(cell => _cells.GetValueOrDefault(cell) ?? [])
        .Distinct()
        .Where(i => _boxes[i].Meets(box))
        .Order();

    private IEnumerable<(int X, int Y)> CellsOf(Box box)
    {
        (int right, int top) = (Index(box.Right), Index(box.Top));
        for (int x = Index(box.Left); x <= right; x++)
        {
            for (int y = Index(box.Bottom); y <= top; y++)
            {
                yield return (x, y);
            }
        }
    }

    private int Index(double coordinate) => (int)Math.Floor(coordinate / _cell);
}
