namespace GearBlanks.Meshing.Builds;

/// <summary>A block of builds, drawn one after another from a stream of its own: whoever runs it, and in whatever order, its counts are the same.</summary>
internal sealed class BuildBlock
{
    private readonly TrainBuild _train;
    private readonly Spread _spread;
    private readonly double[] _placeX;
    private readonly double[] _placeY;
    private readonly double[] _gearX;
    private readonly double[] _gearY;
    private readonly double[] _thicker;
    private readonly double[] _distances;
    private readonly MeshTally[] _tallies;
    private RandomStream _random;
    private ulong _spare;
    private bool _hasSpare;

    public BuildBlock(TrainBuild train, Spread spread, RandomStream random)
    {
        (_train, _spread, _random) = (train, spread, random);
        (_placeX, _placeY) = (new double[train.Places.Length], new double[train.Places.Length]);
        (_gearX, _gearY, _thicker) = (new double[train.Gears.Length], new double[train.Gears.Length], new double[train.Gears.Length]);
        _distances = new double[train.Distances.Length];
        _tallies = [.. train.Meshes.Select(_ => MeshTally.Empty)];
    }

    /// <summary>Draws and counts builds.</summary>
    public BuildTally Run(int builds)
    {
        (int binding, int rattling) = (0, 0);
        for (int i = 0; i < builds; i++)
        {
            (bool binds, bool rattles) = Build();
            binding += binds ? 1 : 0;
            rattling += rattles ? 1 : 0;
        }

        return new BuildTally(builds, binding, rattling, [.. _tallies]);
    }

    private (bool Binds, bool Rattles) Build()
    {
        double kelvin = Draw(_train.Temperature);
        double percent = Draw(_train.Humidity);
        DrawPlaces();
        DrawGears();
        DrawDistances();
        (bool binds, bool rattles) = (false, false);
        for (int i = 0; i < _tallies.Length; i++)
        {
            double backlash = Backlash(_train.Meshes[i], kelvin, percent);
            bool isShort = backlash < 0;
            bool isLoose = backlash > _train.Meshes[i].Rattles;
            binds |= isShort;
            rattles |= isLoose;
            _tallies[i].Add(backlash, isShort, isLoose);
        }

        return (binds, rattles);
    }

    private void DrawPlaces()
    {
        for (int i = 0; i < _placeX.Length; i++)
        {
            double length = _train.Places[i] * (1 + _spread.At(Bits())) / 2;
            (double x, double y) = _random.Direction();
            _placeX[i] = length * x;
            _placeY[i] = length * y;
        }
    }

    private void DrawGears()
    {
        for (int i = 0; i < _gearX.Length; i++)
        {
            GearDraw gear = _train.Gears[i];
            double thicker = 0;
            foreach (Range range in gear.Thicker.AsSpan())
            {
                thicker += Draw(range);
            }

            _thicker[i] = thicker;
            (_gearX[i], _gearY[i]) = Moved(gear.Shares.AsSpan());
        }
    }

    private void DrawDistances()
    {
        for (int i = 0; i < _distances.Length; i++)
        {
            _distances[i] = _train.Distances[i] * _spread.At(Bits());
        }
    }

    private double Backlash(MeshDraw mesh, double kelvin, double percent)
    {
        (double x, double y) = Moved(mesh.Shares.AsSpan());
        x += _gearX[mesh.Second] - _gearX[mesh.First];
        y += _gearY[mesh.Second] - _gearY[mesh.First];
        MeshBuild build = mesh.Build;
        double along = (build.Distance * (1 + build.Frame.At(kelvin, percent))) + _distances[mesh.Distance] + (x * mesh.Towards.X) + (y * mesh.Towards.Y);
        double across = (y * mesh.Towards.X) - (x * mesh.Towards.Y);
        double distance = mesh.IsAcross ? Math.Sqrt((along * along) + (across * across)) : along;
        return build.Equation.At(
            distance, build.First.At(kelvin, percent), build.Second.At(kelvin, percent), _thicker[mesh.First] + Crossing(mesh), _thicker[mesh.Second]);
    }

    private double Crossing(MeshDraw mesh)
    {
        (double x, double y) = Moved(mesh.Leans.AsSpan());
        return Math.Abs((y * mesh.Towards.X) - (x * mesh.Towards.Y));
    }

    private (double X, double Y) Moved(ReadOnlySpan<Share> shares)
    {
        (double x, double y) = (0, 0);
        foreach (Share share in shares)
        {
            x += share.Arm * _placeX[share.Place];
            y += share.Arm * _placeY[share.Place];
        }

        return (x, y);
    }

    private double Draw(Range range) => range.Half == 0 ? range.Least : range.Middle + (range.Half * _spread.At(Bits()));

    // Each draw of the stream serves twice.
    private uint Bits()
    {
        if (_hasSpare)
        {
            _hasSpare = false;
            return (uint)(_spare >> 32);
        }

        _spare = _random.Next();
        _hasSpare = true;
        return (uint)_spare;
    }
}
