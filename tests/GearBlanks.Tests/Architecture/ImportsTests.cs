using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace GearBlanks.Tests.Architecture;

/// <summary>Imports run one way: between the kernel's folders, and between the projects.</summary>
public sealed partial class ImportsTests
{
    // What each folder of the kernel may import beside itself.
    private static readonly Dictionary<string, string[]> Kernel = new()
    {
        ["Curves"] = [],
        ["Findings"] = [],
        ["Teeth"] = ["Curves", "Findings"],
        ["Blanks"] = ["Curves", "Findings", "Teeth"],
        ["Meshing"] = ["Curves", "Findings", "Teeth", "Blanks"],
        ["Cutting"] = ["Curves", "Findings", "Teeth", "Blanks"],
        ["Trains"] = ["Curves", "Findings", "Teeth", "Blanks", "Meshing", "Cutting"],
        ["Rolling"] = ["Curves", "Findings", "Teeth", "Blanks", "Meshing", "Cutting"],
        ["Mechanisms"] = ["Curves", "Findings", "Teeth", "Blanks", "Meshing", "Cutting", "Trains"],
    };

    private static readonly Dictionary<string, string[]> Projects = new()
    {
        ["GearBlanks"] = [],
        ["GearBlanks.Files"] = ["GearBlanks"],
        ["GearBlanks.Verbs"] = ["GearBlanks.Files"],
        ["GearBlanks.Cli"] = ["GearBlanks.Verbs"],
    };

    public static TheoryData<string> Folders { get; } = [.. Kernel.Keys];

    [Fact]
    public void The_kernel_has_these_folders_and_no_others() => Assert.Equal(
        Kernel.Keys.Order(StringComparer.Ordinal),
        Directory.EnumerateFiles(Path.Combine(Repository.Source, "GearBlanks"), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Path.Combine(Repository.Source, "GearBlanks"), file).Split(Path.DirectorySeparatorChar)[0])
            .Where(folder => folder is not ("bin" or "obj"))
            .Distinct()
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_imports_only_what_lies_below_it(string folder)
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Repository.Source, "GearBlanks", folder), "*.cs", SearchOption.AllDirectories))
        {
            string code = CommentLine().Replace(File.ReadAllText(file), "");
            Assert.StartsWith($"GearBlanks.{folder}", NamespaceLine().Match(code).Groups[1].Value, StringComparison.Ordinal);
            Assert.All(Imported(code), import => Assert.True(import == folder || Kernel[folder].Contains(import), $"{file} imports {import}"));
        }
    }

    [Theory]
    [InlineData("using GearBlanks.Mechanisms;", "Mechanisms")]
    [InlineData("var a = new Teeth.GearData(20, 1);", "Teeth")]
    [InlineData("global::GearBlanks.Curves.Point p = default;", "Curves")]
    [InlineData("using static GearBlanks.Findings.Words;", "Findings")]
    [InlineData("using Gear = GearBlanks.Meshing.GearPair;", "Meshing")]
    public void An_import_is_seen_in_every_way_of_writing(string code, string import) => Assert.Equal([import], Imported(code));

    [Fact]
    public void Projects_import_one_way()
    {
        foreach ((string project, string[] allowed) in Projects)
        {
            IEnumerable<string> references = XDocument.Load(Path.Combine(Repository.Source, project, project + ".csproj"))
                .Descendants("ProjectReference")
                .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value));
            Assert.Equal(allowed, references);
        }

        Assert.Equal(Projects.Keys.Order(StringComparer.Ordinal), Directory.EnumerateDirectories(Repository.Source).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Imported(string code) =>
        ImportedName().Matches(code).Select(match => match.Groups[1].Value).Where(Kernel.ContainsKey).Distinct();

    [GeneratedRegex(@"^\s*//.*$", RegexOptions.Multiline)]
    private static partial Regex CommentLine();

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    // A namespace by its whole name, or from within GearBlanks by its last part.
    [GeneratedRegex(@"(?<![\w.""])(?:global::)?(?:GearBlanks\.)?([A-Z]\w+)(?=\.[A-Z]|;|\.)")]
    private static partial Regex ImportedName();
}
