using System.Collections.Immutable;
using GearBlanks.Blanks.Lettering;
using GearBlanks.Curves;

namespace GearBlanks.Tests.Blanks.Lettering;

public sealed class StrokeFontTests
{
    private const string Tailed = "$(),/;@Q[\\]_gjpqy{|}";

    private static IEnumerable<char> Printable => Enumerable.Range(' ', '~' - ' ' + 1).Select(code => (char)code);

    private static IEnumerable<char> All => Printable.Concat("α°±Ø");

    [Fact]
    public void Every_character_has_strokes_inside_its_box()
    {
        foreach (char character in All.Where(character => character != ' '))
        {
            Point[] points = Points(character);
            Assert.NotEmpty(points);
            Assert.All(points, point =>
            {
                Assert.InRange(point.X, 0, StrokeFont.WidthOf(character.ToString(), 1));
                Assert.InRange(point.Y, Tailed.Contains(character) ? -StrokeFont.Descent : -0.05, 1);
            });
        }
    }

    [Fact]
    public void Capitals_and_digits_stand_on_the_baseline_and_reach_the_height_asked_for()
    {
        foreach (char character in Printable.Where(char.IsAsciiLetterUpper).Concat("0123456789"))
        {
            Point[] points = [.. StrokeFont.Lay(character.ToString(), 2.5, default).SelectMany(Corners)];
            Assert.Equal(2.5, points.Max(point => point.Y), 12);
            Assert.Equal(0, character == 'Q' ? 0 : points.Min(point => point.Y), 12);
        }
    }

    [Fact]
    public void A_space_takes_room_and_draws_nothing()
    {
        Assert.Empty(StrokeFont.Lay(" ", 3, default));
        Assert.True(StrokeFont.WidthOf(" ", 3) > 0.5);
    }

    [Fact]
    public void No_stroke_has_a_piece_shorter_than_a_beam_is_wide_at_the_least_height()
    {
        foreach (char character in All)
        {
            foreach (ArcPath stroke in StrokeFont.Lay(character.ToString(), 2, default))
            {
                Assert.False(stroke.Closed);
                Point[] points = [.. Corners(stroke)];
                Assert.All(points.Zip(points.Skip(1)), pair => Assert.True(pair.First.DistanceTo(pair.Second) > 0.04, character.ToString()));
            }
        }
    }

    [Theory]
    [InlineData('0', 'O')]
    [InlineData('1', 'l')]
    [InlineData('1', 'I')]
    [InlineData('l', 'I')]
    [InlineData('l', '|')]
    [InlineData('6', 'b')]
    [InlineData('5', 'S')]
    [InlineData('2', 'Z')]
    [InlineData('8', 'B')]
    [InlineData('9', 'g')]
    [InlineData('g', 'q')]
    [InlineData('u', 'v')]
    [InlineData('a', 'α')]
    [InlineData('o', '°')]
    [InlineData('0', 'Ø')]
    [InlineData('O', 'Ø')]
    public void Characters_easily_confused_differ_by_a_tenth_of_the_height_or_more(char one, char other)
    {
        // Drawn over one another by their boxes' lower left corners, a point of one lies well away from every stroke of the other.
        Assert.True(Math.Max(Stray(one, other), Stray(other, one)) >= 0.1);
    }

    [Fact]
    public void No_two_characters_are_drawn_alike()
    {
        string[] drawings = [.. All.Select(character => string.Join(';', Points(character)) + StrokeFont.WidthOf(character.ToString(), 1))];
        Assert.Equal(drawings.Length, drawings.Distinct().Count());
    }

    [Fact]
    public void Widths_are_positive_and_add_up()
    {
        Assert.All(All, character => Assert.True(StrokeFont.WidthOf(character.ToString(), 2) > 0));
        string text = string.Concat(All);
        Assert.Equal(All.Sum(character => StrokeFont.WidthOf(character.ToString(), 2)), StrokeFont.WidthOf(text, 2), 9);
    }

    [Theory]
    [InlineData("é")]
    [InlineData("\t")]
    [InlineData("\U0001F319")]
    public void An_unknown_character_is_one_empty_box(string text)
    {
        ArcPath box = Assert.Single(StrokeFont.Lay(text, 1, default));
        Assert.Equal(5, box.Vertices.Length);
        Assert.Equal(box.Vertices[0], box.Vertices[4]);
    }

    [Fact]
    public void A_baseline_may_run_in_any_direction()
    {
        ImmutableArray<ArcPath> level = StrokeFont.Lay("z 81", 3, default);
        ImmutableArray<ArcPath> turned = StrokeFont.Lay("z 81", 3, new Point(5, -7), 0.6);
        Motion motion = Motion.Turn(0.6).Then(Motion.Shift(new Vector(5, -7)));
        AssertSame(level.Select(stroke => stroke.Moved(motion)), turned);
    }

    [Fact]
    public void On_a_circle_letters_stand_outside_it_upright_at_the_top_and_run_clockwise()
    {
        Point centre = new(3, 4);
        Point[] middle = [.. StrokeFont.LayOnCircle("I", 2, centre, 10, Math.PI / 2).SelectMany(Corners)];
        Assert.Equal(3, (middle.Min(point => point.X) + middle.Max(point => point.X)) / 2, 12);
        Assert.Equal(14, middle.Min(point => point.Y), 12);
        Assert.Equal(16, middle.Max(point => point.Y), 12);

        ArcPath[] pair = [.. StrokeFont.LayOnCircle("||", 2, centre, 10, Math.PI / 2)];
        Assert.True(pair[0].Vertices[0].Point.X < 3 && pair[1].Vertices[0].Point.X > 3);
    }

    [Fact]
    public void On_a_circle_letters_are_as_far_apart_as_on_a_line()
    {
        ArcPath[] bars = [.. StrokeFont.LayOnCircle("|||", 2, default, 10, 0)];
        double advance = StrokeFont.WidthOf("|", 2) / 10;
        Assert.Equal(advance, bars[0].Vertices[0].Point.Angle - bars[1].Vertices[0].Point.Angle, 12);
        Assert.Equal(0, bars[1].Vertices[0].Point.Angle, 12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_height_or_radius_must_be_positive(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StrokeFont.Lay("x", value, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrokeFont.LayOnCircle("x", 2, default, value, 0));
    }

    private static Point[] Points(char character) => [.. StrokeFont.Lay(character.ToString(), 1, default).SelectMany(Corners)];

    private static IEnumerable<Point> Corners(ArcPath stroke) => stroke.Vertices.Select(vertex => vertex.Point);

    private static void AssertSame(IEnumerable<ArcPath> expected, IEnumerable<ArcPath> actual) =>
        Assert.All(
            expected.SelectMany(Corners).Zip(actual.SelectMany(Corners), (e, a) => e.DistanceTo(a)),
            distance => Assert.InRange(distance, 0, 1e-12));

    private static double Stray(char one, char other)
    {
        Point[] targets = [.. Dense(other)];
        return Dense(one).Max(point => targets.Min(target => target.DistanceTo(point)));
    }

    private static IEnumerable<Point> Dense(char character)
    {
        ImmutableArray<ArcPath> strokes = StrokeFont.Lay(character.ToString(), 1, default);
        double left = strokes.SelectMany(Corners).Min(point => point.X);
        foreach (ArcPath stroke in strokes)
        {
            for (int i = 1; i < stroke.Vertices.Length; i++)
            {
                Point start = stroke.Vertices[i - 1].Point;
                Vector along = stroke.Vertices[i].Point - start;
                for (int step = 0; step <= 20; step++)
                {
                    yield return start + (along * (step / 20.0)) - new Vector(left, 0);
                }
            }
        }
    }
}
