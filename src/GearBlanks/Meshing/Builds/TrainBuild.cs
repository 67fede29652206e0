using System.Collections.Immutable;

namespace GearBlanks.Meshing.Builds;

/// <summary>A whole train as it is built: what is drawn once for a build, and how each gear and mesh takes part in it.</summary>
/// <param name="Places">Greatest length of each displacement, in any direction: mm, or rad of a post's lean.</param>
/// <param name="Gears">The gears.</param>
/// <param name="Distances">Half range of each centre distance, mm.</param>
/// <param name="Frame">Growth of what holds the axes.</param>
/// <param name="Temperature">Temperature over the reference, K.</param>
/// <param name="Humidity">Relative humidity over the reference, per cent.</param>
/// <param name="Meshes">The meshes.</param>
internal sealed record TrainBuild(
    ImmutableArray<double> Places, ImmutableArray<GearDraw> Gears, ImmutableArray<double> Distances, Growth Frame,
    Range Temperature, Range Humidity, ImmutableArray<MeshDraw> Meshes);

/// <summary>Least and greatest value.</summary>
internal readonly record struct Range(double Least, double Most)
{
    public double Middle => (Least + Most) / 2;

    public double Half => (Most - Least) / 2;
}

/// <summary>What a displacement does at a gear or mesh.</summary>
/// <param name="Place">Index of the displacement.</param>
/// <param name="Arm">By what it is multiplied: a height over which a post leans, or 1.</param>
internal readonly record struct Share(int Place, double Arm);

/// <summary>One gear's part.</summary>
/// <param name="Thicker">Ranges of what makes its teeth thicker, mm.</param>
/// <param name="Shares">What moves its centre.</param>
/// <param name="Growth">Its growth with the climate.</param>
internal sealed record GearDraw(ImmutableArray<Range> Thicker, ImmutableArray<Share> Shares, Growth Growth);

/// <summary>One mesh's part.</summary>
/// <param name="Build">The mesh.</param>
/// <param name="First">Index of its first gear.</param>
/// <param name="Second">Index of its second gear.</param>
/// <param name="Distance">Index of its centre distance.</param>
/// <param name="Towards">Direction from the first gear's centre to the second's, of length 1; square to a rack.</param>
/// <param name="Shares">What moves its gears apart, beside their own displacements.</param>
/// <param name="Leans">What crosses its teeth, as a length by which teeth would be thicker.</param>
/// <param name="IsAcross">True where a displacement across the line of centres counts: not over a rack.</param>
/// <param name="Rattles">Backlash beyond which it rattles, mm.</param>
internal sealed record MeshDraw(
    MeshBuild Build, int First, int Second, int Distance, Curves.Vector Towards, ImmutableArray<Share> Shares, ImmutableArray<Share> Leans, bool IsAcross, double Rattles);
