using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Blanks;
using GearBlanks.Blanks.Bores;
using GearBlanks.Findings;
using GearBlanks.Mechanisms;
using GearBlanks.Teeth;

namespace GearBlanks.Verbs;

/// <summary>What every gear's drawing says beside it in words.</summary>
internal static class GearWords
{
    /// <summary>What a body with such teeth is called.</summary>
    public static string KindOf(Toothing teeth) => teeth switch
    {
        RingGear => "ring",
        RackBar => "rack",
        _ => "gear",
    };

    /// <summary>A line an item.</summary>
    /// <param name="blank">The gear.</param>
    /// <param name="mechanism">Title of its mechanism; null where it stands alone.</param>
    /// <param name="material">Its material; null where it is not known.</param>
    /// <param name="kerf">Whether the outline carries the cut's width.</param>
    /// <param name="findings">What concerns the gear.</param>
    /// <param name="whole">The verdict on the whole mechanism: a gear that is sound in one that fails should not be cut in good faith.</param>
    /// <param name="route">Where contours start, leads and tabs, in words; empty for nothing.</param>
    public static ImmutableArray<string> Of(Blank blank, string? mechanism, Material? material, GearKerf kerf, IEnumerable<Finding> findings, Level whole, string route = "")
    {
        Toothing gear = blank.Gear;
        return
        [
            mechanism is null ? blank.Name : $"{mechanism}: {blank.Name}",
            .. blank.PartNumber is { } number ? (string[])[$"part {number}"] : [],
            kerf.Words,
            .. route.Length == 0 ? (string[])[] : [route],
            string.Create(CultureInfo.InvariantCulture, $"z {gear.Teeth}  m {gear.Module:0.####} mm  x {gear.Data.ProfileShift:+0.####;-0.####;0}  α {gear.PressureAngle * 180 / Math.PI:0.####}°"),
            .. Sizes(blank),
            .. blank.Cutouts.Bore is { } bore and not RoundBore ? (string[])[$"bore {bore.Words}"] : [],
            .. Sheet(blank, material),
            .. blank.IsDisc ? (string[])["turned disc: teeth are milled later"] : [],
            .. Verdict(findings, whole),
        ];
    }

    private static string[] Sizes(Blank blank) => blank.Gear switch
    {
        RackBar rack =>
        [
            string.Create(CultureInfo.InvariantCulture, $"length {rack.Length:0.000} mm  tips {rack.TipHeight:0.000} mm over the reference line"),
            string.Create(CultureInfo.InvariantCulture, $"root {-rack.RootHeight:0.000} mm, back {rack.Data.BackHeight:0.000} mm under it"),
        ],
        Gear gear =>
        [
            string.Create(CultureInfo.InvariantCulture, $"tip Ø {2 * gear.TipRadius:0.000} mm"),
            string.Create(CultureInfo.InvariantCulture, $"root Ø {2 * gear.RootRadius:0.000} mm{(blank.Cutouts.Bore is RoundBore round ? $"  bore {round.Words}" : "")}"),
            .. gear is RingGear ring ? (string[])[string.Create(CultureInfo.InvariantCulture, $"ring, rim Ø {2 * ring.RimRadius:0.000} mm")] : [],
        ],
        _ => [],
    };

    private static IEnumerable<string> Sheet(Blank blank, Material? material)
    {
        string thinned = blank.Gear.Data.Thinning > 0 ? string.Create(CultureInfo.InvariantCulture, $"teeth thinned {blank.Gear.Data.Thinning:0.####} mm") : "";
        string sheet = blank.Thickness > 0 ? string.Create(CultureInfo.InvariantCulture, $"{blank.Thickness:0.###} mm {material?.Title}").TrimEnd() : "";
        string line = string.Join("  ", new[] { sheet, thinned }.Where(text => text.Length > 0));
        return line.Length > 0 ? [line] : [];
    }

    private static IEnumerable<string> Verdict(IEnumerable<Finding> findings, Level whole)
    {
        Finding[] failing = [.. findings.Where(finding => finding.Level == Level.Fails)];
        return failing.Length == 0
            ? [whole == Level.Fails ? "CHECK FAILS elsewhere in the mechanism: see its check" : "check: nothing fails"]
            : failing.Select(finding => $"CHECK FAILS: {finding.Name}, {finding.Place}");
    }
}
