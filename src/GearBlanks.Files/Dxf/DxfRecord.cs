namespace GearBlanks.Files.Dxf;

/// <summary>A fixed tag, its value as it stands in the file.</summary>
internal readonly record struct DxfTag(int Code, string Value)
{
    // R12 ends at 79 below the extrusion and application codes: subclass markers, pointers, weights and the like came later.
    private const int FirstCodeAfterR12 = 80;

    /// <summary>True where R12 knows the group code.</summary>
    public bool IsInR12 => Code < FirstCodeAfterR12;

    public static implicit operator DxfTag((int Code, string Value) tag) => new(tag.Code, tag.Value);
}

/// <summary>A table's row or an object: its type, who it is, whose it is, and its other tags, subclass markers among them.</summary>
internal sealed record DxfRecord(string Type, int Handle, int Owner, DxfTag[] Tags)
{
    private const int HandleCode = 5;
    private const int DimensionStyleHandleCode = 105;

    public void WriteTo(DxfTags tags, DxfVersion version)
    {
        tags.Add(0, Type);
        if (version != DxfVersion.R12)
        {
            tags.AddHandle(Type == "DIMSTYLE" ? DimensionStyleHandleCode : HandleCode, Handle);
            tags.AddHandle(330, Owner);
        }

        foreach (DxfTag tag in Tags)
        {
            if (version != DxfVersion.R12 || tag.IsInR12)
            {
                tags.Add(tag.Code, tag.Value);
            }
        }
    }
}

/// <summary>A table and its rows.</summary>
internal sealed record DxfTable(string Name, int Handle, DxfRecord[] Rows)
{
    public void WriteTo(DxfTags tags, DxfVersion version)
    {
        tags.Add(0, "TABLE");
        tags.Add(2, Name);
        if (version != DxfVersion.R12)
        {
            tags.AddHandle(5, Handle);
            tags.AddHandle(330, DxfHandles.Nobody);
            tags.Add(100, "AcDbSymbolTable");
        }

        tags.Add(70, Rows.Length);
        if (version != DxfVersion.R12 && Name == "DIMSTYLE")
        {
            tags.Add(100, "AcDbDimStyleTable");
            tags.Add(71, Rows.Length);
        }

        foreach (DxfRecord row in Rows)
        {
            row.WriteTo(tags, version);
        }

        tags.Add(0, "ENDTAB");
    }
}
