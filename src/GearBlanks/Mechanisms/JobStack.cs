using System.Collections.Immutable;
using GearBlanks.Curves;
using GearBlanks.Mechanisms.Fits;

namespace GearBlanks.Mechanisms;

/// <summary>How a layer takes height, and how it sits on its spindle. Lengths in mm.</summary>
public sealed record JobLayerFit
{
    /// <summary>Nothing said.</summary>
    public static JobLayerFit None { get; } = new();

    /// <summary>Greatest deviation of the thickness either way, mm; null for the default's.</summary>
    public double? ThicknessTolerance { get; init; }

    /// <summary>Thickness as measured, mm; null where it was not.</summary>
    public double? MeasuredThickness { get; init; }

    /// <summary>Outer diameter of a washer, mm; null where it takes no room in plan.</summary>
    public double? Diameter { get; init; }

    /// <summary>Bore of a washer, mm; null where it is not known.</summary>
    public double? Bore { get; init; }

    /// <summary>Tolerance class of the bore; null where none is given.</summary>
    public ToleranceClass? BoreClass { get; init; }

    /// <summary>Diameter of the bore as measured, mm; null where it was not.</summary>
    public double? MeasuredBore { get; init; }

    /// <summary>How it sits on its spindle; null where the spindle tells.</summary>
    public JobSeat? Seat { get; init; }
}

/// <summary>How a bore sits on its spindle.</summary>
public enum JobSeat
{
    /// <summary>It turns on it: there must be a clearance.</summary>
    Runs,

    /// <summary>It is held by it: there must be an interference.</summary>
    Pressed,

    /// <summary>It is held by screws or glue: neither is asked for.</summary>
    Held,
}

/// <summary>How deep a gear's screws go. Lengths in mm.</summary>
/// <param name="Thread">Nominal diameter of the thread, mm; null where it is not given.</param>
/// <param name="HeadHeight">How far the heads stand out of the gear's face, mm; null where they take no room.</param>
/// <param name="HeadsDown">True where the heads are on the gear's underside.</param>
/// <param name="Length">Length under the head, mm; null where it is not given.</param>
/// <param name="Grip">Height between head and socket, mm; null for the gear's own thickness.</param>
/// <param name="Socket">Depth of the tapped hole, mm; null where it is not given.</param>
public sealed record JobScrewDepth(double? Thread, double? HeadHeight, bool HeadsDown, double? Length, double? Grip, double? Socket);

/// <summary>A post, a rod or a tube that stands on an axis. Lengths in mm.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Diameter">Outer diameter, mm.</param>
/// <param name="Bore">Bore of a tube, mm; 0 for a solid one.</param>
/// <param name="Bottom">Height of its lower end over the frame, mm.</param>
/// <param name="Top">Height of its upper end over the frame, mm.</param>
/// <param name="TurnsWith">Name of the sandwich that is fixed on it; null for a post that stands still.</param>
public sealed record JobSpindle(Place Place, string Name, double Diameter, double Bore, double Bottom, double Top, string? TurnsWith)
{
    /// <summary>Tolerance class of the outer diameter; null where none is given.</summary>
    public ToleranceClass? Class { get; init; }

    /// <summary>Outer diameter as measured, mm; null where it was not.</summary>
    public double? MeasuredDiameter { get; init; }

    /// <summary>Tolerance class of a tube's bore; null where none is given.</summary>
    public ToleranceClass? BoreClass { get; init; }

    /// <summary>Bore of a tube as measured, mm; null where it was not.</summary>
    public double? MeasuredBore { get; init; }
}

/// <summary>A round column of the frame. Lengths in mm.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Position">Its middle in plan.</param>
/// <param name="Diameter">Diameter, mm.</param>
/// <param name="Bottom">Height of its lower end over the frame, mm.</param>
/// <param name="Top">Height of its upper end over the frame, mm.</param>
public sealed record JobColumn(Place Place, string Name, Point Position, double Diameter, double Bottom, double Top);

/// <summary>A plate of the frame, a disc or a rectangle. Lengths in mm, angles in rad.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Position">Its middle in plan.</param>
/// <param name="Diameter">Diameter of a disc, mm; null for a rectangle.</param>
/// <param name="Length">Length of a rectangle, mm; 0 for a disc.</param>
/// <param name="Width">Width of a rectangle, mm; 0 for a disc.</param>
/// <param name="Direction">Direction of a rectangle's length, rad counter-clockwise from +X.</param>
/// <param name="Bottom">Height of its underside over the frame, mm.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="ThicknessTolerance">Greatest deviation of the thickness either way, mm.</param>
/// <param name="Holes">Its holes in plan.</param>
public sealed record JobPlate(
    Place Place, string Name, Point Position, double? Diameter, double Length, double Width, double Direction, double Bottom, double Thickness,
    double ThicknessTolerance, ImmutableArray<Circle> Holes);

/// <summary>A bar with round ends from one axis to another. Lengths in mm.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="From">Name of the axis at its one end.</param>
/// <param name="To">Name of the axis at its other end.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Bottom">Height of its underside over the frame, mm.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="ThicknessTolerance">Greatest deviation of the thickness either way, mm.</param>
/// <param name="Bore">Diameter of its hole at the first axis, mm; 0 for none.</param>
/// <param name="TurnsWith">Name of the sandwich on the first axis that it turns with; null for an arm that stands still.</param>
public sealed record JobArm(
    Place Place, string Name, string From, string To, double Width, double Bottom, double Thickness, double ThicknessTolerance, double Bore,
    string? TurnsWith);

/// <summary>What room a hand takes. Lengths in mm.</summary>
/// <param name="Length">Length of the hand from its axis, mm.</param>
/// <param name="Tail">Length of its tail from its axis, mm.</param>
/// <param name="Width">Greatest width, mm.</param>
/// <param name="Height">Height of its underside over the frame, mm.</param>
/// <param name="Thickness">Thickness, mm.</param>
/// <param name="Bore">Diameter of its hole, mm; 0 for none.</param>
public sealed record JobHandShape(double Length, double Tail, double Width, double Height, double Thickness, double Bore);

/// <summary>What of the frame stands beside the gears.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="Plates">Its plates.</param>
/// <param name="Arms">Arms, fixed or turning.</param>
public sealed record JobFrame(ImmutableArray<JobColumn> Columns, ImmutableArray<JobPlate> Plates, ImmutableArray<JobArm> Arms)
{
    /// <summary>Nothing.</summary>
    public static JobFrame None { get; } = new([], [], []);
}
