using System.Text.Json;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>ezdxf, by tests/readers/read_ezdxf.py: structure, audit, layers, units, closed flags, sizes and areas.</summary>
public static class Ezdxf
{
    private const double Tolerance = 0.001;
    private const int Millimetres = 4;

    public static IReadOnlyList<string> Compare(string file, Drawing drawing, DxfVersion version)
    {
        // Debian's own Python, for which its package of ezdxf is installed.
        ReaderProcess.Output output = ReaderProcess.Run("/usr/bin/python3", Path.Combine(AppContext.BaseDirectory, "readers", "read_ezdxf.py"), file);
        if (output.ExitCode != 0)
        {
            throw new InvalidOperationException(output.Errors);
        }

        Reading reading = JsonSerializer.Deserialize<Reading>(output.Text, JsonSerializerOptions.Web)!;
        Differences differences = new();
        if (reading.Refused is not null)
        {
            differences.Add("refused: " + reading.Refused);
            return differences.Found;
        }

        bool isR12 = version == DxfVersion.R12;
        differences.Expect("edition", isR12 ? "AC1009" : "AC1015", reading.Version);
        differences.Expect("unit", isR12 ? 0 : Millimetres, reading.Units);
        differences.Expect("metric", isR12 ? 0 : 1, reading.Metric);
        ExpectNone(differences, "audit error", reading.Errors);
        ExpectNone(differences, "audit fix", reading.Fixes);
        ExpectNone(differences, "undeclared layer", reading.Undeclared);
        string path = isR12 ? "POLYLINE" : "LWPOLYLINE";
        differences.Expect(
            "types",
            string.Join(' ', drawing.Layers.SelectMany(layer => layer.Paths.Select(_ => path).Concat(layer.Circles.Select(_ => "CIRCLE")))),
            string.Join(' ', reading.Shapes.Select(shape => shape.Type)));
        differences.Expect(Shape.Of(drawing), [.. reading.Shapes.Select(shape => shape.Plain)], Tolerance);
        return differences.Found;
    }

    private static void ExpectNone(Differences differences, string what, string[] found)
    {
        foreach (string each in found)
        {
            differences.Add($"{what}: {each}");
        }
    }

    private sealed record Reading(
        string? Refused, string Version, int Units, int Metric, string[] Errors, string[] Fixes, string[] Undeclared, ReadShape[] Shapes);

    private sealed record ReadShape(string Type, string Layer, bool Closed, double[] Box, double Area)
    {
        public Shape Plain => new(Layer, Closed, new Extent(Box[0], Box[1], Box[2], Box[3]), Area);
    }
}
