namespace GearBlanks.Files.Drawings;

/// <summary>An entity as the file has it: its type and its tags, and of a polyline its vertices.</summary>
internal sealed record DxfEntity(string Type, int Line, List<DxfGroup> Groups, List<DxfEntity> Parts)
{
    public string Layer => Text(8) ?? "0";

    /// <summary>True on a sheet beside the model.</summary>
    public bool IsOnPaper => Whole(67) == 1;

    public string? Text(int code)
    {
        foreach (DxfGroup group in Groups)
        {
            if (group.Code == code)
            {
                return group.Value;
            }
        }

        return null;
    }

    public double Number(int code, double otherwise)
    {
        foreach (DxfGroup group in Groups)
        {
            if (group.Code == code)
            {
                return group.Number;
            }
        }

        return otherwise;
    }

    /// <exception cref="DrawingException">The entity lacks it.</exception>
    public double Number(int code)
    {
        double value = Number(code, double.NaN);
        return double.IsNaN(value) ? throw new DrawingException(Line, Type, $"This entity lacks its number of group {code}", "the whole file: save it again") : value;
    }

    public int Whole(int code, int otherwise = 0) => (int)Math.Clamp(Number(code, otherwise), int.MinValue, int.MaxValue);

    public Curves.Point Point(int code) => new(Number(code), Number(code + 10));

    public List<double> All(int code)
    {
        List<double> values = [];
        foreach (DxfGroup group in Groups)
        {
            if (group.Code == code)
            {
                values.Add(group.Number);
            }
        }

        return values;
    }
}
