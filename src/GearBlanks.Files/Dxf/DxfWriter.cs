using GearBlanks.Cutting;

namespace GearBlanks.Files.Dxf;

/// <summary>
/// Writes drawings as DXF: polylines with bulges and circles, in millimetres, in the order of the drawing's layers. ASCII with CRLF;
/// the same drawing gives the same bytes anywhere.
/// </summary>
public static class DxfWriter
{
    private const int Millimetres = 4;
    private const int Metric = 1;

    /// <summary>The whole file.</summary>
    /// <param name="drawing">The shapes, mm.</param>
    /// <param name="version">The edition to write; R12 cannot state the unit.</param>
    /// <exception cref="ArgumentException">
    /// The drawing cannot be written: a layer's name is not fit or occurs twice, a path that is cut is open, an arc exceeds 90 degrees,
    /// a piece has no length, a number is not finite, or there are no shapes.
    /// </exception>
    public static byte[] Write(Drawing drawing, DxfVersion version)
    {
        Extent extent = DrawingRules.Require(drawing);
        DxfTags tags = new();
        WriteSection(tags, "HEADER", () => WriteHeader(tags, drawing, extent, version));
        if (version == DxfVersion.R12)
        {
            WriteSection(tags, "TABLES", () => WriteTables(tags, drawing, extent, version));
            WriteSection(tags, "BLOCKS", () => { });
            WriteSection(tags, "ENTITIES", () => WriteEntities(tags, drawing, version));
        }
        else
        {
            WriteSection(tags, "CLASSES", () => { });
            WriteSection(tags, "TABLES", () => WriteTables(tags, drawing, extent, version));
            WriteSection(tags, "BLOCKS", () => WriteRecords(tags, DxfBlocks.All, version));
            WriteSection(tags, "ENTITIES", () => WriteEntities(tags, drawing, version));
            WriteSection(tags, "OBJECTS", () => WriteRecords(tags, DxfObjects.All, version));
        }

        tags.Add(0, "EOF");
        return tags.ToArray();
    }

    private static void WriteSection(DxfTags tags, string name, Action content)
    {
        tags.Add(0, "SECTION");
        tags.Add(2, name);
        content();
        tags.Add(0, "ENDSEC");
    }

    private static void WriteHeader(DxfTags tags, Drawing drawing, Extent extent, DxfVersion version)
    {
        tags.Add(9, "$ACADVER");
        tags.Add(1, version == DxfVersion.R12 ? "AC1009" : "AC1015");
        if (version != DxfVersion.R12)
        {
            tags.Add(9, "$DWGCODEPAGE");
            tags.Add(3, "ANSI_1252");
            tags.Add(9, "$HANDSEED");
            tags.AddHandle(5, FirstEntity(drawing) + drawing.Layers.Sum(layer => layer.Paths.Length + layer.Circles.Length));
            tags.Add(9, "$INSUNITS");
            tags.Add(70, Millimetres);
            tags.Add(9, "$MEASUREMENT");
            tags.Add(70, Metric);
        }

        tags.Add(9, "$EXTMIN");
        tags.AddPoint(10, extent.Left, extent.Bottom, 0);
        tags.Add(9, "$EXTMAX");
        tags.AddPoint(10, extent.Right, extent.Top, 0);
    }

    private static void WriteTables(DxfTags tags, Drawing drawing, Extent extent, DxfVersion version)
    {
        foreach (DxfTable table in DxfTables.Of(drawing, extent, version))
        {
            table.WriteTo(tags, version);
        }
    }

    private static void WriteEntities(DxfTags tags, Drawing drawing, DxfVersion version) =>
        DxfEntities.For(version, tags, FirstEntity(drawing)).Write(drawing);

    private static void WriteRecords(DxfTags tags, DxfRecord[] records, DxfVersion version)
    {
        foreach (DxfRecord record in records)
        {
            record.WriteTo(tags, version);
        }
    }

    // Layers take the first free handles, shapes those that follow.
    private static int FirstEntity(Drawing drawing) => DxfHandles.FirstFree + drawing.Layers.Length;
}
