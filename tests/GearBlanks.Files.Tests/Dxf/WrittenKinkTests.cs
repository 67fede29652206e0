using System.Globalization;
using System.Text;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Files.Dxf;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Readers;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Tests.Dxf;

/// <summary>Arcs that meet without a kink in memory still do with the digits of a file.</summary>
public sealed class WrittenKinkTests
{
    private const double MostWritten = 0.01 * Math.PI / 180;
    private const double MostInMemory = 1e-6;

    [Fact]
    public void Real_gears_have_no_kink_as_written()
    {
        foreach (Drawing drawing in RealGears.All.Values.Where(drawing => drawing.Layers.All(layer => !layer.IsRouted)))
        {
            Check(drawing.Title, [.. drawing.Layers.Single(layer => layer.Operation == Operation.CutOutside).Paths]);
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(5)]
    public void Gears_of_all_counts_and_shifts_have_no_kink_as_written(double module)
    {
        BasicRack rack = ProfileFinder.BuiltIn.Rack(DefaultNames.Rack, new Place("tests", 0, 0)).Value!;
        foreach (int teeth in (int[])[6, 8, 12, 17, 25, 40, 80, 200, 1000])
        {
            foreach (double shift in (double[])[-0.3, 0, 0.4])
            {
                var data = new GearData(teeth, module, rack, shift);
                try
                {
                    Check(data.ToString(), [OutlineFit.Fit(ExternalGear.Create(data).Outline(), 0.001)]);
                }
                catch (GearGeometryException)
                {
                    // Not every shift makes a gear of few teeth.
                }
            }
        }
    }

    private static void Check(string name, ArcPath[] paths)
    {
        var drawing = new Drawing("kinks", [new DrawingLayer("outside", Operation.CutOutside, [.. paths], [])]);
        (Point Point, double Bulge)[] written = [.. Read(DxfWriter.Write(drawing, DxfVersion.R2000))];
        (Point Point, double Bulge)[] made = [.. paths.SelectMany(path => path.Vertices).Select(vertex => (vertex.Point, vertex.Bulge))];
        Assert.Equal(made.Length, written.Length);
        int first = 0;
        int smooth = 0;
        foreach (ArcPath path in paths)
        {
            int count = path.Vertices.Length;
            for (int i = 0; i < count; i++)
            {
                (int before, int at, int after) = (first + ((i + count - 1) % count), first + i, first + ((i + 1) % count));
                if (Kink(made, before, at, after) < MostInMemory)
                {
                    double kink = Kink(written, before, at, after);
                    Assert.True(kink <= MostWritten, $"{name}: a kink of {kink * 180 / Math.PI:0.0000} degrees at {made[at].Point}");
                    smooth++;
                }
            }

            first += count;
        }

        Assert.True(smooth > made.Length / 2, $"{name}: only {smooth} of {made.Length} joints are smooth");
    }

    private static double Kink((Point Point, double Bulge)[] path, int before, int at, int after)
    {
        double arriving = (path[at].Point - path[before].Point).Angle + (2 * Math.Atan(path[before].Bulge));
        double leaving = (path[after].Point - path[at].Point).Angle - (2 * Math.Atan(path[at].Bulge));
        return Math.Abs(Math.IEEERemainder(leaving - arriving, 2 * Math.PI));
    }

    // Group codes 10, 20 and 42 of polylines: this reader looks at nothing else.
    private static IEnumerable<(Point Point, double Bulge)> Read(byte[] file)
    {
        string[] lines = Encoding.ASCII.GetString(file).Split("\r\n");
        (double X, double Y, double Bulge, bool IsOpen) vertex = default;
        bool isPolyline = false;
        for (int i = 0; i + 1 < lines.Length; i += 2)
        {
            switch (lines[i].Trim())
            {
                case "0":
                    if (vertex.IsOpen)
                    {
                        yield return (new Point(vertex.X, vertex.Y), vertex.Bulge);
                    }

                    (vertex, isPolyline) = (default, lines[i + 1] == "LWPOLYLINE");
                    break;
                case "10" when isPolyline:
                    if (vertex.IsOpen)
                    {
                        yield return (new Point(vertex.X, vertex.Y), vertex.Bulge);
                    }

                    vertex = (Number(lines[i + 1]), 0, 0, true);
                    break;
                case "20" when isPolyline:
                    vertex.Y = Number(lines[i + 1]);
                    break;
                case "42" when isPolyline:
                    vertex.Bulge = Number(lines[i + 1]);
                    break;
            }
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
