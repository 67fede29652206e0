using GearBlanks.Files.Svg.Overview;
using GearBlanks.Files.Svg.Reach;
using GearBlanks.Mechanisms.Reach;

namespace GearBlanks.Files.Svg;

/// <summary>Writes a picture of what a tool leaves uncut: the gear, and one gap of it magnified. For people, not for machines.</summary>
public static class ReachWriter
{
    /// <summary>The whole file: SVG, sizes in mm of the sheet, paths only; the same gear gives the same bytes anywhere.</summary>
    /// <param name="reach">The gear and what the tool makes of it.</param>
    public static byte[] Write(GearReach reach) => PictureWriter.Write(ReachPicture.Of(reach));
}
