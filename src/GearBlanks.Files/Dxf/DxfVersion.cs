namespace GearBlanks.Files.Dxf;

/// <summary>The editions of DXF that are written.</summary>
public enum DxfVersion
{
    /// <summary>AutoCAD 2000, AC1015: states its unit.</summary>
    R2000,

    /// <summary>AutoCAD R12, AC1009: the oldest that every reader knows; carries no unit.</summary>
    R12,
}
