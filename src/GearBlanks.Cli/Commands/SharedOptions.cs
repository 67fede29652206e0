using System.CommandLine;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Commands;

/// <summary>Options that several verbs take.</summary>
internal static class SharedOptions
{
    public static Option<bool> Json { get; } = new("--json")
    {
        Description = "Print one JSON object on standard output and nothing else.",
        Recursive = true,
    };

    public static Option<double?> Module { get; } =
        NumberOption.Length("--module", "MM", "Module. Either this or --diametral-pitch.");

    public static Option<double?> DiametralPitch { get; } =
        NumberOption.Number("--diametral-pitch", "PER-INCH", "Diametral pitch, teeth per inch.", positive: true);

    public static Option<double?> PressureAngle { get; } =
        NumberOption.Number("--pressure-angle", "DEG", "Pressure angle, degrees. [default: the rack's, 20]", positive: true);

    public static Option<string?> Rack { get; } = new("--rack")
    {
        HelpName = "NAME",
        Description = "Rack profile: iso-53-a, iso-53-b, iso-53-c, iso-53-d, ansi-b6-1, ansi-b6-7 or your own file in racks/. [default: proportions of iso-53-a]",
    };

    public static Option<double?> Tolerance { get; } =
        NumberOption.Length("--tolerance", "MM", "Greatest distance between the written pieces and the exact outline. [default: 0.001]");

    public static Option<string> DxfVersion { get; } = Choice("--dxf-version", "Version of DXF files.", "r2000", "r12");

    public static Option<string> Pieces { get; } = Choice("--pieces", "What outlines are written as.", "arcs", "chords");

    /// <summary>An option with a few allowed words, the first of them the default.</summary>
    public static Option<string> Choice(string name, string description, params string[] words)
    {
        var option = new Option<string>(name)
        {
            HelpName = string.Join('|', words),
            Description = description,
            DefaultValueFactory = _ => words[0],
        };
        option.Validators.Add(result =>
        {
            string? value = result.GetValueOrDefault<string>();
            if (value is not null && !words.Contains(value))
            {
                result.AddError($"{name}: \"{value}\" is not known; allowed: {string.Join(", ", words)}");
            }
        });
        return option;
    }

    public static GearNumbers GearNumbers(ParseResult parsed) => new(
        parsed.GetValue(Module), parsed.GetValue(DiametralPitch), parsed.GetValue(PressureAngle), parsed.GetValue(Rack));

    public static OutputOptions Output(ParseResult parsed) => new(
        parsed.GetValue(DxfVersion) == "r12" ? Files.Dxf.DxfVersion.R12 : Files.Dxf.DxfVersion.R2000,
        parsed.GetValue(Tolerance) ?? OutputOptions.DefaultTolerance,
        parsed.GetValue(Pieces) == "chords" ? Curves.Fitting.Pieces.Chords : Curves.Fitting.Pieces.Arcs);
}
