using GearBlanks.Cutting;
using static GearBlanks.Files.Dxf.DxfHandles;

namespace GearBlanks.Files.Dxf;

/// <summary>What stands in the tables: the format's fixed rows, one layer an operation, and a view of the whole drawing.</summary>
internal static class DxfTables
{
    private const string White = "7";
    private const string Solid = "CONTINUOUS";

    // A viewport's height in its own view: the drawing with some room around it.
    private const double RoomAround = 1.1;

    private static readonly DxfTable Linetypes = new("LTYPE", LinetypeTable,
    [
        Linetype(ByBlock, "BYBLOCK", ""),
        Linetype(ByLayer, "BYLAYER", ""),
        Linetype(Continuous, Solid, "Solid line"),
    ]);

    private static readonly DxfTable Styles = new("STYLE", StyleTable,
    [
        Row("STYLE", StandardStyle, StyleTable, "AcDbTextStyleTableRecord",
            (2, "STANDARD"), (70, "0"), (40, "0.0"), (41, "1.0"), (50, "0.0"), (71, "0"), (42, "2.5"), (3, "txt"), (4, "")),
    ]);

    private static readonly DxfTable Views = new("VIEW", ViewTable, []);

    private static readonly DxfTable Systems = new("UCS", UcsTable, []);

    private static readonly DxfTable Applications = new("APPID", ApplicationTable,
    [
        Row("APPID", Application, ApplicationTable, "AcDbRegAppTableRecord", (2, "ACAD"), (70, "0")),
    ]);

    private static readonly DxfTable DimensionStyles = new("DIMSTYLE", DimensionStyleTable,
    [
        Row("DIMSTYLE", StandardDimensionStyle, DimensionStyleTable, "AcDbDimStyleTableRecord", (2, "STANDARD"), (70, "0")),
    ]);

    private static readonly DxfTable BlockRecords = new("BLOCK_RECORD", BlockRecordTable,
    [
        Row("BLOCK_RECORD", ModelRecord, BlockRecordTable, "AcDbBlockTableRecord", (2, DxfBlocks.ModelName), (340, Hex(ModelLayout))),
        Row("BLOCK_RECORD", PaperRecord, BlockRecordTable, "AcDbBlockTableRecord", (2, DxfBlocks.PaperName), (340, Hex(PaperLayout))),
    ]);

    /// <summary>The tables of a drawing in the format's order; R12 has no block records.</summary>
    public static IEnumerable<DxfTable> Of(Drawing drawing, Extent extent, DxfVersion version)
    {
        DxfTable[] common = [Viewports(extent), Linetypes, Layers(drawing), Styles, Views, Systems, Applications, DimensionStyles];
        return version == DxfVersion.R12 ? common : [.. common, BlockRecords];
    }

    /// <summary>
    /// Colours that tell the operations apart on a screen and mean nothing to a machine: AutoCAD colour index, the same in every edition.
    /// </summary>
    private static string ColourOf(Operation operation) => operation switch
    {
        Operation.CutOutside => White,
        Operation.CutHoles => "30",
        Operation.Engrave => "94",
        Operation.Note => "8",
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, null),
    };

    private static DxfTable Layers(Drawing drawing)
    {
        IEnumerable<DxfRecord> layers = drawing.Layers
            .Where(layer => layer.Name != DxfBlocks.DefaultLayer)
            .Select((layer, i) => Layer(FirstFree + i, layer.Name, ColourOf(layer.Operation)));
        return new("LAYER", LayerTable, [Layer(LayerZero, DxfBlocks.DefaultLayer, White), .. layers]);
    }

    private static DxfRecord Layer(int handle, string name, string colour) =>
        Row("LAYER", handle, LayerTable, "AcDbLayerTableRecord", (2, name), (70, "0"), (62, colour), (6, Solid), (370, "-3"));

    private static DxfRecord Linetype(int handle, string name, string words) =>
        Row("LTYPE", handle, LinetypeTable, "AcDbLinetypeTableRecord", (2, name), (70, "0"), (3, words), (72, "65"), (73, "0"), (40, "0.0"));

    private static DxfTable Viewports(Extent extent)
    {
        double height = RoomAround * Math.Max(extent.Height, extent.Width);
        return new("VPORT", ViewportTable,
        [
            Row("VPORT", ActiveViewport, ViewportTable, "AcDbViewportTableRecord",
                (2, "*ACTIVE"), (70, "0"), (10, "0.0"), (20, "0.0"), (11, "1.0"), (21, "1.0"),
                (12, Real((extent.Left + extent.Right) / 2)), (22, Real((extent.Bottom + extent.Top) / 2)),
                (13, "0.0"), (23, "0.0"), (14, "10.0"), (24, "10.0"), (15, "10.0"), (25, "10.0"),
                (16, "0.0"), (26, "0.0"), (36, "1.0"), (17, "0.0"), (27, "0.0"), (37, "0.0"),
                (40, Real(height)), (41, "1.0"), (42, "50.0"), (43, "0.0"), (44, "0.0"), (50, "0.0"), (51, "0.0"),
                (71, "0"), (72, "100"), (73, "1"), (74, "3"), (75, "0"), (76, "0"), (77, "0"), (78, "0")),
        ]);
    }

    private static DxfRecord Row(string type, int handle, int owner, string subclass, params DxfTag[] tags) =>
        new(type, handle, owner, [(100, "AcDbSymbolTableRecord"), (100, subclass), .. tags]);

    private static string Real(double value) => Numbers.ToText(value, 6, 1);

    private static string Hex(int handle) => DxfTags.HandleText(handle);
}
