using System.Collections.Immutable;
using GearBlanks.Cutting;

namespace GearBlanks.Mechanisms;

/// <summary>A material, from profiles/materials.</summary>
/// <param name="Name">File name of the profile.</param>
/// <param name="Title">What it is called in words.</param>
/// <param name="ThermalExpansion">Linear expansion, 1/K; null where it is not known.</param>
/// <param name="Cautions">What to mind when it is cut.</param>
public sealed record Material(string Name, string Title, double? ThermalExpansion, ImmutableArray<string> Cautions);

/// <summary>A machine or shop, from profiles/machines.</summary>
/// <param name="Name">File name of the profile.</param>
/// <param name="Title">What it is called in words.</param>
/// <param name="LayerNames">The layer name of each operation.</param>
/// <param name="Cautions">What to mind when it runs.</param>
public sealed record Machine(string Name, string Title, ImmutableDictionary<Operation, string> LayerNames, ImmutableArray<string> Cautions);
