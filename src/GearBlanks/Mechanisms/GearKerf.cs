using GearBlanks.Cutting;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms;

/// <summary>What is known of the kerf that one gear is cut with, and whether its file carries it.</summary>
/// <param name="Kerf">The kerf; null where it is not known, or is the shop's affair.</param>
/// <param name="IsCompensated">True where the file is compensated for it.</param>
/// <param name="IsShops">True where the shop compensates itself.</param>
/// <param name="Remark">What has to be said of it; null where nothing has.</param>
public sealed record GearKerf(Kerf? Kerf, bool IsCompensated, bool IsShops, string? Remark)
{
    /// <summary>Diameter of the mill's tool, mm; null where the machine is no mill.</summary>
    public double? Tool { get; init; }

    /// <summary>The words that a file says of itself: whether its contours carry the cut's width.</summary>
    public string Words => (IsCompensated, Tool) switch
    {
        (true, null) => $"compensated, kerf {Kerf}",
        (true, _) => $"tool-centre path, compensated, tool {Kerf}",
        (false, null) => "nominal, kerf not compensated",
        (false, { } tool) => $"part contour, nominal, for a tool {Findings.Words.Mm(tool)}",
    };

    /// <summary>The kerf of one gear on a machine: as asked for, else as the machine's profile says; never a guess.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="material">Name of the gear's material; null where it is not known.</param>
    /// <param name="thickness">Thickness of its sheet, mm; 0 where it is not known.</param>
    /// <param name="asked">What the user asks for; null where the machine's profile decides.</param>
    /// <exception cref="GearGeometryException">A kerf is asked for, and the shop compensates: kerf-twice; or none is, of a path of the tool's centre: kerf-contradicts-path.</exception>
    public static GearKerf Of(Machine machine, string? material, double thickness, AskedKerf? asked)
    {
        if (machine.Compensates)
        {
            return asked?.Kerf is not { } twice ? new GearKerf(null, false, true, null) { Tool = machine.ToolDiameter } : throw new GearGeometryException(
                "kerf-twice", $"{machine.Title} compensates the kerf itself, and a kerf is asked for: it would be taken off twice; kerf, mm", Math.Max(twice.X, twice.Y), 0,
                "leave the kerf out, so that this shop gets nominal files, or choose a machine whose profile does not say \"compensates\", and see that the shop then adds nothing");
        }

        if (machine is { FollowsToolCentre: true, ToolDiameter: { } tool })
        {
            return asked is { Kerf: null }
                ? throw new GearGeometryException(
                    "kerf-contradicts-path", $"{machine.Title} gets the path of the tool's centre, and part contours are asked for: followed by the tool's centre they would lose half the tool all round; kerf, mm", 0, tool,
                    "leave the kerf out or give the tool's measured diameter, or choose a machine whose profile says path = \"part-contour\"")
                : new GearKerf(asked?.Kerf ?? Kerf.Of(tool), true, false, null) { Tool = tool };
        }

        SheetKerf? known = machine.Kerfs.FirstOrDefault(sheet => sheet.Material == material && thickness >= sheet.Thinnest && thickness <= sheet.Thickest);
        if (asked is not null)
        {
            return new GearKerf(asked.Kerf ?? known?.Kerf, asked.Kerf is not null, false, null);
        }

        return known is not null || machine.Kerfs.IsEmpty
            ? new GearKerf(known?.Kerf, known is not null, false, null)
            : new GearKerf(null, false, false, $"The kerf of {machine.Title} in {Sheet(material, thickness)} is not known: the file is nominal. Cut a test piece, measure, and give the kerf.");
    }

    private static string Sheet(string? material, double thickness) =>
        $"{(thickness > 0 ? Findings.Words.Mm(thickness) + " of " : "")}{material ?? "a material that is not named"}";
}

/// <summary>What a user asks for instead of the machine's kerf.</summary>
/// <param name="Kerf">The kerf to compensate for; null for nominal files.</param>
public sealed record AskedKerf(Kerf? Kerf);
