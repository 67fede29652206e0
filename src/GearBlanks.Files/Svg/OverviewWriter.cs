using GearBlanks.Files.Svg.Overview;
using GearBlanks.Mechanisms;

namespace GearBlanks.Files.Svg;

/// <summary>
/// Writes a picture of a whole mechanism in plan: every gear in its meshed phase, true size, its axes and meshes named, each mesh marked by
/// its verdict. For people, not for machines: shapes overlap and are filled.
/// </summary>
public static class OverviewWriter
{
    /// <summary>The whole file: SVG, one user unit a millimetre, paths only; the same report gives the same bytes anywhere.</summary>
    /// <param name="report">The mechanism and what its check says.</param>
    public static byte[] Write(MechanismReport report) => PictureWriter.Write(new Sheet(report).Draw());
}
