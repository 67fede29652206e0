using System.Collections.Immutable;
using Fractions;
using GearBlanks.Curves;
using GearBlanks.Mechanisms.Conditions;
using GearBlanks.Teeth;
using GearBlanks.Trains;

namespace GearBlanks.Mechanisms;

/// <summary>A mechanism as its file says it: nothing filled in. Lengths in mm, angles in rad.</summary>
/// <param name="Place">The file.</param>
/// <param name="Title">What the mechanism is called; the file's name where it does not say.</param>
/// <param name="Defaults">What holds wherever an item does not say otherwise.</param>
/// <param name="Axes">Where spindles stand.</param>
/// <param name="Sandwiches">What turns.</param>
/// <param name="Meshes">Which gears mesh.</param>
/// <param name="Drive">What turns the mechanism; null where no speeds are asked for.</param>
/// <param name="Hands">What shows.</param>
public sealed record Job(
    Place Place,
    string Title,
    JobDefaults Defaults,
    ImmutableArray<JobAxis> Axes,
    ImmutableArray<JobSandwich> Sandwiches,
    ImmutableArray<JobMesh> Meshes,
    JobDrive? Drive,
    ImmutableArray<JobHand> Hands)
{
    /// <summary>What turns it beside the drive, as a differential needs it.</summary>
    public ImmutableArray<JobDrive> OtherDrives { get; init; } = [];

    /// <summary>When its hands stand at their angles; null where it is not said.</summary>
    public Moment? Setting { get; init; }

    /// <summary>Columns, plates and arms beside the gears.</summary>
    public JobFrame Frame { get; init; } = JobFrame.None;

    /// <summary>The conditions it will meet; null where none are asked for.</summary>
    public JobConditions? Conditions { get; init; }
}

/// <summary>What holds wherever an item does not say otherwise. Profiles go by name.</summary>
/// <param name="Place">The table.</param>
/// <param name="Module">Module, mm.</param>
/// <param name="Rack">Name of a rack profile.</param>
/// <param name="Material">Name of a material profile.</param>
/// <param name="Machine">Name of a machine profile.</param>
/// <param name="Limits">Name of a limits profile.</param>
/// <param name="Thickness">Sheet thickness, mm.</param>
/// <param name="Bore">Bore diameter, mm; 0 for none.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference circle, mm.</param>
/// <param name="Backlash">Wanted circumferential backlash at the working circle, mm.</param>
/// <param name="Lettering">Whether gears are lettered.</param>
/// <param name="Mark">Whether gears carry a clocking mark.</param>
public sealed record JobDefaults(
    Place Place,
    double? Module,
    string? Rack,
    string? Material,
    string? Machine,
    string? Limits,
    double? Thickness,
    double? Bore,
    double? Thinning,
    double? Backlash,
    bool? Lettering,
    bool? Mark)
{
    /// <summary>What makes the bores other than round; null for round ones.</summary>
    public JobBoreShape? BoreShape { get; init; }

    /// <summary>Whether teeth that face gaps at the setting are marked.</summary>
    public bool MarkFacing { get; init; }

    /// <summary>Greatest deviation of a layer's thickness either way, mm; null for none.</summary>
    public double? ThicknessTolerance { get; init; }
}

/// <summary>Where a spindle stands: at a position, or from another axis by distance and direction.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Position">Position in plan; null where it is given from another axis.</param>
/// <param name="From">Name of the other axis; null where the position is given.</param>
/// <param name="Distance">Distance from the other axis, mm.</param>
/// <param name="Direction">Direction from the other axis, rad, counter-clockwise from +X.</param>
public sealed record JobAxis(Place Place, string Name, Point? Position, string? From, double Distance, double Direction)
{
    /// <summary>Name of the sandwich that carries it, an arm; null for the frame.</summary>
    public string? CarriedBy { get; init; }

    /// <summary>What stands on it.</summary>
    public ImmutableArray<JobSpindle> Spindles { get; init; } = [];
}

/// <summary>Gears and washers that turn as one, from bottom to top.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Axis">Name of its axis.</param>
/// <param name="Height">Height of its underside over the frame, mm; null where heights are not checked.</param>
/// <param name="Layers">Its layers, bottom first.</param>
public sealed record JobSandwich(Place Place, string Name, string Axis, double? Height, ImmutableArray<JobLayer> Layers)
{
    /// <summary>True where it is held to the frame.</summary>
    public bool IsFixed { get; init; }

    /// <summary>Height of its underside over the frame as measured, mm; null where it was not.</summary>
    public double? MeasuredHeight { get; init; }

    /// <summary>How far its underside may lie above or below its height, end play included, mm.</summary>
    public double HeightTolerance { get; init; }

    /// <summary>Its own conditions; null where the job's hold.</summary>
    public JobSandwichConditions? Conditions { get; init; }
}

/// <summary>One layer of a sandwich.</summary>
/// <param name="Place">The table.</param>
public abstract record JobLayer(Place Place)
{
    /// <summary>How it takes height and sits on its spindle.</summary>
    public JobLayerFit Stack { get; init; } = JobLayerFit.None;
}

/// <summary>A washer, a hub, a gap: anything without teeth that takes height.</summary>
/// <param name="Place">The table.</param>
/// <param name="Thickness">Its height, mm.</param>
public sealed record JobWasher(Place Place, double Thickness) : JobLayer(Place);

/// <summary>A gear of a sandwich.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name: the sandwich's own where a single gear has none.</param>
/// <param name="Teeth">Tooth count; 0 for a rack, whose length decides.</param>
/// <param name="Module">Module, mm.</param>
/// <param name="Rack">Name of a rack profile.</param>
/// <param name="ProfileShift">Profile shift coefficient x.</param>
/// <param name="TipDiameter">Tip diameter, mm; null for the rack's.</param>
/// <param name="Thinning">Loss of tooth thickness on the reference circle, mm.</param>
/// <param name="Thickness">Sheet thickness, mm.</param>
/// <param name="Material">Name of a material profile.</param>
/// <param name="Bore">Bore diameter, mm; 0 for none.</param>
/// <param name="Screws">Its own screws; null for none.</param>
/// <param name="Holes">Further holes, in the gear's own frame: a tooth's centre line on +X.</param>
/// <param name="Turned">How far the gear is turned against its sandwich, rad; of a rack the direction of its reference line.</param>
/// <param name="IsDisc">True for a plain turned disc of the tip diameter, whose teeth are milled later.</param>
/// <param name="Lettering">Whether it is lettered.</param>
/// <param name="Mark">Whether it carries a clocking mark.</param>
public sealed record JobGear(
    Place Place,
    string Name,
    int Teeth,
    double? Module,
    string? Rack,
    double ProfileShift,
    double? TipDiameter,
    double? Thinning,
    double? Thickness,
    string? Material,
    double? Bore,
    JobScrews? Screws,
    ImmutableArray<Circle> Holes,
    double Turned,
    bool IsDisc,
    bool? Lettering,
    bool? Mark) : JobLayer(Place)
{
    /// <summary>What makes its bore other than round; null for the default's, or for a round one where it has a bore of its own.</summary>
    public JobBoreShape? BoreShape { get; init; }

    /// <summary>Its crossings; null for none.</summary>
    public JobCrossings? Crossings { get; init; }

    /// <summary>Teeth that carry a clocking mark, counted from 1 on +X counter-clockwise; null for the first, where there is a mark.</summary>
    public ImmutableArray<int>? MarkTeeth { get; init; }

    /// <summary>Its part number; null for none.</summary>
    public string? PartNumber { get; init; }

    /// <summary>What is taken off the tips of its teeth; null for plain corners.</summary>
    public TipForm? Tip { get; init; }

    /// <summary>What was measured on its teeth; null where nothing was.</summary>
    public JobMeasuredTeeth? Measured { get; init; }

    /// <summary>Its own conditions; null where the job's hold.</summary>
    public JobGearConditions? Conditions { get; init; }

    /// <summary>What makes it a ring gear; null where it is none.</summary>
    public JobRing? Ring { get; init; }

    /// <summary>What makes it a rack; null where it is none.</summary>
    public JobRackBar? RackBar { get; init; }
}

/// <summary>What a ring gear has beyond its teeth.</summary>
/// <param name="RimDiameter">Outer diameter of its rim, mm.</param>
/// <param name="RootFilletRadius">Radius of the round between flank and root circle, mm; null for the rack's.</param>
public sealed record JobRing(double RimDiameter, double? RootFilletRadius);

/// <summary>What a straight rack has beyond its teeth; it stands with its middle on its axis, its reference line along the gear's turn.</summary>
/// <param name="Length">Length of the bar, mm.</param>
/// <param name="BackHeight">Distance of its back from the reference line, mm.</param>
public sealed record JobRackBar(double Length, double BackHeight);

/// <summary>Screws of one gear, evenly spaced on a circle.</summary>
/// <param name="Place">The table.</param>
/// <param name="Count">How many.</param>
/// <param name="CircleDiameter">Diameter of the circle they stand on, mm.</param>
/// <param name="HoleDiameter">Diameter of their holes, mm.</param>
/// <param name="HeadDiameter">Diameter of their heads, mm; null where heads take no room.</param>
/// <param name="StartAngle">Angle of the first, rad, in the gear's own frame.</param>
public sealed record JobScrews(
    Place Place, int Count, double CircleDiameter, double HoleDiameter, double? HeadDiameter, double StartAngle)
{
    /// <summary>How deep they go; null where nothing is said of it.</summary>
    public JobScrewDepth? Depth { get; init; }
}

/// <summary>Two gears that mesh.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name; the gears' names where it has none.</param>
/// <param name="First">Name of one gear.</param>
/// <param name="Second">Name of the other.</param>
/// <param name="MeasuredDistance">Centre distance as measured, mm; overrides the axes' positions.</param>
/// <param name="Backlash">Wanted circumferential backlash at the working circle, mm.</param>
/// <param name="ShareOfFirst">The first gear's share of the thinning that makes the backlash, 0 to 1.</param>
public sealed record JobMesh(
    Place Place, string Name, string First, string Second, double? MeasuredDistance, double? Backlash, double? ShareOfFirst)
{
    /// <summary>By how much its centre distance may differ, mm either way; null for the job's.</summary>
    public double? CentreDistanceTolerance { get; init; }
}

/// <summary>What turns the mechanism.</summary>
/// <param name="Place">The table.</param>
/// <param name="Sandwich">Name of the sandwich that is driven.</param>
/// <param name="Turn">Time of one turn, seconds, exactly as written.</param>
public sealed record JobDrive(Place Place, string Sandwich, Fraction Turn)
{
    /// <summary>The sense it turns in.</summary>
    public Sense Sense { get; init; }
}

/// <summary>A hand or pointer.</summary>
/// <param name="Place">The table.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sandwich">Name of the sandwich it sits on.</param>
/// <param name="Turn">Time in which it should turn once, seconds, exactly as written.</param>
public sealed record JobHand(Place Place, string Name, string Sandwich, Fraction Turn)
{
    /// <summary>Where it stands at the setting, degrees clockwise from the dial's zero, exactly as written.</summary>
    public Fraction Angle { get; init; } = Fraction.Zero;

    /// <summary>What room it takes; null where that is not said.</summary>
    public JobHandShape? Shape { get; init; }
}
