using GearBlanks.Cutting;
using GearBlanks.Files.Tests.Readers;

namespace GearBlanks.Files.Tests;

public class ExtentTests
{
    [Fact]
    public void An_arc_that_passes_its_rightmost_point_decides_the_width() =>
        AssertSame(Samples.PlateOutside, Extent.Of(Samples.Plate.Layers[1]));

    [Fact]
    public void Each_shape_agrees_with_the_way_by_angles()
    {
        foreach (DrawingLayer layer in Samples.All.Values.SelectMany(drawing => drawing.Layers))
        {
            Assert.All(layer.Paths, path => AssertSame(Shape.Of(layer.Name, path).Box, Extent.Of(path)));
            Assert.All(layer.Circles, circle => AssertSame(Shape.Of(layer.Name, circle).Box, Extent.Of(layer with { Paths = [], Circles = [circle] })));
        }
    }

    private static void AssertSame(Extent wanted, Extent found)
    {
        Differences differences = new();
        differences.Expect("extent", wanted, found, 1e-12);
        Assert.Empty(differences.Found);
    }
}
