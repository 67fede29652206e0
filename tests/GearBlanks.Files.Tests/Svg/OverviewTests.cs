using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using GearBlanks.Files.Svg;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Tests.Svg;

/// <summary>The picture of a mechanism: what it names, that it is the same everywhere, that nothing in it overlaps.</summary>
public sealed partial class OverviewTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Jobs => ["dial", "tiny", "single", "row", "field"];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void IsTrueSizeAndNamesEverything(string job)
    {
        MechanismReport report = OverviewJobs.Report(Text(job));
        XElement svg = Drawn(report);
        double[] view = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        Assert.Equal(view[2], Number(svg.Attribute("width")!.Value[..^2]));
        Assert.Equal(view[3], Number(svg.Attribute("height")!.Value[..^2]));
        Assert.EndsWith("mm", svg.Attribute("width")!.Value, StringComparison.Ordinal);
        Assert.EndsWith("mm", svg.Attribute("height")!.Value, StringComparison.Ordinal);
        Assert.Equal(report.Mechanism.Title, svg.Element(Svg + "title")!.Value);
        Assert.Equal(
            report.Mechanism.Gears.Select(gear => $"gear {gear.Name}, z {gear.Blank.Gear.Teeth}").Order(), Titles(svg, "gears").Order());
        Assert.Equal(report.Mechanism.Axes.Select(axis => $"axis {axis.Name}"), Titles(svg, "axes"));
        Assert.Equal(
            report.Mechanism.Meshes.Select(mesh => $"mesh {mesh.Name}: {report.VerdictOn(Places.Mesh(mesh.Name)).ToString().ToLowerInvariant()}"),
            Titles(svg, "meshes"));
        string callouts = string.Join('\n', Titles(svg, "callouts"));
        Assert.All(report.Mechanism.Gears, gear => Assert.Contains($"{gear.Name} z {gear.Blank.Gear.Teeth}", callouts, StringComparison.Ordinal));
        Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName is not ("svg" or "g" or "title" or "path"));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void SaysInWordsWhatFails(string job)
    {
        MechanismReport report = OverviewJobs.Report(Text(job));
        string words = string.Join('\n', Titles(Drawn(report), "words"));
        Assert.All(
            report.Findings.Where(finding => finding.Level == Findings.Level.Fails),
            finding => Assert.Contains($"{finding.Name}, {finding.Place}", words, StringComparison.Ordinal));
        Assert.All(report.Mechanism.Hands, hand => Assert.Contains(hand.Name, words, StringComparison.Ordinal));
        Assert.All(report.Mechanism.Meshes, mesh => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"{mesh.Name}, {report.VerdictOn(Places.Mesh(mesh.Name)).ToString().ToLowerInvariant()}, {mesh.Pair.CircumferentialBacklash:0.000}, {mesh.Pair.ContactRatio:0.000}, {mesh.Pair.CentreDistance:0.000}"),
            words, StringComparison.Ordinal));
    }

    [Fact]
    public void IsTheSameInEveryCulture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        byte[] invariant = OverviewWriter.Write(OverviewJobs.Report(OverviewJobs.TideDial));
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(invariant, OverviewWriter.Write(OverviewJobs.Report(OverviewJobs.TideDial)));
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }
    }

    [Fact]
    public void EachVerdictHasItsOwnShape()
    {
        XElement key = Drawn(OverviewJobs.Report(OverviewJobs.TideDial)).Descendants(Svg + "g")
            .Single(group => group.Element(Svg + "title")?.Value == "what the marks mean");
        string[] shapes = [.. key.Elements(Svg + "path")
            .Where(path => path.Attribute("fill")!.Value != "none")
            .Select(path => string.Concat(path.Attribute("d")!.Value.Where(char.IsLetter)))];
        Assert.Equal(3, shapes.Length);
        Assert.Equal(3, shapes.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void CalloutsKeepClearOfOneAnotherAndOfThePlan(string job)
    {
        XElement svg = Drawn(OverviewJobs.Report(Text(job)));
        Box[] callouts = [.. Groups(svg, "callouts").Select(BoxOf)];
        Box plan = Groups(svg, "gears").Concat(Groups(svg, "meshes")).Select(BoxOf).Aggregate((a, b) => a.With(b));
        Box[] words = [.. Groups(svg, "words").Select(BoxOf)];
        Box[] all = [.. callouts, plan, .. words];
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Assert.False(all[i].Overlaps(all[j]), $"{i} and {j} of {callouts.Length} callouts, the plan and the words overlap");
            }
        }

        double[] view = [.. svg.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        var sheet = new Box(view[0], view[1], view[0] + view[2], view[1] + view[3]);
        Assert.All(all, box => Assert.Equal(sheet, sheet.With(box)));
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void MarksKeepClearOfOneAnother(string job)
    {
        Box[] marks = [.. Groups(Drawn(OverviewJobs.Report(Text(job))), "meshes").Select(group => BoxOf(group.Elements(Svg + "path").ElementAt(3)))];
        for (int i = 0; i < marks.Length; i++)
        {
            Assert.All(marks[..i], other => Assert.False(other.Overlaps(marks[i])));
        }
    }

    private static string Text(string job) => job switch
    {
        "dial" => OverviewJobs.TideDial,
        "tiny" => OverviewJobs.Tiny,
        "single" => OverviewJobs.Row(1, 3),
        "row" => OverviewJobs.Row(12, 5),
        _ => OverviewJobs.Field(100),
    };

    private static XElement Drawn(MechanismReport report) => XDocument.Parse(Encoding.UTF8.GetString(OverviewWriter.Write(report))).Root!;

    private static IEnumerable<XElement> Groups(XElement svg, string layer) =>
        svg.Elements(Svg + "g").Single(group => group.Attribute("id")!.Value == layer).Elements(Svg + "g");

    private static IEnumerable<string> Titles(XElement svg, string layer) => Groups(svg, layer).Select(group => group.Element(Svg + "title")!.Value);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    // Ends of all pieces: arcs of a gear reach beyond theirs by far less than the gaps on the sheet.
    private static Box BoxOf(XElement element) => element.DescendantsAndSelf(Svg + "path")
        .SelectMany(path => Ends().Matches(path.Attribute("d")!.Value))
        .Select(end => new Box(Number(end.Groups[1].Value), Number(end.Groups[2].Value), Number(end.Groups[1].Value), Number(end.Groups[2].Value)))
        .Aggregate((a, b) => a.With(b));

    [GeneratedRegex(@"(?:[ML]|A\S+ \S+ 0 0 [01] )(-?[\d.]+) (-?[\d.]+)")]
    private static partial Regex Ends();

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public Box With(Box other) => new(
            Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

        public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }
}
