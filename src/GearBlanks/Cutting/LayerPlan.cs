using System.Collections.Immutable;

namespace GearBlanks.Cutting;

/// <summary>The layers of a machine's drawings: a name for each operation, and what comes first. The outside always comes last: a part that is cut free moves.</summary>
/// <param name="Names">The layer name of each operation.</param>
/// <param name="AreHolesFirst">True where holes are cut before the marks are made.</param>
public sealed record LayerPlan(ImmutableDictionary<Operation, string> Names, bool AreHolesFirst)
{
    /// <summary>The operations in the order of a drawing: what is never cut, then the machine's order.</summary>
    public ImmutableArray<Operation> Order => AreHolesFirst
        ? [Operation.Note, Operation.CutHoles, Operation.Engrave, Operation.CutOutside]
        : [Operation.Note, Operation.Engrave, Operation.CutHoles, Operation.CutOutside];
}
