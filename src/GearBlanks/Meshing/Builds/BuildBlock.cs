using System.Collections.Immutable;

namespace GearBlanks.Meshing.Builds;

/// <summary>A block of builds, drawn one after another from a stream of its own: whoever runs it, and in whatever order, its counts are the same.</summary>
internal sealed class BuildBlock
{
    private readonly BuildRows _rows;
    private readonly ImmutableArray<MeshDraw> _meshes;
    private readonly Spread _spread;
    private readonly ulong[] _bits;
    private readonly Move[] _places;
    private readonly GearState[] _gears;
    private readonly Move[] _apart;
    private readonly Move[] _crossing;
    private readonly double[] _distances;
    private readonly MeshTally[] _tallies;
    private RandomStream _random;
    private double _frame;

    public BuildBlock(BuildRows rows, RandomStream random)
    {
        (_rows, _random, _meshes, _spread) = (rows, random, rows.Train.Meshes, rows.Spread);
        _bits = new ulong[rows.Words];
        _places = new Move[rows.Places.Length];
        _gears = new GearState[rows.ThickerMiddles.Length];
        (_apart, _crossing) = (new Move[_meshes.Length], new Move[_meshes.Length]);
        _distances = new double[rows.Distances.Length];
        _tallies = [.. _meshes.Select(_ => MeshTally.Empty)];
    }

    /// <summary>Draws and counts builds.</summary>
    public BuildTally Run(int builds)
    {
        (int binding, int rattling) = (0, 0);
        for (int i = 0; i < builds; i++)
        {
            _random.Fill(_bits);
            DrawPlaces();
            (double kelvin, double percent) = DrawQuantities();
            MoveGears();
            Grow(kelvin, percent);
            (bool binds, bool rattles) = Mesh();
            binding += binds ? 1 : 0;
            rattling += rattles ? 1 : 0;
        }

        return new BuildTally(builds, binding, rattling, [.. _tallies]);
    }

    // The first bits of a word give the direction, the last ones the length.
    private void DrawPlaces()
    {
        double[] halves = _rows.Places;
        Spread spread = _spread;
        for (int i = 0; i < halves.Length; i++)
        {
            ulong bits = _bits[i];
            double length = halves[i] * (1 + spread.At((uint)bits));
            (double x, double y) = Directions.Of(bits);
            _places[i] = new Move(length * x, length * y);
        }
    }

    private (double Kelvin, double Percent) DrawQuantities()
    {
        int next = 2 * _places.Length;
        double kelvin = Draw(_rows.Train.Temperature, next++);
        double percent = Draw(_rows.Train.Humidity, next++);
        (int from, double[] halves, Spread spread) = (0, _rows.ThickerHalves, _spread);
        for (int i = 0; i < _gears.Length; i++)
        {
            double thicker = _rows.ThickerMiddles[i];
            for (int to = _rows.ThickerEnds[i]; from < to; from++)
            {
                thicker += halves[from] * spread.At(Half(next++));
            }

            _gears[i].Thicker = thicker;
        }

        for (int i = 0; i < _distances.Length; i++)
        {
            _distances[i] = _rows.Distances[i] * spread.At(Half(next++));
        }

        return (kelvin, percent);
    }

    private void MoveGears()
    {
        int from = 0;
        int row = 0;
        for (int i = 0; i < _gears.Length; i++)
        {
            _gears[i].Moved = Moved(row++, ref from);
        }

        for (int i = 0; i < _apart.Length; i++)
        {
            _apart[i] = Moved(row++, ref from);
        }

        for (int i = 0; i < _crossing.Length; i++)
        {
            _crossing[i] = Moved(row++, ref from);
        }
    }

    private void Grow(double kelvin, double percent)
    {
        for (int i = 0; i < _gears.Length; i++)
        {
            _gears[i].Growth = _rows.Growths[i].At(kelvin, percent);
        }

        _frame = _rows.Frame.At(kelvin, percent);
    }

    private (bool Binds, bool Rattles) Mesh()
    {
        (bool binds, bool rattles) = (false, false);
        for (int i = 0; i < _tallies.Length; i++)
        {
            MeshDraw mesh = _meshes[i];
            double backlash = Backlash(mesh, i);
            bool isShort = backlash < 0;
            bool isLoose = backlash > mesh.Rattles;
            binds |= isShort;
            rattles |= isLoose;
            _tallies[i].Add(backlash, isShort, isLoose);
        }

        return (binds, rattles);
    }

    private double Backlash(MeshDraw mesh, int index)
    {
        ref readonly GearState first = ref _gears[mesh.First];
        ref readonly GearState second = ref _gears[mesh.Second];
        double x = _apart[index].X + second.Moved.X - first.Moved.X;
        double y = _apart[index].Y + second.Moved.Y - first.Moved.Y;
        (double towardsX, double towardsY) = (mesh.Towards.X, mesh.Towards.Y);
        MeshBuild build = mesh.Build;
        double along = (build.Distance * (1 + _frame)) + _distances[mesh.Distance] + (x * towardsX) + (y * towardsY);
        double across = (y * towardsX) - (x * towardsY);
        double distance = mesh.IsAcross ? Math.Sqrt((along * along) + (across * across)) : along;
        double crossing = Math.Abs((_crossing[index].Y * towardsX) - (_crossing[index].X * towardsY));
        return build.Equation.At(
            distance, first.Growth, second.Growth, first.Thicker + crossing, second.Thicker);
    }

    private Move Moved(int row, ref int from)
    {
        (double x, double y) = (0, 0);
        Share[] shares = _rows.Shares;
        for (int to = _rows.ShareEnds[row]; from < to; from++)
        {
            Move place = _places[shares[from].Place];
            x += shares[from].Arm * place.X;
            y += shares[from].Arm * place.Y;
        }

        return new Move(x, y);
    }

    private double Draw(Range range, int half) => range.Middle + (range.Half * _spread.At(Half(half)));

    // Each word serves twice.
    private uint Half(int index) => (uint)(_bits[index >> 1] >> ((index & 1) << 5));

    private readonly record struct Move(double X, double Y);

    private struct GearState
    {
        public double Thicker;
        public double Growth;
        public Move Moved;
    }
}
