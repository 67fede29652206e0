namespace GearBlanks.Mechanisms.Stacks;

/// <summary>What kind of thing a body is.</summary>
internal enum BodyKind
{
    Gear,
    Washer,
    ScrewHeads,
    ScrewEnds,
    Hand,
    Arm,
    Spindle,
    Column,
    Plate,
}

/// <summary>Something that takes room: what turns with its sandwich takes all that it sweeps in a whole turn.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Sandwich">The sandwich that it moves with; null where it stands still.</param>
/// <param name="Axis">The axis that it is centred on; null for none.</param>
/// <param name="Shape">The room it takes in plan.</param>
/// <param name="Heights">The room it takes in height.</param>
internal sealed record Body(string Name, BodyKind Kind, string? Sandwich, string? Axis, PlanShape Shape, Heights Heights)
{
    /// <summary>As sentences name it.</summary>
    public string Words => Kind switch
    {
        BodyKind.Gear => $"gear {Name}",
        BodyKind.ScrewHeads => $"the screw heads of {Name}",
        BodyKind.ScrewEnds => $"the screw ends of {Name}",
        BodyKind.Hand => $"hand {Name}",
        BodyKind.Arm => $"arm {Name}",
        BodyKind.Spindle => $"spindle {Name}",
        BodyKind.Column => $"column {Name}",
        BodyKind.Plate => $"plate {Name}",
        _ => Name,
    };
}
