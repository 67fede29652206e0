using GearBlanks.Cutting;

namespace GearBlanks.Files;

/// <summary>The same operation has the same colour in each file; the colours tell groups apart and mean nothing to a machine.</summary>
internal static class OperationColours
{
    /// <summary>The colour as <c>#rrggbb</c>.</summary>
    public static string Of(Operation operation) => operation switch
    {
        Operation.CutOutside => "#000000",
        Operation.CutHoles => "#b34700",
        Operation.Engrave => "#00663d",
        Operation.Note => "#808080",
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, null),
    };
}
