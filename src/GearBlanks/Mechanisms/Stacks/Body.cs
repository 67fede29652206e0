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

/// <summary>Something that takes room: what turns takes all that it sweeps in a whole turn.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Sandwich">The sandwich that it moves with; null where it stands still.</param>
/// <param name="Axis">The axis that it is centred on; null for none.</param>
/// <param name="Shape">The room it takes in plan.</param>
/// <param name="Heights">The room it takes in height.</param>
internal sealed record Body(string Name, BodyKind Kind, string? Sandwich, string? Axis, PlanShape Shape, Heights Heights)
{
    /// <summary>The turning sandwich, an arm, on which it keeps its place; null for the frame, and for what is round about the arm's own axis.</summary>
    public string? Arm { get; init; }

    /// <summary>The room it takes seen from its arm; null without one.</summary>
    public PlanShape? OnArm { get; init; }

    /// <summary>Radius of its rim from its own middle, mm.</summary>
    public double RimRadius => (OnArm ?? Shape).Radius;

    /// <summary>The room that this and another body take, seen from the arm that carries both, or else from the frame.</summary>
    public (PlanShape Own, PlanShape Others) Beside(Body other) =>
        Arm is not null && Arm == other.Arm ? (OnArm!, other.OnArm!) : (Shape, other.Shape);

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
