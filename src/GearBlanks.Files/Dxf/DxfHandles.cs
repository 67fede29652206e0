namespace GearBlanks.Files.Dxf;

/// <summary>The handles of everything that is in each R2000 file; layers and shapes follow from <see cref="FirstFree"/>.</summary>
internal static class DxfHandles
{
    public const int Nobody = 0x0;

    public const int ViewportTable = 0x1;
    public const int LinetypeTable = 0x2;
    public const int LayerTable = 0x3;
    public const int StyleTable = 0x4;
    public const int ViewTable = 0x5;
    public const int UcsTable = 0x6;
    public const int ApplicationTable = 0x7;
    public const int DimensionStyleTable = 0x8;
    public const int BlockRecordTable = 0x9;

    public const int ActiveViewport = 0x10;
    public const int ByBlock = 0x11;
    public const int ByLayer = 0x12;
    public const int Continuous = 0x13;
    public const int LayerZero = 0x14;
    public const int StandardStyle = 0x15;
    public const int Application = 0x16;
    public const int StandardDimensionStyle = 0x17;

    public const int ModelRecord = 0x20;
    public const int ModelBegin = 0x21;
    public const int ModelEnd = 0x22;
    public const int ModelLayout = 0x23;
    public const int PaperRecord = 0x24;
    public const int PaperBegin = 0x25;
    public const int PaperEnd = 0x26;
    public const int PaperLayout = 0x27;

    public const int RootDictionary = 0x30;
    public const int GroupDictionary = 0x31;
    public const int LayoutDictionary = 0x32;

    public const int FirstFree = 0x40;
}
