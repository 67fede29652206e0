using System.Globalization;
using System.Text.RegularExpressions;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>GDAL's ogrinfo: which layers have shapes, how many, and what each layer covers.</summary>
public static partial class Gdal
{
    private const double Tolerance = 0.001;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing, DxfVersion version)
    {
        Differences differences = new();
        ReaderProcess.Output layers = Run(file, "-q", "-sql", "SELECT DISTINCT Layer FROM entities");
        if (layers.ExitCode != 0)
        {
            differences.Add("refused: " + layers.Errors);
            return differences.Found;
        }

        ILookup<string, Shape> shapes = Shape.Of(drawing).ToLookup(shape => shape.Layer);
        differences.Expect("layers with shapes", Sorted(shapes.Select(group => group.Key)), Sorted(LayerLine().Matches(layers.Text).Select(m => m.Groups[1].Value)));
        foreach (IGrouping<string, Shape> layer in shapes)
        {
            ReaderProcess.Output output = Run(file, "-al", "-so", "-where", $"Layer='{layer.Key}'");
            differences.Expect($"shapes on {layer.Key}", layer.Count(), int.Parse(CountLine().Match(output.Text).Groups[1].Value, CultureInfo.InvariantCulture));
            if (ExtentLine().Match(output.Text) is { Success: true } found)
            {
                double[] side = [.. Enumerable.Range(1, 4).Select(i => double.Parse(found.Groups[i].Value, CultureInfo.InvariantCulture))];
                differences.Expect(layer.Key, layer.Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box)), new Extent(side[0], side[1], side[2], side[3]), Tolerance);
            }
            else
            {
                differences.Add($"{layer.Key}: no extent");
            }
        }

        return differences.Found;
    }

    // Left to itself GDAL puts a chord every 4 degrees.
    private static ReaderProcess.Output Run(string file, params string[] question) =>
        ReaderProcess.Run("ogrinfo", ["-ro", "--config", "OGR_ARC_STEPSIZE", "0.05", .. question, file]);

    private static string Sorted(IEnumerable<string> names) => string.Join(' ', names.Order(StringComparer.Ordinal));

    [GeneratedRegex(@"^\s*Layer \(String\) = (\S+)", RegexOptions.Multiline)]
    private static partial Regex LayerLine();

    [GeneratedRegex(@"^Feature Count: (\d+)", RegexOptions.Multiline)]
    private static partial Regex CountLine();

    [GeneratedRegex(@"^Extent: \((\S+), (\S+)\) - \((\S+), (\S+)\)", RegexOptions.Multiline)]
    private static partial Regex ExtentLine();
}
