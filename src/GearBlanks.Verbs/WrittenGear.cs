using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>What a gear's file carries of the cut's width, and what the gear measures once it is cut.</summary>
/// <param name="Blank">The gear's blank.</param>
/// <param name="Kerf">The kerf and whether the file is compensated for it.</param>
/// <param name="Sizes">The sizes of the cut gear; null where the kerf is not known.</param>
public sealed record WrittenGear(Blank Blank, GearKerf Kerf, CutSizes? Sizes)
{
    /// <summary>The gear's name.</summary>
    public string Name => Blank.Name;

    // mm, on the diameter.
    private const double WorthTelling = 0.01;

    /// <summary>True where the cut does not get to the root that is drawn.</summary>
    internal bool MissesRoot => RootAsCut is not null;

    /// <summary>The sizes in words.</summary>
    internal string SizesInWords => Sizes is null
        ? "not known: the kerf is not; cut as drawn, the tip diameter loses the kerf, each tooth the kerf / cos(pressure angle), and the bore gains the kerf"
        : string.Join(", ", Named().Select(size => $"{size.Name} {InWords(size.Range)}"));

    /// <summary>The part as it is written, and what there is to say of it.</summary>
    /// <exception cref="GearGeometryException">The beam does not fit the part, or would be taken off twice.</exception>
    internal static (Part Part, WrittenGear Written) Of(Blank blank, string? material, Machine machine, AskedKerf? asked)
    {
        var kerf = GearKerf.Of(machine, material, blank.Thickness, asked);
        Part part = PartBuilder.Build(blank);
        if (kerf.IsCompensated)
        {
            part = Compensation.Of(part, kerf.Kerf!, kerf.Tool is not null);
        }

        CutSizes? sizes = kerf.IsShops ? CutSizes.AsDrawn(blank)
            : kerf.Kerf is not { } width ? null
            : kerf.IsCompensated ? CutSizes.Compensated(blank, part, width)
            : CutSizes.Uncompensated(blank, width);
        var written = new WrittenGear(blank, kerf, sizes);
        return (part with { Remarks = part.Remarks.AddRange(written.Remarks()) }, written);
    }

    // The root as it is cut and as it is drawn, where both differ worth telling.
    private (double Cut, double Drawn)? RootAsCut =>
        Kerf.IsCompensated && Sizes?.Root is { } cut && CutSizes.AsDrawn(Blank).Root is { Least: var drawn } && Farthest(cut, drawn) is var far && Math.Abs(far - drawn) > WorthTelling
            ? (far, drawn)
            : null;

    private IEnumerable<string> Remarks()
    {
        if (Kerf.Remark is { } remark)
        {
            yield return remark;
        }

        if (RootAsCut is var (cut, drawn))
        {
            yield return $"The {(Kerf.Tool is null ? "beam" : "end mill")} does not reach the root: {Names(Blank).Root} {Words.Mm(cut)} as cut instead of {Words.Mm(drawn)}. gearblanks reach tells whether the mate's tip still clears.";
        }
    }

    /// <summary>What to mind of compensated files; nothing where none is.</summary>
    internal static IEnumerable<string> Cautions(IEnumerable<WrittenGear> gears) => gears.Any(gear => gear.Kerf.IsCompensated)
        ? ["Compensated files are right for their kerf only: measure a test piece first, and see that neither machine nor shop compensates again."]
        : [];

    private static double Farthest(SizeRange cut, double drawn) => drawn - cut.Least > cut.Greatest - drawn ? cut.Least : cut.Greatest;

    private static (string Tip, string Root, string Thickness, string Rim) Names(Blank blank) => blank.Gear is RackBar
        ? ("tips over the back", "root over the back", "tooth thickness on the reference line", "length")
        : ("tip diameter", "root diameter", "tooth thickness on the reference circle", "rim diameter");

    internal IEnumerable<(string Name, SizeRange Range)> Named() =>
        new (string Name, SizeRange? Range)[]
        {
            (Names(Blank).Tip, Sizes?.Tip), (Names(Blank).Root, Sizes?.Root), (Names(Blank).Thickness, Sizes?.ToothThickness), ("bore", Sizes?.Bore),
            (Names(Blank).Rim, Sizes?.Rim),
        }
        .Where(size => size.Range is not null)
        .Select(size => (size.Name, size.Range!.Value));

    internal static string KerfOfAll(ImmutableArray<WrittenGear> gears) => gears.Select(gear => gear.Kerf.Words).Distinct().ToArray() switch
    {
        [] => "no gears",
        [var all] => all,
        _ => "differs from gear to gear",
    };

    private static string InWords(SizeRange range) => Words.Mm(range.Least) == Words.Mm(range.Greatest)
        ? Words.Mm(range.Least)
        : $"{Words.Figure(range.Least, "")} to {Words.Mm(range.Greatest)}";
}
