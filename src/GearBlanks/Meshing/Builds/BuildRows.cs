namespace GearBlanks.Meshing.Builds;

/// <summary>A train laid out in rows, so that drawing a build is a walk along them.</summary>
internal sealed class BuildRows
{
    public BuildRows(TrainBuild train, Spread spread)
    {
        Train = train;
        Spread = spread;
        Frame = train.Frame;
        Growths = [.. train.Gears.Select(gear => gear.Growth)];
        Places = [.. train.Places.Select(length => length / 2)];
        Distances = [.. train.Distances];
        ThickerMiddles = [.. train.Gears.Select(gear => gear.Thicker.Sum(range => range.Middle))];
        (ThickerEnds, ThickerHalves) = Row(train.Gears.Select(gear => gear.Thicker.Select(range => range.Half)));
        (ShareEnds, Shares) = Row<Share>([.. train.Gears.Select(gear => gear.Shares), .. train.Meshes.Select(mesh => mesh.Shares), .. train.Meshes.Select(mesh => mesh.Leans)]);
        Words = Places.Length + ((ThickerHalves.Length + Distances.Length + 3) / 2);
    }

    public TrainBuild Train { get; }

    public Spread Spread { get; }

    /// <summary>Growth of what holds the axes.</summary>
    public Growth Frame { get; }

    /// <summary>Growth of each gear.</summary>
    public Growth[] Growths { get; }

    /// <summary>Half the greatest length of each displacement.</summary>
    public double[] Places { get; }

    /// <summary>Half range of each centre distance.</summary>
    public double[] Distances { get; }

    /// <summary>How much thicker each gear's teeth are in the middle of everything.</summary>
    public double[] ThickerMiddles { get; }

    /// <summary>Half ranges of what makes teeth thicker, gear after gear.</summary>
    public double[] ThickerHalves { get; }

    /// <summary>Where each gear's half ranges end.</summary>
    public int[] ThickerEnds { get; }

    /// <summary>Shares of each gear, then what moves each mesh apart, then what crosses each mesh.</summary>
    public Share[] Shares { get; }

    /// <summary>Where each one's shares end.</summary>
    public int[] ShareEnds { get; }

    /// <summary>Random words a build takes: one a displacement, half a one for every other quantity, of which the climate has two.</summary>
    public int Words { get; }

    private static (int[] Ends, T[] Items) Row<T>(IEnumerable<IEnumerable<T>> lists)
    {
        var items = new List<T>();
        var ends = new List<int>();
        foreach (IEnumerable<T> list in lists)
        {
            items.AddRange(list);
            ends.Add(items.Count);
        }

        return ([.. ends], [.. items]);
    }
}
