using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.Intrinsics;

namespace GearBlanks.Meshing.Builds;

/// <summary>
/// A block of builds, drawn one after another from a stream of its own and worked out four side by side: whoever runs it, on whatever processor and in whatever
/// order, its counts are the same.
/// </summary>
internal sealed class BuildBlock
{
    private const int Lanes = 4;

    private readonly BuildRows _rows;
    private readonly ImmutableArray<MeshDraw> _meshes;
    private readonly Spread _spread;
    private readonly int _words;
    private readonly ulong[] _bits;
    private readonly Move[] _places;
    private readonly GearState[] _gears;
    private readonly Move[] _apart;
    private readonly Move[] _crossing;
    private readonly Vector256<double>[] _distances;
    private readonly MeshTally[] _tallies;
    private RandomStream _random;
    private Vector256<double> _frame;

    public BuildBlock(BuildRows rows, RandomStream random)
    {
        (_rows, _random, _meshes, _spread, _words) = (rows, random, rows.Train.Meshes, rows.Spread, rows.Words);
        _bits = new ulong[Lanes * rows.Words];
        _places = new Move[rows.Places.Length];
        _gears = new GearState[rows.ThickerMiddles.Length];
        (_apart, _crossing) = (new Move[_meshes.Length], new Move[_meshes.Length]);
        _distances = new Vector256<double>[rows.Distances.Length];
        _tallies = [.. _meshes.Select(_ => MeshTally.Empty)];
    }

    /// <summary>Draws and counts builds.</summary>
    public BuildTally Run(int builds)
    {
        (int binding, int rattling) = (0, 0);
        for (int i = 0; i < builds; i += Lanes)
        {
            _random.Fill(_bits);
            DrawPlaces();
            (Vector256<double> kelvin, Vector256<double> percent) = DrawQuantities();
            MoveGears();
            Grow(kelvin, percent);
            (uint binds, uint rattles) = Mesh(Math.Min(Lanes, builds - i));
            binding += BitOperations.PopCount(binds);
            rattling += BitOperations.PopCount(rattles);
        }

        return new BuildTally(builds, binding, rattling, [.. _tallies]);
    }

    // The first bits of a word give the direction, the last ones the length.
    private void DrawPlaces()
    {
        double[] halves = _rows.Places;
        (ulong[] bits, int words, Spread spread) = (_bits, _words, _spread);
        for (int i = 0; i < halves.Length; i++)
        {
            (ulong a, ulong b, ulong c, ulong d) = (bits[i], bits[i + words], bits[i + (2 * words)], bits[i + (3 * words)]);
            Vector256<double> length = (Vector256.Create(spread.At((uint)a), spread.At((uint)b), spread.At((uint)c), spread.At((uint)d)) + Vector256<double>.One) * halves[i];
            ((double x, double y), (double x2, double y2), (double x3, double y3), (double x4, double y4)) = (Directions.Of(a), Directions.Of(b), Directions.Of(c), Directions.Of(d));
            _places[i] = new Move(length * Vector256.Create(x, x2, x3, x4), length * Vector256.Create(y, y2, y3, y4));
        }
    }

    private (Vector256<double> Kelvin, Vector256<double> Percent) DrawQuantities()
    {
        int next = 2 * _places.Length;
        Vector256<double> kelvin = Draw(_rows.Train.Temperature, next++);
        Vector256<double> percent = Draw(_rows.Train.Humidity, next++);
        (int from, double[] halves) = (0, _rows.ThickerHalves);
        for (int i = 0; i < _gears.Length; i++)
        {
            var thicker = Vector256.Create(_rows.ThickerMiddles[i]);
            for (int to = _rows.ThickerEnds[i]; from < to; from++)
            {
                thicker += Draw(next++) * halves[from];
            }

            _gears[i].Thicker = thicker;
        }

        for (int i = 0; i < _distances.Length; i++)
        {
            _distances[i] = Draw(next++) * _rows.Distances[i];
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

    private void Grow(Vector256<double> kelvin, Vector256<double> percent)
    {
        for (int i = 0; i < _gears.Length; i++)
        {
            _gears[i].Growth = _rows.Growths[i].At(kelvin, percent);
        }

        _frame = _rows.Frame.At(kelvin, percent);
    }

    // A bit a build.
    private (uint Binds, uint Rattles) Mesh(int builds)
    {
        uint drawn = (1u << builds) - 1;
        (uint binds, uint rattles) = (0, 0);
        for (int i = 0; i < _tallies.Length; i++)
        {
            MeshDraw mesh = _meshes[i];
            Vector256<double> backlash = Backlash(mesh, i);
            uint tight = drawn & Vector256.LessThan(backlash, Vector256<double>.Zero).ExtractMostSignificantBits();
            uint loose = drawn & Vector256.GreaterThan(backlash, Vector256.Create(mesh.Rattles)).ExtractMostSignificantBits();
            binds |= tight;
            rattles |= loose;
            ref MeshTally tally = ref _tallies[i];
            tally.Count(BitOperations.PopCount(tight), BitOperations.PopCount(loose));
            for (int lane = 0; lane < builds; lane++)
            {
                tally.Add(backlash[lane]);
            }
        }

        return (binds, rattles);
    }

    private Vector256<double> Backlash(MeshDraw mesh, int index)
    {
        ref readonly GearState first = ref _gears[mesh.First];
        ref readonly GearState second = ref _gears[mesh.Second];
        Vector256<double> x = _apart[index].X + second.Moved.X - first.Moved.X;
        Vector256<double> y = _apart[index].Y + second.Moved.Y - first.Moved.Y;
        (double towardsX, double towardsY) = (mesh.Towards.X, mesh.Towards.Y);
        MeshBuild build = mesh.Build;
        Vector256<double> along = ((_frame + Vector256<double>.One) * build.Distance) + _distances[mesh.Distance] + (x * towardsX) + (y * towardsY);
        Vector256<double> across = (y * towardsX) - (x * towardsY);
        Vector256<double> distance = mesh.IsAcross ? Vector256.Sqrt((along * along) + (across * across)) : along;
        Vector256<double> crossing = Vector256.Abs((_crossing[index].Y * towardsX) - (_crossing[index].X * towardsY));
        return build.Equation.At(distance, first.Growth, second.Growth, first.Thicker + crossing, second.Thicker);
    }

    private Move Moved(int row, ref int from)
    {
        (Vector256<double> x, Vector256<double> y) = (Vector256<double>.Zero, Vector256<double>.Zero);
        Share[] shares = _rows.Shares;
        for (int to = _rows.ShareEnds[row]; from < to; from++)
        {
            ref readonly Move place = ref _places[shares[from].Place];
            x += place.X * shares[from].Arm;
            y += place.Y * shares[from].Arm;
        }

        return new Move(x, y);
    }

    private Vector256<double> Draw(Range range, int half) => Vector256.Create(range.Middle) + (Draw(half) * range.Half);

    // Each word serves twice.
    private Vector256<double> Draw(int half)
    {
        (int word, int shift) = (half >> 1, (half & 1) << 5);
        return Vector256.Create(
            _spread.At((uint)(_bits[word] >> shift)), _spread.At((uint)(_bits[word + _words] >> shift)),
            _spread.At((uint)(_bits[word + (2 * _words)] >> shift)), _spread.At((uint)(_bits[word + (3 * _words)] >> shift)));
    }

    private readonly record struct Move(Vector256<double> X, Vector256<double> Y);

    private struct GearState
    {
        public Vector256<double> Thicker;
        public Vector256<double> Growth;
        public Move Moved;
    }
}
