using static GearBlanks.Files.Dxf.DxfHandles;

namespace GearBlanks.Files.Dxf;

/// <summary>The two blocks each R2000 file has: the model, where the shapes are, and an empty sheet.</summary>
internal static class DxfBlocks
{
    public const string DefaultLayer = "0";
    public const string ModelName = "*Model_Space";
    public const string PaperName = "*Paper_Space";

    public static DxfRecord[] All { get; } =
    [
        Begin(ModelBegin, ModelRecord, ModelName),
        End(ModelEnd, ModelRecord),
        Begin(PaperBegin, PaperRecord, PaperName, (67, "1")),
        End(PaperEnd, PaperRecord, (67, "1")),
    ];

    private static DxfRecord Begin(int handle, int owner, string name, params DxfTag[] space) => new("BLOCK", handle, owner,
    [
        (100, "AcDbEntity"), .. space, (8, DefaultLayer),
        (100, "AcDbBlockBegin"), (2, name), (70, "0"), (10, "0.0"), (20, "0.0"), (30, "0.0"), (3, name), (1, ""),
    ]);

    private static DxfRecord End(int handle, int owner, params DxfTag[] space) =>
        new("ENDBLK", handle, owner, [(100, "AcDbEntity"), .. space, (8, DefaultLayer), (100, "AcDbBlockEnd")]);
}
