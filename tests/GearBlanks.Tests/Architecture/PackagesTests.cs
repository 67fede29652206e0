using System.Xml.Linq;

namespace GearBlanks.Tests.Architecture;

/// <summary>What packages need and no compiler misses.</summary>
public class PackagesTests
{
    // A library without these files is built without the analyzer that watches its public surface.
    [Theory]
    [InlineData("GearBlanks")]
    [InlineData("GearBlanks.Files")]
    [InlineData("GearBlanks.Verbs")]
    public void A_library_s_public_surface_is_listed(string library)
    {
        string[] listed =
        [
            .. File.ReadAllLines(Path.Combine(Repository.Source, library, "PublicAPI.Shipped.txt")),
            .. File.ReadAllLines(Path.Combine(Repository.Source, library, "PublicAPI.Unshipped.txt")),
        ];
        Assert.Contains(listed, line => line.StartsWith("GearBlanks.", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_library_that_goes_along_is_named_with_its_licence()
    {
        string[] notices = File.ReadAllLines(Path.Combine(Repository.Source, "THIRD-PARTY-NOTICES.txt"));
        string[] packages = [.. Directory.EnumerateFiles(Repository.Source, "*.csproj", SearchOption.AllDirectories)
            .SelectMany(file => XDocument.Load(file).Descendants("PackageReference"))
            .Select(reference => reference.Attribute("Include")!.Value)
            .Distinct()];
        Assert.Contains("SkiaSharp", packages);

        // Skia's own library has its notices in a file beside it.
        Assert.All(
            packages.Where(package => !package.StartsWith("SkiaSharp.NativeAssets", StringComparison.Ordinal)),
            package => Assert.Contains(notices, line => line.StartsWith(package + " ", StringComparison.Ordinal) && line.Contains("Copyright", StringComparison.Ordinal)));
    }
}
