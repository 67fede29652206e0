using System.Collections.Immutable;
using GearBlanks.Meshing.Accuracy;
using GearBlanks.Meshing.Builds;

namespace GearBlanks.Mechanisms.Conditions;

/// <summary>The conditions of a mechanism, resolved.</summary>
/// <param name="Train">What is drawn for a build.</param>
/// <param name="Builds">How builds are drawn.</param>
/// <param name="Overlaps">Least face overlap of each mesh, mm; null where heights are not known.</param>
/// <param name="GradeMisses">Gears outside the standard's ranges by their names.</param>
/// <param name="Standard">What tolerance classes are after; null where none is used.</param>
/// <param name="IsOutsideStandard">True where classes may be used outside the standard's ranges.</param>
internal sealed record ConditionsPlan(
    TrainBuild Train, JobBuilds Builds, ImmutableArray<double?> Overlaps, ImmutableArray<(string Gear, GradeMiss Miss)> GradeMisses, string? Standard,
    bool IsOutsideStandard);
