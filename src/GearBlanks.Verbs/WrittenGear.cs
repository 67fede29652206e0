using System.Collections.Immutable;
using GearBlanks.Blanks;
using GearBlanks.Cutting;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;

namespace GearBlanks.Verbs;

/// <summary>What a gear's file carries of the cut's width, and what the gear measures once it is cut.</summary>
/// <param name="Name">The gear's name.</param>
/// <param name="Kerf">The kerf and whether the file is compensated for it.</param>
/// <param name="Sizes">The sizes of the cut gear; null where the kerf is not known.</param>
public sealed record WrittenGear(string Name, GearKerf Kerf, CutSizes? Sizes)
{
    // mm, on the diameter.
    private const double WorthTelling = 0.01;

    /// <summary>The sizes in words.</summary>
    internal string SizesInWords => Sizes is null
        ? "not known: the kerf is not; cut as drawn, the tip diameter loses the kerf, each tooth the kerf / cos(pressure angle), and the bore gains the kerf"
        : string.Join(", ", Named().Select(size => $"{size.Name} {InWords(size.Range)}"));

    /// <summary>The part as it is written, and what there is to say of it.</summary>
    /// <exception cref="Teeth.GearGeometryException">The beam does not fit the part, or would be taken off twice.</exception>
    internal static (Part Part, WrittenGear Written) Of(Blank blank, string? material, Machine machine, AskedKerf? asked)
    {
        var kerf = GearKerf.Of(machine, material, blank.Thickness, asked);
        Part part = PartBuilder.Build(blank);
        if (kerf.IsCompensated)
        {
            part = Compensation.Of(part, kerf.Kerf!);
        }

        CutSizes? sizes = kerf.IsShops ? CutSizes.AsDrawn(blank)
            : kerf.Kerf is not { } width ? null
            : kerf.IsCompensated ? CutSizes.Compensated(blank, part, width)
            : CutSizes.Uncompensated(blank, width);
        return (part with { Remarks = part.Remarks.AddRange(Remarks(blank, kerf, sizes)) }, new WrittenGear(blank.Name, kerf, sizes));
    }

    private static IEnumerable<string> Remarks(Blank blank, GearKerf kerf, CutSizes? sizes)
    {
        if (kerf.Remark is { } remark)
        {
            yield return remark;
        }

        if (kerf.IsCompensated && sizes?.RootDiameter is { } root && root.Greatest > (2 * blank.Gear.RootRadius) + WorthTelling)
        {
            yield return $"The beam does not reach the root: root diameter up to {Words.Mm(root.Greatest)} as cut instead of {Words.Mm(2 * blank.Gear.RootRadius)}. The check knows nothing of it: see that the mate's tip still clears.";
        }
    }

    /// <summary>What to mind of compensated files; nothing where none is.</summary>
    internal static IEnumerable<string> Cautions(IEnumerable<WrittenGear> gears) => gears.Any(gear => gear.Kerf.IsCompensated)
        ? ["Compensated files are right for their kerf only: measure a test piece first, and see that neither machine nor shop compensates again."]
        : [];

    internal IEnumerable<(string Name, SizeRange Range)> Named() =>
        new (string Name, SizeRange? Range)[]
        {
            ("tip diameter", Sizes?.TipDiameter), ("root diameter", Sizes?.RootDiameter),
            ("tooth thickness on the reference circle", Sizes?.ToothThickness), ("bore", Sizes?.Bore),
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
