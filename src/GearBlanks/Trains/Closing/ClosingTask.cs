using System.Collections.Immutable;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Trains.Closing;

/// <summary>How the sum of two profile shifts is split.</summary>
public enum ShiftRule
{
    /// <summary>Lands at the tips as equal as can be: least sum of (land 1 - land 2)^2 / m^2 over the meshes.</summary>
    EqualLand,

    /// <summary>Greatest specific slidings as equal as can be: least sum of (sliding 1 - sliding 2)^2 over the meshes.</summary>
    EqualSliding,

    /// <summary>All on the wheel: least sum of the squares of the pinions' shifts.</summary>
    Wheel,

    /// <summary>All on the pinion: least sum of the squares of the wheels' shifts.</summary>
    Pinion,
}

/// <summary>A gear whose profile shift is to be found.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Data">Its numbers; the thinning stays as it is.</param>
/// <param name="IsHeld">True where its profile shift stays as it is.</param>
public sealed record ClosingGear(string Name, ToothData Data, bool IsHeld);

/// <summary>A mesh that is to have a backlash at a distance.</summary>
/// <param name="Name">Its name.</param>
/// <param name="First">Index of one gear.</param>
/// <param name="Second">Index of the other.</param>
/// <param name="Axes">What its pair of axes is called: meshes of one pair share their distance.</param>
/// <param name="Distance">Centre distance, mm.</param>
/// <param name="Backlash">Wanted circumferential backlash at the working circle, mm.</param>
public sealed record ClosingMesh(string Name, int First, int Second, string Axes, double Distance, double Backlash);

/// <summary>Gears and meshes on fixed axes, and what is asked of them.</summary>
/// <param name="Gears">The gears.</param>
/// <param name="Meshes">The meshes.</param>
/// <param name="Limits">The limits that every gear and mesh is to keep.</param>
/// <param name="Rule">How sums of profile shifts are split.</param>
/// <param name="ShortensTips">True where tips that reach too deep into the mate's roots may be shortened.</param>
public sealed record ClosingTask(
    ImmutableArray<ClosingGear> Gears, ImmutableArray<ClosingMesh> Meshes, Limits Limits, ShiftRule Rule, bool ShortensTips)
{
    /// <summary>True where gears that no shifts suit may take another module, all that meshes connect the same: the nearest that works.</summary>
    public bool ChangesModule { get; init; }
}

/// <summary>The answer on gears that meshes connect.</summary>
/// <param name="Gears">Indices of the gears.</param>
/// <param name="Meshes">Indices of the meshes.</param>
/// <param name="Data">The gears' numbers with their new shifts (and tips and module), in the order of <paramref name="Gears"/>; as near as can be where there is no answer.</param>
/// <param name="Level">Ok where everything is comfortable, tight where no shifts are, fails where there is no answer.</param>
/// <param name="Objective">What the rule makes least, as <see cref="ShiftRule"/> says.</param>
/// <param name="Obstacles">What stands in the way, in sentences; empty where there is an answer.</param>
/// <param name="Nearest">What would work, each by itself, nearest first of its kind; empty where there is an answer, or where nothing near works.</param>
public sealed record ClosedGroup(
    ImmutableArray<int> Gears, ImmutableArray<int> Meshes, ImmutableArray<ToothData> Data, Level Level, double Objective,
    ImmutableArray<string> Obstacles, ImmutableArray<string> Nearest);
