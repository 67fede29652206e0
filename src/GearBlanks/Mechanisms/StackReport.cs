using System.Collections.Immutable;

namespace GearBlanks.Mechanisms;

/// <summary>What stands over what, and how it is to be put together. Lengths in mm, angles in rad.</summary>
/// <param name="Heights">Every body, bottom first; empty where the job gives no heights.</param>
/// <param name="Clockings">Every gear's angle at the setting, in the order of the job.</param>
/// <param name="Teeth">Which tooth faces which gap in each mesh at the setting.</param>
public sealed record StackReport(ImmutableArray<HeightRow> Heights, ImmutableArray<GearClocking> Clockings, ImmutableArray<FacingTeeth> Teeth)
{
    /// <summary>Nothing.</summary>
    public static StackReport None { get; } = new([], [], []);

    /// <summary>Teeth of a gear that face a gap or stand beside one that is faced, in the order of the meshes, each once; of a rack only those that it has.</summary>
    public ImmutableArray<int> TeethToMark(MountedGear gear) =>
    [
        .. Teeth.SelectMany(facing => (int[])[
            .. facing.ToothOf == gear.Name ? (int[])[facing.Tooth] : [],
            .. facing.GapOf == gear.Name ? (int[])[facing.Before, facing.After] : []])
            .Where(tooth => tooth >= 1 && tooth <= gear.Toothing.Teeth)
            .Distinct(),
    ];
}

/// <summary>One row of the table of heights.</summary>
/// <param name="Sandwich">The sandwich that the part belongs to; null for one of the frame.</param>
/// <param name="Part">The part, in words.</param>
/// <param name="From">Height of its lower face over the frame, mm.</param>
/// <param name="To">Height of its upper face over the frame, mm.</param>
/// <param name="FromTolerance">Greatest deviation of its lower face either way, mm.</param>
/// <param name="ToTolerance">Greatest deviation of its upper face either way, mm.</param>
public sealed record HeightRow(string? Sandwich, string Part, double From, double To, double FromTolerance, double ToTolerance);

/// <summary>How a gear stands in its sandwich.</summary>
/// <param name="Gear">Its name.</param>
/// <param name="Sandwich">Its sandwich.</param>
/// <param name="Angle">Angle of its first tooth at the setting, rad counter-clockwise from +X; null for a rack.</param>
/// <param name="Turned">Its angle against its sandwich, rad.</param>
/// <param name="FirstScrew">Angle of its first screw against its sandwich, rad; null without screws.</param>
/// <param name="Ways">In how many angles its screws let it be put on; 1 without screws.</param>
/// <param name="WrongWays">In how many of them its teeth would stand elsewhere.</param>
/// <param name="FlipsUnseen">True where it can be put on upside down, so that its teeth stand elsewhere.</param>
public sealed record GearClocking(
    string Gear, string Sandwich, double? Angle, double Turned, double? FirstScrew, int Ways, int WrongWays, bool FlipsUnseen);

/// <summary>Which tooth of the one gear stands in which gap of the other at the setting.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="ToothOf">The gear whose tooth it is.</param>
/// <param name="Tooth">The tooth, counted from 1 on +X counter-clockwise (of a rack from the left).</param>
/// <param name="GapOf">The other gear.</param>
/// <param name="Before">The tooth before the gap, in the order of counting.</param>
/// <param name="After">The tooth behind the gap.</param>
/// <param name="Offset">How far the tooth's middle stands beside the line of centres, mm along the working circle.</param>
public sealed record FacingTeeth(string Mesh, string ToothOf, int Tooth, string GapOf, int Before, int After, double Offset);
