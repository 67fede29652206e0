using System.Text.Json;
using GearBlanks.Curves;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;

namespace GearBlanks.Files.Tests.Readers;

/// <summary>dxflib, by tests/readers/read_dxflib.cpp, which is compiled once a run: layers, units, closed flags, every vertex and bulge.</summary>
public static class Dxflib
{
    private const double Tolerance = 0.001;
    private const int Millimetres = 4;

    // The files have nine decimals and twelve for bulges; nothing may be lost on the way.
    private const double VertexTolerance = 1e-9;
    private const double BulgeTolerance = 1e-12;

    private static readonly Lazy<string> Program = new(Compile);

    public static IReadOnlyList<string> Compare(string file, Drawing drawing, DxfVersion version)
    {
        ReaderProcess.Output output = ReaderProcess.Run(Program.Value, file);
        Differences differences = new();
        if (output.ExitCode != 0)
        {
            differences.Add("refused: " + output.Errors);
            return differences.Found;
        }

        Reading reading = JsonSerializer.Deserialize<Reading>(output.Text, JsonSerializerOptions.Web)!;
        bool isR12 = version == DxfVersion.R12;
        differences.Expect("edition", isR12 ? "AC1009" : "AC1015", reading.Variables["$ACADVER"].GetString());
        differences.Expect("unit", isR12 ? 0 : Millimetres, reading.Variables.TryGetValue("$INSUNITS", out JsonElement unit) ? unit.GetInt32() : 0);
        differences.Expect("layers", string.Join(' ', drawing.Layers.Select(layer => layer.Name).Prepend("0")), string.Join(' ', reading.Layers));
        differences.Expect(Shape.Of(drawing), [.. reading.Shapes.Select(shape => shape.Plain)], Tolerance);
        ExpectVertices(differences, drawing, reading);
        return differences.Found;
    }

    private static void ExpectVertices(Differences differences, Drawing drawing, Reading reading)
    {
        PathVertex[] drawn = [.. drawing.Layers.SelectMany(layer => layer.Paths).SelectMany(path => path.Vertices)];
        PathVertex[] read = [.. reading.Shapes.Where(shape => shape.Type == "path").SelectMany(shape => shape.Path.Vertices)];
        differences.Expect("number of vertices", drawn.Length, read.Length);
        foreach ((PathVertex a, PathVertex b) in drawn.Zip(read))
        {
            differences.Expect("vertex x", a.Point.X, b.Point.X, VertexTolerance);
            differences.Expect("vertex y", a.Point.Y, b.Point.Y, VertexTolerance);
            differences.Expect("bulge", a.Bulge, b.Bulge, BulgeTolerance);
        }
    }

    private static string Compile()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "readers");
        string program = Path.Combine(folder, "read_dxflib");
        ReaderProcess.Output output = ReaderProcess.Run("g++", "-std=c++17", "-O1", "-Wall", "-o", program, program + ".cpp", "-ldxflib");
        return output.ExitCode == 0 ? program : throw new InvalidOperationException("read_dxflib.cpp cannot be compiled: " + output.Errors);
    }

    private sealed record Reading(Dictionary<string, JsonElement> Variables, string[] Layers, ReadShape[] Shapes);

    private sealed record ReadShape(string Type, string Layer, bool Closed, double[][] Vertices)
    {
        public Shape Plain => Type == "circle"
            ? Shape.Of(Layer, new Circle(new Point(Vertices[0][0], Vertices[0][1]), Vertices[0][2]))
            : Shape.Of(Layer, Path);

        public ArcPath Path => new([.. Vertices.Select(v => new PathVertex(new Point(v[0], v[1]), v[2]))], Closed);
    }
}
