using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Curves.Fitting;
using GearBlanks.Cutting;
using GearBlanks.Files.Png;
using GearBlanks.Files.Profiles;
using GearBlanks.Files.Tests.Readers;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Files.Tests.Png;

/// <summary>Pictures, read back by GDAL: ink lies where the exact shapes are and nowhere else.</summary>
public class PngWriterTests
{
    private static readonly Place Here = new("tests", 0, 0);

    public static TheoryData<int, double, double> Gears => new() { { 24, 0.8, 0.3 }, { 8, 1, 0 }, { 87, 0.8, -0.3 }, { 31, 3, -0.2 } };

    public static TheoryData<string> Drawings => [.. Samples.All.Keys];

    [Theory, MemberData(nameof(Gears))]
    public void Ink_lies_along_the_exact_outline_and_nowhere_else(int teeth, double module, double shift)
    {
        ExternalGear gear = ExternalGear.Create(new GearData(teeth, module, ProfileFinder.BuiltIn.Rack(DefaultNames.Rack, Here).Value!, shift));
        Seen seen = See(Bare(gear));
        bool[] near = new bool[seen.Picture.Width * seen.Picture.Height];
        IEnumerable<Point> bore = Enumerable.Range(0, 7200).Select(i => Point.Polar(module, i * Math.PI / 3600));
        foreach (Point point in gear.Outline().Curves().SelectMany(PointsOf).Concat(bore))
        {
            (double x, double y) = seen.Pixel(point);
            Assert.True(InkAround(seen.Picture, x, y) > 0.5, $"no ink at {point}");
            Mark(near, seen.Picture, x, y);
        }

        Assert.Empty(Enumerable.Range(0, near.Length)
            .Select(i => (X: i % seen.Picture.Width, Y: i / seen.Picture.Width, IsNear: near[i]))
            .Where(pixel => !pixel.IsNear && seen.Picture.Ink(pixel.X, pixel.Y) > 0)
            .Take(5));
    }

    [Fact]
    public void A_tooth_is_on_the_right_and_gaps_are_white()
    {
        ExternalGear gear = ExternalGear.Create(new GearData(24, 0.8, ProfileFinder.BuiltIn.Rack(DefaultNames.Rack, Here).Value!, 0.3));
        Seen seen = See(Bare(gear));
        double tooth = 2 * Math.PI / gear.Teeth;
        for (int i = 0; i < gear.Teeth; i++)
        {
            Assert.True(seen.Ink(Point.Polar(gear.TipRadius, i * tooth)) > 0.5);
            Assert.True(seen.Ink(Point.Polar(gear.RootRadius, (i + 0.5) * tooth)) > 0.5);
            Assert.Equal(0, seen.Ink(Point.Polar(gear.TipRadius, (i + 0.5) * tooth)));
            Assert.Equal(0, seen.Ink(Point.Polar(gear.ReferenceRadius, (i + 0.5) * tooth)));
            Assert.Equal(0, seen.Ink(Point.Polar(gear.ReferenceRadius, i * tooth)));
        }

        Assert.Equal(0, seen.Ink(default));
    }

    [Theory, MemberData(nameof(Drawings))]
    public void The_longer_side_is_as_asked_and_proportions_are_true(string name)
    {
        Seen seen = See(Samples.All[name]);
        Assert.Equal(PngWriter.LongEdge, Math.Max(seen.Picture.Width, seen.Picture.Height));
        Assert.InRange(seen.Picture.Width - (2 * PngWriter.Margin) - (seen.Box.Width * seen.Scale), -0.001, 1);
        Assert.InRange(seen.Picture.Height - (2 * PngWriter.Margin) - (seen.Box.Height * seen.Scale), -0.001, 1);
    }

    [Fact]
    public void A_line_alone_is_a_picture()
    {
        Seen level = See(Line(new Point(40, 0)));
        Assert.Equal((1200, 48), (level.Picture.Width, level.Picture.Height));
        Assert.True(InkAround(level.Picture, 600, 24) > 0.3);
        Seen upright = See(Line(new Point(0, 0.0001)));
        Assert.Equal((48, 1200), (upright.Picture.Width, upright.Picture.Height));
    }

    [Fact]
    public void Arcs_are_arcs_and_not_mirrored()
    {
        Seen seen = See(Samples.Plate);

        // The long arc of the right side: a quarter circle of radius 8 sqrt 2 around (10, 8).
        for (int degrees = -44; degrees <= 44; degrees++)
        {
            Assert.True(seen.Ink(new Point(10, 8) + (Vector.AtAngle(degrees * Math.PI / 180) * 8 * Math.Sqrt(2))) > 0.4, $"{degrees}");
        }

        Assert.True(seen.Ink(new Point(-4, 5)) > 0.4);
        Assert.Equal(0, seen.Ink(new Point(4, 5)));
        Assert.Equal(0, seen.Ink(new Point(18, 8)));
    }

    [Fact]
    public void Each_operation_has_the_colour_it_has_in_svg()
    {
        Seen seen = See(Samples.Plate);
        Assert.True(seen.IsInked(new Point(0, -12), 0x00, 0x00, 0x00));
        Assert.True(seen.IsInked(new Point(-8, -6), 0xb3, 0x47, 0x00));
        Assert.True(seen.IsInked(new Point(-8, 9), 0xb3, 0x47, 0x00));
        Assert.True(seen.IsInked(new Point(-15, -16), 0x80, 0x80, 0x80));
        Assert.False(seen.IsInked(new Point(-8, -6), 0x00, 0x66, 0x3d));
        Assert.False(seen.IsInked(new Point(-8, 0), 0x00, 0x00, 0x00));
        string svg = System.Text.Encoding.UTF8.GetString(Files.Svg.SvgWriter.Write(Samples.Plate));
        Assert.All((string[])["#000000", "#b34700", "#808080"], colour => Assert.Contains($"stroke=\"{colour}\"", svg, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_on_many_threads()
    {
        byte[] wanted = PngWriter.Write(Samples.Wheel);
        Assert.All(Enumerable.Range(0, 8).AsParallel().Select(_ => PngWriter.Write(Samples.Wheel)), found => Assert.Equal(wanted, found));
        Assert.NotEqual(wanted, PngWriter.Write(Samples.Plate));
    }

    private static Drawing Bare(ExternalGear gear)
    {
        Part part = PartBuilder.Build(new Blank("bare", gear, 2, new Cutouts { Bore = new Blanks.Bores.RoundBore(2 * gear.Module) }, []));
        return new Drawing("bare",
        [
            new("holes", Operation.CutHoles, [], [.. part.Holes.Select(hole => hole.AsCircle!.Value)]),
            new("outside", Operation.CutOutside, [OutlineFit.Fit(part.Outside, 0.001, Pieces.Arcs)], []),
        ]);
    }

    private static Drawing Line(Point end) => new("line", [new("note", Operation.Note, [ArcPath.Strokes([default, end])], [])]);

    private static Seen See(Drawing drawing)
    {
        using MadeFile file = new("drawn.png", PngWriter.Write(drawing));
        return new Seen(GdalPicture.Read(file.FilePath), Shape.Of(drawing).Aggregate(Extent.Nothing, (all, shape) => all.With(shape.Box)));
    }

    private static IEnumerable<Point> PointsOf(Curve curve)
    {
        const int steps = 400;
        return Enumerable.Range(0, steps + 1).Select(i => curve.PointAt(curve.Start + ((curve.End - curve.Start) * i / steps)));
    }

    // The darkest of the pixels that a point on the shape can fall into.
    private static double InkAround(GdalPicture picture, double x, double y)
    {
        int[] columns = [(int)Math.Floor(x - 0.5), (int)Math.Floor(x + 0.5)];
        int[] rows = [(int)Math.Floor(y - 0.5), (int)Math.Floor(y + 0.5)];
        return columns.SelectMany(column => rows.Select(row => picture.Ink(column, row))).Max();
    }

    // Half a stroke, half a pixel's diagonal and the steps between the points.
    private static void Mark(bool[] near, GdalPicture picture, double x, double y)
    {
        const double reach = 2;
        for (int row = (int)(y - 3); row <= y + 3; row++)
        {
            for (int column = (int)(x - 3); column <= x + 3; column++)
            {
                near[(row * picture.Width) + column] |= Math.Pow(column + 0.5 - x, 2) + Math.Pow(row + 0.5 - y, 2) < reach * reach;
            }
        }
    }

    /// <summary>A picture and where a drawing's points must lie in it: in the middle, the longer side filled up to the margins.</summary>
    private sealed record Seen(GdalPicture Picture, Extent Box)
    {
        public double Scale => (PngWriter.LongEdge - (2 * PngWriter.Margin)) / Math.Max(Box.Width, Box.Height);

        public (double X, double Y) Pixel(Point point) => (
            (Picture.Width / 2.0) + ((point.X - ((Box.Left + Box.Right) / 2)) * Scale),
            (Picture.Height / 2.0) - ((point.Y - ((Box.Bottom + Box.Top) / 2)) * Scale));

        public double Ink(Point point)
        {
            (double x, double y) = Pixel(point);
            return InkAround(Picture, x, y);
        }

        /// <summary>True where the darkest pixel around a point is a mixture of white and the colour, more than half of it the colour.</summary>
        public bool IsInked(Point point, byte red, byte green, byte blue)
        {
            (int x, int y) = ((int)Pixel(point).X, (int)Pixel(point).Y);
            (byte Red, byte Green, byte Blue) found = Enumerable.Range(-1, 3)
                .SelectMany(dx => Enumerable.Range(-1, 3).Select(dy => Picture.At(x + dx, y + dy)))
                .MinBy(pixel => pixel.Red + pixel.Green + pixel.Blue);
            double share = (255.0 - found.Red) / (255 - red);
            return share > 0.5 && Math.Abs(255 - (share * (255 - green)) - found.Green) < 3 && Math.Abs(255 - (share * (255 - blue)) - found.Blue) < 3;
        }
    }
}
