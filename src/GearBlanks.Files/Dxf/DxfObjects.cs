using static GearBlanks.Files.Dxf.DxfHandles;

namespace GearBlanks.Files.Dxf;

/// <summary>The objects each R2000 file has: the root dictionary first, no groups, and a layout for each block.</summary>
internal static class DxfObjects
{
    private const string ModelLayoutName = "Model";
    private const string PaperLayoutName = "Layout1";

    public static DxfRecord[] All { get; } =
    [
        Dictionary(RootDictionary, Nobody, Entry("ACAD_GROUP", GroupDictionary), Entry("ACAD_LAYOUT", LayoutDictionary)),
        Dictionary(GroupDictionary, RootDictionary),
        Dictionary(LayoutDictionary, RootDictionary, Entry(ModelLayoutName, ModelLayout), Entry(PaperLayoutName, PaperLayout)),
        Layout(ModelLayout, ModelLayoutName, ModelRecord, order: "0", plotFlags: "1024"),
        Layout(PaperLayout, PaperLayoutName, PaperRecord, order: "1", plotFlags: "0"),
    ];

    private static DxfRecord Dictionary(int handle, int owner, params DxfTag[][] entries) =>
        new("DICTIONARY", handle, owner, [(100, "AcDbDictionary"), (281, "1"), .. entries.SelectMany(entry => entry)]);

    private static DxfTag[] Entry(string name, int handle) => [(3, name), (350, DxfTags.HandleText(handle))];

    // Plot settings: no printer, ISO A4, millimetres, one to one. Layout: limits of the sheet, origin and axes as they are.
    private static DxfRecord Layout(int handle, string name, int block, string order, string plotFlags) => new("LAYOUT", handle, LayoutDictionary,
    [
        (100, "AcDbPlotSettings"), (1, ""), (2, ""), (4, "A4"), (6, ""),
        (40, "0.0"), (41, "0.0"), (42, "0.0"), (43, "0.0"), (44, "210.0"), (45, "297.0"), (46, "0.0"), (47, "0.0"), (48, "0.0"), (49, "0.0"),
        (140, "0.0"), (141, "0.0"), (142, "1.0"), (143, "1.0"),
        (70, plotFlags), (72, "1"), (73, "0"), (74, "5"), (7, ""), (75, "16"), (147, "1.0"), (148, "0.0"), (149, "0.0"),
        (100, "AcDbLayout"), (1, name), (70, "1"), (71, order),
        (10, "0.0"), (20, "0.0"), (11, "210.0"), (21, "297.0"), (12, "0.0"), (22, "0.0"), (32, "0.0"),
        (14, "0.0"), (24, "0.0"), (34, "0.0"), (15, "0.0"), (25, "0.0"), (35, "0.0"), (146, "0.0"),
        (13, "0.0"), (23, "0.0"), (33, "0.0"), (16, "1.0"), (26, "0.0"), (36, "0.0"), (17, "0.0"), (27, "1.0"), (37, "0.0"), (76, "0"),
        (330, DxfTags.HandleText(block)),
    ]);
}
