using System.Collections.Immutable;
using Fractions;
using GearBlanks.Blanks;
using GearBlanks.Curves;
using GearBlanks.Findings;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Mechanisms.Stacks;
using GearBlanks.Meshing;
using GearBlanks.Teeth;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>A mechanism with every default filled in and every gear worked out. Lengths in mm, angles in rad.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Limits">The limits it is judged by.</param>
/// <param name="Machine">The machine its parts are drawn for.</param>
/// <param name="Axes">Where spindles stand.</param>
/// <param name="Sandwiches">What turns.</param>
/// <param name="Meshes">Which gears mesh.</param>
/// <param name="Drive">What turns it; null where speeds are not asked for.</param>
/// <param name="Hands">What shows.</param>
public sealed record Mechanism(
    string Title,
    Limits Limits,
    Machine Machine,
    ImmutableArray<Axis> Axes,
    ImmutableArray<Sandwich> Sandwiches,
    ImmutableArray<Mesh> Meshes,
    Drive? Drive,
    ImmutableArray<Hand> Hands)
{
    /// <summary>What turns it beside the drive, as a differential needs it.</summary>
    public ImmutableArray<Drive> OtherDrives { get; init; } = [];

    /// <summary>When its hands stand at their angles; null where it is not said.</summary>
    public Moment? Setting { get; init; }

    /// <summary>All drives, the first one first.</summary>
    internal ImmutableArray<Drive> Drives => Drive is null ? [] : [Drive, .. OtherDrives];

    /// <summary>The conditions it will meet; null where none are asked for.</summary>
    internal ConditionsPlan? Conditions { get; init; }

    /// <summary>All gears, in the order of the job.</summary>
    public IEnumerable<MountedGear> Gears => Sandwiches.SelectMany(sandwich => sandwich.Gears);

    /// <summary>True where gears carry marks that tell how to put them into mesh at the setting.</summary>
    public bool MarksFacingTeeth { get; init; }

    /// <summary>What stands over what.</summary>
    internal Stack Stack { get; init; } = Stack.None;
}

/// <summary>Where a spindle stands.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Position">Position in plan.</param>
public sealed record Axis(string Name, Point Position)
{
    /// <summary>Name of the sandwich that carries it, an arm; null for the frame. Its position is where it stands at the setting.</summary>
    public string? CarriedBy { get; init; }
}

/// <summary>Gears locked to one spindle, which turn as one.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Axis">Its axis.</param>
/// <param name="Gears">Its gears, bottom first.</param>
public sealed record Sandwich(string Name, Axis Axis, ImmutableArray<MountedGear> Gears)
{
    /// <summary>True where it is held to the frame.</summary>
    public bool IsFixed { get; init; }
}

/// <summary>A gear in its sandwich.</summary>
/// <param name="Blank">The gear with all that is cut into its face.</param>
/// <param name="Material">Its material; null where the job names none.</param>
/// <param name="Sandwich">Name of its sandwich.</param>
/// <param name="Axis">Its axis.</param>
/// <param name="Turned">How far it is turned against its sandwich, rad; of a rack the direction of its reference line.</param>
/// <param name="Bottom">Height of its underside over the frame, mm; null where heights are not checked.</param>
public sealed record MountedGear(Blank Blank, Material? Material, string Sandwich, Axis Axis, double Turned, double? Bottom)
{
    /// <summary>Its name.</summary>
    public string Name => Blank.Name;

    /// <summary>Its teeth.</summary>
    public Toothing Toothing => Blank.Gear;

    /// <summary>Its teeth as measured; null where they were not.</summary>
    public Toothing? Measured { get; init; }

    /// <summary>Its teeth as they mesh: measured beats drawn.</summary>
    internal Toothing Meshing => Measured ?? Toothing;

    /// <summary>Where it stands as a rack; null for a gear.</summary>
    internal RackPlace? RackPlace => Toothing is RackBar ? new RackPlace(Axis.Position, Turned) : null;
}

/// <summary>Two gears in mesh at the distance that the frame really has.</summary>
/// <param name="Name">Its name.</param>
/// <param name="First">One gear.</param>
/// <param name="Second">The other.</param>
/// <param name="Pair">The pair at its real distance.</param>
/// <param name="DrawnDistance">Centre distance from the axes' positions, mm.</param>
/// <param name="MeasuredDistance">Centre distance as measured, mm; null where it was not.</param>
/// <param name="WantedBacklash">Circumferential backlash it is designed for, mm.</param>
public sealed record Mesh(
    string Name, MountedGear First, MountedGear Second, GearPair Pair, double DrawnDistance, double? MeasuredDistance, double WantedBacklash)
{
    /// <summary>Pitch on the working circles, mm (arc): 2 pi a / (z1 + z2), a ring's teeth counted negative; of a rack its own.</summary>
    internal double WorkingPitch => First.Toothing is RackBar || Second.Toothing is RackBar
        ? Math.PI * First.Toothing.Module
        : 2 * Math.PI * Pair.CentreDistance / Math.Abs(MeshSide.SignedTeeth(First) + MeshSide.SignedTeeth(Second));

    /// <summary>Where the working circles touch in the plan as drawn; the working circle of a rack is its line.</summary>
    public Point PitchPoint
    {
        get
        {
            if (First.RackPlace is not null || Second.RackPlace is not null)
            {
                (MountedGear gear, RackPlace rack) = First.RackPlace is { } first ? (Second, first) : (First, Second.RackPlace!.Value);
                return rack.Below(gear.Axis.Position, ((Gear)gear.Toothing).ReferenceRadius);
            }

            double teeth = MeshSide.SignedTeeth(First);
            return First.Axis.Position + ((Second.Axis.Position - First.Axis.Position) * (teeth / (teeth + MeshSide.SignedTeeth(Second))));
        }
    }
}

/// <summary>What turns the mechanism.</summary>
/// <param name="Sandwich">Name of the sandwich that is driven.</param>
/// <param name="Turn">Time of one turn, seconds, exactly.</param>
public sealed record Drive(string Sandwich, Fraction Turn)
{
    /// <summary>The sense it turns in.</summary>
    public Sense Sense { get; init; }
}

/// <summary>A hand or pointer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Sandwich">Name of the sandwich it sits on.</param>
/// <param name="Turn">Time in which it should turn once, seconds, exactly.</param>
public sealed record Hand(string Name, string Sandwich, Fraction Turn)
{
    /// <summary>Where it stands at the setting, degrees clockwise from the dial's zero, exactly.</summary>
    public Fraction Angle { get; init; } = Fraction.Zero;
}
