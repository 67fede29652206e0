using System.CommandLine;
using GearBlanks.Cli.Arguments;
using GearBlanks.Curves.Fitting;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;
using GearBlanks.Verbs;

namespace GearBlanks.Cli.Commands;

/// <summary>Options that several verbs take.</summary>
internal static class SharedOptions
{
    private const double MillimetresInAnInch = 25.4;
    private const double DegreesInARadian = 180 / Math.PI;
    private const double Far = 100_000;

    public static NumberRange Size { get; } = new(0, Far, "mm", IsAbove: true);

    public static NumberRange SizeOrNone { get; } = new(0, Far, "mm");

    public static NumberRange Shift { get; } = new(GearRanges.LeastShift, GearRanges.GreatestShift);

    public static Option<bool> Json { get; } = new("--json")
    {
        Description = "Print one JSON object on standard output and nothing else.",
        Arity = ArgumentArity.Zero,
        Recursive = true,
    };

    public static Option<double?> Module { get; } = new OneWord<double?>(
        "--module", "MM", "Module. Either this or --diametral-pitch.",
        WordReaders.Length(new(GearRanges.LeastModule, GearRanges.GreatestModule, "mm")));

    public static Option<double?> DiametralPitch { get; } = new OneWord<double?>(
        "--diametral-pitch", "PER-INCH", "Diametral pitch, teeth per inch.",
        WordReaders.Number(new(MillimetresInAnInch / GearRanges.GreatestModule, MillimetresInAnInch / GearRanges.LeastModule, "per inch")));

    public static Option<double?> PressureAngle { get; } = new OneWord<double?>(
        "--pressure-angle", "DEG", "Pressure angle, degrees. [default: the rack's, 20]",
        WordReaders.Number(new(Math.Round(GearRanges.LeastPressureAngle * DegreesInARadian), Math.Round(GearRanges.GreatestPressureAngle * DegreesInARadian), "degrees")));

    public static Option<string?> Rack { get; } = new OneWord<string?>(
        "--rack", "NAME",
        "Rack profile: iso-53-a, iso-53-b, iso-53-c, iso-53-d, ansi-b6-1, ansi-b6-7 or your own file in racks/. [default: proportions of iso-53-a]",
        word => new(word));

    public static Option<double?> Tolerance { get; } = new OneWord<double?>(
        "--tolerance", "MM", "Greatest distance between the written pieces and the exact outline. [default: 0.001]",
        WordReaders.Length(new(OutputOptions.LeastTolerance, OutputOptions.GreatestTolerance, "mm")));

    public static OneWord<Files.Dxf.DxfVersion> DxfVersion { get; } = Choice(
        "--dxf-version", "Version of DXF files.", ("r2000", Files.Dxf.DxfVersion.R2000), ("r12", Files.Dxf.DxfVersion.R12));

    public static OneWord<Pieces> Pieces { get; } = Choice(
        "--pieces", "What outlines are written as.", ("arcs", Curves.Fitting.Pieces.Arcs), ("chords", Curves.Fitting.Pieces.Chords));

    public static Option<AskedKerf?> Kerf { get; } = new OneWord<AskedKerf?>(
        "--kerf", "MM|X,Y",
        "Full width of the cut that outlines are compensated for, up to 5 mm; two with a comma between where the beam is wider one way: along X, along Y. 0 for nominal outlines. [default: the machine's]",
        WordReaders.Kerf);

    public static NumberRange Thinning { get; } = new(0, 10, "mm");

    /// <summary>An option with a few allowed words, the first of them the default.</summary>
    public static OneWord<T> Choice<T>(string name, string description, params (string Word, T Meaning)[] choices) =>
        new OneWord<T>(
            name, string.Join('|', choices.Select(choice => choice.Word)), $"{description} [default: {choices[0].Word}]", WordReaders.Choice(choices))
        {
            Otherwise = choices[0].Meaning,
        };

    public static GearNumbers GearNumbers(ParseResult parsed) => new(
        parsed.GetValue(Module), parsed.GetValue(DiametralPitch), parsed.GetValue(PressureAngle), parsed.GetValue(Rack));

    public static OutputOptions Output(ParseResult parsed) => new(
        DxfVersion.In(parsed), parsed.GetValue(Tolerance) ?? OutputOptions.DefaultTolerance, Pieces.In(parsed));
}
