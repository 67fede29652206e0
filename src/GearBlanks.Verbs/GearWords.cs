using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Blanks;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>What every gear's drawing says beside it in words.</summary>
internal static class GearWords
{
    /// <summary>A line an item.</summary>
    /// <param name="blank">The gear.</param>
    /// <param name="mechanism">Title of its mechanism; null where it stands alone.</param>
    /// <param name="material">Its material; null where it is not known.</param>
    /// <param name="kerf">Whether the outline carries the cut's width.</param>
    /// <param name="findings">What concerns the gear.</param>
    /// <param name="whole">The verdict on the whole mechanism: a gear that is sound in one that fails should not be cut in good faith.</param>
    public static ImmutableArray<string> Of(Blank blank, string? mechanism, Material? material, GearKerf kerf, IEnumerable<Finding> findings, Level whole)
    {
        ExternalGear gear = blank.Gear;
        return
        [
            mechanism is null ? blank.Name : $"{mechanism}: {blank.Name}",
            kerf.Words,
            string.Create(CultureInfo.InvariantCulture, $"z {gear.Teeth}  m {gear.Module:0.####} mm  x {gear.Data.ProfileShift:+0.####;-0.####;0}  α {gear.PressureAngle * 180 / Math.PI:0.####}°"),
            string.Create(CultureInfo.InvariantCulture, $"tip Ø {2 * gear.TipRadius:0.000} mm"),
            string.Create(CultureInfo.InvariantCulture, $"root Ø {2 * gear.RootRadius:0.000} mm{Bore(blank)}"),
            .. Sheet(blank, material),
            .. blank.IsDisc ? (string[])["turned disc: teeth are milled later"] : [],
            .. Verdict(findings, whole),
        ];
    }

    private static IEnumerable<string> Sheet(Blank blank, Material? material)
    {
        string thinned = blank.Gear.Data.Thinning > 0 ? string.Create(CultureInfo.InvariantCulture, $"teeth thinned {blank.Gear.Data.Thinning:0.####} mm") : "";
        string sheet = blank.Thickness > 0 ? string.Create(CultureInfo.InvariantCulture, $"{blank.Thickness:0.###} mm {material?.Title}").TrimEnd() : "";
        string line = string.Join("  ", new[] { sheet, thinned }.Where(text => text.Length > 0));
        return line.Length > 0 ? [line] : [];
    }

    private static string Bore(Blank blank) => blank.Bore is { } bore
        ? string.Create(CultureInfo.InvariantCulture, $"  bore Ø {bore:0.###} mm")
        : "";

    private static IEnumerable<string> Verdict(IEnumerable<Finding> findings, Level whole)
    {
        Finding[] failing = [.. findings.Where(finding => finding.Level == Level.Fails)];
        return failing.Length == 0
            ? [whole == Level.Fails ? "CHECK FAILS elsewhere in the mechanism: see its check" : "check: nothing fails"]
            : failing.Select(finding => $"CHECK FAILS: {finding.Name}, {finding.Place}");
    }
}
