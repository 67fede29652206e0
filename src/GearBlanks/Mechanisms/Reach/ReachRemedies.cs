using System.Collections.Immutable;
using System.Globalization;
using GearBlanks.Findings;
using GearBlanks.Teeth;

namespace GearBlanks.Mechanisms.Reach;

/// <summary>What makes a mate run free that a tool leaves no room: each remedy is tried before it is told, so that following it is enough.</summary>
/// <param name="mesh">The mesh.</param>
/// <param name="name">Name of the teeth that are cut.</param>
/// <param name="tool">Diameter of the tool, mm.</param>
/// <param name="racks">Racks that may be taken instead.</param>
internal sealed class ReachRemedies(ToothMesh mesh, string name, double tool, ImmutableArray<BasicRack> racks)
{
    // Of what people type in: dedendum in hundredths of a module, lengths in hundredths of a millimetre.
    private const double Hundredth = 0.01;

    // In modules: what would take more is another design.
    private const double MostDedendum = 0.6;
    private const double MostRound = 0.4;

    private const double AngleAgreement = 1e-9;

    /// <summary>The sentence for a room, mm, that is wanted.</summary>
    public string Sentence(double wanted, double? largestTool)
    {
        string[] remedies = [.. Smaller(wanted, largestTool), .. Deeper(wanted), .. Rounded(wanted), .. OtherRack(wanted)];
        return remedies.Length == 0
            ? "No smaller tool, deeper dedendum, rounded tip or other rack alone gives it: shift or thin the gears, or open the distance."
            : $"{char.ToUpperInvariant(remedies[0][0])}{string.Join("; or ", remedies)[1..]}.";
    }

    private IEnumerable<string> Smaller(double wanted, double? largest)
    {
        if (largest is { } free && RoundedDown(free) is > 0 and var diameter && mesh.RoomAsCut(diameter / 2) >= wanted)
        {
            yield return $"use a tool of at most {Words.Mm(diameter)}, or a second one of that size for the corners";
        }
    }

    private IEnumerable<string> Deeper(double wanted)
    {
        BasicRack rack = mesh.Teeth.Data.Rack;
        double At(int steps) => Math.Round(rack.Dedendum + (steps * Hundredth), 10);
        if (Least((int)(MostDedendum / Hundredth), steps => Runs(mesh.Teeth.Data with { Rack = rack with { Dedendum = At(steps) } }, mesh.Mate.Data, wanted)) is { } enough)
        {
            yield return $"cut {name} with a rack of dedendum {Words.Figure(At(enough), "modules")}";
        }
    }

    private IEnumerable<string> Rounded(double wanted)
    {
        ToothData mate = mesh.Mate.Data;
        TipForm tip = mate.Tip ?? new TipForm();
        double At(int steps) => Math.Round(Math.Max(tip.Round, tip.Chamfer) + (steps * Hundredth), 10);
        int most = (int)(MostRound * mesh.Teeth.Module / Hundredth);
        if (tip.Chamfer == 0 && Least(most, steps => Runs(mesh.Teeth.Data, mate with { Tip = tip with { Round = At(steps) } }, wanted)) is { } round)
        {
            yield return $"round the tips of {mesh.MateName} by {Words.Mm(At(round))}{ContactRatio(tip with { Round = At(round) })}";
        }
        else if (tip.Round == 0 && Least(most, steps => Runs(mesh.Teeth.Data, mate with { Tip = tip with { Chamfer = At(steps) } }, wanted)) is { } chamfer)
        {
            yield return $"chamfer the tips of {mesh.MateName} by {Words.Mm(At(chamfer))}{ContactRatio(tip with { Chamfer = At(chamfer) })}";
        }
    }

    private string ContactRatio(TipForm tip) =>
        $" (contact ratio {Words.Figure(mesh.With(mesh.Teeth.Data, mesh.Mate.Data with { Tip = tip })!.Pair.ContactRatio, "")})";

    private IEnumerable<string> OtherRack(double wanted) => racks
        .Where(rack => rack.Name != mesh.Teeth.Data.Rack.Name && Math.Abs(rack.PressureAngle - mesh.Teeth.PressureAngle) <= AngleAgreement)
        .Where(rack => Runs(mesh.Teeth.Data with { Rack = rack }, mesh.Mate.Data, wanted))
        .Take(1)
        .Select(rack => string.Create(CultureInfo.InvariantCulture, $"cut {name} with rack {rack.Name}"));

    private bool Runs(ToothData teeth, ToothData mate, double wanted) =>
        mesh.With(teeth, mate) is { } changed && changed.RoomAsCut(tool / 2) >= wanted;

    // Doubling, then halving; every change here gives room step by step, or stops being possible.
    private static int? Least(int most, Func<int, bool> runs)
    {
        int high = 1;
        while (!runs(high))
        {
            high *= 2;
            if (high > most)
            {
                return null;
            }
        }

        int low = high / 2;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = runs(middle) ? (low, middle) : (middle, high);
        }

        return high;
    }

    private static double RoundedDown(double diameter) => Math.Floor((diameter / Hundredth) - 1e-6) * Hundredth;
}
